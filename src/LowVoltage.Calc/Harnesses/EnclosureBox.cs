using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Finds a box of voltages and currents that no harness within its tolerances leaves.</summary>
/// <remarks>
/// <para><b>Why none leaves it.</b> Every solution inside the box lies inside its image (<see cref="EnclosureSystem.Image"/>), which lies strictly inside the box. Let the parts go from their middle to anywhere within
/// their tolerances: the solution follows without a jump and would have to touch the side of the box before it leaves, where it cannot be. That it follows without a jump is certain where every load draws
/// more at more voltage; with constant powers it is shown by the matrix of slopes, which stays positive definite at the least slopes of the whole box.</para>
/// <para><b>Source.</b> After R. Krawczyk (1969), from memory; the argument by continuity is our own.</para>
/// </remarks>
internal sealed class EnclosureBox
{
    private const int MostRounds = 60;
    private const int MostRefinements = 40;

    private readonly EnclosureNetwork network;
    private readonly EnclosureSystem[] systems;
    private readonly double most;

    internal EnclosureBox(EnclosureNetwork network, double most)
    {
        this.network = network;
        this.most = most;
        systems = network.Heat is null ? [network.Main] : [network.Main, network.Heat];
    }

    /// <summary>From the middle outward until the box holds its own image: first with supplies as they are at the middle, then as any current that they can give.</summary>
    internal bool Find() => Find(limits: true) || Find(limits: false);

    private bool Find(bool limits)
    {
        foreach (EnclosureElement e in systems.SelectMany(s => s.Elements))
        {
            e.Amperes = Interval.At(e.Amperes0);
        }

        if (!network.Prepare(limits))
        {
            return false;
        }

        foreach (EnclosureSystem system in systems)
        {
            foreach (EnclosureElement e in system.Elements)
            {
                (e.Volts, e.Amperes) = (Interval.At(e.Volts0).Wider(LittleVolts(system)), Interval.At(e.Amperes0).Wider(LittleAmperes(system, e)));
            }
        }

        for (int n = 0; n < MostRounds; n++)
        {
            network.Couple();
            if (!Array.TrueForAll(systems, s => s.Image()) || !Array.TrueForAll(systems, IsSmall))
            {
                return false;
            }

            bool holds = Array.TrueForAll(systems, Holds);
            Array.ForEach(systems, s => Take(s, holds));
            if (holds)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether with constant powers no two solutions meet in the box.</summary>
    internal bool IsOne() => network.Main.StaysDefinite();

    /// <summary>Narrows a box that holds every solution.</summary>
    internal bool Narrow(bool anew)
    {
        if (anew && !network.Prepare(limits: true))
        {
            return false;
        }

        double before = double.PositiveInfinity;
        for (int n = 0; n < MostRefinements; n++)
        {
            network.Couple();
            if (!Array.TrueForAll(systems, s => s.Image()))
            {
                return false;
            }

            Array.ForEach(systems, s => Take(s, true));
            double now = systems.Sum(s => s.Elements.Sum(e => e.Volts.Radius));
            if (now > before * (1 - 1e-6))
            {
                break;
            }

            before = now;
        }

        // The bounds that are read belong to the last intervals.
        network.Couple();
        return Array.TrueForAll(systems, s => s.Image());
    }

    private static double LittleVolts(EnclosureSystem system) => 1e-6 * system.LargestVolts;

    private static double LittleAmperes(EnclosureSystem system, EnclosureElement e) => (1e-6 * system.LargestAmperes) + (1e-11 * Math.Abs(e.Siemens0) * system.LargestVolts);

    private static bool Holds(EnclosureSystem s)
    {
        for (int k = 0; k < s.Elements.Length; k++)
        {
            if (!s.Elements[k].Volts.Holds(s.NewVolts[k]) || !s.Elements[k].Amperes.Holds(s.NewAmperes[k]))
            {
                return false;
            }
        }

        return true;
    }

    private static void Take(EnclosureSystem s, bool inside)
    {
        for (int k = 0; k < s.Elements.Length; k++)
        {
            EnclosureElement e = s.Elements[k];
            Interval volts = s.NewVolts[k], amperes = s.NewAmperes[k];
            (e.Volts, e.Amperes) = inside
                ? (e.Volts.Meet(volts), e.Amperes.Meet(amperes))
                : (volts.Wider((0.05 * volts.Radius) + LittleVolts(s)), amperes.Wider((0.05 * amperes.Radius) + LittleAmperes(s, e)));
        }
    }

    // A box as wide as the sources are high says nothing; it would only grow on.
    private bool IsSmall(EnclosureSystem s) => Array.TrueForAll(s.NewVolts, v => v.Radius < 2 * most);
}

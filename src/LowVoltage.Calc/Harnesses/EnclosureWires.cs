using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Numerics;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Between which limits the resistance, the warming and the rating of every branch lie.</summary>
internal sealed class EnclosureWires
{
    // The air is looked at in so many steps: what a rating makes of it lies between its neighbours.
    private const int Airs = 5;
    private const double Coldest = -60;
    private const double Hottest = 250;

    private readonly SegmentState[][] states;

    internal EnclosureWires(Harness harness, Tolerances tolerances, LoadCase used, SegmentState[] rated)
    {
        int count = harness.BranchArray.Length;
        (states, Ohms, Cubic) = (new SegmentState[count][], new Interval[count], new Interval[count]);
        Interval joint = About(1, tolerances.JointShare), stretch = About(1, tolerances.LengthShare) * About(1, tolerances.ResistanceShare);
        for (int k = 0; k < count; k++)
        {
            Interval stated = harness.BranchArray[k].FixedOhms * joint;
            states[k] = harness.BranchArray[k] is HarnessWire wire ? StatesOf(harness, wire, rated[k], tolerances, used) : [];
            (double Ohms, double Cubic)[] laws = [.. states[k].Select(s => s.Law())];
            if (laws.Length > 0)
            {
                stated += new Interval(laws.Min(l => l.Ohms), laws.Max(l => l.Ohms)) * stretch;
                Cubic[k] = new Interval(laws.Min(l => l.Cubic), laws.Max(l => l.Cubic)) * stretch;
            }

            Ohms[k] = stated;

            // Somewhere between, its rating falls to nothing and its warming has no end.
            Gap ??= states[k].Select(s => s.IsRated).Distinct().Count() > 1 ? harness.BranchArray[k].Id : null;
        }
    }

    /// <summary>Resistance without a current of its own, Ω.</summary>
    internal Interval[] Ohms { get; }

    /// <summary>What each square ampere of r.m.s. current adds, Ω/A².</summary>
    internal Interval[] Cubic { get; }

    /// <summary>A wire that is rated in some of the air that it may meet and not in all; <c>null</c> for none.</summary>
    internal string? Gap { get; }

    internal static Interval About(double value, double share) => Interval.Between(value * (1 - share), value * (1 + share));

    /// <summary>The least continuous current in any air that it may meet, A; 0 where it is not rated.</summary>
    internal double LeastRated(int branch) => states[branch].Length == 0 ? 0 : states[branch].Min(s => s.RatedAmperes);

    /// <summary>Steady temperatures of a conductor, °C, over its r.m.s. currents; <c>null</c> where it is not rated or may not settle below the metal's melting point.</summary>
    internal Interval? Celsius(int branch, Interval heat)
    {
        Interval? found = null;
        foreach (SegmentState s in states[branch])
        {
            if (!s.IsRated || !s.TrySteadyCelsius(heat.Greatest, out double most) || !(most < s.Conductor.Material.MeltingPointCelsius) || !s.TrySteadyCelsius(heat.Least, out double least))
            {
                return null;
            }

            Interval here = Interval.Between(least, most);
            found = found?.Hull(here) ?? here;
        }

        return found;
    }

    /// <summary>The wire's states from its coolest to its warmest air.</summary>
    private static SegmentState[] StatesOf(Harness harness, HarnessWire wire, SegmentState rated, Tolerances tolerances, LoadCase used)
    {
        if (tolerances.AmbientKelvins == 0 || used.AmbientCelsius is not null)
        {
            return [rated];
        }

        SegmentState[] states = new SegmentState[Airs];
        for (int n = 0; n < Airs; n++)
        {
            double celsius = Math.Min(Hottest, Math.Max(Coldest, wire.Place.AmbientCelsius + (tolerances.AmbientKelvins * ((2.0 * n / (Airs - 1)) - 1))));
            HarnessWire there = wire.WithPlace(wire.Place.WithAmbient(Temperature.FromDegreesCelsius(celsius)));
            states[n] = HarnessWires.Of(harness, there, wire.Conductor!, rated.Site.OwnConductors, LoadCase.AllOn);
        }

        return states;
    }
}

using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness sized: every wire and fuse, the verification, what the copper costs, what keeps each wire from being thinner, and how close to the least it is.</summary>
/// <remarks>
/// <para>Where <see cref="IsProvenLeast"/>, no sizes of the series cost less, for this model: each wire at the greatest current that it carries in any load case, as warm as that makes it; the smallest size of each by its own
/// checks; the drops on each load's way within its allowance. What checks of a whole way (a fault at its end) ask beyond that can only add: then <see cref="Gap"/> says how much at most.</para>
/// <para>Immutable and thread-safe. The cautions of <see cref="Verification"/> are part of the result.</para>
/// </remarks>
public sealed class HarnessDesign
{
    // By how many tenths of a volt the allowances are moved.
    private static readonly int[] Tenths = [-3, -2, -1, 0, 1, 2, 3, 4, 5];

    private readonly IReadOnlyList<(double Room, double Cost)> front;
    private readonly Lazy<double> circuitByCircuit;

    internal HarnessDesign(HarnessVerification verification, Sizing.HarnessSizer sizer, double kilograms)
    {
        Verification = verification;
        Cost = sizer.Cost;
        LowerBound = Math.Min(sizer.LowerBound, sizer.Cost);
        IsTree = sizer.IsTree;
        Rounds = sizer.Rounds;
        HeldBy = sizer.HeldBy;
        CostDividedByLength = double.IsInfinity(sizer.DividedByLength) ? null : sizer.DividedByLength;
        ConductorMass = Mass.FromKilograms(kilograms);
        front = sizer.Front;
        circuitByCircuit = new Lazy<double>(sizer.CircuitByCircuit);
        AllowanceCosts = Array.AsReadOnly([.. Tenths.Select(t => new AllowanceCost(0.1 * t, Least(0.1 * t))).Where(c => !double.IsInfinity(c.Cost))]);
    }

    /// <summary>The harness with all its sizes and ratings.</summary>
    public Harness Harness => Verification.Harness;

    /// <summary>Every check of it.</summary>
    public HarnessVerification Verification { get; }

    /// <summary>Mass of metal in all its wires, those included that were given.</summary>
    public Mass ConductorMass { get; }

    /// <summary>Cost of the wires that were sized: their mass in kg, or what the caller's price makes of it.</summary>
    public double Cost { get; }

    /// <summary>No sizes that keep every drop and every wire's own checks at these currents cost less.</summary>
    public double LowerBound { get; }

    /// <summary>By how much the cost may exceed the least, as a share of the cost.</summary>
    public Ratio Gap => Ratio.FromDecimalFractions(Cost > 0 ? (Cost - LowerBound) / Cost : 0);

    /// <summary>Whether the wires to be sized form a tree.</summary>
    public bool IsTree { get; }

    /// <summary>Whether the cost is the least: they form a tree, and no check of a whole way asked for more.</summary>
    public bool IsProvenLeast => IsTree && Cost <= LowerBound * (1 + 1e-12);

    /// <summary>What the same wires would cost with every allowance divided by length; <c>null</c> where no sizes of the series keep that.</summary>
    public double? CostDividedByLength { get; }

    /// <summary>What the same wires would cost sized circuit by circuit: the way of each load by itself at the least cost for its whole allowance, and of the sizes that several loads ask of a wire the largest.</summary>
    /// <remarks>At the same currents, with the same checks of each wire by itself: to be compared with <see cref="LowerBound"/>, as <see cref="CostDividedByLength"/> is. Worked out when it is first asked for.</remarks>
    public double? CostCircuitByCircuit => double.IsInfinity(circuitByCircuit.Value) ? null : circuitByCircuit.Value;

    /// <summary>The least cost with allowances of a few tenths of a volt less or more for every load: what the last tenth buys, and what the next would.</summary>
    /// <remarks>From three tenths less to five more; those that no sizes keep are left out, all of them where the wires form no tree.</remarks>
    public IReadOnlyList<AllowanceCost> AllowanceCosts { get; }

    /// <summary>What holds each sized wire up, by its name: a check of its own, or the drop of a load.</summary>
    public IReadOnlyDictionary<string, string> HeldBy { get; }

    /// <summary>How often the currents were worked out again.</summary>
    public int Rounds { get; }

    /// <summary>What a further allowance for every load would save, from the choices that nothing beats.</summary>
    /// <param name="more">How much more each load may lose, zero or greater.</param>
    /// <returns>The saving, at these currents; <c>null</c> where the wires form no tree.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative or absurdly large.</exception>
    public double? SavingFor(ElectricPotential more)
    {
        double volts = Quantities.Accept.VoltsOrZero(more, nameof(more));
        double now = Least(0), then = Least(volts);
        return front.Count == 0 || double.IsInfinity(now) ? null : now - then;
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Verification}; {Quantities.Accept.Short(ConductorMass.Kilograms)} kg of metal{(IsProvenLeast ? ", the least there is" : $", at most {Quantities.Accept.Short(Gap.Percent)} % above the least")}";

    private double Least(double volts)
    {
        double least = double.PositiveInfinity;
        foreach ((double room, double cost) in front)
        {
            least = room >= -volts ? Math.Min(least, cost) : least;
        }

        return least;
    }
}

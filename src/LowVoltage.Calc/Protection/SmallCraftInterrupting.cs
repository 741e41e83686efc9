using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The least interrupting capacity of circuit-breakers on small craft, by the cold-cranking rating of the batteries (ABYC E-11, 12 V and 24 V).</summary>
/// <remarks>
/// <code>up to 650 A: main 1500 A, branch 750 A;  651 A to 1100 A: 3000 A, 1500 A;  above 1100 A: 5000 A, 2500 A</code>
/// The total of all connected batteries counts. Between 650 A and 651 A the larger value is taken.
/// <para>A rule for circuit-breakers: no check of a design asks it. The small-craft presets choose fuses, and a design compares what a device breaks with the prospective current that the stated battery
/// drives where it sits. For a breaker to which the rule applies, take the larger of the two.</para>
/// </remarks>
public static class SmallCraftInterrupting
{
    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new() { Title = "ABYC E-11", Locator = "Table V-A", Kind = ReferenceKind.Standard, Note = "As a reproduction prints it; the edition was not stated." };

    /// <summary>Least interrupting capacity of the main device.</summary>
    /// <param name="totalColdCranking">Cold-cranking rating of all connected batteries together. Positive.</param>
    /// <returns>1500 A, 3000 A or 5000 A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside its range.</exception>
    public static ElectricCurrent MainDevice(ElectricCurrent totalColdCranking) => Pick(totalColdCranking, 1500, 3000, 5000);

    /// <summary>Least interrupting capacity of a branch device.</summary>
    /// <param name="totalColdCranking">Cold-cranking rating of all connected batteries together. Positive.</param>
    /// <returns>750 A, 1500 A or 2500 A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside its range.</exception>
    public static ElectricCurrent BranchDevice(ElectricCurrent totalColdCranking) => Pick(totalColdCranking, 750, 1500, 2500);

    private static ElectricCurrent Pick(in ElectricCurrent totalColdCranking, double small, double middle, double large)
    {
        double amperes = Accept.Amperes(totalColdCranking, nameof(totalColdCranking));
        double least = amperes <= 650 ? small : amperes <= 1100 ? middle : large;
        return ElectricCurrent.FromAmperes(least);
    }
}

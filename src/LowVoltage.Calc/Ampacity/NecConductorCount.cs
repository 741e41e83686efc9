using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NEC Table 310.15(C)(1): the factor for more than three current-carrying conductors together.</summary>
/// <remarks>
/// 4 to 6 conductors 0.80, 7 to 9 0.70, 10 to 20 0.50, 21 to 30 0.45, 31 to 40 0.40, 41 and more 0.35; up to three 1.00.
/// It counts every current-carrying conductor whatever its load, in a raceway or cable or bundled over more than 24 inch (600 mm, from memory). It multiplies the ambient-corrected current.
/// </remarks>
public static class NecConductorCount
{
    private const int MostConductors = 100_000;

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "2014", Locator = "Table 310.15(B)(3)(a); from 2020 Table 310.15(C)(1)", Kind = ReferenceKind.Standard,
        Note = "Law where adopted.",
    };

    /// <summary>The factor for a number of conductors.</summary>
    /// <param name="conductors">Current-carrying conductors together: 1 or more.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000.</exception>
    public static DeratingFactor Factor(int conductors) =>
        new(Value(Accept.Count(conductors, 1, MostConductors, nameof(conductors))), DeratingKind.ConductorCount, RuleSet.Nec, Reference)
        {
            BundleMeaning = "all current-carrying conductors in a raceway or cable, or bundled over more than 600 mm, whatever their load",
            Holds = new LateText("{0} current-carrying conductors", conductors),
        };

    internal static double Value(int conductors) => conductors switch
    {
        <= 3 => 1.00,
        <= 6 => 0.80,
        <= 9 => 0.70,
        <= 20 => 0.50,
        <= 30 => 0.45,
        <= 40 => 0.40,
        _ => 0.35,
    };
}

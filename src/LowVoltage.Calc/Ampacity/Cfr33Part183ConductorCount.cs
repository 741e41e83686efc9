using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>33 CFR 183.425 Table 5, note 2: the factor for current-carrying conductors together in a duct, bundle or cable.</summary>
/// <remarks>
/// 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25 and more 0.40; fewer than three 1.00.
/// The law asks for it only where each of three or more conductors carries 50 V or more (183.435(b)). Below 50 V no law asks for a factor, but voluntary small-craft standards do:
/// the factor is given all the same, with <see cref="DeratingFactor.IsRequired"/> false, and its use is reported as a practice.
/// </remarks>
public static class Cfr33Part183ConductorCount
{
    private const double ThresholdVolts = 50;
    private const int MostConductors = 100_000;

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "33 CFR 183.425", Edition = "Code of Federal Regulations", Locator = "Table 5, note 2; scope in 183.435(b)", Kind = ReferenceKind.Law,
        Note = "Read in a reprint of the Coast Guard's compliance guideline; the wording of the note is from memory.",
    };

    /// <summary>Whether the law asks for the factor.</summary>
    /// <param name="conductors">Current-carrying conductors together, of those that carry 50 V or more.</param>
    /// <param name="circuitVoltage">Voltage of the circuits.</param>
    /// <returns>True for three or more conductors at 50 V or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the voltage is not positive.</exception>
    public static bool IsRequired(int conductors, ElectricPotential circuitVoltage) =>
        Accept.Count(conductors, 1, MostConductors, nameof(conductors)) >= 3
        && Accept.Volts(circuitVoltage, nameof(circuitVoltage)) >= ThresholdVolts;

    /// <summary>The factor for a number of conductors.</summary>
    /// <param name="conductors">Current-carrying conductors together: 1 or more.</param>
    /// <param name="circuitVoltage">Voltage of the circuits; it decides whether the law asks for the factor, not its value.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the voltage is not positive.</exception>
    public static DeratingFactor Factor(int conductors, ElectricPotential circuitVoltage)
    {
        bool required = IsRequired(conductors, circuitVoltage);
        double volts = Accept.Volts(circuitVoltage, nameof(circuitVoltage));
        return new DeratingFactor(Value(conductors), DeratingKind.ConductorCount, RuleSet.Cfr33Part183, Reference)
        {
            BundleMeaning = "current-carrying conductors in a duct, bundle or cable, of those that carry 50 V or more, whatever their load",
            Holds = new LateText("{0} conductors at {1} V", conductors, volts),
            IsRequired = required || conductors < 3,
        };
    }

    internal static double Value(int conductors) => conductors switch
    {
        < 3 => 1.00,
        3 => 0.70,
        <= 6 => 0.60,
        <= 24 => 0.50,
        _ => 0.40,
    };
}

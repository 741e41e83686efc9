using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>33 CFR 183.425 Table 5, note 1: the factor for a conductor in an engine space, taken as 50 °C.</summary>
/// <remarks>
/// Applies at any voltage. Between two insulation ratings the lower one is used, as in the table. The printed factors follow √((T − 50)/(T − 30)) to their rounding except at 80 °C
/// (0.78 printed, 0.7746 by the equation), at 105 °C (0.85 against 0.856) and at 200 °C (1.00 against 0.94). At 80 °C and 200 °C the printed factor is the less safe of the
/// two, but it is what the regulation says, as remembered.
/// </remarks>
public static class Cfr33Part183EngineSpace
{
    private const string Name = "33 CFR 183.425 Table 5 note 1";
    private static readonly double[] Ratings = [60, 75, 80, 90, 105, 125, 200];
    private static readonly double[] Factors = [0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "33 CFR 183.425", Edition = "Code of Federal Regulations", Locator = "Table 5, note 1", Kind = ReferenceKind.FromMemory,
        Note = "The value at 105 °C was read in a page repeating the Coast Guard's commentary; the others are from memory.",
    };

    /// <summary>The ambient that the law assumes in an engine space: 50 °C.</summary>
    public static Temperature Ambient => Temperature.FromDegreesCelsius(50);

    /// <summary>The factor for an insulation rating.</summary>
    /// <param name="insulationRating">Insulation rating, 60 °C to 200 °C.</param>
    /// <param name="factor">The factor; null outside the note.</param>
    /// <returns>Whether the note covers the rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature insulationRating, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        factor = TryValue(TableKey.Celsius(insulationRating, nameof(insulationRating)), out double value, out double column)
            ? new DeratingFactor(value, DeratingKind.EngineSpace, RuleSet.Cfr33Part183, Reference)
            {
                BaseAmbientCelsius = 30,
                InsulationCelsius = column,
                Holds = new LateText("engine space at 50 °C, insulation of {0} °C", column),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for an insulation rating.</summary>
    /// <param name="insulationRating">Insulation rating, 60 °C to 200 °C.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The note does not cover the rating.</exception>
    public static DeratingFactor Factor(Temperature insulationRating) => TryFactor(insulationRating, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(insulationRating), Accept.Text(Accept.Raw(insulationRating)) + " °C", Name, "insulation ratings from 60 °C to 200 °C");

    internal static bool TryValue(double insulationCelsius, out double value, out double columnCelsius)
    {
        int index = Steps.AtMost(Ratings, insulationCelsius);
        bool found = index >= 0 && insulationCelsius <= Ratings[Ratings.Length - 1];
        value = found ? Factors[index] : 0;
        columnCelsius = found ? Ratings[index] : 0;
        return found;
    }
}

using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NASA EEE-INST-002: multipliers on the 200 °C currents for wire of another rating.</summary>
/// <remarks>135 °C 0.70, 150 °C 0.80, 200 °C 1.00, 260 °C 1.15. Between two ratings the lower one is used. From memory, with moderate confidence.</remarks>
public static class NasaInsulation
{
    private static readonly double[] Ratings = [135, 150, 200, 260];
    private static readonly double[] Factors = [0.70, 0.80, 1.00, 1.15];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NASA EEE-INST-002", Edition = "2003", Locator = "section W1, notes to the wire derating table", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>The factor for an insulation rating.</summary>
    /// <param name="insulationRating">Insulation rating, 135 °C to 260 °C.</param>
    /// <param name="factor">The factor; null outside the ratings.</param>
    /// <returns>Whether the rating is covered.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature insulationRating, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        double celsius = TableKey.Celsius(insulationRating, nameof(insulationRating));
        int index = celsius > Ratings[Ratings.Length - 1] ? -1 : Steps.AtMost(Ratings, celsius);
        factor = index < 0
            ? null
            : new DeratingFactor(Factors[index], DeratingKind.Insulation, RuleSet.NasaEeeInst002, Reference)
            {
                InsulationCelsius = Ratings[index],
                Holds = new LateText("insulation of {0} °C" + (Ratings[index] < celsius ? ", row {1} °C" : ""), celsius, Ratings[index]),
            };
        return factor is not null;
    }

    /// <summary>The factor for an insulation rating.</summary>
    /// <param name="insulationRating">Insulation rating, 135 °C to 260 °C.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The rating is not covered.</exception>
    public static DeratingFactor Factor(Temperature insulationRating) => TryFactor(insulationRating, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(insulationRating), Accept.Text(Accept.Raw(insulationRating)) + " °C", "NASA EEE-INST-002", "insulation ratings from 135 °C to 260 °C");
}

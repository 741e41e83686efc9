using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>IEC 60364-5-52 Table B.52.14: factors for an ambient other than 30 °C in air.</summary>
/// <remarks>
/// Columns for PVC (70 °C), 10 °C to 60 °C, and XLPE or EPR (90 °C), 10 °C to 80 °C, in steps of 5 K. Between two rows the hotter one is used, between the
/// two columns the lower one; both are safer. All factors equal √((T − θ)/(T − 30)) to their rounding.
/// </remarks>
public static class Iec60364Ambient
{
    private const double Coldest = 10;
    private const double Step = 5;
    private const double LowColumn = 70;
    private const double HighColumn = 90;

    private static readonly double[] At70 = [1.22, 1.17, 1.12, 1.06, 1.00, 0.94, 0.87, 0.79, 0.71, 0.61, 0.50];
    private static readonly double[] At90 = [1.15, 1.12, 1.08, 1.04, 1.00, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71, 0.65, 0.58, 0.50, 0.41];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table B.52.14", Kind = ReferenceKind.FromMemoryCompared,
        Note = "30 °C to 55 °C for PVC were read in a summary of BS 7671 too; all agree with the square-root law to their rounding.",
    };

    /// <summary>The factor for an ambient.</summary>
    /// <param name="ambient">Ambient temperature, 10 °C up to 60 °C (70 °C insulation) or 80 °C (90 °C insulation).</param>
    /// <param name="insulationRating">Insulation rating, 70 °C to 90 °C.</param>
    /// <param name="factor">The factor; null outside the table.</param>
    /// <returns>Whether the table covers the question.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature ambient, Temperature insulationRating, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        double air = TableKey.Celsius(ambient, nameof(ambient));
        double insulation = TableKey.Celsius(insulationRating, nameof(insulationRating));
        factor = TryValue(air, insulation, out double value, out double row, out double column)
            ? new DeratingFactor(value, DeratingKind.Ambient, RuleSet.Iec60364, Reference)
            {
                BaseAmbientCelsius = 30,
                InsulationCelsius = column,
                Holds = new LateText(column == LowColumn ? "ambient {0} °C, row {1} °C, insulation of 70 °C" : "ambient {0} °C, row {1} °C, insulation of 90 °C", air, row),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for an ambient.</summary>
    /// <param name="ambient">Ambient temperature, 10 °C up to 60 °C (70 °C insulation) or 80 °C (90 °C insulation).</param>
    /// <param name="insulationRating">Insulation rating, 70 °C to 90 °C.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The table does not cover the question.</exception>
    public static DeratingFactor Factor(Temperature ambient, Temperature insulationRating) => TryFactor(ambient, insulationRating, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(ambient),
            $"{Accept.Text(Accept.Raw(ambient))} °C with insulation of {Accept.Text(Accept.Raw(insulationRating))} °C",
            "IEC 60364-5-52 Table B.52.14",
            "ambients from 10 °C to 60 °C for insulation of 70 °C and from 10 °C to 80 °C for insulation of 90 °C");

    internal static bool TryValue(double ambient, double insulation, out double value, out double row, out double column)
    {
        value = row = column = 0;
        if (!(ambient >= Coldest && insulation >= LowColumn && insulation <= HighColumn))
        {
            return false;
        }

        double[] factors = insulation >= HighColumn ? At90 : At70;
        double index = Math.Ceiling((ambient - Coldest) / Step);
        if (index >= factors.Length)
        {
            return false;
        }

        value = factors[(int)index];
        row = Coldest + (Step * index);
        column = insulation >= HighColumn ? HighColumn : LowColumn;
        return true;
    }
}

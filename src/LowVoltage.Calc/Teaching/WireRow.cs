using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>A wire size as problems print it: its name, its section and its resistance to the figures of a table.</summary>
/// <param name="Text">The size as printed.</param>
/// <param name="Value">mm², or the gauge number.</param>
/// <param name="SquareMillimeters">Nominal section.</param>
/// <param name="PerKilometer">Resistance at 20 °C in Ω/km, as printed.</param>
/// <param name="PerThousandFeet">Resistance at 20 °C in Ω/1000 ft, as printed.</param>
/// <param name="IsSmallest">Whether nothing thinner is on offer.</param>
internal sealed record WireRow(string Text, double Value, double SquareMillimeters, decimal PerKilometer, decimal PerThousandFeet, bool IsSmallest)
{
    private static readonly WireRow[] Metric =
        [.. new[] { 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50 }.Select(area => Of(area, Conductor.Iec60228(MetricSize.FromSquareMillimeters(area), Iec60228Class.Flexible), 0.5))];

    private static readonly WireRow[] Gauge =
        [.. new[] { 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1 }.Select(number => Of(number, Conductor.Solid(AwgSize.FromNumber(number), ConductorMaterial.Copper), 20))];

    internal static IReadOnlyList<WireRow> Sizes(bool gauges) => gauges ? Gauge : Metric;

    internal static WireRow Of(double value, Conductor conductor, double smallest)
    {
        var resistance = conductor.ResistancePerLength(Temperature.FromDegreesCelsius(20));
        bool gauge = conductor.Size!.Value.TryGetAwg(out AwgSize awg);
        return new WireRow(
            AnswerText.Of(value, gauge ? AnswerUnit.Gauge : "mm²", 0),
            value,
            gauge ? awg.Area.SquareMillimeters : value,
            Rounding.Figures(resistance.OhmsPerKilometer, 3),
            Rounding.Figures(resistance.OhmsPerThousandFeet, 3),
            value == smallest);
    }
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>A row of the table that a design problem prints: size, section, resistance and the current of a published table.</summary>
internal sealed record DesignRow(string Text, double Value, decimal Section, decimal PerKilometer, decimal PerThousandFeet, decimal Amperes, ConductorSize Size)
{
    internal const double InsulationCelsius = 70;

    private const double TableColumn = 60;

    private static readonly DesignRow[] Metric =
        [.. new[] { 1, 1.5, 2.5, 4, 6, 10, 16, 25 }.Select(area => Of(area, Conductor.Iso6722(MetricSize.FromSquareMillimeters(area)), Metrics.Rating(MetricSize.FromSquareMillimeters(area), Make.Celsius(InsulationCelsius))))];

    private static readonly DesignRow[] Gauge =
        [.. new[] { 16, 14, 12, 10, 8, 6, 4, 2 }.Select(number => Of(number, Conductor.Stranded(AwgSize.FromNumber(number), ConductorMaterial.Copper), Gauges.Rating(AwgSize.FromNumber(number), Make.Celsius(TableColumn))))];

    /// <summary>The published table behind metric sizes.</summary>
    internal static AmpacityTable Metrics => RoadVehicleSingleCore.Ambient30;

    /// <summary>The published table behind gauges.</summary>
    internal static AmpacityTable Gauges => Cfr33Part183Table5.Table;

    internal static IReadOnlyList<DesignRow> Sizes(bool gauges) => gauges ? Gauge : Metric;

    private static DesignRow Of(double value, Conductor conductor, TableRating rating)
    {
        WireRow row = WireRow.Of(value, conductor, double.NaN);
        return new DesignRow(
            row.Text, value, Rounding.Figures(row.SquareMillimeters, 3), row.PerKilometer, row.PerThousandFeet, Rounding.Figures(rating.Current.Amperes, 4), conductor.Size!.Value);
    }
}

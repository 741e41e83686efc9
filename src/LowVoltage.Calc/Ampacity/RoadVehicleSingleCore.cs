using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Continuous currents of single-core road-vehicle cable, PVC limited to 70 °C, at 30 °C and at 50 °C ambient.</summary>
/// <remarks>
/// A table printed in road-vehicle handbooks after ISO 6722-3 and DIN VDE 0298-4. It holds for one cable and says nothing on bundles. From 6 mm² up it lies far above
/// <see cref="RoadVehicleCurrentDensity"/>, the conservative rule. The 50 °C column is the 30 °C column times √(20/40).
/// Cables of ISO 6722 classes B and C (100 °C, 125 °C) carry more; the table has no column for them. Only the printed sizes are answered here; a design reads a section between two rows (20, 40 or
/// 60 mm²) on the straight line between them, logarithmic in both: without it 60 mm² would be rated above 70 mm².
/// </remarks>
public static class RoadVehicleSingleCore
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Road-vehicle handbook table after ISO 6722-3 and DIN VDE 0298-4", Edition = "as read 2026", Locator = "single-core, PVC 70 °C", Kind = ReferenceKind.Handbook,
        Note = "Guidance, read in a secondary page.",
    };

    /// <summary>At 30 °C ambient: 1 mm² to 120 mm².</summary>
    public static AmpacityTable Ambient30 { get; } = At(
        30,
        [
            [1, 19], [1.5, 24], [2.5, 32], [4, 42], [6, 54], [10, 73], [16, 98], [25, 129], [35, 158], [50, 198], [70, 245], [95, 292], [120, 344],
        ]);

    /// <summary>At 50 °C ambient: 1 mm² to 120 mm².</summary>
    public static AmpacityTable Ambient50 { get; } = At(
        50,
        [
            [1, 13.5], [1.5, 17], [2.5, 22.7], [4, 29.8], [6, 38.3], [10, 51.8], [16, 69.6], [25, 91.6], [35, 112], [50, 140], [70, 174], [95, 207], [120, 244],
        ]);

    private static AmpacityTable At(double ambient, double[][] rows) => new([SizeSystem.RoadVehicle, SizeSystem.Iec60228], [70], rows)
    {
        Name = $"Road-vehicle single-core cable at {Accept.Text(ambient)} °C",
        Reference = Reference,
        RuleSet = RuleSet.RoadVehicle,
        Rule = TableRules.RoadVehicle,
        BaseAmbientCelsius = ambient,
        ReadsBetweenRows = true,
        Conditions = $"ambient {Accept.Text(ambient)} °C, one cable alone, PVC limited to 70 °C",
        Notes = "Nothing is said on bundles. From 6 mm² up the current-density rule of the same handbooks is far lower.",
    };
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>IEC 60364-5-52 method F: two single-core copper cables touching in free air (Tables B.52.10 and B.52.12).</summary>
/// <remarks>PVC 70 °C (from memory) and XLPE or EPR 90 °C (read in a national edition with the same values). A building standard.</remarks>
public static class Iec60364MethodF
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Tables B.52.10 and B.52.12, method F, two loaded conductors touching, copper", Kind = ReferenceKind.FromMemoryCompared,
        Note = "The 90 °C column was read in BS 7671 Table 4E1A too.",
    };

    /// <summary>The table: 25 mm² to 120 mm², insulation of 70 °C and 90 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.Iec60228, SizeSystem.RoadVehicle],
        [70, 90],
        [
            [25, 131, 161],
            [35, 162, 200],
            [50, 196, 242],
            [70, 251, 310],
            [95, 304, 377],
            [120, 352, 437],
        ])
    {
        Name = "IEC 60364-5-52 method F, two loaded conductors, copper",
        Reference = Reference,
        RuleSet = RuleSet.Iec60364,
        Rule = TableRules.Iec60364,
        BaseAmbientCelsius = 30,
        Conditions = "ambient 30 °C, two single-core cables touching in free air, one circuit",
        Notes = "A DC circuit has two loaded conductors.",
    };
}

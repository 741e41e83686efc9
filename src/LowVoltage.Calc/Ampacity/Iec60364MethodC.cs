using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>IEC 60364-5-52 method C: copper cable fixed direct on a wall, two loaded conductors (Tables B.52.2 and B.52.3).</summary>
/// <remarks>Two loaded conductors are one DC circuit. PVC 70 °C and XLPE or EPR 90 °C. A building standard, not one for vehicles or craft. From memory, every cell compared with an independent transcription; confirm in the standard.</remarks>
public static class Iec60364MethodC
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Tables B.52.2 and B.52.3, method C, copper", Kind = ReferenceKind.FromMemoryCompared,
        Note = "A national edition prints slightly more for single-core cables; these, the smaller, are used.",
    };

    /// <summary>The table: 1.5 mm² to 120 mm², insulation of 70 °C and 90 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.Iec60228, SizeSystem.RoadVehicle],
        [70, 90],
        [
            [1.5, 19.5, 24],
            [2.5, 27, 33],
            [4, 36, 45],
            [6, 46, 58],
            [10, 63, 80],
            [16, 85, 107],
            [25, 112, 138],
            [35, 138, 171],
            [50, 168, 209],
            [70, 213, 269],
            [95, 258, 328],
            [120, 299, 382],
        ])
    {
        Name = "IEC 60364-5-52 method C, two loaded conductors, copper",
        Reference = Reference,
        RuleSet = RuleSet.Iec60364,
        Rule = TableRules.Iec60364,
        BaseAmbientCelsius = 30,
        Conditions = "ambient 30 °C, cable fixed direct on a wall, one circuit of two loaded conductors",
        Notes = "A DC circuit has two loaded conductors.",
    };
}

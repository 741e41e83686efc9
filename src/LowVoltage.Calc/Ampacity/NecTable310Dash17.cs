using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NEC Table 310.17 (2011 edition and later): copper, one conductor alone in free air.</summary>
/// <remarks>
/// Numbered 310.15(B)(17) from 2011 to 2017. It holds for one conductor with air around it. A count factor, which is 1 for up to three conductors together, is refused here:
/// for conductors together start from <see cref="NecTable310Dash16"/>, the safer reading. The 60 °C and 75 °C values from 6 AWG up equal those of 33 CFR 183.425 Table 5.
/// </remarks>
public static class NecTable310Dash17
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "2011 and later", Locator = "Table 310.17, in 2011 to 2017 Table 310.15(B)(17), copper", Kind = ReferenceKind.FromMemoryCompared,
        Note = "The 60 °C and 75 °C columns from 6 AWG up equal those of 33 CFR 183.425 Table 5.",
    };

    /// <summary>The table: 18 AWG to 4/0, conductors of 60 °C, 75 °C and 90 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.AmericanWireGauge],
        [60, 75, 90],
        [
            [18, double.NaN, double.NaN, 18],
            [16, double.NaN, double.NaN, 24],
            [14, 25, 30, 35],
            [12, 30, 35, 40],
            [10, 40, 50, 55],
            [8, 60, 70, 80],
            [6, 80, 95, 105],
            [4, 105, 125, 140],
            [3, 120, 145, 165],
            [2, 140, 170, 190],
            [1, 165, 195, 220],
            [0, 195, 230, 260],
            [-1, 225, 265, 300],
            [-2, 260, 310, 350],
            [-3, 300, 360, 405],
        ],
        DeratingKind.ConductorCount)
    {
        Name = "NEC Table 310.17 (2011 and later), copper",
        Reference = Reference,
        RuleSet = RuleSet.Nec,
        Rule = TableRules.NecAlone,
        BaseAmbientCelsius = 30,
        Conditions = "ambient 30 °C, one conductor alone in free air",
        Notes = "Not for conductors together: start from Table 310.16 for those.",
    };
}

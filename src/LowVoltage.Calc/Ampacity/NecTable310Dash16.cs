using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NEC Table 310.16 (2011 edition and later): copper, at most three current-carrying conductors in a raceway, cable or earth.</summary>
/// <remarks>
/// The table was numbered 310.16 to 2008, 310.15(B)(16) from 2011 to 2017 and 310.16 again from 2020. Cells at 14, 12, 3 and 1 AWG changed in 2011;
/// copies of the older edition are common. 18 and 16 AWG have a 90 °C value only. Small conductors have a device limit of their own
/// (240.4(D)), which is not part of this table.
/// </remarks>
public static class NecTable310Dash16
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "2011 and later", Locator = "Table 310.16, in 2011 to 2017 Table 310.15(B)(16), copper", Kind = ReferenceKind.FromMemoryCompared,
        Note = "Cells at 14, 12, 3 and 1 AWG changed in 2011; the others were read in the 2008 edition too.",
    };

    /// <summary>The table: 18 AWG to 4/0, conductors of 60 °C, 75 °C and 90 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.AmericanWireGauge],
        [60, 75, 90],
        [
            [18, double.NaN, double.NaN, 14],
            [16, double.NaN, double.NaN, 18],
            [14, 15, 20, 25],
            [12, 20, 25, 30],
            [10, 30, 35, 40],
            [8, 40, 50, 55],
            [6, 55, 65, 75],
            [4, 70, 85, 95],
            [3, 85, 100, 115],
            [2, 95, 115, 130],
            [1, 110, 130, 145],
            [0, 125, 150, 170],
            [-1, 145, 175, 195],
            [-2, 165, 200, 225],
            [-3, 195, 230, 260],
        ])
    {
        Name = "NEC Table 310.16 (2011 and later), copper",
        Reference = Reference,
        RuleSet = RuleSet.Nec,
        Rule = TableRules.Nec,
        BaseAmbientCelsius = 30,
        Conditions = "ambient 30 °C, at most three current-carrying conductors in a raceway, cable or earth",
        Notes = "For buildings and recreational vehicles. Edition trap: 14, 12, 3 and 1 AWG changed in 2011.",
    };
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>33 CFR 183.425 Table 5: allowable amperage of copper conductors in petrol-engined recreational boats.</summary>
/// <remarks>
/// Law in the United States. Base ambient 30 °C; an engine space is taken as 50 °C through <see cref="Cfr33Part183EngineSpace"/>.
/// The conductors must be insulated stranded copper (183.425(a)). Checked cell by cell against a separate transcription.
/// </remarks>
public static class Cfr33Part183Table5
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "33 CFR 183.425", Edition = "Code of Federal Regulations, as read 2026", Locator = "Table 5", Kind = ReferenceKind.Law,
        Note = "All 105 cells read in the law. United States government work, public domain.",
    };

    /// <summary>The table: 18 AWG to 4/0, insulation of 60 °C to 200 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.AmericanWireGauge],
        [60, 75, 80, 90, 105, 125, 200],
        [
            [18, 10, 10, 15, 20, 20, 25, 25],
            [16, 15, 15, 20, 25, 25, 30, 35],
            [14, 20, 20, 25, 30, 35, 40, 45],
            [12, 25, 25, 35, 40, 45, 50, 55],
            [10, 40, 40, 50, 55, 60, 70, 70],
            [8, 55, 65, 70, 70, 80, 90, 100],
            [6, 80, 95, 100, 100, 120, 125, 135],
            [4, 105, 125, 130, 135, 160, 170, 180],
            [3, 120, 145, 150, 155, 180, 195, 210],
            [2, 140, 170, 175, 180, 210, 225, 240],
            [1, 165, 195, 210, 210, 245, 265, 280],
            [0, 195, 230, 245, 245, 285, 305, 325],
            [-1, 225, 265, 285, 285, 330, 355, 370],
            [-2, 260, 310, 330, 330, 385, 410, 430],
            [-3, 300, 360, 385, 385, 445, 475, 510],
        ])
    {
        Name = "33 CFR 183.425 Table 5",
        Reference = Reference,
        RuleSet = RuleSet.Cfr33Part183,
        Rule = TableRules.Cfr33,
        BaseAmbientCelsius = 30,
        Conditions = "copper, ambient 30 °C, fewer than three conductors of 50 V or more together, any circuit voltage, intermittent surges excepted",
        Notes = "Law for boats with inboard or sterndrive petrol engines only. The 60 °C and 75 °C columns from 6 AWG up are free-air values.",
    };
}

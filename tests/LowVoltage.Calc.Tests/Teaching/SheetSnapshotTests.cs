using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Some sheets with their keys, kept as text and read by a person when they change.</summary>
/// <remarks>
/// To renew them after a change that is meant: run these tests with the environment variable <c>APPROVE_SHEETS</c> set to 1, read the difference, commit it, and note it in
/// the changelog under "Results changed", because the same seed then gives another problem.
/// </remarks>
public class SheetSnapshotTests
{
    internal static readonly Dictionary<string, Func<ProblemSheet>> Sheets = new(StringComparer.Ordinal)
    {
        ["one-step-metric"] = () => ProblemSheet.Create(1, 6, [ProblemTopic.OhmsLaw, ProblemTopic.WireResistance, ProblemTopic.FuseOpeningTime, ProblemTopic.BatteryResistance, ProblemTopic.ChassisReturn, ProblemTopic.WireGeometry], Difficulty.OneStep),
        ["steps-metric"] = () => ProblemSheet.Create(2, 4, [ProblemTopic.VoltageDrop, ProblemTopic.FuseChoice, ProblemTopic.AdiabaticHeating, ProblemTopic.LampVoltage], Difficulty.SeveralSteps),
        ["steps-us-choice"] = () => ProblemSheet.Create(3, 4, [ProblemTopic.AdiabaticHeating, ProblemTopic.SmallestSize, ProblemTopic.AmpacityDerating, ProblemTopic.TemperatureCorrection], Difficulty.SeveralSteps, ProblemUnits.UsCustomary, ProblemForm.MultipleChoice),
        ["design-mixed-mistake"] = () => ProblemSheet.Create(4, 3, [ProblemTopic.VoltageDrop, ProblemTopic.AdiabaticHeating, ProblemTopic.ChassisReturn], Difficulty.Design, ProblemUnits.Mixed, ProblemForm.FindTheMistake),
    };

    public static TheoryData<string> Names => [.. Sheets.Keys];

    internal static string Text(string name) => Sheets[name]() is var sheet ? sheet.ToMarkdown(SheetPart.Problems) + "\n" + sheet.ToMarkdown(SheetPart.Key) : "";

    [Theory]
    [MemberData(nameof(Names))]
    public void Sheet_IsTheOneThatWasReviewed(string name)
    {
        ApprovedText.Check(name + ".md", Text(name), "APPROVE_SHEETS");
    }
}

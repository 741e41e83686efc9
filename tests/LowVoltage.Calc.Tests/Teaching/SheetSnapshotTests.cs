using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Some sheets with their keys, kept as text and read by a person when they change.</summary>
/// <remarks>
/// The first stands whole; of the others the lines that none before has, and a digest. To renew them after a change that is meant: <c>bash .ci/approve</c>, read the difference,
/// commit it, and note it in the changelog under "Results changed", because the same seed then gives another problem.
/// </remarks>
public class SheetSnapshotTests
{
    internal static readonly Dictionary<string, Func<ProblemSheet>> Sheets = new(StringComparer.Ordinal)
    {
        ["one-step-metric"] = () => ProblemSheet.Create(1, 3, [ProblemTopic.OhmsLaw, ProblemTopic.FuseOpeningTime, ProblemTopic.BatteryResistance], Difficulty.OneStep),
        ["steps-us-choice"] = () => ProblemSheet.Create(3, 2, [ProblemTopic.AdiabaticHeating, ProblemTopic.SmallestSize], Difficulty.SeveralSteps, ProblemUnits.UsCustomary, ProblemForm.MultipleChoice),
        ["design-mixed-mistake"] = () => ProblemSheet.Create(4, 2, [ProblemTopic.VoltageDrop, ProblemTopic.ChassisReturn], Difficulty.Design, ProblemUnits.Mixed, ProblemForm.FindTheMistake),
    };

    private static readonly Lazy<Dictionary<string, string>> Written = new(Write);

    public static TheoryData<string> Names => [.. Sheets.Keys];

    internal static string Text(string name) => Sheets[name]() is var sheet ? sheet.ToMarkdown(SheetPart.Problems) + "\n" + sheet.ToMarkdown(SheetPart.Key) : "";

    [Theory]
    [MemberData(nameof(Names))]
    public void Sheet_IsTheOneThatWasReviewed(string name) => ApprovedText.Check($"sheet-{name}.md", Written.Value[name]);

    /// <summary>No text depends on what was asked before. A run of mutants, in one process, notices a changed text by this.</summary>
    [Fact]
    public void Sheets_WrittenAgain_AreTheSame() => Assert.Equal(Written.Value, Write());

    private static Dictionary<string, string> Write()
    {
        News news = new();
        return Sheets.Keys.ToDictionary(name => name, name => news.WithDigest(Text(name)));
    }
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Checks;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The front of a calculation sheet in Markdown, line by line, put together here once more.</summary>
public class CalculationSheetMarkdownTests
{
    private static readonly string[] Heads = ["# Calculation sheet: Deck lamp \\#2", ""];

    [Theory]
    [InlineData(2)]
    [InlineData(9)]
    public void Front_IsTitleDetailsVerdictFactsChecksAssumptionsCautionsSignaturesHelp(double load)
    {
        // 9 A is more than a 10 A fuse may carry continuously: the sheet of a circuit that fails says what would help, that of one that passes does not.
        CircuitRequirements asked = new(CheckCase.Asked(Load.ConstantCurrent(A(load)), feed: 1)) { Name = "Deck lamp #2" };
        CircuitDesign design = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), CheckCase.Table);
        Assert.Equal(load > 8 ? Verdict.Fail : Verdict.Pass, design.Verdict);
        CalculationSheet sheet = CalculationSheet.Create(design, new SheetDetails("Wiring desk", "4.2"));
        SheetFacts facts = new(design);
        List<string> front = [.. Heads, @"Program: Wiring desk · Version: 4\.2 · Date: \_\_\_\_\_\_\_\_", "", $"**{(load > 8 ? "Fail" : "Pass")}.** {Escape(facts.Because)}", ""];
        front.AddRange(["| answer and circuit |  |", "| --- | --- |"]);
        front.AddRange(facts.Answer.Concat(facts.Circuit).Select(row => $"| {Escape(row.Label)} | {Escape(row.Value)} |"));
        front.AddRange(["", $"*{Escape(sheet.Diagram.Description)}*", ""]);
        front.AddRange(["| check | value | limit | margin | where | verdict | step |", "| --- | --- | --- | --- | --- | --- | --- |"]);
        front.AddRange(design.Checks.Select(check => Row(check, sheet.Working)));
        front.Add("");
        front.AddRange(List("Assumptions, to be confirmed by whoever installs the circuit", design.Assumptions));
        front.AddRange(List("Cautions", design.Cautions));
        front.AddRange([@"Calculated by, date: \_\_\_\_\_\_\_\_\_\_\_\_\_\_\_\_", "", @"Checked by, date: \_\_\_\_\_\_\_\_\_\_\_\_\_\_\_\_", ""]);
        front.AddRange(load > 8 ? List("What would help", design.Advice) : []);
        front.AddRange(["## Working", ""]);
        string[] lines = sheet.ToMarkdown().Split('\n');
        Assert.Equal(front.Select(Dashed), lines.Take(front.Count).Select(Dashed));
        Assert.Equal("", lines[^1]);
        Assert.NotEqual("", lines[^2]);
    }

    [Fact]
    public void Check_WithoutNumbers_SaysWhy()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(2)), CheckCase.Nameless);
        string[] lines = [.. CalculationSheet.Create(design).ToMarkdown().Split('\n').Select(Dashed)];
        string note = design.Of(CheckKind.FaultOpensFuse).Note, row = lines.Single(line => line.StartsWith("| Fault at the far end opens the fuse | ", StringComparison.Ordinal));
        Assert.StartsWith($"| Fault at the far end opens the fuse | none | none | none | far end | undetermined: {char.ToUpperInvariant(note[0])}{note[1..]} | ", row, StringComparison.Ordinal);
        Assert.Matches(@" \| \d+ \|$", row);
        Assert.Equal("Program: ________ · Version: ________ · Date: ________", lines[2]);
    }

    private static string Row(CheckResult check, WorkedSolution working)
    {
        (string[] cells, string note) = SheetFacts.Row(check);
        int step = working.Steps.ToList().FindIndex(s => s.Sought == "check: " + check.Name) + 1;
        Assert.True(step > 0);
        return $"| {string.Join(" | ", cells.Take(5).Select(Escape))} | {Escape(cells[5] + (note.Length > 0 ? ": " + note : ""))} | {step} |";
    }

    private static string[] List(string heading, IReadOnlyList<string> lines) => [$"## {heading}", "", .. lines.Select(line => $"- {Escape(line)}"), ""];

    private static string Escape(string words) => SolutionMarkdown.Escape(words);

    // Whether a full stop or a hyphen is escaped in a title is the escaping's own matter.
    private static string Dashed(string line) => line.Replace("\\", "", StringComparison.Ordinal);
}

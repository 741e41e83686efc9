using System.Globalization;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Teaching;

/// <summary>The key of a sheet, as what stands in the body of an HTML page.</summary>
internal static class SheetKeyHtml
{
    internal static object[] Key(ProblemSheet sheet, SheetLayout layout) => Line(
        "section",
        Class("key"),
        NewLine,
        Line("h1", "Key: " + sheet.Title),
        SheetHtml.Table("answers", SheetWords.KeyHeads(layout), [.. sheet.Problems.Select((problem, i) => SheetWords.KeyRow(problem, i + 1, layout))]),
        sheet.Problems.Select((problem, i) => Line("article", Class("solution"), NewLine, Solution(problem, i + 1, layout))));

    /// <summary>A table for the marker, on a page of its own.</summary>
    internal static string Marker(ClassSet set, SheetLayout layout) => SolutionHtml.Page(
        set.Title,
        SheetStyle.Of(layout, set.Title, landscape: true),
        NewLine,
        Line("h1", set.Title),
        Line("p", Class("invented"), $"For the marker. Answers by variant and problem; {set.Variants.Count.ToString(CultureInfo.InvariantCulture)} variants."),
        SheetHtml.Table("marker", set.MarkerHeads, set.MarkerRows));

    private static object[] Solution(Problem problem, int number, SheetLayout layout) =>
    [
        SheetHtml.Heading(problem, number, layout.Points),
        SolutionHtml.Element(problem.Solution),
        NewLine,
        Line(
            "div",
            Class("mistakes"),
            Line("h3", "Usual mistakes"),
            Element("ul", NewLine, SheetWords.Mistakes(problem).Select(mistake => Line("li", Element("b", mistake.Text), ": ", mistake.Words)))),
    ];
}

using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet as one HTML page: own plain style, MathML, nothing from a network, well-formed XML too.</summary>
internal static class SheetHtml
{
    // Wider diagrams stand below the text instead of beside it: made smaller, their labels could not be read on paper.
    private const double WidestBeside = 345;

    private const string RoomForPoints = "\u00A0\u00A0\u00A0\u00A0\u00A0";

    internal static string Page(ProblemSheet sheet, SheetPart part, SheetLayout layout)
    {
        string title = part == SheetPart.Key ? "Key: " + sheet.Title : sheet.Title;
        return SolutionHtml.Page(title, SheetStyle.Of(layout, title), NewLine, part == SheetPart.Problems ? Problems(sheet, layout) : SheetKeyHtml.Key(sheet, layout));
    }

    internal static object[] Heading(Problem problem, int number, bool points) => Line(
        "h2",
        points ? Element("span", Class("points"), SheetWords.Points(SheetLayout.PointsOf(problem.Difficulty))) : null,
        $"{number.ToString(CultureInfo.InvariantCulture)}. {SheetWords.Title(problem)} ",
        Element("span", Class("level"), $"({ProblemSheet.DifficultyWords(problem.Difficulty)})"));

    internal static object[] Table(string kind, IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows) => Line(
        "table", Class(kind), Element("thead", Row("th", heads)), Element("tbody", rows.Select(row => Row("td", row))));

    private static List<object> Problems(ProblemSheet sheet, SheetLayout layout)
    {
        List<object> all = [Line("h1", sheet.Title)];
        if (layout.NameLine || layout.Points)
        {
            all.Add(Line(
                "div",
                Class("who"),
                layout.NameLine ? new[] { Element("span", "Name"), Element("span", Class("short"), "Class"), Element("span", Class("short"), "Date") } : null,
                layout.Points ? Element("span", Class("short"), $"Points: {RoomForPoints} of {SheetWords.TotalPoints(sheet)}") : null));
        }

        all.Add(Line("p", Class("invented"), ProblemSheet.Invented));
        all.Add(Line("p", Class("paper"), Element("b", ProblemSheet.PaperOnly)));
        all.AddRange(sheet.Problems.Select((problem, i) => Line("article", Class("problem"), NewLine, Statement(problem, i + 1, layout))));
        return all;
    }

    private static List<object?> Statement(Problem problem, int number, SheetLayout layout)
    {
        double width = 0;
        XElement? drawing = layout.Diagrams ? problem.Diagram?.ToElement($"circuit-{number.ToString(CultureInfo.InvariantCulture)}", out width) : null;
        bool beside = width <= WidestBeside;
        return
        [
            Heading(problem, number, layout.Points),
            drawing is not null && beside ? Line("figure", Class("beside"), drawing) : null,
            Line("p", problem.Story),
            drawing is not null && !beside ? Line("figure", drawing) : null,
            problem.Table is { } table ? Table("data", table.Heads, table.Rows) : null,
            Line("p", Element("span", Class("question"), problem.Question), " ", problem.Instruction),
            Choices(problem),
            problem.Defence.Length > 0 ? Line("p", problem.Defence) : null,
            problem.Caution.Length > 0 ? Line("p", Class("caution"), problem.Caution) : null,
            layout.SpaceMillimeters > 0 ? Line("div", Class("space"), Attribute("style", $"height:{layout.SpaceMillimeters.ToString("0.#", CultureInfo.InvariantCulture)}mm")) : null,
            problem.Choices.Count > 0 ? null : Line("p", Class("blank"), "Answer"),
            problem.Defence.Length > 0 ? Line("p", Class("blank wide"), "Reasons") : null,
        ];
    }

    private static object[] Choices(Problem problem) => problem.Choices.Count == 0
        ? []
        : Line(
            "ol",
            Class(problem.Form == ProblemForm.FindTheMistake ? "choices long" : "choices"),
            NewLine,
            problem.Choices.Select(choice => Line("li", Element("b", choice.Letter + ")"), " ", choice.Text)));

    private static object[] Row(string cell, IReadOnlyList<string> cells) => Line("tr", cells.Select(words => Element(cell, words)));
}

using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet as one HTML page: own plain style, MathML, nothing from a network, well-formed XML too.</summary>
internal static class SheetHtml
{
    // Wider diagrams stand below the text instead of beside it: made smaller, their labels could not be read on paper.
    private const double WidestBeside = 345;

    internal static string Page(ProblemSheet sheet, SheetPart part, SheetLayout layout)
    {
        string title = part == SheetPart.Key ? "Key: " + sheet.Title : sheet.Title;
        StringBuilder html = Open(title, SheetStyle.Of(layout, title));
        if (part == SheetPart.Problems)
        {
            Problems(html, sheet, layout);
        }
        else
        {
            SheetKeyHtml.Write(html, sheet, layout);
        }

        return Close(html);
    }

    internal static StringBuilder Open(string title, string style) => new StringBuilder()
        .Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" content=\"width=device-width\"/><title>")
        .Append(Escape(title)).Append("</title><style>").Append(style).Append("</style></head>\n<body>\n");

    internal static string Close(StringBuilder html) => html.Append("</body></html>\n").ToString();

    internal static void Heading(StringBuilder html, Problem problem, int number, bool points) =>
        html.Append("<h2>").Append(points ? $"<span class=\"points\">{SheetWords.Points(SheetLayout.PointsOf(problem.Difficulty))}</span>" : "")
            .Append(number.ToString(CultureInfo.InvariantCulture)).Append(". ").Append(Escape(SheetWords.Title(problem)))
            .Append(" <span class=\"level\">(").Append(ProblemSheet.DifficultyWords(problem.Difficulty)).Append(")</span></h2>\n");

    internal static void Table(StringBuilder html, string kind, IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        html.Append("<table class=\"").Append(kind).Append("\"><thead>");
        Row(html, "th", heads);
        html.Append("</thead><tbody>");
        foreach (IReadOnlyList<string> row in rows)
        {
            Row(html, "td", row);
        }

        html.Append("</tbody></table>\n");
    }

    internal static string Escape(string words) => SolutionHtml.Escape(words);

    private static void Problems(StringBuilder html, ProblemSheet sheet, SheetLayout layout)
    {
        html.Append("<h1>").Append(Escape(sheet.Title)).Append("</h1>\n");
        if (layout.NameLine || layout.Points)
        {
            html.Append("<div class=\"who\">").Append(layout.NameLine ? "<span>Name</span><span class=\"short\">Class</span><span class=\"short\">Date</span>" : "")
                .Append(layout.Points ? $"<span class=\"short\">Points: &#160;&#160;&#160;&#160;&#160; of {SheetWords.TotalPoints(sheet)}</span>" : "").Append("</div>\n");
        }

        html.Append("<p class=\"invented\">").Append(ProblemSheet.Invented).Append("</p>\n<p class=\"paper\"><b>").Append(ProblemSheet.PaperOnly).Append("</b></p>\n");
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Statement(html, sheet.Problems[i], i + 1, layout);
        }
    }

    private static void Statement(StringBuilder html, Problem problem, int number, SheetLayout layout)
    {
        html.Append("<article class=\"problem\">\n");
        Heading(html, problem, number, layout.Points);
        double width = 0;
        string drawing = layout.Diagrams && problem.Diagram is { } diagram ? diagram.ToSvg($"circuit-{number.ToString(CultureInfo.InvariantCulture)}", out width) : "";
        html.Append(drawing.Length > 0 && width <= WidestBeside ? $"<figure class=\"beside\">{drawing}</figure>\n" : "");
        html.Append("<p>").Append(Escape(problem.Story)).Append("</p>\n");
        html.Append(width > WidestBeside ? $"<figure>{drawing}</figure>\n" : "");
        if (problem.Table is { } table)
        {
            Table(html, "data", table.Heads, table.Rows);
        }

        html.Append("<p><span class=\"question\">").Append(Escape(problem.Question)).Append("</span> ").Append(Escape(problem.Instruction)).Append("</p>\n");
        Choices(html, problem);
        html.Append(problem.Defence.Length > 0 ? $"<p>{Escape(problem.Defence)}</p>\n" : "");
        html.Append(problem.Caution.Length > 0 ? $"<p class=\"caution\">{Escape(problem.Caution)}</p>\n" : "");
        html.Append(layout.SpaceMillimeters > 0 ? $"<div class=\"space\" style=\"height:{layout.SpaceMillimeters.ToString("0.#", CultureInfo.InvariantCulture)}mm\"></div>\n" : "");
        html.Append(problem.Choices.Count > 0 ? "" : "<p class=\"blank\">Answer</p>\n").Append(problem.Defence.Length > 0 ? "<p class=\"blank wide\">Reasons</p>\n" : "").Append("</article>\n");
    }

    private static void Choices(StringBuilder html, Problem problem)
    {
        if (problem.Choices.Count == 0)
        {
            return;
        }

        html.Append(problem.Form == ProblemForm.FindTheMistake ? "<ol class=\"choices long\">\n" : "<ol class=\"choices\">\n");
        foreach (ProblemChoice choice in problem.Choices)
        {
            html.Append("<li><b>").Append(choice.Letter).Append(")</b> ").Append(Escape(choice.Text)).Append("</li>\n");
        }

        html.Append("</ol>\n");
    }

    private static void Row(StringBuilder html, string cell, IReadOnlyList<string> cells)
    {
        html.Append("<tr>");
        foreach (string words in cells)
        {
            html.Append('<').Append(cell).Append('>').Append(Escape(words)).Append("</").Append(cell).Append('>');
        }

        html.Append("</tr>\n");
    }
}

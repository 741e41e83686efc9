using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet as one HTML page: own plain style, MathML, nothing from a network, well-formed XML too.</summary>
internal static class SheetHtml
{
    private const string Style =
        "body{font:11pt/1.45 Georgia,'Times New Roman',serif;max-width:44em;margin:2em auto;padding:0 1.2em;color:#111;background:#fff}"
        + "h1,h2,h3{font-family:Helvetica,Arial,sans-serif;line-height:1.2}h1{font-size:1.6em;margin:0 0 .2em}h2{font-size:1.05em;margin:0 0 .35em}h3{font-size:.95em;margin:.8em 0 .2em}"
        + ".who{display:flex;gap:2em;margin:.8em 0 1em;font-size:.95em}.who span{flex:1;border-bottom:1px solid #555;padding-bottom:.15em}.who span.short{flex:0 0 9em}"
        + ".invented{color:#444;font-style:italic;margin:.3em 0}.paper{border-left:.3em solid #b00;padding:.1em 0 .1em .7em;margin:.5em 0 1.2em}"
        + ".problem{margin:0 0 1.5em;break-inside:avoid;page-break-inside:avoid}.problem p{margin:.35em 0}.question{font-weight:bold}"
        + ".level{font-weight:normal;color:#444}.caution{font-size:.88em;color:#700;margin:.3em 0}"
        + ".blank{margin:.9em 0 0;border-bottom:1px solid #777;width:16em;color:#555;font-size:.9em}.blank.wide{width:auto;padding-bottom:3.5em}"
        + "ol.choices{list-style:none;padding:0;margin:.4em 0;display:grid;grid-template-columns:1fr 1fr;gap:.2em 1.5em}ol.choices.long{grid-template-columns:1fr}"
        + "table,.notes,.cautions{break-inside:avoid;page-break-inside:avoid}table{border-collapse:collapse;margin:.5em 0;font-size:.95em}th,td{border-bottom:1px solid #bbb;padding:.15em .9em .15em 0;text-align:left;vertical-align:top}"
        + "table.data th,table.data td{text-align:right;padding:.05em 0 .05em 1.4em;line-height:1.3}table.data th:first-child,table.data td:first-child{padding-left:0;text-align:left}"
        + "thead th{border-bottom:1.5px solid #333}caption{text-align:left;font-weight:bold;padding-bottom:.2em}"
        + ".key{break-before:page;page-break-before:always}.key.first{break-before:auto;page-break-before:auto}.answers{margin-bottom:1.5em}"
        + ".solution{margin:0 0 1.8em;border-top:1px solid #999;padding-top:.8em}.solution h2{break-after:avoid}.worked-solution>h2{display:none}"
        + "ol.steps{padding-left:1.5em;margin:.4em 0}ol.steps>li{margin:.55em 0;break-inside:avoid;page-break-inside:avoid}.sought{font-weight:bold}"
        + ".math{margin:.1em 0 .1em .6em;line-height:1.8;overflow-x:auto}math{font-size:1.05em}.reason{color:#222}.source{color:#555;font-size:.85em}"
        + ".answer{break-before:avoid;page-break-before:avoid;border:1px solid #111;padding:.3em .6em;width:fit-content;margin:.4em 0}.cautions{border-left:.3em solid #b00;padding-left:.7em}.cautions ul,.notes ul,.mistakes ul{margin:.2em 0;padding-left:1.3em}"
        + ".mistakes{break-inside:avoid;page-break-inside:avoid}"
        + "@page{size:auto;margin:16mm 15mm}"
        + "@media print{body{margin:0;padding:0;max-width:none;font-size:10pt}.math{overflow:visible}a{color:inherit}}";

    internal static string Page(ProblemSheet sheet, SheetPart part)
    {
        StringBuilder html = new();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" content=\"width=device-width\"/><title>")
            .Append(Escape(part == SheetPart.Key ? "Key: " + sheet.Title : sheet.Title)).Append("</title><style>").Append(Style).Append("</style></head>\n<body>\n");
        if (part != SheetPart.Key)
        {
            Problems(html, sheet);
        }

        if (part != SheetPart.Problems)
        {
            Key(html, sheet, part == SheetPart.Key);
        }

        return html.Append("</body></html>\n").ToString();
    }

    private static void Problems(StringBuilder html, ProblemSheet sheet)
    {
        html.Append("<h1>").Append(Escape(sheet.Title)).Append("</h1>\n<div class=\"who\"><span>Name</span><span class=\"short\">Date</span></div>\n");
        html.Append("<p class=\"invented\">").Append(ProblemSheet.Invented).Append("</p>\n<p class=\"paper\"><b>").Append(ProblemSheet.PaperOnly).Append("</b></p>\n");
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Statement(html, sheet.Problems[i], i + 1);
        }
    }

    private static void Statement(StringBuilder html, Problem problem, int number)
    {
        html.Append("<article class=\"problem\">\n");
        Heading(html, problem, number);
        html.Append("<p>").Append(Escape(problem.Story)).Append("</p>\n");
        if (problem.Table is { } table)
        {
            Table(html, "data", table.Heads, table.Rows);
        }

        html.Append("<p><span class=\"question\">").Append(Escape(problem.Question)).Append("</span> ").Append(Escape(problem.Instruction)).Append("</p>\n");
        if (problem.Choices.Count > 0)
        {
            html.Append(problem.Form == ProblemForm.FindTheMistake ? "<ol class=\"choices long\">\n" : "<ol class=\"choices\">\n");
            foreach (ProblemChoice choice in problem.Choices)
            {
                html.Append("<li><b>").Append(choice.Letter).Append(")</b> ").Append(Escape(choice.Text)).Append("</li>\n");
            }

            html.Append("</ol>\n");
        }

        if (problem.Defence.Length > 0)
        {
            html.Append("<p>").Append(Escape(problem.Defence)).Append("</p>\n");
        }

        if (problem.Caution.Length > 0)
        {
            html.Append("<p class=\"caution\">").Append(Escape(problem.Caution)).Append("</p>\n");
        }

        html.Append(problem.Choices.Count > 0 ? "" : "<p class=\"blank\">Answer</p>\n").Append(problem.Defence.Length > 0 ? "<p class=\"blank wide\">Reasons</p>\n" : "").Append("</article>\n");
    }

    private static void Key(StringBuilder html, ProblemSheet sheet, bool first)
    {
        html.Append("<section class=\"key").Append(first ? " first" : "").Append("\">\n<h1>Key: ").Append(Escape(sheet.Title)).Append("</h1>\n");
        IReadOnlyList<string>[] rows = [.. sheet.Problems.Select((problem, i) =>
            (IReadOnlyList<string>)[(i + 1).ToString(CultureInfo.InvariantCulture), SheetWords.Answer(problem), SheetWords.Allowed(problem)])];
        Table(html, "answers", ["problem", "answer", "allowed"], rows);
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            html.Append("<article class=\"solution\">\n");
            Heading(html, sheet.Problems[i], i + 1);
            html.Append(sheet.Problems[i].Solution.ToHtml()).Append("<div class=\"mistakes\"><h3>Usual mistakes</h3>\n<ul>\n");
            foreach (WrongAnswer wrong in sheet.Problems[i].WrongAnswers)
            {
                html.Append("<li><b>").Append(Escape(wrong.Text)).Append("</b>: ").Append(Escape($"{wrong.Mistake.Name}. {wrong.Mistake.Explanation}")).Append("</li>\n");
            }

            html.Append("</ul></div>\n</article>\n");
        }

        html.Append("</section>\n");
    }

    private static void Heading(StringBuilder html, Problem problem, int number) =>
        html.Append("<h2>").Append(number.ToString(CultureInfo.InvariantCulture)).Append(". ").Append(Escape(SheetWords.Title(problem)))
            .Append(" <span class=\"level\">(").Append(ProblemSheet.DifficultyWords(problem.Difficulty)).Append(")</span></h2>\n");

    private static void Table(StringBuilder html, string kind, IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows)
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

    private static void Row(StringBuilder html, string cell, IReadOnlyList<string> cells)
    {
        html.Append("<tr>");
        foreach (string words in cells)
        {
            html.Append('<').Append(cell).Append('>').Append(Escape(words)).Append("</").Append(cell).Append('>');
        }

        html.Append("</tr>\n");
    }

    private static string Escape(string words) => SolutionHtml.Escape(words);
}

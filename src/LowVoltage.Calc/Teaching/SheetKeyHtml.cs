using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Teaching;

/// <summary>The key of a sheet, as the body of an HTML page.</summary>
internal static class SheetKeyHtml
{
    internal static void Write(StringBuilder html, ProblemSheet sheet, SheetLayout layout)
    {
        html.Append("<section class=\"key\">\n<h1>Key: ").Append(SheetHtml.Escape(sheet.Title)).Append("</h1>\n");
        SheetHtml.Table(html, "answers", SheetWords.KeyHeads(layout), [.. sheet.Problems.Select((problem, i) => SheetWords.KeyRow(problem, i + 1, layout))]);
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Problem problem = sheet.Problems[i];
            html.Append("<article class=\"solution\">\n");
            SheetHtml.Heading(html, problem, i + 1, layout.Points);
            html.Append(problem.Solution.ToHtml()).Append("<div class=\"mistakes\"><h3>Usual mistakes</h3>\n<ul>\n");
            foreach ((string text, string words) in SheetWords.Mistakes(problem))
            {
                html.Append("<li><b>").Append(SheetHtml.Escape(text)).Append("</b>: ").Append(SheetHtml.Escape(words)).Append("</li>\n");
            }

            html.Append("</ul></div>\n</article>\n");
        }

        html.Append("</section>\n");
    }

    /// <summary>A table for the marker, on a page of its own.</summary>
    internal static string Marker(ClassSet set, SheetLayout layout)
    {
        StringBuilder html = SheetHtml.Open(set.Title, SheetStyle.Of(layout, set.Title, landscape: true));
        html.Append("<h1>").Append(SheetHtml.Escape(set.Title)).Append("</h1>\n<p class=\"invented\">For the marker. Answers by variant and problem; ").Append(Count(set)).Append(" variants.</p>\n");
        SheetHtml.Table(html, "marker", set.MarkerHeads, set.MarkerRows);
        return SheetHtml.Close(html);
    }

    private static string Count(ClassSet set) => set.Variants.Count.ToString(CultureInfo.InvariantCulture);
}

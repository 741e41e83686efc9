using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>A worked solution in HTML that is well-formed XML too: math as MathML, no script, nothing from a network.</summary>
internal static class SolutionHtml
{
    private const string Style =
        "body{font-family:Georgia,'Times New Roman',serif;line-height:1.45;max-width:46em;margin:2em auto;padding:0 1em;color:#111;background:#fff}"
        + "h1,h2,h3{line-height:1.2;font-family:Helvetica,Arial,sans-serif}"
        + "table{border-collapse:collapse}td{padding:.15em .8em .15em 0;vertical-align:top}"
        + "ol.steps{padding-left:1.6em}ol.steps>li{margin:.9em 0;break-inside:avoid}"
        + "math{font-size:1.05em}.math{margin:0 0 0 .6em;line-height:1.9;overflow-x:auto}.source{color:#444;font-size:.9em}.sought{font-weight:bold}"
        + ".answer{border:1px solid #111;padding:.4em .7em}.cautions{border-left:.4em solid #b00;padding-left:.8em}"
        + "@media print{body{margin:0;max-width:none;font-size:10.5pt}.math{overflow:visible}}";

    private const string EqualsSign = "<mo form=\"infix\">=</mo>";

    internal static string Page(string title, string body) =>
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" content=\"width=device-width\"/><title>" + Escape(title)
        + "</title><style>" + Style + "</style></head>\n<body>\n" + body + "</body></html>\n";

    internal static string Write(WorkedSolution solution)
    {
        StringBuilder html = new();
        html.Append("<section class=\"worked-solution\">\n<h2>").Append(Escape(solution.Title)).Append("</h2>\n");
        Givens(html, solution);
        Steps(html, solution);
        html.Append("<p class=\"answer\"><b>Answer:</b> ").Append(Escape(solution.Answer)).Append("</p>\n");
        foreach (SolutionNotes notes in solution.Notes)
        {
            Lines(html, "notes", notes.Heading, notes.Lines);
        }

        Lines(html, "cautions", "Cautions", solution.Cautions);
        return html.Append("</section>\n").ToString();
    }

    /// <summary>Text with what HTML would read as markup written so that it is read as text.</summary>
    internal static string Escape(string words) => Xhtml.Clean(words)
        .Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;").Replace("'", "&#39;");

    /// <summary>Givens, steps and the notes of these headings; each step can be pointed at by its number.</summary>
    internal static string Working(WorkedSolution solution, params string[] headings)
    {
        StringBuilder html = new();
        html.Append("<div class=\"worked-solution\">\n");
        Givens(html, solution);
        Steps(html, solution, anchors: true);
        foreach (SolutionNotes notes in solution.Notes.Where(notes => headings.Contains(notes.Heading)))
        {
            Lines(html, "notes", notes.Heading, notes.Lines);
        }

        return html.Append("</div>").ToString();
    }

    /// <summary>What a step of a working is called in its page.</summary>
    internal static string Anchor(int number) => "step-" + number.ToString(CultureInfo.InvariantCulture);

    private static void Givens(StringBuilder html, WorkedSolution solution)
    {
        if (solution.Givens.Count == 0)
        {
            return;
        }

        html.Append("<table class=\"givens\"><caption>Given</caption>\n");
        foreach (SolutionGiven given in solution.Givens)
        {
            html.Append("<tr><td>").Append(Escape(given.Meaning)).Append("</td><td>");
            if (given.Symbol is { } symbol)
            {
                html.Append("<math><mrow>").Append(SymbolName.MathMl(symbol.Spec)).Append("<mo>=</mo>")
                    .Append(FormulaMathMl.WithUnit(symbol.Value, given.Style, symbol.Unit)).Append("</mrow></math>");
            }
            else
            {
                html.Append(Escape(given.Value));
            }

            html.Append("</td></tr>\n");
        }

        html.Append("</table>\n");
    }

    private static void Steps(StringBuilder html, WorkedSolution solution, bool anchors = false)
    {
        string? section = null;
        for (int i = 0; i < solution.Steps.Count; i++)
        {
            SolutionStep step = solution.Steps[i];
            if (step.Section != section)
            {
                html.Append(section is null ? "" : "</ol>\n");
                section = step.Section;
                html.Append(section.Length == 0 ? "" : "<h3>" + Escape(section) + "</h3>\n");
                html.Append("<ol class=\"steps\" start=\"").Append((i + 1).ToString(CultureInfo.InvariantCulture)).Append("\">\n");
            }

            html.Append(anchors ? $"<li id=\"{Anchor(i + 1)}\">" : "<li>");
            Step(html, step);
        }

        html.Append(section is null ? "" : "</ol>\n");
    }

    private static void Step(StringBuilder html, SolutionStep step)
    {
        html.Append("<div class=\"sought\">").Append(Escape(SolutionText.Sentence(step.Sought))).Append("</div>\n");
        if (step.Kind != StepKind.Statement)
        {
            html.Append("<div class=\"math\">");
            foreach (string piece in Math(step))
            {
                html.Append("<math displaystyle=\"true\"><mrow>").Append(piece).Append("</mrow></math>");
            }

            html.Append("</div>\n");
        }

        string verdict = step.Kind == StepKind.Comparison ? SolutionText.Sentence(step.Verdict) + ". " : "";
        if (verdict.Length + step.ReasonAndRounding.Length > 0)
        {
            html.Append("<div class=\"reason\">").Append(Escape(verdict + step.ReasonAndRounding)).Append("</div>\n");
        }

        if (step.Source is { } source)
        {
            html.Append("<div class=\"source\">Source: ").Append(Escape(source.ToString())).Append("</div>\n");
        }

        html.Append("</li>\n");
    }

    // In pieces: a line that is too long for a phone or a sheet of paper goes on in the next one.
    private static List<string> Math(SolutionStep step)
    {
        string name = SymbolName.MathMl(step.Symbol!.Spec);
        if (step.Kind == StepKind.Comparison)
        {
            return
            [
                name + "<mo>=</mo>" + FormulaMathMl.WithUnit(step.ComparedShown, step.AsShown, step.Unit),
                "<mo form=\"infix\">" + Escape(RelationWords.Sign(step.Relation!.Value, step.Holds!.Value)) + "</mo>" + FormulaMathMl.WithUnit(step.LimitShown, step.AsShown, step.Limit!.Unit),
                EqualsSign + SymbolName.MathMl(step.Limit.Spec),
            ];
        }

        string result = FormulaMathMl.WithUnit(step.Shown!.Value, step.AsShown, step.Unit);
        if (step.Kind != StepKind.Calculation)
        {
            return [name + "<mo>=</mo>" + result];
        }

        List<string> symbols = FormulaMathMl.Parts(step.Formula!, 0), numbers = FormulaMathMl.Parts(step.Formula!, step.Operands);
        symbols[0] = name + "<mo>=</mo>" + symbols[0];
        numbers[0] = EqualsSign + numbers[0];
        return [.. symbols, .. numbers, EqualsSign + result];
    }

    private static void Lines(StringBuilder html, string kind, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        html.Append("<div class=\"").Append(kind).Append("\"><h3>").Append(Escape(heading)).Append("</h3>\n<ul>\n");
        foreach (string line in lines)
        {
            html.Append("<li>").Append(Escape(line)).Append("</li>\n");
        }

        html.Append("</ul></div>\n");
    }
}

using System.Globalization;
using System.Xml.Linq;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Working;

/// <summary>A worked solution in HTML that is well-formed XML too: math as MathML, no script, nothing from a network.</summary>
internal static class SolutionHtml
{
    private const string Style =
        "body{font-family:Georgia,'Times New Roman',serif;line-height:1.45;max-width:46em;margin:2em auto;padding:0 1em;color:#111;background:#fff}"
        + "h1,h2,h3{line-height:1.2;font-family:Helvetica,Arial,sans-serif}"
        + "table{border-collapse:collapse}td{padding:.15em .8em .15em 0;vertical-align:top}"
        + "ol.steps{padding-left:1.6em}ol.steps>li{margin:.9em 0;break-inside:avoid}"
        + MathRule.Letters + "math{font-size:1.05em}.math{margin:0 0 0 .6em;line-height:1.9;overflow-x:auto}.source{color:#444;font-size:.9em}.sought{font-weight:bold}"
        + ".answer{border:1px solid #111;padding:.4em .7em}.cautions{border-left:.4em solid #b00;padding-left:.8em}"
        + "@media print{body{margin:0;max-width:none;font-size:10.5pt}.math{overflow:visible}}";

    internal static string Page(WorkedSolution solution) => Page(solution.Title, Style, [NewLine, Element(solution), NewLine]);

    /// <summary>A whole page around what stands in its body.</summary>
    internal static string Page(string title, string style, params object[] body) =>
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><meta name=\"viewport\" content=\"width=device-width\"/>"
        + Xhtml.Write(Xhtml.Element("title", title)) + "<style>" + style + "</style></head>\n" + Xhtml.Write(Xhtml.Element("body", body)) + "</html>\n";

    internal static string Write(WorkedSolution solution) => Xhtml.Write(Element(solution)) + NewLine;

    internal static XElement Element(WorkedSolution solution) => Xhtml.Element(
        "section",
        Class("worked-solution"),
        NewLine,
        Line("h2", solution.Title),
        Givens(solution),
        Steps(solution, anchors: false),
        Line("p", Class("answer"), Xhtml.Element("b", "Answer:"), " ", solution.Answer),
        solution.Notes.Select(notes => Lines("notes", notes.Heading, notes.Lines)),
        Lines("cautions", "Cautions", solution.Cautions));

    /// <summary>Givens, steps and the notes of these headings; each step can be pointed at by its number.</summary>
    internal static XElement Working(WorkedSolution solution, params string[] headings) => Xhtml.Element(
        "div",
        Class("worked-solution"),
        NewLine,
        Givens(solution),
        Steps(solution, anchors: true),
        solution.Notes.Where(notes => headings.Contains(notes.Heading)).Select(notes => Lines("notes", notes.Heading, notes.Lines)));

    /// <summary>What a step of a working is called in its page.</summary>
    internal static string Anchor(int number) => "step-" + number.ToString(CultureInfo.InvariantCulture);

    private static object[] Givens(WorkedSolution solution) => solution.Givens.Count == 0
        ? []
        : Line("table", Class("givens"), Xhtml.Element("caption", "Given"), NewLine, solution.Givens.Select(given => Line("tr", Xhtml.Element("td", given.Meaning), Xhtml.Element("td", Value(given)))));

    private static object Value(SolutionGiven given) => given.Symbol is { } symbol
        ? Xhtml.Element("math", Xhtml.Element("mrow", SymbolName.MathMl(symbol.Spec), FormulaMathMl.Sign("="), FormulaMathMl.WithUnit(symbol.Value, given.Style, symbol.Unit)))
        : given.Value;

    private static List<object> Steps(WorkedSolution solution, bool anchors)
    {
        List<object> all = [];
        for (int i = 0; i < solution.Steps.Count;)
        {
            int first = i;
            string section = solution.Steps[i].Section;
            List<object> steps = [];
            for (; i < solution.Steps.Count && solution.Steps[i].Section == section; i++)
            {
                steps.Add(Line("li", anchors ? Xhtml.Attribute("id", Anchor(i + 1)) : null, Step(solution.Steps[i])));
            }

            all.Add(section.Length == 0 ? "" : Line("h3", section));
            all.Add(Line("ol", Class("steps"), Xhtml.Attribute("start", (first + 1).ToString(CultureInfo.InvariantCulture)), NewLine, steps));
        }

        return all;
    }

    private static List<object> Step(SolutionStep step)
    {
        List<object> all = [Line("div", Class("sought"), SolutionText.Sentence(step.Sought))];
        if (step.Kind != StepKind.Statement)
        {
            all.Add(Line("div", Class("math"), Math(step).Select(piece => Xhtml.Element("math", Xhtml.Attribute("displaystyle", "true"), Xhtml.Element("mrow", piece)))));
        }

        string verdict = step.Kind == StepKind.Comparison ? SolutionText.Sentence(step.Verdict) + ". " : "";
        if (verdict.Length + step.ReasonAndRounding.Length > 0)
        {
            all.Add(Line("div", Class("reason"), verdict + step.ReasonAndRounding));
        }

        if (step.Source is { } source)
        {
            all.Add(Line("div", Class("source"), "Source: " + source));
        }

        return all;
    }

    // In pieces: a line that is too long for a phone or a sheet of paper goes on in the next one.
    private static List<XElement[]> Math(SolutionStep step)
    {
        XElement name = SymbolName.MathMl(step.Symbol!.Spec), equals = FormulaMathMl.Sign("="), goesOn = FormulaMathMl.Infix("=");
        if (step.Kind == StepKind.Comparison)
        {
            return
            [
                [name, equals, .. FormulaMathMl.WithUnit(step.ComparedShown, step.AsShown, step.Unit)],
                [FormulaMathMl.Infix(RelationWords.Sign(step.Relation!.Value, step.Holds!.Value)), .. FormulaMathMl.WithUnit(step.LimitShown, step.AsShown, step.Limit!.Unit)],
                [goesOn, SymbolName.MathMl(step.Limit.Spec)],
            ];
        }

        XElement[] result = FormulaMathMl.WithUnit(step.Shown!.Value, step.AsShown, step.Unit);
        if (step.Kind != StepKind.Calculation)
        {
            return [[name, equals, .. result]];
        }

        List<XElement[]> symbols = FormulaMathMl.Parts(step.Formula!, 0), numbers = FormulaMathMl.Parts(step.Formula!, step.Operands);
        symbols[0] = [name, equals, .. symbols[0]];
        numbers[0] = [goesOn, .. numbers[0]];
        return [.. symbols, .. numbers, [goesOn, .. result]];
    }

    private static object[] Lines(string kind, string heading, IReadOnlyList<string> lines) => lines.Count == 0
        ? []
        : Line("div", Class(kind), Line("h3", heading), Xhtml.Element("ul", NewLine, lines.Select(line => Line("li", line))));
}

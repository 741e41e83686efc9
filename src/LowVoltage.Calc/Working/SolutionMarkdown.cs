using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>A worked solution in Markdown, the math as LaTeX between dollar signs.</summary>
internal static class SolutionMarkdown
{
    private static readonly char[] Special = [.. @"\`*_{}[]<>#|$~"];

    internal static string Write(WorkedSolution solution)
    {
        StringBuilder text = new();
        text.Append("## ").Append(Escape(solution.Title)).Append("\n\n");
        Givens(text, solution);
        Steps(text, solution);
        text.Append("**Answer:** ").Append(Escape(solution.Answer)).Append('\n');
        foreach (SolutionNotes notes in solution.Notes)
        {
            Lines(text, "**" + Escape(notes.Heading) + "**", notes.Lines, "- ");
        }

        Lines(text, "> **Cautions**\n>", solution.Cautions, "> - ");
        return text.ToString();
    }

    /// <summary>Givens, steps and the notes of these headings.</summary>
    internal static string Working(WorkedSolution solution, params string[] headings)
    {
        StringBuilder text = new();
        Givens(text, solution);
        Steps(text, solution);
        foreach (SolutionNotes notes in solution.Notes.Where(notes => headings.Contains(notes.Heading)))
        {
            Lines(text, "**" + Escape(notes.Heading) + "**", notes.Lines, "- ");
        }

        return text.ToString();
    }

    internal static string Escape(string words)
    {
        StringBuilder text = new();
        foreach (char c in words)
        {
            if (Array.IndexOf(Special, c) >= 0)
            {
                text.Append('\\');
            }

            text.Append(c);
        }

        return text.ToString();
    }

    private static void Givens(StringBuilder text, WorkedSolution solution)
    {
        if (solution.Givens.Count == 0)
        {
            return;
        }

        text.Append("**Given**\n\n| what | value |\n| --- | --- |\n");
        foreach (SolutionGiven given in solution.Givens)
        {
            string value = given.Symbol is { } symbol
                ? "$" + symbol.Latex + " = " + FormulaLatex.WithUnit(symbol.Value, given.Style, symbol.Unit) + "$"
                : Escape(given.Value);
            text.Append("| ").Append(Escape(given.Meaning)).Append(" | ").Append(value).Append(" |\n");
        }

        text.Append('\n');
    }

    private static void Steps(StringBuilder text, WorkedSolution solution)
    {
        string section = "";
        for (int i = 0; i < solution.Steps.Count; i++)
        {
            SolutionStep step = solution.Steps[i];
            if (step.Section != section)
            {
                section = step.Section;
                text.Append("### ").Append(Escape(section)).Append("\n\n");
            }

            text.Append("**").Append((i + 1).ToString(CultureInfo.InvariantCulture)).Append(". ").Append(Escape(SolutionText.Sentence(step.Sought))).Append("**\n\n");
            if (step.Kind != StepKind.Statement)
            {
                text.Append("$$").Append(step.InLatex).Append("$$\n\n");
            }

            string after = step.Kind == StepKind.Comparison ? SolutionText.Sentence(step.Verdict) + ". " : "";
            Paragraph(text, Escape((after + step.ReasonAndRounding).TrimEnd()));
            Paragraph(text, step.Source is null ? "" : "*Source:* " + Escape(step.Source.ToString()));
        }
    }

    private static void Paragraph(StringBuilder text, string words)
    {
        if (words.Length > 0)
        {
            text.Append(words).Append("\n\n");
        }
    }

    private static void Lines(StringBuilder text, string heading, IReadOnlyList<string> lines, string lead)
    {
        if (lines.Count == 0)
        {
            return;
        }

        text.Append('\n').Append(heading).Append(heading[0] == '>' ? "\n" : "\n\n");
        foreach (string line in lines)
        {
            text.Append(lead).Append(Escape(line)).Append('\n');
        }
    }
}

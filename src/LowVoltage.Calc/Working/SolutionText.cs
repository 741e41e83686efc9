using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>A worked solution in plain text for a console.</summary>
internal static class SolutionText
{
    private const int Columns = 100;

    internal static string Write(WorkedSolution solution)
    {
        StringBuilder text = new();
        Heading(text, solution.Title, '=');
        if (solution.Givens.Count > 0)
        {
            text.Append('\n').Append("Given\n");
            int widest = solution.Givens.Max(g => g.Symbol?.Name.Length ?? 0);
            foreach (SolutionGiven given in solution.Givens)
            {
                string name = given.Symbol is null ? "" : given.Symbol.Name;
                string line = given.Symbol is null ? $"{given.Meaning}: {given.Value}" : $"{given.Symbol.Name.PadRight(widest)} = {given.Value}, {given.Meaning}";
                Wrapped(text, "  ", line, name.Length == 0 ? 4 : widest + 5);
            }
        }

        Steps(text, solution);
        text.Append('\n');
        Wrapped(text, "", "Answer: " + solution.Answer, 2);
        foreach (SolutionNotes notes in solution.Notes)
        {
            Lines(text, notes.Heading, notes.Lines);
        }

        Lines(text, "Cautions", solution.Cautions);
        return text.ToString();
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
                text.Append('\n');
                Heading(text, section, '-');
            }

            text.Append('\n');
            Wrapped(text, "", (i + 1).ToString(CultureInfo.InvariantCulture) + ". " + Sentence(step.Sought), 3);
            Body(text, step);
        }
    }

    private static void Body(StringBuilder text, SolutionStep step)
    {
        if (step.Kind is StepKind.Calculation or StepKind.Comparison)
        {
            Wrapped(text, "   ", step.InSymbols, 5);
        }

        if (step.Kind != StepKind.Statement)
        {
            Wrapped(text, "   ", step.InNumbers, 5);
        }

        Wrapped(text, "   ", step.ReasonAndRounding, 3);
        Wrapped(text, "   ", step.Source is null ? "" : "Source: " + step.Source, 5);
    }

    private static void Lines(StringBuilder text, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        text.Append('\n').Append(heading).Append('\n');
        foreach (string line in lines)
        {
            Wrapped(text, "- ", line, 2);
        }
    }

    private static void Heading(StringBuilder text, string title, char rule) =>
        text.Append(title).Append('\n').Append(rule, Math.Min(title.Length, Columns)).Append('\n');

    internal static string Sentence(string words) =>
        words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words.Substring(1);

    // Breaks at spaces; what follows the first line is indented. A space between number and unit does not break.
    private static void Wrapped(StringBuilder text, string lead, string words, int indent)
    {
        if (words.Length == 0)
        {
            return;
        }

        int column = lead.Length;
        text.Append(lead);
        bool first = true;
        foreach (string word in words.Split(' '))
        {
            if (!first && column + 1 + word.Length > Columns)
            {
                text.Append('\n').Append(' ', indent);
                column = indent;
            }
            else if (!first)
            {
                text.Append(' ');
                column++;
            }

            text.Append(word);
            column += word.Length;
            first = false;
        }

        text.Append('\n');
    }
}

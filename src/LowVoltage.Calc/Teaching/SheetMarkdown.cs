using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet in Markdown.</summary>
internal static class SheetMarkdown
{
    internal static string Write(ProblemSheet sheet, SheetPart part, SheetLayout layout)
    {
        StringBuilder text = new();
        if (part == SheetPart.Problems)
        {
            Problems(text, sheet, layout);
        }
        else
        {
            Key(text, sheet, layout);
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    internal static void Row(StringBuilder text, IReadOnlyList<string> cells) => text.Append("| ").Append(string.Join(" | ", cells)).Append(" |\n");

    internal static void Table(StringBuilder text, IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        Row(text, heads);
        Row(text, [.. heads.Select(_ => "---")]);
        foreach (IReadOnlyList<string> row in rows)
        {
            Row(text, row);
        }

        text.Append('\n');
    }

    private static void Problems(StringBuilder text, ProblemSheet sheet, SheetLayout layout)
    {
        text.Append("# ").Append(SolutionMarkdown.Escape(sheet.Title)).Append("\n\n");
        text.Append(layout.NameLine ? "Name: \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_ Class: \\_\\_\\_\\_\\_\\_ Date: \\_\\_\\_\\_\\_\\_\\_\\_\n\n" : "");
        text.Append(layout.Points ? $"Points: \\_\\_\\_\\_ of {SheetWords.TotalPoints(sheet).ToString(CultureInfo.InvariantCulture)}\n\n" : "");
        text.Append('*').Append(ProblemSheet.Invented).Append("*\n\n> **").Append(ProblemSheet.PaperOnly).Append("**\n\n");
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Statement(text, sheet.Problems[i], i + 1, layout);
        }
    }

    private static void Statement(StringBuilder text, Problem problem, int number, SheetLayout layout)
    {
        Heading(text, problem, number, layout);
        text.Append(SolutionMarkdown.Escape(problem.Story)).Append("\n\n");
        if (problem.Table is { } table)
        {
            Table(text, table.Heads, table.Rows);
        }

        text.Append(layout.Diagrams && problem.Diagram is { } diagram ? $"*{SolutionMarkdown.Escape(diagram.Description)}*\n\n" : "");
        text.Append("**").Append(SolutionMarkdown.Escape(problem.Question)).Append("** ").Append(SolutionMarkdown.Escape(problem.Instruction)).Append("\n\n");
        foreach (ProblemChoice choice in problem.Choices)
        {
            text.Append("- **").Append(choice.Letter).Append(")** ").Append(SolutionMarkdown.Escape(choice.Text)).Append('\n');
        }

        text.Append(problem.Choices.Count > 0 ? "\n" : "").Append(problem.Defence).Append(problem.Defence.Length > 0 ? "\n\n" : "");
        text.Append(problem.Caution.Length > 0 ? $"> {SolutionMarkdown.Escape(problem.Caution)}\n\n" : "");
    }

    private static void Key(StringBuilder text, ProblemSheet sheet, SheetLayout layout)
    {
        text.Append("# Key: ").Append(SolutionMarkdown.Escape(sheet.Title)).Append("\n\n");
        Table(text, SheetWords.KeyHeads(layout), [.. sheet.Problems.Select((problem, i) => SheetWords.KeyRow(problem, i + 1, layout))]);
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Problem problem = sheet.Problems[i];
            Heading(text, problem, i + 1, layout);
            string solution = problem.Solution.ToMarkdown();
            text.Append(solution.Substring(solution.IndexOf('\n') + 1).TrimStart('\n').Replace("\n### ", "\n#### ").TrimEnd('\n')).Append("\n\n**Usual mistakes**\n\n");
            foreach ((string wrong, string words) in SheetWords.Mistakes(problem))
            {
                text.Append("- ").Append(SolutionMarkdown.Escape($"{wrong}: {words}")).Append('\n');
            }

            text.Append('\n');
        }
    }

    private static void Heading(StringBuilder text, Problem problem, int number, SheetLayout layout) =>
        text.Append("## ").Append(number.ToString(CultureInfo.InvariantCulture)).Append(". ").Append(SheetWords.Heading(problem, layout.Points)).Append("\n\n");
}

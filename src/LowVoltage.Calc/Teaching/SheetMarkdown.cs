using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A sheet in Markdown.</summary>
internal static class SheetMarkdown
{
    internal static string Write(ProblemSheet sheet, SheetPart part)
    {
        StringBuilder text = new();
        if (part != SheetPart.Key)
        {
            text.Append("# ").Append(SolutionMarkdown.Escape(sheet.Title)).Append("\n\n");
            Cautions(text);
            for (int i = 0; i < sheet.Problems.Count; i++)
            {
                Statement(text, sheet.Problems[i], i + 1);
            }
        }

        if (part != SheetPart.Problems)
        {
            Key(text, sheet);
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void Cautions(StringBuilder text) =>
        text.Append('*').Append(ProblemSheet.Invented).Append("*\n\n> **").Append(ProblemSheet.PaperOnly).Append("**\n\n");

    private static void Statement(StringBuilder text, Problem problem, int number)
    {
        Heading(text, problem, number);
        text.Append(SolutionMarkdown.Escape(problem.Story)).Append("\n\n");
        if (problem.Table is { } table)
        {
            Row(text, table.Heads);
            Row(text, [.. table.Heads.Select(_ => "---")]);
            foreach (IReadOnlyList<string> row in table.Rows)
            {
                Row(text, row);
            }

            text.Append('\n');
        }

        text.Append("**").Append(SolutionMarkdown.Escape(problem.Question)).Append("** ").Append(SolutionMarkdown.Escape(problem.Instruction)).Append("\n\n");
        foreach (ProblemChoice choice in problem.Choices)
        {
            text.Append("- **").Append(choice.Letter).Append(")** ").Append(SolutionMarkdown.Escape(choice.Text)).Append('\n');
        }

        text.Append(problem.Choices.Count > 0 ? "\n" : "").Append(problem.Defence).Append(problem.Defence.Length > 0 ? "\n\n" : "");
        if (problem.Caution.Length > 0)
        {
            text.Append("> ").Append(SolutionMarkdown.Escape(problem.Caution)).Append("\n\n");
        }
    }

    private static void Key(StringBuilder text, ProblemSheet sheet)
    {
        text.Append("# Key: ").Append(SolutionMarkdown.Escape(sheet.Title)).Append("\n\n");
        Row(text, ["problem", "answer", "allowed"]);
        Row(text, ["---", "---", "---"]);
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Problem problem = sheet.Problems[i];
            Row(text, [(i + 1).ToString(CultureInfo.InvariantCulture), SheetWords.Answer(problem), SheetWords.Allowed(problem)]);
        }

        text.Append('\n');
        for (int i = 0; i < sheet.Problems.Count; i++)
        {
            Problem problem = sheet.Problems[i];
            Heading(text, problem, i + 1);
            string solution = problem.Solution.ToMarkdown();
            text.Append(solution.Substring(solution.IndexOf('\n') + 1).TrimStart('\n').Replace("\n### ", "\n#### ").TrimEnd('\n')).Append("\n\n**Usual mistakes**\n\n");
            foreach (WrongAnswer wrong in problem.WrongAnswers)
            {
                text.Append("- ").Append(SolutionMarkdown.Escape($"{wrong.Text}: {wrong.Mistake.Name}. {wrong.Mistake.Explanation}")).Append('\n');
            }

            text.Append('\n');
        }
    }

    private static void Heading(StringBuilder text, Problem problem, int number) =>
        text.Append("## ").Append(number.ToString(CultureInfo.InvariantCulture)).Append(". ").Append(SheetWords.Heading(problem)).Append("\n\n");

    private static void Row(StringBuilder text, IReadOnlyList<string> cells) => text.Append("| ").Append(string.Join(" | ", cells)).Append(" |\n");
}

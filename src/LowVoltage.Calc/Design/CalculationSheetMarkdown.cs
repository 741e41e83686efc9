using System.Globalization;
using System.Text;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>A calculation sheet in Markdown.</summary>
internal static class CalculationSheetMarkdown
{
    internal static string Write(CalculationSheet sheet, SheetFacts facts)
    {
        StringBuilder text = new();
        text.Append("# ").Append(Escape(sheet.Title)).Append("\n\n");
        text.Append(string.Join(" · ", SheetWords.Details(sheet.Details).Select(row => $"{row.Label}: {(row.Value.Length > 0 ? Escape(row.Value) : @"\_\_\_\_\_\_\_\_")}"))).Append("\n\n");
        text.Append("**").Append(facts.Verdict).Append(".** ").Append(Escape(facts.Because)).Append("\n\n");
        Table(text, ["answer and circuit", ""], facts.Answer.Concat(facts.Circuit).Select(row => (IReadOnlyList<string>)[row.Label, row.Value]));
        text.Append('*').Append(Escape(sheet.Diagram.Description)).Append("*\n\n");
        Table(text, SheetFacts.CheckHeads, sheet.Design.Checks.Select(check => Row(check, SheetWords.StepOf(sheet.Working, check))));
        List(text, SheetWords.Assumptions, sheet.Design.Assumptions);
        List(text, SheetWords.Cautions, sheet.Design.Cautions);
        foreach (string words in SheetWords.Signatures)
        {
            text.Append(words).Append(@", date: \_\_\_\_\_\_\_\_\_\_\_\_\_\_\_\_").Append("\n\n");
        }

        List(text, SheetWords.Help, sheet.Design.Advice);
        return text.Append("## Working\n\n").Append(SolutionMarkdown.Working(sheet.Working, DesignSheet.HowToRead, DesignSheet.WhyNoSmaller).TrimEnd('\n')).Append('\n').ToString();
    }

    private static void List(StringBuilder text, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            text.Append("## ").Append(heading).Append("\n\n").Append(string.Concat(lines.Select(line => $"- {Escape(line)}\n"))).Append('\n');
        }
    }

    private static IReadOnlyList<string> Row(CheckResult check, int? step)
    {
        (string[] cells, string note) = SheetFacts.Row(check);
        cells[5] += note.Length > 0 ? ": " + note : "";
        return [.. cells, step?.ToString(CultureInfo.InvariantCulture) ?? ""];
    }

    private static void Table(StringBuilder text, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        text.Append("| ").Append(string.Join(" | ", heads)).Append(" |\n| ").Append(string.Join(" | ", heads.Select(_ => "---"))).Append(" |\n");
        foreach (IReadOnlyList<string> row in rows)
        {
            text.Append("| ").Append(string.Join(" | ", row.Select(Escape))).Append(" |\n");
        }

        text.Append('\n');
    }

    private static string Escape(string words) => SolutionMarkdown.Escape(words.Replace('\n', ' ').Replace('\r', ' '));
}

using System.Text;

namespace LowVoltage.Calc.Teaching;

/// <summary>A small table in a statement.</summary>
internal sealed class ProblemTable(IReadOnlyList<string> heads, IReadOnlyList<IReadOnlyList<string>> rows)
{
    internal IReadOnlyList<string> Heads => heads;

    internal IReadOnlyList<IReadOnlyList<string>> Rows => rows;

    internal string ToText()
    {
        int[] widths = [.. heads.Select((head, column) => Math.Max(head.Length, rows.Max(row => row[column].Length)))];
        StringBuilder text = new();
        Line(text, heads, widths);
        foreach (IReadOnlyList<string> row in rows)
        {
            Line(text, row, widths);
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, IReadOnlyList<string> cells, int[] widths)
    {
        StringBuilder line = new("  ");
        for (int i = 0; i < cells.Count; i++)
        {
            line.Append(cells[i].PadRight(widths[i] + 2));
        }

        text.Append(line.ToString().TrimEnd(' ')).Append('\n');
    }
}

using System.Globalization;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>A Markdown table under construction, numbers in the invariant culture. A column of numbers is set flush right.</summary>
internal sealed class MarkdownTable(params string[] heads)
{
    private readonly List<string[]> rows = [];

    public void Row(params string[] cells) => rows.Add([.. cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))]);

    public static string Number(double value, string format = "G4") => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>A deviation in per cent, with its sign: <c>+1.2 %</c>; <c>0 %</c> when it is less than can be shown.</summary>
    public static string Percent(double fraction, int decimals = 1)
    {
        double percent = Math.Round(fraction * 100, decimals);
        string digits = Math.Abs(percent).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return percent == 0 ? "0 %" : (percent > 0 ? "+" : "−") + digits + " %";
    }

    public override string ToString()
    {
        string[] rules = [.. Enumerable.Range(0, heads.Length).Select(column => column > 0 && IsNumeric(column) ? "---:" : "---")];
        return string.Concat(new[] { heads, rules }.Concat(rows).Select(cells => $"| {string.Join(" | ", cells)} |\n"));
    }

    // Numbers with at most a unit behind them; text may stand in for a number that is not there.
    private bool IsNumeric(int column) => rows.Count(row => row[column].Length > 0 && row[column].Length < 12 && "0123456789+−-".Contains(row[column][0], StringComparison.Ordinal)) > rows.Count / 2;
}

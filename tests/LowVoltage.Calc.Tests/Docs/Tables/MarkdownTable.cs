using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>A Markdown table under construction, numbers in the invariant culture.</summary>
internal sealed class MarkdownTable
{
    private readonly StringBuilder text = new();

    public MarkdownTable(params string[] heads)
    {
        Row(heads);
        Row([.. heads.Select((_, i) => i == 0 ? "---" : "---:")]);
    }

    public void Row(params string[] cells) => text.Append("| ").AppendJoin(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");

    public static string Number(double value, string format = "G4") => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>A deviation in per cent, with its sign: <c>+1.2 %</c>; <c>0 %</c> when it is less than can be shown.</summary>
    public static string Percent(double fraction, int decimals = 1)
    {
        double percent = Math.Round(fraction * 100, decimals);
        string digits = Math.Abs(percent).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return percent == 0 ? "0 %" : (percent > 0 ? "+" : "−") + digits + " %";
    }

    public override string ToString() => text.ToString();
}

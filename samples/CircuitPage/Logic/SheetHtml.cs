using LowVoltage.Calc;
using LowVoltage.Calc.Design;

namespace CircuitPage;

/// <summary>The library's calculation sheet in the two parts that the page prints: its style and its content.</summary>
/// <param name="Style">The rules; for print only.</param>
/// <param name="Content">What stands in its body.</param>
internal sealed record SheetHtml(string Style, string Content)
{
    public static SheetHtml Of(CircuitDesign design, string date)
    {
        string page = CalculationSheet.Create(design, new SheetDetails("CircuitPage, LowVoltage.Calc", Version, date)).ToHtmlPage();
        return new SheetHtml(Between(page, "<style>", "</style>"), Between(page, "<body>", "</body>"));
    }

    private static string Version => typeof(CircuitDesigner).Assembly.GetName().Version is { } version ? version.ToString(3) : "";

    private static string Between(string page, string from, string to)
    {
        int start = page.IndexOf(from, StringComparison.Ordinal) + from.Length;
        return page[start..page.IndexOf(to, start, StringComparison.Ordinal)];
    }
}

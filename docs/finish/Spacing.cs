using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>A number and its unit, and the groups of three digits of a number, stay on one line.</summary>
public static partial class Spacing
{
    /// <summary>Works on the text between tags, outside of code, formulas and what a program printed.</summary>
    public static string KeepUnits(string html) => Untouched().Replace(html, match =>
        match.Groups["text"].Success ? Units().Replace(Groups().Replace(match.Value, "\u00a0"), "\u00a0") : match.Value);

    [GeneratedRegex("<pre.*?</pre>|<math.*?</math>|<code.*?</code>|<[^>]*>|(?<text>[^<]+)", RegexOptions.Singleline)]
    private static partial Regex Untouched();

    [GeneratedRegex(@"(?<=\d) (?=\d{3}(?!\d))")]
    private static partial Regex Groups();

    [GeneratedRegex(@"(?<=\d) (?=(?:%|°C|°F|mm²|mm|m|km|cm|in|ft|AWG|kcmil|mA|kA|A²s|A|mV|V|mΩ|Ω/km|Ω/m|Ω|kW|W|Wh|Ah|K|kg|g|h|min|s|ms|µs|ns|kB|MB|B|Hz|:\s\d)(?![\p{L}\d]))")]
    private static partial Regex Units();
}

using System.Globalization;
using System.Text.RegularExpressions;
using CircuitSchedule;

namespace CircuitPage;

/// <summary>What is wrong with a field, in the units that it was typed in.</summary>
internal static partial class ProblemWords
{
    public static string Missing(Field field, PageUnits units) => $"Needed: {Expected(field, units)}.";

    public static string NoNumber(Field field, string text, NumberReading reading, PageUnits units) => reading == NumberReading.Ambiguous
        ? $"'{text}' can be read with and without a thousands separator: write it without one."
        : $"Expected {Expected(field, units)}; found '{Shortened(text)}'.";

    public static string Of(Problem problem, PageState state)
    {
        Field? field = Fields.Find(problem.Column);
        string text = state.Text(problem.Column).Trim();
        return field is not null && text.Length == 0 && field.Kind is FieldKind.Number or FieldKind.Count
            ? Missing(field!, state.Units)
            : field?.Kind == FieldKind.Count && !text.All(char.IsAsciiDigit) ? $"Expected {Expected(field, state.Units)}; found '{Shortened(text)}'."
            : InUnits(Sentence(problem.Message), field?.Measure ?? Measure.Same, state.Units);
    }

    /// <summary>A refusal of the library's without the name of its parameter.</summary>
    public static string Plain(ArgumentException refusal)
    {
        string words = refusal.Message.Split(" (Parameter")[0];
        return Sentence(refusal.ParamName is { Length: > 0 } name && words.StartsWith(name, StringComparison.Ordinal) ? words[name.Length..].TrimStart(':', ' ') : words);
    }

    private static string Expected(Field field, PageUnits units) => field.Kind == FieldKind.Count
        ? "a whole number such as 2"
        : field.Unit(units) is { Length: > 0 } unit ? $"a number in {unit}, such as 2.5" : "a number such as 2.5";

    private static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    // The library speaks in metres and degrees Celsius.
    private static string InUnits(string words, Measure measure, PageUnits units) => (measure, units) switch
    {
        (Measure.Length, PageUnits.Us) => Meters().Replace(words, match => $"{Converted(match, measure)} ft"),
        (Measure.Temperature, PageUnits.Us) => Celsius().Replace(words, match => $"{Converted(match, measure)} °F"),
        _ => words,
    };

    private static string Converted(Match match, Measure measure)
    {
        string number = match.Groups["number"].Value.Replace('\u2212', '-');
        double value = double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
        return UnitText.FromMetric(value, measure, PageUnits.Us).ToString("G6", CultureInfo.InvariantCulture);
    }

    private static string Shortened(string text) => text.Length > 40 ? text[..40] + "..." : text;

    [GeneratedRegex(@"(?<number>[-\u2212]?\d+(\.\d+)?(E[+-]?\d+)?) m\b", RegexOptions.CultureInvariant)]
    private static partial Regex Meters();

    [GeneratedRegex(@"(?<number>[-\u2212]?\d+(\.\d+)?(E[+-]?\d+)?) °C", RegexOptions.CultureInvariant)]
    private static partial Regex Celsius();
}

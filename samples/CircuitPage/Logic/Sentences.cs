namespace CircuitPage;

/// <summary>Small things that sentences need.</summary>
internal static class Sentences
{
    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>One circuit, two circuits.</summary>
    public static string Count(int count, string noun) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");
}

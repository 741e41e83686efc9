using System.Text.RegularExpressions;

namespace LowVoltage.Calc.Tests;

/// <summary>What long texts of one kind say, told once: of each the lines that no earlier one has. Two lines that differ in their numbers alone are alike. A line that stands word for word in the library is read there.</summary>
/// <remarks>A digest of the whole stands with them, so a number that changes is noticed too. The texts come in a fixed order.</remarks>
internal sealed partial class News
{
    private readonly HashSet<string> read = new(StringComparer.Ordinal);

    /// <summary>The lines of the text that are new, in their order.</summary>
    internal string Of(string text) => string.Join("\n", text.Split('\n').Where(line => line.Trim().Length > 0 && read.Add(Alike(line)) && !LibraryTexts.Has(line)));

    /// <summary>The digest of the text and below it the lines that are new.</summary>
    internal string WithDigest(string text) => $"whole: {ApprovedText.Digest(text)}\n{Of(text)}".TrimEnd() + "\n";

    /// <summary>The same for texts that differ alone in their numbers with units and indices, in what they quote, in the conductor or fuse that they name, in the level of supply, and in what was answered before an arrow.</summary>
    internal static string Alike(string line) =>
        Indices().Replace(Levels().Replace(Fuses().Replace(Conductors().Replace(Numbers().Replace(Answers().Replace(line.Trim(), ""), "#"), "conductor"), "fuse"), ""), "");

    [GeneratedRegex(@"""[^""]*""|[-−]?\d[\d.,]*(E[+-]?\d+)?( ?([mkMµ]?(V|A|Ω|W|m|s|h|F|J|Wh|Ah|K)|mm²|mm|°C|°F|%|ft|in|cmil|kcmil|AWG|SAE|mΩ/m|Ω/km|Ω/m)(?![\w·/²]))?")]
    private static partial Regex Numbers();

    // After the numbers: "2 × 16 mm² class 5 copper", "aircraft wire size 20".
    [GeneratedRegex("(# × )?(# ((class #|stranded|solid|road-vehicle|vehicle-gauge|tinned|copper-clad) )*(copper|aluminium)|aircraft wire size #)")]
    private static partial Regex Conductors();

    [GeneratedRegex(@"# ([\p{L}-]+ ){0,3}fuse(-link)? \([^()]*\)")]
    private static partial Regex Fuses();

    // What numbers leave behind a symbol: D_w2, R′_20,2.
    [GeneratedRegex(@"(?<=[\p{L}′])_?#")]
    private static partial Regex Indices();

    [GeneratedRegex(@"^.* -> ")]
    private static partial Regex Answers();

    [GeneratedRegex(@"\b(least|nominal|greatest|Minimum|Nominal|Maximum)\b|[₀-₉ₐₑₒₓₔₕₖₗₘₙₚₛₜᵢᵣᵤᵥ]+")]
    private static partial Regex Levels();
}

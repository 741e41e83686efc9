using System.Globalization;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>Texts and numbers for the fuzzer.</summary>
internal static class FuzzText
{
    private static readonly string[] Words =
    [
        "14 AWG", "4/0 AWG", "0000", "#10", "No. 8", "2.5 mm²", "2,5 mm2", "0.13", "250 kcmil", "MCM", "1/0", "5/0", "14 SAE", "20 aircraft", "AN", "G", "R", "G4", "N", "F17", "x9",
        "1e308", "1e-400", "NaN", "∞", "-0", "+5", "٣٫٥", "２.５", "½", "\u2212", "\u00A0", "\u200F", "ı", "İ", "ﬀ", "\0", "\uD800", "😀", "mm\u00B2", "mm^2", "/", "//", " ", "\t", "'", "\"", "{0}", "%s",
    ];

    private static readonly CultureInfo[] Cultures =
        [CultureInfo.InvariantCulture, .. new[] { "en-US", "de-DE", "tr-TR", "ar-SA", "fa-IR", "hi-IN", "fr-CH", "sv-SE" }.Select(CultureInfo.GetCultureInfo)];

    private static readonly double[] Edges =
        [0, -0.0, double.Epsilon, -double.Epsilon, 1e-12, 1e-300, 0.1, 1, -1, 60, 1e7, 1e10, 1e308, double.MaxValue, double.MinValue, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    public static CultureInfo AnyCulture(Random random) => Cultures[random.Next(Cultures.Length)];

    /// <summary>A designation, a designation spoilt, words thrown together, or noise.</summary>
    public static string Any(Random random)
    {
        string text = Words[random.Next(Words.Length)];
        switch (random.Next(6))
        {
            case 0:
                return text;
            case 1:
                return random.Next(-5, 60).ToString(CultureInfo.InvariantCulture) + Words[random.Next(Words.Length)];
            case 2:
                return AnyNumber(random).ToString("R", AnyCulture(random)) + " " + text;
            case 3:
                return string.Concat(Enumerable.Range(0, random.Next(1, 5)).Select(_ => Words[random.Next(Words.Length)]));
            case 4:
                int at = random.Next(text.Length);
                return text.Remove(at, 1).Insert(at, ((char)random.Next(char.MaxValue)).ToString());
            default:
                return new string((char)random.Next(32, 128), random.Next(random.Next(10) == 0 ? 20_000 : 40));
        }
    }

    /// <summary>A number of wiring, an edge, or any bit pattern of a double.</summary>
    public static double AnyNumber(Random random) => random.Next(4) switch
    {
        0 => Edges[random.Next(Edges.Length)],
        1 => BitConverter.Int64BitsToDouble(random.NextInt64(long.MinValue, long.MaxValue)),
        _ => Math.Pow(10, (random.NextDouble() * 14) - 8) * (random.Next(10) == 0 ? -1 : 1),
    };
}

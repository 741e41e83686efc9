using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>Small numbers in words, so that a statement has no number that is not a given.</summary>
internal static class CountWords
{
    private static readonly string[] Words =
    [
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
        "seventeen", "eighteen", "nineteen", "twenty", "twenty-one", "twenty-two", "twenty-three", "twenty-four",
    ];

    internal static string Of(int count) => count < Words.Length ? Words[count] : count.ToString(CultureInfo.InvariantCulture);
}

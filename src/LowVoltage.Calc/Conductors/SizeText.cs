using System.Globalization;

namespace LowVoltage.Calc.Conductors;

/// <summary>Reading and writing size designations. Nothing here throws on bad text, and no culture decides what a letter is.</summary>
internal static class SizeText
{
    /// <summary>The smallest number a gauge can have: 4/0.</summary>
    internal const int FourOught = -3;

    /// <summary>
    /// A gauge number (−3 for 4/0, 0 for 1/0, else 1 to 99) with its system's word before or after it, once at most,
    /// and one <c>#</c>, <c>No.</c> or <c>No</c> before the number.
    /// </summary>
    internal static bool TryGauge(ReadOnlySpan<char> text, string word, out int number, out bool hasWord)
    {
        text = text.Trim();
        TakeNumberSign(ref text, out bool signed);
        hasWord = TakeFirst(ref text, word) || TakeLast(ref text, word);
        if (!signed)
        {
            TakeNumberSign(ref text, out _);
        }

        return TryGaugeNumber(text, out number);
    }

    /// <summary>A number in a culture's digits and decimal separator (never a sign, an exponent or a thousands separator) and what stands after it.</summary>
    internal static bool TryNumberAndUnit(ReadOnlySpan<char> text, IFormatProvider? provider, out double number, out ReadOnlySpan<char> unit)
    {
        text = text.Trim();
        NumberFormatInfo format = NumberFormatInfo.GetInstance(provider ?? CultureInfo.InvariantCulture);
        int length = NumberLength(text, format.NumberDecimalSeparator.AsSpan());
        unit = text.Slice(length).Trim();
#if NET8_0_OR_GREATER
        return double.TryParse(text.Slice(0, length), NumberStyles.AllowDecimalPoint, format, out number);
#else
        return double.TryParse(text.Slice(0, length).ToString(), NumberStyles.AllowDecimalPoint, format, out number);
#endif
    }

    internal static bool Same(ReadOnlySpan<char> text, string word) => text.Equals(word.AsSpan(), StringComparison.OrdinalIgnoreCase);

    /// <summary>A gauge number as the trade writes it: <c>14</c>, <c>4/0</c>.</summary>
    internal static string GaugeNumber(int number) =>
        number > 0
            ? number.ToString(CultureInfo.InvariantCulture)
            : (1 - number).ToString(CultureInfo.InvariantCulture) + "/0";

    /// <summary>A gauge as text: with its system's word for the general format, without it for <c>N</c>.</summary>
    internal static string Gauge(int? number, string word, string? format) => format switch
    {
        null or "" or "G" or "g" => number is { } n ? GaugeNumber(n) + " " + word : NoSize.Text,
        "N" or "n" => number is { } n ? GaugeNumber(n) : NoSize.Text,
        _ => throw new FormatException($"The format \"{format}\" is not known; G and N are."),
    };

    /// <summary>All digits that a number needs to be read back.</summary>
    internal static string Number(double number, string? format, IFormatProvider provider) =>
        number.ToString(string.IsNullOrEmpty(format) || format is "G" or "g" ? "R" : format, provider);

    internal static bool TryCopy(string text, Span<char> destination, out int charsWritten)
    {
        bool fits = text.AsSpan().TryCopyTo(destination);
        charsWritten = fits ? text.Length : 0;
        return fits;
    }

    internal static FormatException Refusal(ReadOnlySpan<char> text, string what, string accepted) =>
        new($"\"{text.ToString()}\" is not {what}. Accepted: {accepted}.");

    /// <summary>The same where a culture's decimal separator counts: the examples are written with it.</summary>
    internal static FormatException RefusalIn(ReadOnlySpan<char> text, string what, string accepted, IFormatProvider? provider)
    {
        string separator = NumberFormatInfo.GetInstance(provider ?? CultureInfo.InvariantCulture).NumberDecimalSeparator;
        return separator == "."
            ? Refusal(text, what, accepted)
            : Refusal(text, what, accepted.Replace("2.5", "2" + separator + "5").Replace("211.6", "211" + separator + "6") + $" (the decimal separator of this culture is \"{separator}\")");
    }

    private static int NumberLength(ReadOnlySpan<char> text, ReadOnlySpan<char> separator)
    {
        int i = 0;
        while (i < text.Length)
        {
            if (text[i] is >= '0' and <= '9')
            {
                i++;
            }
            else if (separator.Length > 0 && text.Slice(i).StartsWith(separator, StringComparison.Ordinal))
            {
                i += separator.Length;
            }
            else
            {
                break;
            }
        }

        return i;
    }

    private static void TakeNumberSign(ref ReadOnlySpan<char> text, out bool taken) =>
        taken = TakeFirst(ref text, "#") || TakeFirst(ref text, "No.") || TakeFirst(ref text, "No");

    private static bool TakeFirst(ref ReadOnlySpan<char> text, string word)
    {
        bool found = text.StartsWith(word.AsSpan(), StringComparison.OrdinalIgnoreCase);
        text = found ? text.Slice(word.Length).TrimStart() : text;
        return found;
    }

    private static bool TakeLast(ref ReadOnlySpan<char> text, string word)
    {
        bool found = text.EndsWith(word.AsSpan(), StringComparison.OrdinalIgnoreCase);
        text = found ? text.Slice(0, text.Length - word.Length).TrimEnd() : text;
        return found;
    }

    private static bool TryGaugeNumber(ReadOnlySpan<char> text, out int number)
    {
        int slash = text.IndexOf('/');
        if (slash >= 0)
        {
            return TryOughts(text.Slice(0, slash).TrimEnd(), text.Slice(slash + 1).TrimStart(), out number);
        }

        number = 0;
        if (text.Length is < 1 or > 4)
        {
            return false;
        }

        return text[0] == '0' ? TryZeros(text, out number) : TryDigits(text, out number);
    }

    // 1/0 to 4/0.
    private static bool TryOughts(ReadOnlySpan<char> before, ReadOnlySpan<char> after, out int number)
    {
        bool valid = before.Length == 1 && before[0] is >= '1' and <= '4' && after.Length == 1 && after[0] == '0';
        number = valid ? 1 - (before[0] - '0') : 0;
        return valid;
    }

    // 0 to 0000.
    private static bool TryZeros(ReadOnlySpan<char> text, out int number)
    {
        number = 1 - text.Length;
        foreach (char c in text)
        {
            if (c != '0')
            {
                return false;
            }
        }

        return true;
    }

    private static bool TryDigits(ReadOnlySpan<char> text, out int number)
    {
        number = 0;
        foreach (char c in text)
        {
            if (c is < '0' or > '9')
            {
                return false;
            }

            number = (number * 10) + (c - '0');
        }

        return text.Length <= 2;
    }
}

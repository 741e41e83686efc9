using System.Globalization;

namespace CircuitSchedule;

/// <summary>The sign before the decimals.</summary>
internal enum DecimalSign
{
    Point,
    Comma,

    /// <summary>Both are in the file, or neither where it would show: each cell must speak for itself.</summary>
    Either,
}

/// <summary>How a cell reads as a number.</summary>
internal enum NumberReading
{
    Number,
    NoNumber,

    /// <summary>1,500 or 1.500: one and a half, or fifteen hundred.</summary>
    Ambiguous,
}

/// <summary>Numbers as cells hold them, whatever the machine's culture. No thousands separators: 1,500 is never 1500 by guess.</summary>
internal static class NumberText
{
    // Beyond any wiring, and still within the decimal that UnitsNet keeps power in.
    private const double Largest = 1e15;

    public static NumberReading Read(string text, DecimalSign sign, out double number)
    {
        number = double.NaN;
        int comma = text.IndexOf(','), point = text.IndexOf('.');
        if (comma >= 0 && point >= 0)
        {
            return NumberReading.NoNumber;
        }

        if (sign == DecimalSign.Either && LooksGrouped(text, Math.Max(comma, point)))
        {
            return NumberReading.Ambiguous;
        }

        if ((comma >= 0 && sign == DecimalSign.Point) || (point >= 0 && sign == DecimalSign.Comma))
        {
            return NumberReading.NoNumber;
        }

        NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(comma >= 0 ? text.Replace(',', '.') : text, style, CultureInfo.InvariantCulture, out number) && Math.Abs(number) <= Largest
            ? NumberReading.Number
            : NumberReading.NoNumber;
    }

    /// <summary>The decimal sign that a cell proves; null when it has none, or could be a number with thousands separators.</summary>
    public static DecimalSign? Proof(string text)
    {
        int sign = text.AsSpan().IndexOfAny(',', '.');
        return sign >= 0 && !LooksGrouped(text, sign) && Read(text, DecimalSign.Either, out _) == NumberReading.Number
            ? text[sign] == ',' ? DecimalSign.Comma : DecimalSign.Point
            : null;
    }

    // One to three figures that do not begin with 0, the sign, and exactly three more.
    private static bool LooksGrouped(string text, int sign)
    {
        int first = text.Length > 0 && text[0] is '-' or '+' ? 1 : 0, before = sign - first;
        return sign > 0 && before is >= 1 and <= 3 && text.Length == sign + 4 && text[first] != '0'
            && AllDigits(text.AsSpan(first, before)) && AllDigits(text.AsSpan(sign + 1));
    }

    private static bool AllDigits(ReadOnlySpan<char> text) => text.IndexOfAnyExceptInRange('0', '9') < 0;
}

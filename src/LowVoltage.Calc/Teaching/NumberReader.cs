using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Teaching;

/// <summary>The number at the beginning of an answer, with its separators and its power of ten; the text is simplified already.</summary>
internal static class NumberReader
{
    internal static bool TryRead(string text, CultureInfo culture, ref int at, out double value, out int figures, out double? withDecimalMark)
    {
        value = 0;
        figures = 0;
        withDecimalMark = null;
        StringBuilder ascii = new();
        if (at < text.Length && text[at] is '-' or '+')
        {
            ascii.Append(text[at] == '-' ? "-" : "");
            at++;
            SkipSpace(text, ref at);
        }

        if (!TryReadDigits(text, culture, ref at, ascii, out figures, out bool ambiguous))
        {
            return false;
        }

        if (!TryReadExponent(text, ref at, ascii))
        {
            return false;
        }

        bool read = double.TryParse(ascii.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out value) && !double.IsInfinity(value) && !double.IsNaN(value);
        withDecimalMark = read && ambiguous ? value / 1000 : null;
        return read;
    }

    private static bool TryReadDigits(string text, CultureInfo culture, ref int at, StringBuilder ascii, out int figures, out bool ambiguous)
    {
        int start = at;
        while (at < text.Length && IsOfNumber(text, at))
        {
            at++;
        }

        string run = text.Substring(start, at - start);
        figures = 0;
        ambiguous = NumberRun.IsAmbiguous(run, DecimalMark(culture));
        if (!NumberRun.TryRead(run, DecimalMark(culture), out string whole, out string fraction))
        {
            return false;
        }

        figures = Math.Max(1, (whole + fraction).TrimStart('0').Length);
        ascii.Append(whole.Length == 0 ? "0" : whole);
        if (fraction.Length > 0)
        {
            ascii.Append('.').Append(fraction);
        }

        return true;
    }

    private static char DecimalMark(CultureInfo culture) =>
        culture.NumberFormat.NumberDecimalSeparator == "," ? ',' : '.';

    // A separator belongs to the number only between digits; a space only before three of them.
    private static bool IsOfNumber(string text, int at)
    {
        char c = text[at];
        if (IsDigit(c))
        {
            return true;
        }

        bool before = at > 0 && IsDigit(text[at - 1]), after = at + 1 < text.Length && IsDigit(text[at + 1]);
        return c switch
        {
            '.' or ',' => after || before,
            '\'' => before && after,
            ' ' => before && Digits(text, at + 1) == 3,
            _ => false,
        };
    }

    // e-3, ×10-3, x 10^-3, ·10^-3; absent is fine, half written is not.
    private static bool TryReadExponent(string text, ref int at, StringBuilder ascii)
    {
        int i = at;
        bool tens = false;
        if (i < text.Length && text[i] is 'e' or 'E' && i + 1 < text.Length && (IsDigit(text[i + 1]) || text[i + 1] is '-' or '+'))
        {
            i++;
        }
        else
        {
            SkipSpace(text, ref i);
            if (i < text.Length && text[i] is '×' or 'x' or 'X' or '*' or '·')
            {
                i++;
                SkipSpace(text, ref i);
                tens = Digits(text, i) >= 2 && text[i] == '1' && text[i + 1] == '0';
            }

            if (!tens)
            {
                return true;
            }

            i += 2;
            i += i < text.Length && text[i] == '^' ? 1 : 0;
        }

        int sign = i < text.Length && text[i] is '-' or '+' ? 1 : 0, digits = Digits(text, i + sign);
        if (digits is 0 or > 4)
        {
            return false;
        }

        ascii.Append('E').Append(text, i, sign + digits);
        at = i + sign + digits;
        return true;
    }

    private static int Digits(string text, int at)
    {
        int count = 0;
        while (at + count < text.Length && IsDigit(text[at + count]))
        {
            count++;
        }

        return count;
    }

    private static void SkipSpace(string text, ref int at)
    {
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';
}

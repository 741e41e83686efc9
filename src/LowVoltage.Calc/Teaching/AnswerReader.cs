using System.Globalization;
using System.Text;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>Reads what students write: <c>2.4 A</c>, <c>2400 mA</c>, <c>I = 2,4 A</c>, <c>7.9×10⁻³ Ω/m</c>, <c>14 AWG</c>. Never throws.</summary>
/// <remarks>
/// The culture says which of point and comma is the decimal one. The other separates thousands where three figures follow; where they do not, it can only be
/// meant as the decimal one and is read so: 2,4 is 2.4 in every culture, 2,400 is 2.4 in one and 2400 in another.
/// </remarks>
internal static class AnswerReader
{
    // Longer texts are no answers; they are not even looked at.
    private const int Longest = 300;

    internal static bool TryRead(string? text, CultureInfo culture, out AnswerReading reading)
    {
        reading = default;
        if (text is null || text.Length > Longest)
        {
            return false;
        }

        string plain = Simplify(text);
        int equals = plain.LastIndexOfAny(['=', '≈', '~']);
        plain = plain.Substring(equals + 1).Trim();
        if (TryReadGauge(plain, out reading))
        {
            return true;
        }

        int at = 0;
        if (!TryReadNumber(plain, culture, ref at, out double value, out int figures))
        {
            return false;
        }

        string rest = plain.Substring(at).Trim().TrimEnd('.', '!', ',', ';').Trim();
        AnswerUnit unit = null!;
        if (rest.Length > 0 && !AnswerUnits.TryFind(rest, out unit))
        {
            return false;
        }

        reading = new AnswerReading(value, figures, rest.Length == 0 ? null : unit);
        return reading.Unit is null || reading.Unit.IsPossible(value);
    }

    /// <summary>One minus, one kind of space, ASCII digits, no superscripts, nothing invisible.</summary>
    internal static string Simplify(string text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char c in text)
        {
            int raised = "⁰¹²³⁴⁵⁶⁷⁸⁹".IndexOf(c), digit = CharUnicodeInfo.GetDecimalDigitValue(c);
            if (raised >= 0 || digit >= 0)
            {
                plain.Append((char)('0' + (raised >= 0 ? raised : digit)));
            }
            else if (Replacement(c) is { } other)
            {
                plain.Append(other);
            }
            else if (char.IsWhiteSpace(c) || char.IsControl(c))
            {
                plain.Append(' ');
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.Format)
            {
                plain.Append(c);
            }
        }

        return plain.ToString().Trim();
    }

    private static char? Replacement(char c) => c switch
    {
        '−' or '–' or '—' or '‒' or '‑' or '‐' or '﹣' or '－' or '⁻' => '-',
        '⁺' or '＋' => '+',
        '٫' => '.',
        '٬' or '’' or '‘' => '\'',
        '\u2126' => 'Ω',
        'ω' => 'Ω',
        '\u03BC' => 'µ',
        '⋅' or '∙' or '•' => '·',
        '✕' or '✖' or 'х' => '×',
        '⁄' or '∕' or '÷' => '/',
        _ => null,
    };

    // "14 AWG", "AWG 14", "#14", "1/0", "4/0 AWG", "14 gauge".
    private static bool TryReadGauge(string plain, out AnswerReading reading)
    {
        reading = default;
        string upper = plain.ToUpperInvariant();
        bool marked = upper.Contains("AWG") || upper.Contains("GAUGE") || (upper.Length > 0 && upper[0] == '#') || upper.Contains("/0");
        if (!marked)
        {
            return false;
        }

        string number = upper.Replace("AWG", "").Replace("GAUGE", "").Replace("#", "").Replace("NO.", "").Replace(" ", "").TrimEnd('.');
        if (!AwgSize.TryParse(number, CultureInfo.InvariantCulture, out AwgSize size))
        {
            return false;
        }

        reading = new AnswerReading(size.Number, number.Length, AnswerUnits.Find(AnswerUnit.Gauge));
        return true;
    }

    private static bool TryReadNumber(string text, CultureInfo culture, ref int at, out double value, out int figures)
    {
        value = 0;
        figures = 0;
        StringBuilder ascii = new();
        if (at < text.Length && text[at] is '-' or '+')
        {
            ascii.Append(text[at] == '-' ? "-" : "");
            at++;
            SkipSpace(text, ref at);
        }

        if (!TryReadDigits(text, culture, ref at, ascii, out figures))
        {
            return false;
        }

        if (!TryReadExponent(text, ref at, ascii))
        {
            return false;
        }

        return double.TryParse(ascii.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out value)
            && !double.IsInfinity(value) && !double.IsNaN(value);
    }

    private static bool TryReadDigits(string text, CultureInfo culture, ref int at, StringBuilder ascii, out int figures)
    {
        int start = at;
        while (at < text.Length && IsOfNumber(text, at))
        {
            at++;
        }

        string run = text.Substring(start, at - start);
        figures = 0;
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

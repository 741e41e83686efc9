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
        if (!NumberReader.TryRead(plain, culture, ref at, out double value, out int figures))
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
}

using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Teaching;

/// <summary>The many ways to write one character, as one.</summary>
internal static class AnswerSpelling
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>One minus, one kind of space, ASCII digits, a caret for superscripts, nothing invisible.</summary>
    internal static string Simplify(string text)
    {
        StringBuilder plain = new(text.Length);
        bool raised = false;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            int power = Raised.IndexOf(c), digit = power >= 0 ? power : DigitAt(text, i);
            bool opens = power >= 0 || c is '⁻' or '⁺';
            // 10³ is 10^3; without the caret it would be 103.
            plain.Append(opens && !raised ? "^" : "");
            raised = opens;
            if (digit >= 0)
            {
                plain.Append((char)('0' + digit));
                i += char.IsHighSurrogate(c) ? 1 : 0;
            }
            else
            {
                plain.Append(Plain(c));
            }
        }

        return plain.ToString().Trim();
    }

    // Digits of every script; some of them are pairs of characters. A half pair is no digit.
    private static int DigitAt(string text, int at) =>
        char.IsSurrogate(text[at]) && !char.IsSurrogatePair(text, at) ? -1 : CharUnicodeInfo.GetDecimalDigitValue(text, at);

    private static string Plain(char c) => Replacement(c)
        ?? (char.IsWhiteSpace(c) || char.IsControl(c) ? " " : CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.Format ? "" : c.ToString());

    private static string? Replacement(char c) => c switch
    {
        '−' or '–' or '—' or '‒' or '‑' or '‐' or '﹣' or '－' or '⁻' => "-",
        '⁺' or '＋' => "+",
        '٫' or '．' => ".",
        '，' => ",",
        '٬' or '’' or '‘' or 'ʼ' => "'",
        '\u2126' => "Ω",
        'ω' => "Ω",
        '\u03BC' => "µ",
        '⋅' or '∙' or '•' => "·",
        '✕' or '✖' or 'х' => "×",
        '⁄' or '∕' or '÷' or '／' => "/",
        '≅' or '≃' or '∼' or '≒' or '～' => "≈",
        '＝' => "=",
        '½' => " 1/2",
        '¼' => " 1/4",
        '¾' => " 3/4",
        _ => null,
    };
}

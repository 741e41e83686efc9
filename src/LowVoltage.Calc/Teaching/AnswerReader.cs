using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>Reads what students write: <c>2.4 A</c>, <c>2400 mA</c>, <c>I ≈ 2,4 A</c>, <c>about 7.9×10⁻³ Ω/m</c>, <c>1/2 A</c>, <c>No. 14</c>. Never throws.</summary>
/// <remarks>
/// The culture says which of point and comma is the decimal one. The other separates thousands where three figures follow; where they do not, it can only be
/// meant as the decimal one and is read so: 2,4 is 2.4 in every culture, 2,400 is 2.4 in one and 2400 in another.
/// </remarks>
internal static class AnswerReader
{
    // Longer texts are no answers; they are not even looked at.
    private const int Longest = 300;

    private static readonly char[] Introducers = ['=', '≈', '~', ':'];

    internal static bool TryRead(string? text, CultureInfo culture, out AnswerReading reading)
    {
        reading = new AnswerReading(0, 0, null, AnswerFlaw.Unreadable);
        if (text is null || text.Length > Longest)
        {
            reading = text is null ? reading with { Flaw = AnswerFlaw.Empty } : reading;
            return false;
        }

        string plain = AnswerSpelling.Simplify(text);
        if (plain.Length == 0)
        {
            reading = reading with { Flaw = AnswerFlaw.Empty };
            return false;
        }

        plain = plain.TrimEnd('.', '!', ',', ';', ' ');
        plain = AnswerWords.Strip(plain.Substring(plain.LastIndexOfAny(Introducers) + 1), out bool size);
        return GaugeReader.IsGauge(plain) ? GaugeReader.TryRead(plain, out reading) : TryReadNumber(plain, culture, size, ref reading);
    }

    private static bool TryReadNumber(string plain, CultureInfo culture, bool size, ref AnswerReading reading)
    {
        int at = 0;
        double? other = null;
        if (!FractionReader.TryRead(plain, ref at, out double value, out int figures) && !NumberReader.TryRead(plain, culture, ref at, out value, out figures, out other))
        {
            return false;
        }

        string rest = plain.Substring(at).Trim();
        AnswerUnit unit = null!;
        if (rest.Length > 0 && !AnswerUnits.TryFind(rest, out unit))
        {
            return false;
        }

        reading = new AnswerReading(value, figures, rest.Length == 0 ? null : unit) { WithDecimalMark = other, SaysSize = size };
        return true;
    }
}

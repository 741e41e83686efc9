using System.Globalization;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>Reads a gauge: <c>14 AWG</c>, <c>AWG 14</c>, <c>#14</c>, <c>No. 14</c>, <c>14 ga</c>, <c>2/0</c>, <c>0000 AWG</c>.</summary>
internal static class GaugeReader
{
    // The longer ones first, so that none leaves the tail of another behind.
    private static readonly string[] Marks = ["NUMBER", "GAUGE", "GAGE", "AWG", "GA", "NO.", "NO", "Nº", "N°", "#", "№"];

    /// <summary>Whether a text speaks of a gauge; what follows can still be none.</summary>
    internal static bool IsGauge(string text)
    {
        string number = Number(text, out bool marked);
        return number.Length > 0 && number.All(c => c is >= '0' and <= '9' or '/' or '-' or '+' or '.' or ',')
            && (marked || number.EndsWith("/0", StringComparison.Ordinal) || (number.Length > 1 && number.All(c => c == '0')));
    }

    internal static bool TryRead(string text, out AnswerReading reading)
    {
        string number = Number(text, out _);
        if (!AwgSize.TryParse(number, CultureInfo.InvariantCulture, out AwgSize size))
        {
            reading = new AnswerReading(0, 0, null, AnswerFlaw.NoSuchGauge);
            return false;
        }

        reading = new AnswerReading(size.Number, number.Length, AnswerUnits.Find(AnswerUnit.Gauge));
        return true;
    }

    private static string Number(string text, out bool marked)
    {
        string rest = text.ToUpperInvariant().Trim();
        marked = false;
        bool found;
        do
        {
            found = false;
            foreach (string mark in Marks)
            {
                bool starts = rest.StartsWith(mark, StringComparison.Ordinal), ends = rest.EndsWith(mark, StringComparison.Ordinal);
                if (starts || ends)
                {
                    rest = starts ? rest.Substring(mark.Length).TrimStart(' ', '-') : rest.Substring(0, rest.Length - mark.Length).TrimEnd(' ', '-');
                    marked = found = true;
                }
            }
        }
        while (found);

        return rest.Replace(" ", "");
    }
}

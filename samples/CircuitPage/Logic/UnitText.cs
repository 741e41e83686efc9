using System.Globalization;
using CircuitSchedule;

namespace CircuitPage;

/// <summary>Lengths and temperatures between the two systems of units: 1 ft is 0.3048 m exactly, °F = °C × 1.8 + 32.</summary>
internal static class UnitText
{
    private const double MetersInFoot = 0.3048;

    // Enough that a length of up to two decimals in feet or six in metres, and a temperature of up to three decimals, comes back as it was typed.
    private const int Decimals = 6;
    private const int FahrenheitDecimals = 4;

    public static double ToMetric(double value, Measure measure, PageUnits from) => (measure, from) switch
    {
        (Measure.Length, PageUnits.Us) => value * MetersInFoot,
        (Measure.Temperature, PageUnits.Us) => (value - 32) / 1.8,
        _ => value,
    };

    public static double FromMetric(double value, Measure measure, PageUnits to) => (measure, to) switch
    {
        (Measure.Length, PageUnits.Us) => value / MetersInFoot,
        (Measure.Temperature, PageUnits.Us) => (value * 1.8) + 32,
        _ => value,
    };

    /// <summary>The text of a field in other units; what is no number stays as it is.</summary>
    public static string Convert(string text, Measure measure, PageUnits from, PageUnits to)
    {
        if (measure == Measure.Same || from == to || PageNumber.Read(text, out double value) != NumberReading.Number)
        {
            return text;
        }

        double converted = FromMetric(ToMetric(value, measure, from), measure, to);
        int decimals = (measure, to) == (Measure.Temperature, PageUnits.Us) ? FahrenheitDecimals : Decimals;
        return Math.Round(converted, decimals).ToString("0.######", CultureInfo.InvariantCulture);
    }
}

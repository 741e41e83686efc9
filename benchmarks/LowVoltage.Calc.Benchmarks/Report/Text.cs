using System.Globalization;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>Numbers as the page prints them: as many digits as a measurement is worth.</summary>
internal static class Text
{
    /// <summary>Nanoseconds, in the unit that suits.</summary>
    internal static string Time(double ns) => ns switch
    {
        < 1e3 => Number(ns) + " ns",
        < 1e6 => Number(ns / 1e3) + " µs",
        < 1e9 => Number(ns / 1e6) + " ms",
        _ => Number(ns / 1e9) + " s",
    };

    internal static string Bytes(double bytes) => bytes switch
    {
        < 1e4 => bytes.ToString("0", CultureInfo.InvariantCulture) + " B",
        < 1e7 => Number(bytes / 1e3) + " kB",
        _ => Number(bytes / 1e6) + " MB",
    };

    internal static string Number(double value) => value switch
    {
        >= 99.5 => value.ToString("0", CultureInfo.InvariantCulture),
        >= 9.95 => value.ToString("0.0", CultureInfo.InvariantCulture),
        _ => value.ToString("0.00", CultureInfo.InvariantCulture),
    };

    /// <summary>One number where two are the same as printed, otherwise the range.</summary>
    internal static string Range(IReadOnlyCollection<double> values)
    {
        string least = Number(values.Min()), most = Number(values.Max());
        return least == most ? least : $"{least} to {most}";
    }
}

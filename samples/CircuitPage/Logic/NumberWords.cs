using System.Globalization;

namespace CircuitPage;

/// <summary>Numbers for a person to read: four figures, as on the library's calculation sheet.</summary>
internal static class NumberWords
{
    /// <summary>What keeps a number and its unit on one line.</summary>
    public const string Thin = "\u00A0";

    public static string Short(double value) => Math.Abs(value) is >= 9999.5 and < 1e6
        ? (Math.Round(value / 10) * 10).ToString("0", CultureInfo.InvariantCulture)
        : value.ToString("G4", CultureInfo.InvariantCulture);

    /// <summary>Four figures, rounded down: a limit is never shown above what it is.</summary>
    public static string ShortDown(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 3), down = Math.Floor(value / step) * step;
        return down.ToString("G4", CultureInfo.InvariantCulture);
    }

    public static string Three(double value) => value is > 0 and < 0.01 ? "under 0.01"
        : value >= 999.5 ? value.ToString("0", CultureInfo.InvariantCulture)
        : value.ToString("G3", CultureInfo.InvariantCulture);
}

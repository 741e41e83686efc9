using System.Globalization;

namespace CircuitSchedule;

/// <summary>Numbers as text, with a decimal point whatever the machine's culture.</summary>
internal static class Numbers
{
    /// <summary>For the table: three figures, none of them an exponent.</summary>
    public static string Short(double value) => value.ToString(
        value switch { < 0.1 => "0.0000", < 1 => "0.000", < 10 => "0.00", < 100 => "0.0", _ => "0" }, CultureInfo.InvariantCulture);

    /// <summary>For the result file: six figures.</summary>
    public static string Six(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>A count with its noun: 1 circuit, 2 circuits.</summary>
    public static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");
}

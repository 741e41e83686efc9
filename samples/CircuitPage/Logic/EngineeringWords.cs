namespace CircuitPage;

/// <summary>A small value below its limit in the unit that a person would write it in: 45.6 mΩ for 0.0456 Ω.</summary>
internal static class EngineeringWords
{
    private static readonly string[] Scaled = ["V", "A", "Ω", "W", "s", "m", "Ω/m"];

    /// <returns>The value with its unit; null where it stays as it is.</returns>
    public static string? Of(double value, double limit, string unit)
    {
        double size = Math.Abs(value);
        return value >= limit || size == 0 || size >= 0.1 || Array.IndexOf(Scaled, unit) < 0 ? null
            : size < 1e-4 ? NumberWords.Short(value * 1e6) + NumberWords.Thin + "µ" + unit
            : NumberWords.Short(value * 1e3) + NumberWords.Thin + "m" + unit;
    }
}

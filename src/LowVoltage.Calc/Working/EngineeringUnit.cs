namespace LowVoltage.Calc.Working;

/// <summary>A quantity in the unit that a person would write it in: 45.6 mΩ for 0.0456 Ω.</summary>
/// <remarks>Only what is below a tenth of a unit that takes prefixes changes; 0.36 V stays. Large quantities stay too: trade and standards write 4000 A.</remarks>
internal static class EngineeringUnit
{
    private const double LargestScaled = 0.1;
    private const double LargestMicro = 1e-4;

    // What a double holds for sure: times a thousand is then the same digits, moved.
    private const int Exact = 15;

    private static readonly string[] Scaled = ["V", "A", "Ω", "W", "s", "m", "Ω/m"];

    internal static (double Value, string Unit) Of(double value, string unit)
    {
        double size = Math.Abs(value);
        if (size == 0 || size >= LargestScaled || Array.IndexOf(Scaled, unit) < 0)
        {
            return (value, unit);
        }

        return size < LargestMicro ? (NumberText.Round(value * 1e6, Exact), "µ" + unit) : (NumberText.Round(value * 1e3, Exact), "m" + unit);
    }
}

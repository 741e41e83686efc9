using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B figure 11-6: the altitude factor, from the four points that worked examples state.</summary>
/// <remarks>
/// 0 ft 1.00, 20 000 ft 0.91, 35 000 ft 0.86, 60 000 ft 0.79; linear between, nothing below sea level or above 60 000 ft. The curve is convex, so a straight line reads slightly high.
/// Only the point at 20 000 ft was read in the circular; the others are from memory.
/// </remarks>
public static class FaaAltitude
{
    private static readonly double[] Feet = [0, 20_000, 35_000, 60_000];
    private static readonly double[] Factors = [1.00, 0.91, 0.86, 0.79];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Figure 11-6, as stated in worked examples", Kind = ReferenceKind.FromMemory,
        Note = "20 000 ft was read on page 11-27; 0 ft, 35 000 ft and 60 000 ft are from memory.",
    };

    /// <summary>The factor for an altitude.</summary>
    /// <param name="altitude">Altitude, 0 ft to 60 000 ft (18 288 m).</param>
    /// <param name="factor">The factor; null outside the points.</param>
    /// <returns>Whether the points cover the altitude.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is beyond 1e7 m either way.</exception>
    public static bool TryFactor(Length altitude, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        double feet = InFeet(altitude);
        factor = TryValue(feet, out double value)
            ? new DeratingFactor(value, DeratingKind.Altitude, RuleSet.FaaAc4313, Reference) { Holds = new LateText("altitude {0} ft", feet) }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for an altitude.</summary>
    /// <param name="altitude">Altitude, 0 ft to 60 000 ft (18 288 m).</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The altitude is below sea level or above 60 000 ft.</exception>
    public static DeratingFactor Factor(Length altitude) => TryFactor(altitude, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(nameof(altitude), Accept.Text(InFeet(altitude)) + " ft", "FAA AC 43.13-1B figure 11-6", "0 ft to 60 000 ft");

    internal static bool TryValue(double feet, out double value)
    {
        value = 0;
        if (!(feet >= 0 && feet <= Feet[Feet.Length - 1]))
        {
            return false;
        }

        int below = Math.Min(Steps.AtMost(Feet, feet), Feet.Length - 2);
        double along = (feet - Feet[below]) / (Feet[below + 1] - Feet[below]);
        value = (Factors[below] * (1 - along)) + (Factors[below + 1] * along);
        return true;
    }

    private static double InFeet(Length altitude)
    {
        double feet = altitude.Unit == UnitsNet.Units.LengthUnit.Foot ? altitude.Value : Accept.Raw(altitude) / 0.3048;
        return TableKey.Rounded(Accept.Within(feet, -Accept.MostMeters / 0.3048, Accept.MostMeters / 0.3048, "ft", nameof(altitude)));
    }
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B Table 11-3: the circuit breaker and the fuse that protect a copper aircraft wire.</summary>
/// <remarks>
/// Basis, from memory: bundles of 15 or more wires in 57 °C (135 °F) ambient up to 30 000 ft with at most 20 % of the bundle's capacity in use, the protectors in 75 °F to
/// 85 °F. It is another basis than Table 11-9. Breakers end at size 2, fuses at 1/0. Guidance, public domain.
/// The source prints three columns apart; rows are paired by their order.
/// </remarks>
public static class FaaAc43Table11Dash3
{
    private const string Name = "FAA AC 43.13-1B Table 11-3";

    // Size, breaker, fuse; NaN where the source has none.
    private static readonly double[][] Rows =
    [
        [22, 5, 5],
        [20, 7.5, 5],
        [18, 10, 10],
        [16, 15, 10],
        [14, 20, 15],
        [12, 30, 20],
        [10, 40, 30],
        [8, 50, 50],
        [6, 80, 70],
        [4, 100, 70],
        [2, 125, 100],
        [1, double.NaN, 150],
        [0, double.NaN, 150],
    ];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Table 11-3", Kind = ReferenceKind.Handbook,
        Note = "Guidance. The basis printed under the chart is quoted from memory.",
    };

    /// <summary>The circuit breaker for a wire.</summary>
    /// <param name="size">Aircraft wire size.</param>
    /// <param name="rating">The breaker's rating; zero when the table has none.</param>
    /// <returns>Whether the table has a breaker for this size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static bool TryBreaker(AircraftWireSize size, out ElectricCurrent rating) => Try(size, 1, out rating);

    /// <summary>The circuit breaker for a wire.</summary>
    /// <param name="size">Aircraft wire size.</param>
    /// <returns>The breaker's rating.</returns>
    /// <exception cref="OutsidePublishedRangeException">The table has no breaker for this size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ElectricCurrent Breaker(AircraftWireSize size) => TryBreaker(size, out ElectricCurrent rating)
        ? rating
        : throw OutsidePublishedRangeException.For(nameof(size), size.ToString(), Name, "breakers for sizes 22, 20, 18, 16, 14, 12, 10, 8, 6, 4 and 2");

    /// <summary>The fuse for a wire.</summary>
    /// <param name="size">Aircraft wire size.</param>
    /// <param name="rating">The fuse's rating; zero when the table has none.</param>
    /// <returns>Whether the table has a fuse for this size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static bool TryFuse(AircraftWireSize size, out ElectricCurrent rating) => Try(size, 2, out rating);

    /// <summary>The fuse for a wire.</summary>
    /// <param name="size">Aircraft wire size.</param>
    /// <returns>The fuse's rating.</returns>
    /// <exception cref="OutsidePublishedRangeException">The table has no fuse for this size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static ElectricCurrent Fuse(AircraftWireSize size) => TryFuse(size, out ElectricCurrent rating)
        ? rating
        : throw OutsidePublishedRangeException.For(nameof(size), size.ToString(), Name, "fuses for sizes 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1 and 1/0");

    internal static bool TryAmperes(int number, int column, out double amperes)
    {
        double[]? row = Array.Find(Rows, r => r[0] == number);
        amperes = row?[column] ?? double.NaN;
        return !double.IsNaN(amperes);
    }

    private static bool Try(AircraftWireSize size, int column, out ElectricCurrent rating)
    {
        bool found = TryAmperes(size.Need(nameof(size)).Number, column, out double amperes);
        rating = found ? ElectricCurrent.FromAmperes(amperes) : default;
        return found;
    }
}

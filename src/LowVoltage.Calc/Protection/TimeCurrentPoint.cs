using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>A point of a time-current curve: an operating time at a constant current.</summary>
/// <remarks>Stored in amperes and seconds, so equality is exact. <c>default</c> is no point: it prints <c>no point</c>, every curve refuses it, and its properties refuse to be read.</remarks>
public readonly struct TimeCurrentPoint : IEquatable<TimeCurrentPoint>
{
    internal TimeCurrentPoint(double amperes, double seconds)
    {
        Amperes = amperes;
        Seconds = seconds;
    }

    /// <summary>The current.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes > 0 ? Amperes : throw NoValue.Read(nameof(TimeCurrentPoint)));

    /// <summary>The time.</summary>
    public Duration Time => Duration.FromSeconds(Seconds > 0 ? Seconds : throw NoValue.Read(nameof(TimeCurrentPoint)));

    internal double Amperes { get; }

    internal double Seconds { get; }

    /// <summary>A point.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <param name="time">Operating time at this current. Positive.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current or the time is outside its range.</exception>
    public static TimeCurrentPoint Create(ElectricCurrent current, Duration time) =>
        new(Accept.Amperes(current, nameof(current)), Accept.Seconds(time, nameof(time)));

    /// <inheritdoc/>
    public bool Equals(TimeCurrentPoint other) => Amperes.Equals(other.Amperes) && Seconds.Equals(other.Seconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TimeCurrentPoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (Amperes, Seconds).GetHashCode();

    /// <summary>Whether two points are the same.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other point.</param>
    public static bool operator ==(TimeCurrentPoint left, TimeCurrentPoint right) => left.Equals(right);

    /// <summary>Whether two points differ.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other point.</param>
    public static bool operator !=(TimeCurrentPoint left, TimeCurrentPoint right) => !left.Equals(right);

    /// <summary>The point as text: <c>20.25 A, 1800 s</c>.</summary>
    public override string ToString() => Amperes == 0 && Seconds == 0 ? "no point" : $"{Accept.Text(Amperes)} A, {Accept.Text(Seconds)} s";
}

using System.Globalization;
using UnitsNet;

namespace LowVoltage.Calc.Quantities;

/// <summary>Resistance of a conductor per unit length, R′. UnitsNet has no such quantity.</summary>
/// <remarks>
/// Stored as one number in Ω/m, so equality and ordering are exact. <c>default</c> is 0 Ω/m.
/// Accepted: zero to 1e9 Ω/m, finite.
/// </remarks>
public readonly struct LinearResistance : IEquatable<LinearResistance>, IComparable<LinearResistance>, IFormattable
{
    private const double MetersPerThousandFeet = 304.8;

    private LinearResistance(double ohmsPerMeter) => OhmsPerMeter = ohmsPerMeter;

    /// <summary>Resistance in ohms per metre.</summary>
    public double OhmsPerMeter { get; }

    /// <summary>Resistance in ohms per kilometre, which is also milliohms per metre.</summary>
    public double OhmsPerKilometer => OhmsPerMeter * 1000;

    /// <summary>Resistance in ohms per 1000 ft.</summary>
    public double OhmsPerThousandFeet => OhmsPerMeter * MetersPerThousandFeet;

    /// <summary>A resistance per length from ohms per metre.</summary>
    /// <param name="value">The value in Ω/m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, not finite or above 1e9 Ω/m.</exception>
    public static LinearResistance FromOhmsPerMeter(double value) =>
        new(Accept.NotNegative(value, Accept.MostOhms, "Ω/m", nameof(value)));

    /// <summary>A resistance per length from ohms per kilometre (milliohms per metre).</summary>
    /// <param name="value">The value in Ω/km.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, not finite or above 1e12 Ω/km.</exception>
    public static LinearResistance FromOhmsPerKilometer(double value) =>
        new(Accept.NotNegative(value, Accept.MostOhms * 1000, "Ω/km", nameof(value)) / 1000);

    /// <summary>A resistance per length from ohms per 1000 ft.</summary>
    /// <param name="value">The value in Ω/1000 ft.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, not finite or above 3.048e11 Ω/1000 ft.</exception>
    public static LinearResistance FromOhmsPerThousandFeet(double value) =>
        new(Accept.NotNegative(value, Accept.MostOhms * MetersPerThousandFeet, "Ω/1000 ft", nameof(value)) / MetersPerThousandFeet);

    /// <summary>The resistance of a length of this conductor.</summary>
    /// <param name="length">Length of conductor (one way; nothing is doubled here). Zero or greater.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or above 1e7 m.</exception>
    public ElectricResistance Multiply(Length length) =>
        ElectricResistance.FromOhms(OhmsPerMeter * Accept.MetersOrZero(length, nameof(length)));

    /// <summary>The resistance of a length of this conductor.</summary>
    public static ElectricResistance operator *(LinearResistance resistance, Length length) => resistance.Multiply(length);

    /// <inheritdoc/>
    public bool Equals(LinearResistance other) => OhmsPerMeter.Equals(other.OhmsPerMeter);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LinearResistance other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => OhmsPerMeter.GetHashCode();

    /// <inheritdoc/>
    public int CompareTo(LinearResistance other) => OhmsPerMeter.CompareTo(other.OhmsPerMeter);

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(LinearResistance left, LinearResistance right) => left.Equals(right);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(LinearResistance left, LinearResistance right) => !left.Equals(right);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(LinearResistance left, LinearResistance right) => left.OhmsPerMeter < right.OhmsPerMeter;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(LinearResistance left, LinearResistance right) => left.OhmsPerMeter > right.OhmsPerMeter;

    /// <summary>Whether the left value is smaller or the same.</summary>
    public static bool operator <=(LinearResistance left, LinearResistance right) => left.OhmsPerMeter <= right.OhmsPerMeter;

    /// <summary>Whether the left value is larger or the same.</summary>
    public static bool operator >=(LinearResistance left, LinearResistance right) => left.OhmsPerMeter >= right.OhmsPerMeter;

    /// <summary>The value in Ω/km to four digits, invariant: <c>8.286 Ω/km</c>.</summary>
    public override string ToString() => ToString("G4", CultureInfo.InvariantCulture);

    /// <summary>The value in Ω/km in a number format of the caller's.</summary>
    /// <param name="format">A numeric format; <c>null</c> means <c>G4</c>.</param>
    /// <param name="formatProvider">The culture; <c>null</c> means the invariant one.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        OhmsPerKilometer.ToString(format ?? "G4", formatProvider ?? CultureInfo.InvariantCulture) + " Ω/km";
}

using System.Globalization;

namespace LowVoltage.Calc.Quantities;

/// <summary>Joule integral, ∫i²dt, in A²s: what a fuse lets through and what a conductor withstands. UnitsNet has no such quantity.</summary>
/// <remarks>Stored as one number in A²s, so equality and ordering are exact. <c>default</c> is 0 A²s. Accepted: zero to 1e24 A²s, finite.</remarks>
public readonly struct JouleIntegral : IEquatable<JouleIntegral>, IComparable<JouleIntegral>, IFormattable
{
    private const double Most = 1e24;

    private JouleIntegral(double ampereSquaredSeconds) => AmpereSquaredSeconds = ampereSquaredSeconds;

    /// <summary>The value in A²s.</summary>
    public double AmpereSquaredSeconds { get; }

    /// <summary>A Joule integral from ampere-squared seconds.</summary>
    /// <param name="value">The value in A²s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative, not finite or above 1e24 A²s.</exception>
    public static JouleIntegral FromAmpereSquaredSeconds(double value) => new(Accept.NotNegative(value, Most, "A²s", nameof(value)));

    /// <inheritdoc/>
    public bool Equals(JouleIntegral other) => AmpereSquaredSeconds.Equals(other.AmpereSquaredSeconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is JouleIntegral other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => AmpereSquaredSeconds.GetHashCode();

    /// <inheritdoc/>
    public int CompareTo(JouleIntegral other) => AmpereSquaredSeconds.CompareTo(other.AmpereSquaredSeconds);

    /// <summary>Whether two values are the same.</summary>
    public static bool operator ==(JouleIntegral left, JouleIntegral right) => left.Equals(right);

    /// <summary>Whether two values differ.</summary>
    public static bool operator !=(JouleIntegral left, JouleIntegral right) => !left.Equals(right);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds < right.AmpereSquaredSeconds;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds > right.AmpereSquaredSeconds;

    /// <summary>Whether the left value is smaller or the same.</summary>
    public static bool operator <=(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds <= right.AmpereSquaredSeconds;

    /// <summary>Whether the left value is larger or the same.</summary>
    public static bool operator >=(JouleIntegral left, JouleIntegral right) => left.AmpereSquaredSeconds >= right.AmpereSquaredSeconds;

    /// <summary>The value in A²s to four digits, invariant: <c>1234 A²s</c>.</summary>
    public override string ToString() => ToString("G4", CultureInfo.InvariantCulture);

    /// <summary>The value in A²s in a number format of the caller's.</summary>
    /// <param name="format">A numeric format; <c>null</c> means <c>G4</c>.</param>
    /// <param name="formatProvider">The culture; <c>null</c> means the invariant one.</param>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        AmpereSquaredSeconds.ToString(format ?? "G4", formatProvider ?? CultureInfo.InvariantCulture) + " A²s";
}

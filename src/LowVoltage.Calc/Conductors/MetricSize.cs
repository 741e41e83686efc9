using System.Globalization;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A nominal metric conductor size. The number is a name fixed by a standard's largest resistance, not a measured area.</summary>
public readonly struct MetricSize : IEquatable<MetricSize>
{
    private MetricSize(double squareMillimeters) => SquareMillimeters = squareMillimeters;

    /// <summary>The nominal cross-section.</summary>
    public Area NominalArea => Area.FromSquareMillimeters(SquareMillimeters);

    internal double SquareMillimeters { get; }

    /// <summary>A size from its nominal square millimetres.</summary>
    public static MetricSize FromSquareMillimeters(double value) =>
        new(Accept.Positive(value, Accept.MostSquareMillimeters, "mm²", nameof(value)));

    /// <inheritdoc/>
    public bool Equals(MetricSize other) => SquareMillimeters.Equals(other.SquareMillimeters);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MetricSize other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => SquareMillimeters.GetHashCode();

    /// <summary>Whether two sizes are the same.</summary>
    public static bool operator ==(MetricSize left, MetricSize right) => left.Equals(right);

    /// <summary>Whether two sizes differ.</summary>
    public static bool operator !=(MetricSize left, MetricSize right) => !left.Equals(right);

    /// <summary>The size as text: <c>2.5 mm²</c>.</summary>
    public override string ToString() => SquareMillimeters.ToString(CultureInfo.InvariantCulture) + " mm²";
}

using System.Globalization;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A size of the American Wire Gauge, 4/0 to 40 (ASTM B258).</summary>
/// <remarks><code>d = 0.127 mm · 92^((36 − n)/39)</code> with n = −3 for 4/0, 0 for 1/0.</remarks>
public readonly struct AwgSize : IEquatable<AwgSize>
{
    private readonly sbyte number;

    private AwgSize(int number) => this.number = (sbyte)number;

    /// <summary>The gauge number: −3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else 1 to 40.</summary>
    public int Number => number;

    /// <summary>Nominal diameter of the solid wire.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMillimeters);

    internal double DiameterMillimeters => 0.127 * Math.Pow(92, (36 - number) / 39.0);

    internal double AreaSquareMillimeters => Math.PI / 4 * DiameterMillimeters * DiameterMillimeters;

    /// <summary>A size from its number: −3 (4/0) to 40.</summary>
    public static AwgSize FromNumber(int number) => new(Accept.Count(number, -3, 40, nameof(number)));

    /// <inheritdoc/>
    public bool Equals(AwgSize other) => number == other.number;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is AwgSize other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => number;

    /// <summary>Whether two sizes are the same.</summary>
    public static bool operator ==(AwgSize left, AwgSize right) => left.Equals(right);

    /// <summary>Whether two sizes differ.</summary>
    public static bool operator !=(AwgSize left, AwgSize right) => !left.Equals(right);

    /// <summary>The size as text: <c>14 AWG</c>, <c>4/0 AWG</c>.</summary>
    public override string ToString() =>
        number > 0
            ? number.ToString(CultureInfo.InvariantCulture) + " AWG"
            : (1 - number).ToString(CultureInfo.InvariantCulture) + "/0 AWG";
}

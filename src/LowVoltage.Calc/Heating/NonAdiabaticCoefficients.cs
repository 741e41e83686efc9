namespace LowVoltage.Calc.Heating;

/// <summary>X and Y of the simplified non-adiabatic factor of IEC 60949.</summary>
/// <remarks><c>default</c> is X = Y = 0, which makes the factor 1 (adiabatic).</remarks>
public readonly struct NonAdiabaticCoefficients : IEquatable<NonAdiabaticCoefficients>
{
    internal NonAdiabaticCoefficients(double x, double y)
    {
        X = x;
        Y = y;
    }

    /// <summary>X in √(mm²/s).</summary>
    public double X { get; }

    /// <summary>Y in mm²/s.</summary>
    public double Y { get; }

    /// <inheritdoc/>
    public bool Equals(NonAdiabaticCoefficients other) => X.Equals(other.X) && Y.Equals(other.Y);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is NonAdiabaticCoefficients other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (X, Y).GetHashCode();

    /// <summary>Whether two pairs are the same.</summary>
    /// <param name="left">One pair.</param>
    /// <param name="right">The other pair.</param>
    public static bool operator ==(NonAdiabaticCoefficients left, NonAdiabaticCoefficients right) => left.Equals(right);

    /// <summary>Whether two pairs differ.</summary>
    /// <param name="left">One pair.</param>
    /// <param name="right">The other pair.</param>
    public static bool operator !=(NonAdiabaticCoefficients left, NonAdiabaticCoefficients right) => !left.Equals(right);
}

namespace LowVoltage.Calc.Conductors;

public readonly partial struct ConductorSize : IEquatable<ConductorSize>
{
    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ConductorSize other && Equals(other);

    /// <summary>Whether two sizes are the same.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator ==(ConductorSize left, ConductorSize right) => left.Equals(right);

    /// <summary>Whether two sizes differ.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator !=(ConductorSize left, ConductorSize right) => !left.Equals(right);
}

namespace LowVoltage.Calc.Conductors;

public readonly partial struct AircraftWireSize : IEquatable<AircraftWireSize>, IComparable<AircraftWireSize>
{
    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is AircraftWireSize other && Equals(other);

    /// <summary>Whether two sizes are the same.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator ==(AircraftWireSize left, AircraftWireSize right) => left.Equals(right);

    /// <summary>Whether two sizes differ.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator !=(AircraftWireSize left, AircraftWireSize right) => !left.Equals(right);

    /// <summary>Whether the left size is smaller.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator <(AircraftWireSize left, AircraftWireSize right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left size is larger.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator >(AircraftWireSize left, AircraftWireSize right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left size is smaller or the same.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator <=(AircraftWireSize left, AircraftWireSize right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left size is larger or the same.</summary>
    /// <param name="left">A size.</param>
    /// <param name="right">Another size.</param>
    public static bool operator >=(AircraftWireSize left, AircraftWireSize right) => left.CompareTo(right) >= 0;
}

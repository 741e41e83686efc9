namespace LowVoltage.Calc.Conductors;

/// <content>Equality by value: two wires made alike are the same wire.</content>
public sealed partial class Wire : IEquatable<Wire>
{
    /// <summary>Whether another wire is the same in all its values, names and sources.</summary>
    /// <param name="other">The other wire, or null.</param>
    /// <returns>True when nothing differs.</returns>
    public bool Equals(Wire? other) => ReferenceEquals(this, other)
        || (other is not null
            && WallMillimeters.Equals(other.WallMillimeters)
            && Conductor.Equals(other.Conductor)
            && Insulation.Equals(other.Insulation));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Wire);

    /// <inheritdoc/>
    public override int GetHashCode() => (Conductor, Insulation, WallMillimeters).GetHashCode();

    /// <summary>Whether two wires are the same.</summary>
    /// <param name="left">A wire, or null.</param>
    /// <param name="right">Another wire, or null.</param>
    public static bool operator ==(Wire? left, Wire? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two wires differ.</summary>
    /// <param name="left">A wire, or null.</param>
    /// <param name="right">Another wire, or null.</param>
    public static bool operator !=(Wire? left, Wire? right) => !(left == right);
}

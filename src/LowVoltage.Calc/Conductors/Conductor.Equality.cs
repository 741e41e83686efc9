namespace LowVoltage.Calc.Conductors;

/// <content>Equality by value: two conductors made alike are the same conductor.</content>
public sealed partial class Conductor : IEquatable<Conductor>
{
    /// <summary>Whether another conductor is the same in all its values, names and sources.</summary>
    /// <param name="other">The other conductor, or null.</param>
    /// <returns>True when nothing differs.</returns>
    public bool Equals(Conductor? other) => ReferenceEquals(this, other)
        || (other is not null
            && OhmsPerMeter20.Equals(other.OhmsPerMeter20)
            && AreaSquareMillimeters.Equals(other.AreaSquareMillimeters)
            && DiameterMillimeters.Equals(other.DiameterMillimeters)
            && LayFactor.Equals(other.LayFactor)
            && System == other.System
            && Basis == other.Basis
            && Size == other.Size
            && Name == other.Name
            && Material.Equals(other.Material)
            && Reference.Equals(other.Reference));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Conductor);

    /// <inheritdoc/>
    public override int GetHashCode() => (OhmsPerMeter20, AreaSquareMillimeters, System).GetHashCode();

    /// <summary>Whether two conductors are the same.</summary>
    /// <param name="left">A conductor, or null.</param>
    /// <param name="right">Another conductor, or null.</param>
    public static bool operator ==(Conductor? left, Conductor? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two conductors differ.</summary>
    /// <param name="left">A conductor, or null.</param>
    /// <param name="right">Another conductor, or null.</param>
    public static bool operator !=(Conductor? left, Conductor? right) => !(left == right);
}

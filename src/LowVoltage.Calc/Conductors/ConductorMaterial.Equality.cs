namespace LowVoltage.Calc.Conductors;

/// <content>Equality by value: two metals made alike are the same metal.</content>
public sealed partial class ConductorMaterial : IEquatable<ConductorMaterial>
{
    /// <summary>Whether another metal is the same in all its values, names and sources.</summary>
    /// <param name="other">The other metal, or null.</param>
    /// <returns>True when nothing differs.</returns>
    public bool Equals(ConductorMaterial? other) => ReferenceEquals(this, other)
        || (other is not null
            && OhmMeters20.Equals(other.OhmMeters20)
            && TemperatureCoefficient.Equals(other.TemperatureCoefficient)
            && DensityKilogramsPerCubicMeter.Equals(other.DensityKilogramsPerCubicMeter)
            && HeatCapacityJoulesPerCubicMeterKelvin.Equals(other.HeatCapacityJoulesPerCubicMeterKelvin)
            && InferredZeroCelsius.Equals(other.InferredZeroCelsius)
            && MeltingPointCelsius.Equals(other.MeltingPointCelsius)
            && Name == other.Name
            && Reference.Equals(other.Reference));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ConductorMaterial);

    /// <inheritdoc/>
    public override int GetHashCode() => (OhmMeters20, TemperatureCoefficient, Name).GetHashCode();

    /// <summary>Whether two metals are the same.</summary>
    /// <param name="left">A metal, or null.</param>
    /// <param name="right">Another metal, or null.</param>
    public static bool operator ==(ConductorMaterial? left, ConductorMaterial? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two metals differ.</summary>
    /// <param name="left">A metal, or null.</param>
    /// <param name="right">Another metal, or null.</param>
    public static bool operator !=(ConductorMaterial? left, ConductorMaterial? right) => !(left == right);
}

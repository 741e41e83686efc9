namespace LowVoltage.Calc.Conductors;

/// <content>Equality by value: two insulations made alike are the same insulation.</content>
public sealed partial class InsulationMaterial : IEquatable<InsulationMaterial>
{
    /// <summary>Whether another insulation is the same in all its values, names and sources.</summary>
    /// <param name="other">The other insulation, or null.</param>
    /// <returns>True when nothing differs.</returns>
    public bool Equals(InsulationMaterial? other) => ReferenceEquals(this, other)
        || (other is not null
            && ContinuousCelsius.Equals(other.ContinuousCelsius)
            && ShortCircuitCelsius.Equals(other.ShortCircuitCelsius)
            && ThermalResistivityKelvinMetersPerWatt.Equals(other.ThermalResistivityKelvinMetersPerWatt)
            && HeatCapacityJoulesPerCubicMeterKelvin.Equals(other.HeatCapacityJoulesPerCubicMeterKelvin)
            && Emissivity.Equals(other.Emissivity)
            && Nullable.Equals(LargeConductorShortCircuitCelsius, other.LargeConductorShortCircuitCelsius)
            && HasPublishedShortCircuitLimit == other.HasPublishedShortCircuitLimit
            && Name == other.Name
            && Reference.Equals(other.Reference)
            && ShortCircuitReference.Equals(other.ShortCircuitReference)
            && ThermalReference.Equals(other.ThermalReference));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as InsulationMaterial);

    /// <inheritdoc/>
    public override int GetHashCode() => (ContinuousCelsius, ShortCircuitCelsius, Name).GetHashCode();

    /// <summary>Whether two insulations are the same.</summary>
    /// <param name="left">An insulation, or null.</param>
    /// <param name="right">Another insulation, or null.</param>
    public static bool operator ==(InsulationMaterial? left, InsulationMaterial? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two insulations differ.</summary>
    /// <param name="left">An insulation, or null.</param>
    /// <param name="right">Another insulation, or null.</param>
    public static bool operator !=(InsulationMaterial? left, InsulationMaterial? right) => !(left == right);
}

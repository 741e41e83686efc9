using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A node, branch, source or load of a solved harness as a document states it; what does not belong to it is <c>null</c>.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentedPart
{
    internal DocumentedPart(string id)
    {
        Id = id;
    }

    /// <summary>Its name.</summary>
    public string Id { get; }

    /// <summary>Of a node over the reference, of a source or load across its terminals.</summary>
    public ElectricPotential? Voltage => Volts is { } volts ? ElectricPotential.FromVolts(volts) : null;

    /// <summary>Of a branch from its first node to its second, of a source what it gives, of a load what it draws.</summary>
    public ElectricCurrent? Current => Amperes is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>Power lost in a branch.</summary>
    public Power? Loss => Watts is { } watts ? Power.FromWatts(watts) : null;

    /// <summary>Temperature of a wire.</summary>
    public Temperature? Temperature => Celsius is { } celsius ? UnitsNet.Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>What a load does.</summary>
    public LoadCondition? Condition { get; internal init; }

    internal double? Volts { get; init; }

    internal double? Amperes { get; init; }

    internal double? Watts { get; init; }

    internal double? Celsius { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Id;
}

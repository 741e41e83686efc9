using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A bare conductor: how much metal of what kind, and its resistance per length.</summary>
/// <remarks>
/// Says which size system it is on (<see cref="System"/>) and where its resistance comes from (<see cref="Basis"/>).
/// Immutable and thread-safe.
/// </remarks>
public sealed class Conductor
{
    internal double OhmsPerMeter20 { get; init; }

    /// <summary>Metal cross-section, or a standard's nominal section, mm².</summary>
    internal double AreaSquareMillimeters { get; init; }

    internal double DiameterMillimeters { get; init; }

    /// <summary>What the conductor is called: <c>14 AWG copper</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The system the size belongs to.</summary>
    public SizeSystem System { get; internal init; }

    /// <summary>Where the resistance comes from.</summary>
    public ResistanceBasis Basis { get; internal init; }

    /// <summary>The metal.</summary>
    public ConductorMaterial Material { get; internal init; } = ConductorMaterial.Copper;

    /// <summary>The source of the size and resistance.</summary>
    public required Reference Reference { get; init; }

    /// <summary>Length of strand per length of conductor; 1 for a solid wire and for a standard's maximum, which contains it.</summary>
    public double LayFactor { get; internal init; } = 1;

    /// <summary>Cross-section of the metal; for a standard's size its nominal section, which is a name and not an area.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    /// <summary>Section of a solid bar of the same metal and resistance, ρ20/R′20. Short-circuit heating uses this one, which is never the larger.</summary>
    public Area EffectiveArea => Area.FromSquareMillimeters(EffectiveAreaSquareMillimeters);

    internal double EffectiveAreaSquareMillimeters => Material.OhmMeters20 * 1e6 / OhmsPerMeter20;

    /// <summary>A round solid wire of a gauge size.</summary>
    public static Conductor Solid(AwgSize size, ConductorMaterial material)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        double area = size.AreaSquareMillimeters;
        return new Conductor
        {
            Name = $"{size} {material.Name}",
            System = SizeSystem.AmericanWireGauge,
            Basis = ResistanceBasis.SolidGeometry,
            Material = material,
            AreaSquareMillimeters = area,
            DiameterMillimeters = size.DiameterMillimeters,
            OhmsPerMeter20 = material.OhmMeters20 * 1e6 / area,
            Reference = new Reference { Title = "ASTM B258", Edition = "2018", Kind = ReferenceKind.Standard },
        };
    }

    /// <summary>Resistance per length at a conductor temperature.</summary>
    /// <param name="temperature">Conductor temperature θ, not the ambient.</param>
    public LinearResistance ResistancePerLength(Temperature temperature) =>
        LinearResistance.FromOhmsPerMeter(OhmsPerMeterAt(Accept.Celsius(temperature, nameof(temperature))));

    /// <summary>R′(θ) in Ω/m; θ in °C.</summary>
    internal double OhmsPerMeterAt(double celsius) => OhmsPerMeter20 * Material.RatioTo20(celsius);

    /// <inheritdoc/>
    public override string ToString() => Name;
}

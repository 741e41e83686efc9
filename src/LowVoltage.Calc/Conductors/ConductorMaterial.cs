using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A conductor metal: resistivity and how it rises with temperature, density and heat capacity, each with its source.</summary>
/// <remarks>
/// <code>ρ(θ) = ρ20 · [1 + α20 · (θ − 20 °C)]</code>
/// Immutable and thread-safe.
/// </remarks>
public sealed class ConductorMaterial
{
    // SI inside, so that kernels never convert.
    internal double OhmMeters20 { get; init; }

    internal double DensityKilogramsPerCubicMeter { get; init; }

    internal double HeatCapacityJoulesPerCubicMeterKelvin { get; init; }

    internal double InferredZeroCelsius { get; init; }

    internal double MeltingPointCelsius { get; init; }

    /// <summary>Name of the metal: <c>copper</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Resistivity at 20 °C, ρ20.</summary>
    public ElectricResistivity Resistivity => ElectricResistivity.FromOhmMeters(OhmMeters20);

    /// <summary>Temperature coefficient of resistance at 20 °C, α20, per kelvin.</summary>
    public double TemperatureCoefficient { get; internal init; }

    /// <summary>The temperature at which a straight line through the resistance would reach zero, −β: about −234.5 °C for copper.</summary>
    public Temperature InferredZero => Temperature.FromDegreesCelsius(InferredZeroCelsius);

    /// <summary>Density at 20 °C.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(DensityKilogramsPerCubicMeter);

    /// <summary>Volumetric heat capacity at 20 °C, σc.</summary>
    public VolumetricHeatCapacity VolumetricHeatCapacity =>
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(HeatCapacityJoulesPerCubicMeterKelvin);

    /// <summary>Melting point; above it no result is given.</summary>
    public Temperature MeltingPoint => Temperature.FromDegreesCelsius(MeltingPointCelsius);

    /// <summary>Where the electrical constants come from.</summary>
    public required Reference Reference { get; init; }

    /// <summary>Annealed copper, 100 % IACS: ρ20 = 1/58 Ω·mm²/m, α20 = 0.00393 /K, β = 234.5 °C.</summary>
    public static ConductorMaterial Copper { get; } = new()
    {
        Name = "copper",
        OhmMeters20 = 1e-6 / 58,
        TemperatureCoefficient = 0.00393,
        InferredZeroCelsius = -234.5,
        DensityKilogramsPerCubicMeter = 8890,
        HeatCapacityJoulesPerCubicMeterKelvin = 3.45e6,
        MeltingPointCelsius = 1083,
        Reference = new Reference
        {
            Title = "IEC 60028", Edition = "1925", Kind = ReferenceKind.Standard,
            Note = "Density as ASTM B496; heat capacity as IEC 60949, from memory, validated by K = 226.",
        },
    };

    /// <summary>ρ at a temperature, in Ω·m. θ in °C.</summary>
    internal double OhmMetersAt(double celsius) => OhmMeters20 * RatioTo20(celsius);

    /// <summary>ρ(θ)/ρ20. θ in °C.</summary>
    internal double RatioTo20(double celsius) => 1 + (TemperatureCoefficient * (celsius - 20));

    /// <inheritdoc/>
    public override string ToString() => Name;
}

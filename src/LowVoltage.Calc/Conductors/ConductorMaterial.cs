using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A conductor metal: resistivity and how it rises with temperature, density and heat capacity, each with its source.</summary>
/// <remarks>
/// <code>ρ(θ) = ρ20 · [1 + α20 · (θ − 20 °C)]</code>
/// <para>ρ20 in Ω·m, α20 in 1/K. <b>Valid</b> from −100 °C to the melting point (<see cref="LowestTemperature"/>, <see cref="MeltingPoint"/>);
/// outside it public members refuse. The straight line is within about 1 % for copper and aluminium from −100 °C to 200 °C and understates the
/// resistance near the melting point.</para>
/// <para>α20 and β (minus the <see cref="InferredZero"/>) both stand as published: 1/0.00393 − 20 is 234.45 where IEC prints 234.5. Resistance
/// uses α20; adiabatic heating uses β.</para>
/// Immutable and thread-safe; equal by value.
/// </remarks>
public sealed partial class ConductorMaterial
{
    /// <summary>The lower end of the straight-line law, °C.</summary>
    internal const double LowestCelsius = -100;

    // Where the line of a constant resistance would reach zero: nowhere. The adiabatic law, which computes with differences, keeps all its digits this far off.
    private const double NoInferredZero = -1e12;

    internal ConductorMaterial()
    {
    }

    // SI inside, so that kernels never convert.
    internal double OhmMeters20 { get; init; }

    internal double DensityKilogramsPerCubicMeter { get; init; }

    internal double HeatCapacityJoulesPerCubicMeterKelvin { get; init; }

    internal double InferredZeroCelsius { get; init; }

    internal double MeltingPointCelsius { get; init; }

    /// <summary>Name of the metal: <c>copper</c>.</summary>
    public string Name { get; internal init; } = "";

    /// <summary>Resistivity at 20 °C, ρ20.</summary>
    public ElectricResistivity Resistivity => ElectricResistivity.FromOhmMeters(OhmMeters20);

    /// <summary>Conductivity as a share of annealed copper, in per cent of the International Annealed Copper Standard (58 MS/m).</summary>
    public double PercentIacs => 100 / (58e6 * OhmMeters20);

    /// <summary>Temperature coefficient of resistance at 20 °C, α20, per kelvin.</summary>
    public double TemperatureCoefficient { get; internal init; }

    /// <summary>The temperature at which a straight line through the resistance would reach zero, −β: −234.5 °C for copper.</summary>
    /// <exception cref="InvalidOperationException">The resistance of the metal does not change, so there is no such temperature.</exception>
    public Temperature InferredZero => HasConstantResistance
        ? throw new InvalidOperationException($"The resistance of {Name} does not change with temperature, so its line reaches zero nowhere.")
        : Temperature.FromDegreesCelsius(InferredZeroCelsius);

    /// <summary>Whether the resistance does not change with temperature: α20 is 0.</summary>
    public bool HasConstantResistance => TemperatureCoefficient == 0;

    /// <summary>Density at 20 °C.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(DensityKilogramsPerCubicMeter);

    /// <summary>Volumetric heat capacity at 20 °C, σc.</summary>
    public VolumetricHeatCapacity VolumetricHeatCapacity =>
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(HeatCapacityJoulesPerCubicMeterKelvin);

    /// <summary>Melting point; above it no result is given. The least one where an alloy or a composite has several.</summary>
    public Temperature MeltingPoint => Temperature.FromDegreesCelsius(MeltingPointCelsius);

    /// <summary>The lowest temperature of the straight-line law, −100 °C.</summary>
    public static Temperature LowestTemperature => Temperature.FromDegreesCelsius(LowestCelsius);

    /// <summary>Where the electrical constants come from; the note says where the others do.</summary>
    public Reference Reference { get; internal init; } = null!;

    /// <summary>Resistivity at a temperature.</summary>
    /// <param name="temperature">Metal temperature θ, from −100 °C to the melting point.</param>
    /// <returns>ρ(θ).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside that range.</exception>
    /// <remarks><code>ρ(θ) = ρ20 · [1 + α20 · (θ − 20 °C)]</code></remarks>
    public ElectricResistivity ResistivityAt(Temperature temperature) =>
        ElectricResistivity.FromOhmMeters(OhmMetersAt(AcceptCelsius(temperature, nameof(temperature))));

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>ρ at a temperature, in Ω·m. θ in °C.</summary>
    internal double OhmMetersAt(double celsius) => OhmMeters20 * RatioTo20(celsius);

    /// <summary>ρ(θ)/ρ20. θ in °C.</summary>
    internal double RatioTo20(double celsius) => 1 + (TemperatureCoefficient * (celsius - 20));

    /// <summary>A temperature inside the range of the straight-line law, in °C.</summary>
    internal double AcceptCelsius(in Temperature temperature, string name) =>
        Accept.Within(Accept.Celsius(temperature, name), LowestCelsius, MeltingPointCelsius, "°C", name);
}

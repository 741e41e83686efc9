using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>An insulation: the conductor temperature it stands for years, the one it stands for a short circuit of up to 5 s, and how it conducts, stores and radiates heat.</summary>
/// <remarks>
/// Where no short-circuit limit is published, the limit is the continuous one (or the overload temperature of the standard), which is on the safe side; the
/// reference says so. Where a thermal value is not published for the material, the cautious end stands: high thermal resistivity, low heat capacity,
/// low emissivity. Immutable and thread-safe; equal by value.
/// </remarks>
public sealed partial class InsulationMaterial
{
    /// <summary>Above this section a PVC cable has a lower short-circuit limit, mm².</summary>
    private const double LargeConductorSquareMillimeters = 300;

    internal InsulationMaterial()
    {
    }

    internal double ContinuousCelsius { get; init; }

    /// <summary>Whether a short circuit may heat it further than service may.</summary>
    internal bool HasShortCircuitRoom => ShortCircuitCelsius > ContinuousCelsius;

    internal double ShortCircuitCelsius { get; init; }

    internal double ThermalResistivityKelvinMetersPerWatt { get; init; }

    internal double HeatCapacityJoulesPerCubicMeterKelvin { get; init; }

    // The limit for conductors over 300 mm², where it differs.
    private double? LargeConductorShortCircuitCelsius { get; init; }

    /// <summary>Name of the insulation: <c>PVC (70 °C)</c>.</summary>
    public string Name { get; private init; } = "";

    /// <summary>Highest conductor temperature in continuous service.</summary>
    public Temperature ContinuousLimit => Temperature.FromDegreesCelsius(ContinuousCelsius);

    /// <summary>Highest conductor temperature at the end of a short circuit (at most 5 s); for PVC, conductors up to 300 mm².</summary>
    public Temperature ShortCircuitLimit => Temperature.FromDegreesCelsius(ShortCircuitCelsius);

    /// <summary>Whether the short-circuit limit is published for a short circuit, and not a cautious stand-in.</summary>
    public bool HasPublishedShortCircuitLimit { get; private init; } = true;

    /// <summary>Thermal resistivity ρT in K·m/W; UnitsNet has only its reciprocal, <see cref="ThermalConductivity"/>.</summary>
    public double ThermalResistivity => ThermalResistivityKelvinMetersPerWatt;

    /// <summary>Thermal conductivity, 1/ρT.</summary>
    public ThermalConductivity ThermalConductivity => ThermalConductivity.FromWattsPerMeterKelvin(1 / ThermalResistivityKelvinMetersPerWatt);

    /// <summary>Volumetric heat capacity σ.</summary>
    public VolumetricHeatCapacity VolumetricHeatCapacity =>
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(HeatCapacityJoulesPerCubicMeterKelvin);

    /// <summary>Emissivity ε of the surface for thermal radiation, 0 to 1.</summary>
    public double Emissivity { get; private init; }

    /// <summary>Source of the continuous limit.</summary>
    public Reference Reference { get; private init; } = null!;

    /// <summary>Source of the short-circuit limit.</summary>
    public Reference ShortCircuitReference { get; private init; } = null!;

    /// <summary>Source of thermal resistivity, heat capacity and emissivity.</summary>
    public Reference ThermalReference { get; private init; } = null!;

    /// <summary>Short-circuit limit on a conductor: lower for PVC above 300 mm² (140 °C), else <see cref="ShortCircuitLimit"/>.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    public Temperature ShortCircuitLimitFor(Conductor conductor) => Temperature.FromDegreesCelsius(
        ShortCircuitCelsiusFor((conductor ?? throw new ArgumentNullException(nameof(conductor))).AreaSquareMillimeters));

    /// <summary>A wire rated at a temperature, with no published short-circuit limit: the rating stands in for it, which is the safest reading.</summary>
    /// <param name="name">What it is called: <c>125 °C rated</c>.</param>
    /// <param name="continuous">Rated conductor temperature, from 40 °C to 400 °C.</param>
    /// <returns>The insulation, with cautious thermal values.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside that range.</exception>
    public static InsulationMaterial Rated(string name, Temperature continuous)
    {
        string called = NotEmpty(name);
        double celsius = RatedCelsius(continuous, nameof(continuous));
        return Make(called, celsius, celsius, UnknownThermal, StatedByCaller, NoShortCircuitLimit, published: false);
    }

    /// <summary>A wire rated at a temperature, with a short-circuit limit that the caller knows.</summary>
    /// <param name="name">What it is called: <c>125 °C rated</c>.</param>
    /// <param name="continuous">Rated conductor temperature, from 40 °C to 400 °C.</param>
    /// <param name="shortCircuit">Highest conductor temperature at the end of a short circuit, from the rating to 500 °C.</param>
    /// <returns>The insulation, with cautious thermal values.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public static InsulationMaterial Rated(string name, Temperature continuous, Temperature shortCircuit)
    {
        string called = NotEmpty(name);
        double celsius = RatedCelsius(continuous, nameof(continuous));
        double limit = Accept.Within(Accept.Celsius(shortCircuit, nameof(shortCircuit)), celsius, 500, "°C", nameof(shortCircuit));
        return Make(called, celsius, limit, UnknownThermal, StatedByCaller, StatedByCaller);
    }

    /// <summary>An insulation of the caller's, from a data sheet: limits and how it conducts, stores and radiates heat.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="continuous">Highest conductor temperature in continuous service, from 40 °C to 400 °C.</param>
    /// <param name="shortCircuit">Highest conductor temperature at the end of a short circuit of up to 5 s, from the continuous one to 500 °C. Where none is published give the continuous one.</param>
    /// <param name="conductivity">Thermal conductivity 1/ρT, from 0.02 to 5 W/(m·K); plastics 0.1 to 0.4.</param>
    /// <param name="heatCapacity">Volumetric heat capacity σ, from 1e5 to 1e7 J/(m³·K); plastics 0.9e6 to 3.5e6.</param>
    /// <param name="emissivity">Emissivity ε of the surface, 0 to 1; plastics 0.85 to 0.96.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>The insulation.</returns>
    /// <exception cref="ArgumentNullException">Name or reference is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>For limits alone, with the cautious thermal values, <see cref="Rated(string, Temperature)"/> is enough.</remarks>
    public static InsulationMaterial Create(
        string name,
        Temperature continuous,
        Temperature shortCircuit,
        ThermalConductivity conductivity,
        VolumetricHeatCapacity heatCapacity,
        double emissivity,
        Reference reference)
    {
        string called = NotEmpty(name);
        double celsius = RatedCelsius(continuous, nameof(continuous));
        double limit = Accept.Within(Accept.Celsius(shortCircuit, nameof(shortCircuit)), celsius, 500, "°C", nameof(shortCircuit));
        Thermal thermal = StatedThermal(conductivity, heatCapacity, emissivity, reference);
        return Make(called, celsius, limit, thermal, reference, reference, published: limit > celsius);
    }

    /// <summary>The same insulation, with its limits, and thermal values of the caller's.</summary>
    /// <param name="conductivity">Thermal conductivity 1/ρT, from 0.02 to 5 W/(m·K).</param>
    /// <param name="heatCapacity">Volumetric heat capacity σ, from 1e5 to 1e7 J/(m³·K).</param>
    /// <param name="emissivity">Emissivity ε of the surface, 0 to 1.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>A copy with these values.</returns>
    /// <exception cref="ArgumentNullException">The reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public InsulationMaterial WithThermal(ThermalConductivity conductivity, VolumetricHeatCapacity heatCapacity, double emissivity, Reference reference) => Make(
        Name,
        ContinuousCelsius,
        ShortCircuitCelsius,
        StatedThermal(conductivity, heatCapacity, emissivity, reference),
        Reference,
        ShortCircuitReference,
        LargeConductorShortCircuitCelsius,
        HasPublishedShortCircuitLimit);

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>An insulation as a document states it: what is left out is as <see cref="Rated(string, Temperature)"/> takes it.</summary>
    internal static InsulationMaterial Stated(
        string name,
        double continuous,
        (double? Limit, double? Large, bool? Published, Reference? Reference) shortCircuit,
        (double Resistivity, double HeatCapacity, double Emissivity)? thermal,
        Reference? thermalReference,
        Reference? reference)
    {
        double limit = Accept.Within(shortCircuit.Limit ?? continuous, continuous, 500, "°C", nameof(shortCircuit));
        double? large = shortCircuit.Large is { } own ? Accept.Within(own, continuous, limit, "°C", "shortCircuitAbove300Mm2") : null;
        return Make(
            NotEmpty(name),
            continuous,
            limit,
            new Thermal(
                thermal?.Resistivity ?? UnknownThermal.Resistivity,
                thermal?.HeatCapacity ?? UnknownThermal.HeatCapacity,
                thermal?.Emissivity ?? UnknownThermal.Emissivity,
                thermalReference ?? (thermal is null ? UnknownThermal.Reference : StatedByCaller)),
            reference ?? StatedByCaller,
            shortCircuit.Reference ?? (shortCircuit.Limit is null ? NoShortCircuitLimit : StatedByCaller),
            large,
            shortCircuit.Published ?? shortCircuit.Limit is not null);
    }

    /// <summary>The limit for conductors over 300 mm², where it differs.</summary>
    internal double? LargeConductorCelsius => LargeConductorShortCircuitCelsius;

    /// <summary>The short-circuit limit in °C for a conductor section in mm².</summary>
    internal double ShortCircuitCelsiusFor(double squareMillimeters) =>
        squareMillimeters > LargeConductorSquareMillimeters ? LargeConductorShortCircuitCelsius ?? ShortCircuitCelsius : ShortCircuitCelsius;

    private static double RatedCelsius(in Temperature continuous, string name) => Accept.Within(Accept.Celsius(continuous, name), 40, 400, "°C", name);

    private static Thermal StatedThermal(in ThermalConductivity conductivity, in VolumetricHeatCapacity heatCapacity, double emissivity, Reference reference) => new(
        1 / Accept.Within(Accept.Raw(conductivity), 0.02, 5, "W/(m·K)", nameof(conductivity)),
        Accept.Within(Accept.Raw(heatCapacity), 1e5, 1e7, "J/(m³·K)", nameof(heatCapacity)),
        Accept.Within(emissivity, 0, 1, "", nameof(emissivity)),
        reference ?? throw new ArgumentNullException(nameof(reference)));

    private static string NotEmpty(string name)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        return string.IsNullOrWhiteSpace(name) ? throw new ArgumentException("A name is needed; it was empty.", nameof(name)) : name;
    }
}

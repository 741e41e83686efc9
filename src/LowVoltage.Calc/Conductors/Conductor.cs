using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A bare conductor: how much metal of what kind, and its resistance per length.</summary>
/// <remarks>
/// <code>R′(θ) = R′20 · [1 + α20 · (θ − 20 °C)];  geometry: R′20 = ρ20 · lay/A;  a standard's size: R′20 from its table</code>
/// Says which size system it is on (<see cref="System"/>) and where its resistance comes from (<see cref="Basis"/>).
/// Immutable and thread-safe; equal by value.
/// </remarks>
public sealed partial class Conductor
{
    internal Conductor()
    {
    }

    internal double OhmsPerMeter20 { get; init; }

    /// <summary>Metal cross-section, or a standard's nominal section, mm².</summary>
    internal double AreaSquareMillimeters { get; init; }

    internal double DiameterMillimeters { get; init; }

    /// <summary>What the conductor is called: <c>14 AWG copper</c>.</summary>
    public string Name { get; internal init; } = "";

    /// <summary>The size, with its system; null for a geometry of the caller's.</summary>
    public ConductorSize? Size { get; internal init; }

    /// <summary>The system the size belongs to.</summary>
    public SizeSystem System { get; internal init; }

    /// <summary>Where the resistance comes from.</summary>
    public ResistanceBasis Basis { get; internal init; }

    /// <summary>The metal.</summary>
    public ConductorMaterial Material { get; internal init; } = ConductorMaterial.Copper;

    /// <summary>The source of the size and resistance.</summary>
    public Reference Reference { get; internal init; } = null!;

    /// <summary>Length of strand per length of conductor; 1 for a solid wire and for a standard's maximum, which contains it.</summary>
    public double LayFactor { get; internal init; } = 1;

    /// <summary>Cross-section of the metal; for a standard's size its nominal section, which is a name and not an area.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    /// <summary>Section of a solid bar of the same metal and resistance, ρ20/R′20, and never more than <see cref="Area"/>. Short-circuit heating uses this one.</summary>
    public Area EffectiveArea => Area.FromSquareMillimeters(EffectiveAreaSquareMillimeters);

    /// <summary>Diameter over the metal.</summary>
    /// <remarks>
    /// <code>strands: D = d · √((4n − 1)/3), which is 3, 5, 7, 9 d for 7, 19, 37, 61 strands in concentric layers</code>
    /// For <see cref="Iso6722(MetricSize)"/> the standard's largest conductor diameter where known (from memory) and between its neighbours, with D² in
    /// proportion to the section, where not; for a bar of the caller's the circle of the same area.
    /// </remarks>
    public Length Diameter => Length.FromMillimeters(DiameterMillimeters);

    /// <summary>Mass per length, lay factor included.</summary>
    /// <remarks>
    /// <code>m′ = density · A · lay</code>
    /// For a standard's size A is the nominal section; the standard fixes the resistance, and real wire is 2 % to 10 % lighter.
    /// </remarks>
    public LinearDensity MassPerLength => LinearDensity.FromKilogramsPerMeter(KilogramsPerMeter);

    internal double EffectiveAreaSquareMillimeters => Math.Min(Material.OhmMeters20 * 1e6 / OhmsPerMeter20, AreaSquareMillimeters);

    internal double KilogramsPerMeter => Material.DensityKilogramsPerCubicMeter * AreaSquareMillimeters * 1e-6 * LayFactor;

    /// <summary>Resistance per length at a conductor temperature.</summary>
    /// <param name="temperature">Conductor temperature θ, not the ambient; from −100 °C to the metal's melting point.</param>
    /// <returns>R′(θ).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside that range.</exception>
    public LinearResistance ResistancePerLength(Temperature temperature) =>
        LinearResistance.FromOhmsPerMeter(OhmsPerMeterAt(Material.AcceptCelsius(temperature, nameof(temperature))));

    /// <summary>Resistance of a length of the conductor.</summary>
    /// <param name="length">Length of conductor, one way; nothing is doubled here. Zero or greater.</param>
    /// <param name="temperature">Conductor temperature θ, from −100 °C to the metal's melting point.</param>
    /// <returns>R = R′(θ) · length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ElectricResistance Resistance(Length length, Temperature temperature) => ElectricResistance.FromOhms(
        OhmsPerMeterAt(Material.AcceptCelsius(temperature, nameof(temperature))) * Accept.MetersOrZero(length, nameof(length)));

    /// <summary>Mass of a length of the conductor; see <see cref="MassPerLength"/>.</summary>
    /// <param name="length">Length of conductor. Zero or greater.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public Mass Mass(Length length) => UnitsNet.Mass.FromKilograms(KilogramsPerMeter * Accept.MetersOrZero(length, nameof(length)));

    /// <summary>Mean conductor temperature from a measured resistance: the inverse of <see cref="Resistance"/>.</summary>
    /// <param name="measured">Measured resistance. Positive.</param>
    /// <param name="length">Length of conductor measured. Positive.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the resistance belongs to a temperature outside −100 °C to the melting point.
    /// </exception>
    /// <remarks>
    /// <code>θ = 20 °C + (R/(R′20 · length) − 1)/α20</code>
    /// Only as good as the 20 °C resistance: a standard's maximum is 2 % to 15 % above real wire, which is 5 °C to 40 °C. Calibrate with
    /// <see cref="Stated"/>.
    /// </remarks>
    public Temperature TemperatureFromResistance(ElectricResistance measured, Length length)
    {
        double ohms = Accept.Ohms(measured, nameof(measured));
        double ohmsAt20 = OhmsPerMeter20 * Accept.Meters(length, nameof(length));
        if (Material.HasConstantResistance)
        {
            throw new ArgumentOutOfRangeException(nameof(measured), ohms, $"measured must be of a conductor whose resistance changes with temperature; that of {Name} does not, and says nothing about it.");
        }

        double celsius = CelsiusFromRatio(ohms / ohmsAt20);
        return IsValid(celsius)
            ? Temperature.FromDegreesCelsius(celsius)
            : throw new ArgumentOutOfRangeException(
                nameof(measured),
                ohms,
                $"measured must be from {Accept.Text(ohmsAt20 * Material.RatioTo20(ConductorMaterial.LowestCelsius))} Ω to "
                + $"{Accept.Text(ohmsAt20 * Material.RatioTo20(Material.MeltingPointCelsius))} Ω for this length of {Name} between "
                + $"{Accept.Text(ConductorMaterial.LowestCelsius)} °C and its melting point; it was {Accept.Text(ohms)} Ω.");
    }

    /// <summary>Mean conductor temperature from a measured resistance; false when it lies outside −100 °C to the melting point.</summary>
    /// <param name="measured">Measured resistance. Positive.</param>
    /// <param name="length">Length of conductor measured. Positive.</param>
    /// <param name="temperature">The temperature, or the default.</param>
    /// <returns>Whether the resistance belongs to a temperature inside the range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public bool TryTemperatureFromResistance(ElectricResistance measured, Length length, out Temperature temperature)
    {
        double celsius = CelsiusFromRatio(Accept.Ohms(measured, nameof(measured)) / (OhmsPerMeter20 * Accept.Meters(length, nameof(length))));
        bool valid = !Material.HasConstantResistance && IsValid(celsius);
        temperature = valid ? Temperature.FromDegreesCelsius(celsius) : default;
        return valid;
    }

    /// <summary>Current density J = I/A, over the metal section (for a standard's size the nominal one).</summary>
    /// <param name="current">Current. Zero or greater.</param>
    /// <returns>The current density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public ElectricCurrentDensity CurrentDensity(ElectricCurrent current) => ElectricCurrentDensity.FromAmperesPerSquareMeter(
        Accept.AmperesOrZero(current, nameof(current)) / (AreaSquareMillimeters * 1e-6));

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>R′(θ) in Ω/m; θ in °C.</summary>
    internal double OhmsPerMeterAt(double celsius) => OhmsPerMeter20 * Material.RatioTo20(celsius);

    private double CelsiusFromRatio(double ratio) => 20 + ((ratio - 1) / Material.TemperatureCoefficient);

    // A last-bit error must not lose an end of the range.
    private bool IsValid(double celsius) =>
        celsius >= ConductorMaterial.LowestCelsius - 1e-6 && celsius <= Material.MeltingPointCelsius + 1e-6;
}

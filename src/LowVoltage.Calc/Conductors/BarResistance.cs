using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>The resistance of a bar of one resistivity, and the three inverses.</summary>
/// <remarks>
/// <code>R = ρ · L/A</code>
/// <para>ρ in Ω·m at the bar's temperature, L in m, A in m². Exact for a uniform bar and current along it; for a wire's temperature, stranding and size
/// use <see cref="Conductor"/>. Accepted: ρ from 1e-12 to 1e9 Ω·m, L to 1e7 m, A from 1e-12 to 1e6 mm², R from 1e-12 to 1e9 Ω.</para>
/// </remarks>
public static partial class BarResistance
{
    /// <summary>Resistance of a bar.</summary>
    /// <param name="resistivity">ρ. Positive.</param>
    /// <param name="length">L. Zero or greater.</param>
    /// <param name="area">A. Positive.</param>
    /// <returns>R = ρL/A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance Resistance(ElectricResistivity resistivity, Length length, Area area) => ElectricResistance.FromOhms(
        OhmMeters(resistivity) * Accept.MetersOrZero(length, nameof(length)) / SquareMeters(area));

    /// <summary>Resistivity from a measured resistance.</summary>
    /// <param name="resistance">R. Positive.</param>
    /// <param name="length">L. Positive.</param>
    /// <param name="area">A. Positive.</param>
    /// <returns>ρ = RA/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistivity Resistivity(ElectricResistance resistance, Length length, Area area) => ElectricResistivity.FromOhmMeters(
        Accept.Ohms(resistance, nameof(resistance)) * SquareMeters(area) / Accept.Meters(length, nameof(length)));

    /// <summary>The cross-section that gives a resistance.</summary>
    /// <param name="resistivity">ρ. Positive.</param>
    /// <param name="length">L. Positive.</param>
    /// <param name="resistance">R. Positive.</param>
    /// <returns>A = ρL/R.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Area AreaFor(ElectricResistivity resistivity, Length length, ElectricResistance resistance) => Area.FromSquareMeters(
        OhmMeters(resistivity) * Accept.Meters(length, nameof(length)) / Accept.Ohms(resistance, nameof(resistance)));

    /// <summary>The length that gives a resistance.</summary>
    /// <param name="resistivity">ρ. Positive.</param>
    /// <param name="area">A. Positive.</param>
    /// <param name="resistance">R. Positive.</param>
    /// <returns>L = RA/ρ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Length LengthFor(ElectricResistivity resistivity, Area area, ElectricResistance resistance) => Length.FromMeters(
        Accept.Ohms(resistance, nameof(resistance)) * SquareMeters(area) / OhmMeters(resistivity));

    /// <summary>Electric field along a bar that carries a current.</summary>
    /// <param name="resistivity">ρ. Positive.</param>
    /// <param name="current">I. Zero or greater.</param>
    /// <param name="area">A. Positive.</param>
    /// <returns>E = ρI/A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricField FieldStrength(ElectricResistivity resistivity, ElectricCurrent current, Area area) => ElectricField.FromVoltsPerMeter(
        OhmMeters(resistivity) * Accept.AmperesOrZero(current, nameof(current)) / SquareMeters(area));

    private static double OhmMeters(in ElectricResistivity resistivity) => Accept.Positive(resistivity.OhmMeters, Accept.MostOhms, "Ω·m", nameof(resistivity));

    private static double SquareMeters(in Area area) => Accept.SquareMillimeters(area, nameof(area)) * 1e-6;
}

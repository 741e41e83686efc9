using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The voltage-drop formula and its inverses (longest run, smallest cross-section), for conductors at one temperature and a known current.</summary>
/// <remarks>
/// <code>ΔV = I·R′·L    R = ρ·L/S    S = ρ·L·I/ΔV    P = I²·R</code>
/// <para><b>Symbols.</b> ΔV volt, I ampere, R′ ohm per metre, L metre of conductor, ρ ohm-metre, S cross-section.</para>
/// <para><b>Lengths</b> are metres of conductor that carry the current, out plus back. Nothing is doubled here: for two equal conductors
/// ask <see cref="OutAndBack(LinearResistance, Length, LinearResistance, Length)"/> or add the two lengths yourself.</para>
/// <para><b>Source.</b> FAA AC 43.13-1B, paragraph 11-66 and tables 11-7 and 11-8; Ohm's law.</para>
/// </remarks>
public static partial class VoltageDrop
{
    /// <summary>The drop along a conductor, ΔV = I·R′·L.</summary>
    /// <param name="resistance">Resistance per length R′ at the conductor's temperature.</param>
    /// <param name="length">Length of conductor, zero or greater.</param>
    /// <param name="current">Current I, zero or greater.</param>
    /// <returns>The drop.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricPotential Along(LinearResistance resistance, Length length, ElectricCurrent current) =>
        ElectricPotential.FromVolts(
            resistance.OhmsPerMeter * Accept.MetersOrZero(length, nameof(length)) * Accept.AmperesOrZero(current, nameof(current)));

    /// <summary>The voltage drop along a conductor at its temperature, ΔV = I·R′(θ)·L: a wire, its length, the current, and volts come back.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="length">Length of conductor, zero or greater; out plus back for the drop of a pair.</param>
    /// <param name="current">Current I, zero or greater.</param>
    /// <param name="temperature">Conductor temperature θ, not the ambient; from −100 °C to the metal's melting point.</param>
    /// <returns>The drop.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>The inverse is <see cref="ConductorSeries.SmallestFor"/>: the smallest size of a series whose drop is within an allowance.</remarks>
    public static ElectricPotential Along(Conductor conductor, Length length, ElectricCurrent current, Temperature temperature) =>
        Along((conductor ?? throw new ArgumentNullException(nameof(conductor))).ResistancePerLength(temperature), length, current);

    /// <summary>The longest conductor whose drop stays within an allowance, L = ΔV/(R′·I).</summary>
    /// <param name="resistance">Resistance per length R′ at the conductor's temperature, positive.</param>
    /// <param name="current">Current I, positive.</param>
    /// <param name="allowed">Allowed drop ΔV, positive.</param>
    /// <returns>Length of conductor, out plus back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Length GreatestRun(LinearResistance resistance, ElectricCurrent current, ElectricPotential allowed)
    {
        double ohmsPerMeter = Accept.Positive(resistance.OhmsPerMeter, Accept.MostOhms, "Ω/m", nameof(resistance));
        return Length.FromMeters(Accept.Volts(allowed, nameof(allowed)) / ohmsPerMeter / Accept.Amperes(current, nameof(current)));
    }

    /// <summary>The greatest resistance through which a current drops no more than an allowance, R = ΔV/I: out and back together.</summary>
    /// <param name="current">Current I, positive.</param>
    /// <param name="allowed">Allowed drop ΔV, positive.</param>
    /// <returns>The resistance of the whole way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance GreatestResistance(ElectricCurrent current, ElectricPotential allowed) =>
        ElectricResistance.FromOhms(Accept.Volts(allowed, nameof(allowed)) / Accept.Amperes(current, nameof(current)));

    /// <summary>The smallest cross-section whose drop stays within an allowance, S = ρ·L·I/ΔV.</summary>
    /// <param name="resistivity">Resistivity ρ at the conductor's temperature, positive.</param>
    /// <param name="length">Length of conductor, out plus back, positive.</param>
    /// <param name="current">Current I, positive.</param>
    /// <param name="allowed">Allowed drop ΔV, positive.</param>
    /// <returns>Cross-section of metal, of a conductor whose resistance is ρ/S.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// <b>Not a choice of a size.</b> The largest resistance that a standard allows for a nominal size is 2 % to 15 % above ρ/S, so the next nominal size up may drop more than is
    /// allowed: 3.83 mm² leads to 4 mm², which drops 0.377 V of 0.36 V. <see cref="ConductorSeries.SmallestFor"/> chooses by the size's own resistance.
    /// </remarks>
    public static Area LeastArea(ElectricResistivity resistivity, Length length, ElectricCurrent current, ElectricPotential allowed) =>
        Area.FromSquareMillimeters(
            OhmMeters(resistivity, nameof(resistivity)) * 1e6 * Accept.Meters(length, nameof(length))
            * Accept.Amperes(current, nameof(current)) / Accept.Volts(allowed, nameof(allowed)));

    /// <summary>The cross-section that gives a length of conductor a resistance, S = ρ·L/R.</summary>
    /// <param name="resistivity">Resistivity ρ at the conductor's temperature, positive.</param>
    /// <param name="length">Length of conductor, positive.</param>
    /// <param name="resistance">Resistance R of that length, positive.</param>
    /// <returns>Cross-section of metal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Area LeastArea(ElectricResistivity resistivity, Length length, ElectricResistance resistance)
    {
        double squareMeters = OhmMeters(resistivity, nameof(resistivity)) * Accept.Meters(length, nameof(length)) / Positive(resistance);
        return Area.FromSquareMillimeters(squareMeters * 1e6);
    }

    /// <summary>The resistance of a conductor, R = ρ·L/S.</summary>
    /// <param name="resistivity">Resistivity ρ at the conductor's temperature, positive.</param>
    /// <param name="length">Length of conductor, zero or greater.</param>
    /// <param name="area">Cross-section of metal S, positive.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance ResistanceOf(ElectricResistivity resistivity, Length length, Area area) =>
        ElectricResistance.FromOhms(OhmMeters(resistivity, nameof(resistivity)) * 1e6
            * Accept.MetersOrZero(length, nameof(length)) / Accept.SquareMillimeters(area, nameof(area)));

    /// <summary>The resistance of the way out and the way back.</summary>
    /// <param name="feed">Resistance per length of the feed.</param>
    /// <param name="feedLength">Length of the feed, zero or greater.</param>
    /// <param name="back">Resistance per length of the return.</param>
    /// <param name="backLength">Length of the return, zero or greater.</param>
    /// <returns>The resistance of both in series.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricResistance OutAndBack(LinearResistance feed, Length feedLength, LinearResistance back, Length backLength) =>
        ElectricResistance.FromOhms((feed.OhmsPerMeter * Accept.MetersOrZero(feedLength, nameof(feedLength)))
            + (back.OhmsPerMeter * Accept.MetersOrZero(backLength, nameof(backLength))));

    /// <summary>Power lost in a resistance, P = I²·R.</summary>
    /// <param name="current">Current I, zero or greater.</param>
    /// <param name="resistance">Resistance R, zero or greater.</param>
    /// <returns>The power turned into heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Power Lost(ElectricCurrent current, ElectricResistance resistance)
    {
        double i = Accept.AmperesOrZero(current, nameof(current));
        return Power.FromWatts(i * i * Accept.OhmsOrZero(resistance, nameof(resistance)));
    }

    /// <summary>Power lost in a resistance as a share of the power sent out, I²R/(V·I) = I·R/V, which is also the drop as a share of the voltage.</summary>
    /// <param name="current">Current I, zero or greater.</param>
    /// <param name="resistance">Resistance R, zero or greater.</param>
    /// <param name="sent">Voltage V at the sending end, positive.</param>
    /// <returns>The share; above 100 per cent means that the current cannot flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Ratio LostShare(ElectricCurrent current, ElectricResistance resistance, ElectricPotential sent) =>
        Ratio.FromDecimalFractions(Accept.AmperesOrZero(current, nameof(current))
            * Accept.OhmsOrZero(resistance, nameof(resistance)) / Accept.Volts(sent, nameof(sent)));

    internal static double OhmMeters(ElectricResistivity resistivity, string name)
    {
        double ohmMeters = Accept.Raw(resistivity);
        return Accept.Positive(ohmMeters, 1, "Ω·m", name);
    }

    private static double Positive(ElectricResistance resistance)
    {
        double ohms = Accept.Raw(resistance);
        return Accept.Positive(ohms, Accept.MostVolts / Accept.Least, "Ω", nameof(resistance));
    }
}

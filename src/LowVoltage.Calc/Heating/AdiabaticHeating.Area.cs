using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The forms that take a metal and its section.</content>
public static partial class AdiabaticHeating
{
    /// <summary>Conductor temperature at the end of a short circuit.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C to the melting point.</param>
    /// <returns>θf = θi + (θi + β)·(exp(I²t/(K·S)²) − 1).</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ConductorMeltsException">The conductor melts before the time is over.</exception>
    public static Temperature FinalTemperature(
        ConductorMaterial material, Area area, ElectricCurrent current, Duration duration, Temperature initial) =>
        FinalOf(Given(material), Section(area), current, duration, initial);

    /// <summary>Conductor temperature at the end of a short circuit, or the statement that the conductor melts.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C to the melting point.</param>
    /// <param name="final">The temperature at the end, or the melting point when the result is false.</param>
    /// <returns>False when the conductor melts before the time is over.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static bool TryFinalTemperature(
        ConductorMaterial material, Area area, ElectricCurrent current, Duration duration, Temperature initial, out Temperature final) =>
        TryFinalOf(Given(material), Section(area), current, duration, initial, out final);

    /// <summary>Time until the conductor reaches a temperature.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>t = K²·S²·ln((θf + β)/(θi + β))/I².</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// A time beyond <see cref="LongestDuration"/> is outside the source's range. It is still a lower bound, since heat that leaves only
    /// delays the rise: the wire takes at least this long, and at a small current it never gets there.
    /// </remarks>
    public static Duration TimeToReach(ConductorMaterial material, Area area, ElectricCurrent current, Temperature initial, Temperature limit) =>
        TimeOf(Given(material), Section(area), current, initial, limit);

    /// <summary>The constant current that takes a conductor to a temperature in a time.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>I = k·S/√t.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent CurrentFor(ConductorMaterial material, Area area, Duration duration, Temperature initial, Temperature limit) =>
        CurrentOf(Given(material), Section(area), duration, initial, limit);

    /// <summary>The Joule integral that takes a conductor from one temperature to another: what a fuse may let through.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>k²·S² in A²s.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral WithstandJouleIntegral(ConductorMaterial material, Area area, Temperature initial, Temperature limit) =>
        WithstandOf(Given(material), Section(area), initial, limit);

    private static double Section(in Area area) => Accept.SquareMillimeters(area, nameof(area));
}

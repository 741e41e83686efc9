using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The forms that take a conductor; its effective section is used.</content>
public static partial class AdiabaticHeating
{
    /// <summary>Conductor temperature at the end of a short circuit.</summary>
    /// <param name="wire">The conductor; its effective section is used.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C to the melting point.</param>
    /// <returns>θf = θi + (θi + β)·(exp(I²t/(K·S)²) − 1).</returns>
    /// <exception cref="ArgumentNullException">The wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="ConductorMeltsException">The conductor melts before the time is over.</exception>
    public static Temperature FinalTemperature(Conductor wire, ElectricCurrent current, Duration duration, Temperature initial) =>
        FinalOf(Given(wire).Material, wire.EffectiveAreaSquareMillimeters, current, duration, initial);

    /// <summary>Conductor temperature at the end of a short circuit, or the statement that the conductor melts.</summary>
    /// <param name="wire">The conductor; its effective section is used.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C to the melting point.</param>
    /// <param name="final">The temperature at the end, or the melting point when the result is false.</param>
    /// <returns>False when the conductor melts before the time is over.</returns>
    /// <exception cref="ArgumentNullException">The wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static bool TryFinalTemperature(
        Conductor wire, ElectricCurrent current, Duration duration, Temperature initial, out Temperature final) =>
        TryFinalOf(Given(wire).Material, wire.EffectiveAreaSquareMillimeters, current, duration, initial, out final);

    /// <summary>Time until the conductor reaches a temperature.</summary>
    /// <param name="wire">The conductor; its effective section is used.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>t = K²·S²·ln((θf + β)/(θi + β))/I².</returns>
    /// <exception cref="ArgumentNullException">The wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// A time beyond <see cref="LongestDuration"/> is outside the source's range. It is still a lower bound, since heat that leaves only
    /// delays the rise: the wire takes at least this long, and at a small current it never gets there.
    /// </remarks>
    public static Duration TimeToReach(Conductor wire, ElectricCurrent current, Temperature initial, Temperature limit) =>
        TimeOf(Given(wire).Material, wire.EffectiveAreaSquareMillimeters, current, initial, limit);

    /// <summary>The constant current that takes a conductor to a temperature in a time.</summary>
    /// <param name="wire">The conductor; its effective section is used.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>I = k·S/√t.</returns>
    /// <exception cref="ArgumentNullException">The wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ElectricCurrent CurrentFor(Conductor wire, Duration duration, Temperature initial, Temperature limit) =>
        CurrentOf(Given(wire).Material, wire.EffectiveAreaSquareMillimeters, duration, initial, limit);

    /// <summary>The Joule integral that takes a conductor from one temperature to another: what a fuse may let through.</summary>
    /// <param name="wire">The conductor; its effective section is used.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">The temperature reached, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>k²·S² in A²s.</returns>
    /// <exception cref="ArgumentNullException">The wire is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public static JouleIntegral WithstandJouleIntegral(Conductor wire, Temperature initial, Temperature limit) =>
        WithstandOf(Given(wire).Material, wire.EffectiveAreaSquareMillimeters, initial, limit);

    private static Temperature FinalOf(
        ConductorMaterial material, double squareMillimeters, in ElectricCurrent current, in Duration duration, in Temperature initial)
    {
        double amperes = Accept.Amperes(current, nameof(current)), seconds = Seconds(duration), start = Initial(material, initial);
        double final = Final(material, squareMillimeters, amperes, seconds, start);
        return double.IsNaN(final)
            ? throw Melts(material, squareMillimeters, amperes, start)
            : Temperature.FromDegreesCelsius(final);
    }

    private static bool TryFinalOf(
        ConductorMaterial material, double squareMillimeters, in ElectricCurrent current, in Duration duration, in Temperature initial, out Temperature final)
    {
        double celsius = Final(
            material, squareMillimeters, Accept.Amperes(current, nameof(current)), Seconds(duration), Initial(material, initial));
        final = Temperature.FromDegreesCelsius(double.IsNaN(celsius) ? material.MeltingPointCelsius : celsius);
        return !double.IsNaN(celsius);
    }

    private static Duration TimeOf(
        ConductorMaterial material, double squareMillimeters, in ElectricCurrent current, in Temperature initial, in Temperature limit)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        double ratio = squareMillimeters / amperes;
        return Duration.FromSeconds(AdiabaticKernel.ConstantSquared(material) * ratio * ratio * LogRatio(material, initial, limit));
    }

    private static ElectricCurrent CurrentOf(
        ConductorMaterial material, double squareMillimeters, in Duration duration, in Temperature initial, in Temperature limit) =>
        ElectricCurrent.FromAmperes(KFactor(material, initial, limit) * squareMillimeters / Math.Sqrt(Seconds(duration)));

    private static JouleIntegral WithstandOf(
        ConductorMaterial material, double squareMillimeters, in Temperature initial, in Temperature limit) =>
        JouleIntegral.FromAmpereSquaredSeconds(
            AdiabaticKernel.ConstantSquared(material) * squareMillimeters * squareMillimeters * LogRatio(material, initial, limit));
}

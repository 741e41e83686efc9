using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>How hot after a time.</content>
public static partial class OverloadHeating
{
    /// <summary>Conductor temperature after a time, from the ambient temperature.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more.</param>
    /// <param name="duration">How long it flows, zero or more.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Current or duration is outside its range.</exception>
    /// <exception cref="ConductorMeltsException">The metal melts before.</exception>
    public static Temperature TemperatureAfter(Wire wire, Surroundings surroundings, ElectricCurrent current, Duration duration)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double seconds = Accept.SecondsOrZero(duration, nameof(duration));
        Bodies bodies = Bodies.Of(wire, InsulationHeat.None);
        return After(heat, bodies, amperes, heat.NoLoadCelsius, seconds, out double celsius)
            ? Temperature.FromDegreesCelsius(celsius)
            : throw Melts(wire, heat, bodies, amperes, heat.NoLoadCelsius, seconds);
    }

    /// <summary>Conductor temperature after a time, from a known temperature; the wire may also cool.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more.</param>
    /// <param name="duration">How long it flows, zero or more.</param>
    /// <param name="initial">Conductor temperature at the start, −70 °C to the melting point.</param>
    /// <param name="insulation">What of the insulation's heat capacity counts; none is safe while the wire heats.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ConductorMeltsException">The metal melts before; <see cref="TryTemperatureAfter"/> does not throw it.</exception>
    public static Temperature TemperatureAfter(
        Wire wire, Surroundings surroundings, ElectricCurrent current, Duration duration, Temperature initial, InsulationHeat insulation = InsulationHeat.None) =>
        TryTemperatureAfter(wire, surroundings, current, duration, initial, out Temperature reached, insulation)
            ? reached
            : throw Melts(
                wire, HeatBalanceKernel.For(wire, surroundings), Bodies.Of(wire, insulation), current.Amperes, initial.DegreesCelsius, duration.Seconds);

    /// <summary>Conductor temperature after a time, from a known temperature, or the statement that the metal melts.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more.</param>
    /// <param name="duration">How long it flows, zero or more.</param>
    /// <param name="initial">Conductor temperature at the start, −70 °C to the melting point.</param>
    /// <param name="reached">The temperature at the end, or the highest that the model follows, the melting point, when the result is false.</param>
    /// <param name="insulation">What of the insulation's heat capacity counts; none is safe while the wire heats.</param>
    /// <returns>False when the metal melts before.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static bool TryTemperatureAfter(
        Wire wire, Surroundings surroundings, ElectricCurrent current, Duration duration, Temperature initial, out Temperature reached, InsulationHeat insulation = InsulationHeat.None)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double seconds = Accept.SecondsOrZero(duration, nameof(duration));
        double start = HeatBalance.Conductor(initial, heat, nameof(initial));
        bool solid = After(heat, Bodies.Of(wire, insulation), amperes, start, seconds, out double celsius);
        reached = Temperature.FromDegreesCelsius(celsius);
        return solid;
    }

    // False when the metal melts before; the temperature is then that of melting.
    private static bool After(in HeatBalanceKernel heat, in Bodies bodies, double amperes, double initial, double seconds, out double celsius)
    {
        if (bodies.Insulation > 0)
        {
            return bodies.With(heat, amperes).TryAdvance(initial, seconds, heat.MostCelsius, out celsius);
        }

        OverloadKernel overload = new(heat, amperes, bodies.Metal, heat.SurfaceFor(initial));
        bool solid = overload.TryAdvance(seconds, heat.SurfaceFor(heat.MostCelsius), out double surface);
        celsius = solid ? heat.ConductorAt(surface) : heat.MostCelsius;
        return solid;
    }

    private static ConductorMeltsException Melts(Wire wire, in HeatBalanceKernel heat, in Bodies bodies, double amperes, double initial, double atMost)
    {
        // It melted within the time asked: where the quadrature to the very melting point does not end, that time bounds it.
        double seconds = Math.Min(atMost, Seconds(heat, bodies, amperes, initial, heat.MostCelsius));
        return new ConductorMeltsException(
            $"{Accept.Text(amperes)} A melts {wire} ({Accept.Text(heat.MostCelsius)} °C) after {Accept.Text(seconds)} s; there is no temperature later.",
            heat.MostCelsius,
            seconds);
    }
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Heating of one wire by a constant current over time, losing heat to still air: how long it survives, how hot it gets.</summary>
/// <remarks>
/// <code>
/// C′·dθ/dt = I²·R′(θ) − q′(θ)
/// t        = ∫ C′·dθ / [I²·R′(θ) − q′(θ)]
/// </code>
/// <para><b>Symbols.</b> θ: conductor temperature. R′: resistance per length. q′: heat that leaves, as in <see cref="HeatBalance"/> with the
/// insulation drop of the steady state. C′: heat capacity per length, volumetric heat capacity times section of the conductor, and of the
/// insulation as far as <see cref="InsulationHeat"/> says. The section is ρ20/R′20, that of the adiabatic formula.</para>
/// <para><b>Insulation.</b> Counted by default: none. The insulation really takes up heat at a pace that its own conduction sets. Leaving its
/// capacity out makes the wire look faster than it is, which is the safe side for protection, and makes the result that of the adiabatic
/// formula for the bare conductor as the time gets short. In layers (<see cref="InsulationHeat.Layers"/>) it is counted nearly in full and still on the safe
/// side, at the cost of steps in time instead of a quadrature. Counting all of it (<see cref="InsulationHeat.All"/>) makes a thin wire look two
/// or three times as slow for overloads of a second or less, where the layer is still cold: never use it to show that a wire survives.</para>
/// <para><b>Outcomes</b> as in every room of heat: the start comes before the limit; a start above the limit is refused; <c>null</c> means <i>never</i>; a metal that
/// melts before throws <see cref="ConductorMeltsException"/>, and the <c>Try</c> form returns false.</para>
/// <para><b>Valid for</b> the ranges of <see cref="HeatBalance"/>, up to the melting point, no latent heat.</para>
/// <para><b>Accuracy.</b> The quadrature is good to 1e-8; the model as <see cref="HeatBalance"/> in the long run, on the safe side before.</para>
/// </remarks>
public static partial class OverloadHeating
{
    /// <summary>The source of the adiabatic limit; the lumped balance itself is a textbook's.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60949", Edition = "1988", Locator = "clause 3, the adiabatic limit", Kind = ReferenceKind.FromMemory,
        Note = "With loss it is the lumped balance of a textbook; layers are held against conduction along the radius.",
    };

    /// <summary>Time in which a wire at the ambient temperature reaches a limit.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more.</param>
    /// <param name="limit">Conductor temperature to reach, from that without current to the melting point.</param>
    /// <returns>The time, zero when it is that of the wire without current; <c>null</c>: it never gets there.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Current or limit is outside its range, or the surroundings alone make the wire hotter than the limit.</exception>
    public static Duration? TimeToReach(Wire wire, Surroundings surroundings, ElectricCurrent current, Temperature limit)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double most = Limit(limit, heat, heat.NoLoadCelsius);
        return Time(Seconds(heat, OverloadKernel.Capacity(wire, InsulationHeat.None), amperes, heat.NoLoadCelsius, most));
    }

    /// <summary>Time in which a wire of a known temperature reaches a limit.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more.</param>
    /// <param name="initial">Conductor temperature at the start, −70 °C to the melting point.</param>
    /// <param name="limit">Conductor temperature to reach, from the initial one to the melting point.</param>
    /// <param name="insulation">What of the insulation's heat capacity counts; none is safe.</param>
    /// <returns>The time, zero when the wire starts at the limit; <c>null</c>: it never gets there.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the start is above the limit.</exception>
    public static Duration? TimeToReach(
        Wire wire, Surroundings surroundings, ElectricCurrent current, Temperature initial, Temperature limit, InsulationHeat insulation = InsulationHeat.None)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double start = HeatBalance.Conductor(initial, heat, nameof(initial));
        double most = Limit(limit, heat, start);
        return Time(Seconds(heat, Bodies.Of(wire, insulation), amperes, start, most));
    }

    /// <summary>The constant current that brings a wire from the ambient temperature to a limit in a given time.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="limit">Conductor temperature to reach, from that without current to the melting point.</param>
    /// <param name="duration">Time in which it is reached. Positive.</param>
    /// <returns>The current; zero when the limit is the temperature without current.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Limit or duration is outside its range, or the surroundings alone make the wire hotter than the limit.</exception>
    public static ElectricCurrent CurrentToReach(Wire wire, Surroundings surroundings, Temperature limit, Duration duration)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double most = Limit(limit, heat, heat.NoLoadCelsius);
        double seconds = Accept.Seconds(duration, nameof(duration));
        return ElectricCurrent.FromAmperes(Amperes(heat, Bodies.Of(wire, InsulationHeat.None), heat.NoLoadCelsius, most, seconds));
    }

    /// <summary>The constant current that brings a wire of a known temperature to a limit in a given time.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="initial">Conductor temperature at the start, −70 °C to the melting point.</param>
    /// <param name="limit">Conductor temperature to reach, from the initial one to the melting point.</param>
    /// <param name="duration">Time in which it is reached. Positive.</param>
    /// <param name="insulation">What of the insulation's heat capacity counts; none is safe.</param>
    /// <returns>The current; zero when the wire starts at the limit, or the surroundings warm it that far in that time.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the start is above the limit.</exception>
    public static ElectricCurrent CurrentToReach(
        Wire wire, Surroundings surroundings, Temperature initial, Temperature limit, Duration duration, InsulationHeat insulation = InsulationHeat.None)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double start = HeatBalance.Conductor(initial, heat, nameof(initial));
        double most = Limit(limit, heat, start);
        double seconds = Accept.Seconds(duration, nameof(duration));
        return ElectricCurrent.FromAmperes(Amperes(heat, Bodies.Of(wire, insulation), start, most, seconds));
    }

    /// <summary>Time constant of the approach to the steady state at a current.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The constant current, zero or more; zero gives the time constant of the last of the cooling.</param>
    /// <param name="insulation">None of the insulation's heat capacity, or all of it; layers, which have several time constants, are refused here.</param>
    /// <returns>Time in which the distance to the steady temperature falls to 1/e, close to it; <c>null</c>: it never settles below the melting point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or above 1e7 A, or the choice is not a named one.</exception>
    public static Duration? TimeConstant(
        Wire wire, Surroundings surroundings, ElectricCurrent current, InsulationHeat insulation = InsulationHeat.None)
    {
        _ = OneBody(insulation);
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        OverloadKernel overload = new(heat, amperes, OverloadKernel.Capacity(wire, insulation), heat.NoLoadCelsius);
        return HeatBalance.TrySteady(heat, amperes, out _, out _) ? Duration.FromSeconds(overload.TimeConstant) : null;
    }

    /// <summary>The band of temperatures that a load repeating indefinitely, on and off, settles into.</summary>
    /// <param name="wire">The wire.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The current while it is on, zero or more.</param>
    /// <param name="on">How long it flows. Positive.</param>
    /// <param name="off">How long it rests. Positive.</param>
    /// <param name="insulation">None, which gives the widest band and the highest peak, or all of it; layers are refused here.</param>
    /// <returns>Temperatures at the start and the end of each pulse; <c>null</c>: it never settles, because the metal melts on the way.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TemperatureBand? CyclicBand(
        Wire wire, Surroundings surroundings, ElectricCurrent current, Duration on, Duration off, InsulationHeat insulation = InsulationHeat.None)
    {
        _ = OneBody(insulation);
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        CyclicKernel cycle = new(
            heat,
            OverloadKernel.Capacity(wire, insulation),
            Accept.AmperesOrZero(current, nameof(current)),
            Accept.Seconds(on, nameof(on)),
            Accept.Seconds(off, nameof(off)));
        return cycle.TryFindBand(out double lowest, out double highest)
            ? new TemperatureBand(heat.ConductorAt(lowest), heat.ConductorAt(highest))
            : null;
    }

    /// <summary>Seconds from one conductor temperature to a higher one; infinite when it is never reached.</summary>
    internal static double Seconds(in HeatBalanceKernel heat, double capacity, double amperes, double initial, double limit) =>
        initial >= limit ? 0 : new OverloadKernel(heat, amperes, capacity, heat.SurfaceFor(initial)).SecondsTo(heat.SurfaceFor(limit));

    private static InsulationHeat OneBody(InsulationHeat insulation) => insulation != InsulationHeat.Layers
        ? insulation
        : throw new ArgumentOutOfRangeException(nameof(insulation), insulation, "insulation must be None or All here; it was Layers.");

    private static Duration? Time(double seconds) => double.IsInfinity(seconds) ? null : Duration.FromSeconds(seconds);

    // A start above the limit is a mistake, most likely two temperatures in the wrong order, and not a time of zero.
    private static double Limit(in Temperature limit, in HeatBalanceKernel heat, double start)
    {
        double celsius = HeatBalance.Conductor(limit, heat, nameof(limit));
        return celsius >= start
            ? celsius
            : Accept.Refuse(nameof(limit), celsius, "°C", $"at least the {Accept.Text(start)} °C that the wire starts at");
    }

    private static double Amperes(in HeatBalanceKernel heat, in Bodies bodies, double initial, double limit, double seconds)
    {
        if (initial >= limit)
        {
            return 0;
        }

        // Without loss the wire needs the adiabatic current; added to the one that the loss at the limit balances, it surely arrives in time.
        double steady = heat.AmperesFor(limit);
        double low = heat.OhmsPerMeterAt(initial), high = heat.OhmsPerMeterAt(limit);
        double mean = high - low > 1e-9 * low ? (high - low) / Math.Log(high / low) : low;
        double adiabatic = Math.Sqrt(bodies.Metal * (limit - initial) / (mean * seconds)), all = Math.Sqrt((bodies.Metal + bodies.Insulation) / bodies.Metal) * adiabatic;

        // Below the ambient the air helps to heat the wire, and no current may be needed at all.
        double least = initial < heat.NoLoadCelsius ? steady : Math.Max(steady, adiabatic * (1 - 1e-9));
        double most = Math.Sqrt((steady * steady) + (all * all)) * (1 + 1e-9);
        ArrivalRate rate = new(heat, bodies, initial, limit, seconds);
        if (least == 0 && rate.Evaluate(0) >= 0)
        {
            return 0;
        }

        return Brent.TryFindRoot(rate, least, most, 1e-12 * most, out double root) ? root : most;
    }

    /// <summary>How much faster than asked a current arrives: t/t(I) − 1. Rises with the current from −1.</summary>
    private readonly struct ArrivalRate(HeatBalanceKernel heat, Bodies bodies, double initial, double limit, double seconds) : IScalarFunction
    {
        public double Evaluate(double x) => (seconds / Seconds(heat, bodies, x, initial, limit)) - 1;
    }

    private static double Seconds(in HeatBalanceKernel heat, in Bodies bodies, double amperes, double initial, double limit) => bodies.Insulation > 0
        ? bodies.With(heat, amperes).SecondsTo(initial, limit)
        : Seconds(heat, bodies.Metal, amperes, initial, limit);

    /// <summary>Heat capacities: what is as hot as the metal, and the layers of insulation together, zero where they do not count by themselves. J/(m·K).</summary>
    private readonly struct Bodies(double metal, double insulation, double ratio)
    {
        internal double Metal { get; } = metal;

        internal double Insulation { get; } = insulation;

        internal LayeredKernel With(in HeatBalanceKernel heat, double amperes) => new(heat, amperes, Metal, Insulation, ratio);

        // Without a wall there are no layers.
        internal static Bodies Of(Wire wire, InsulationHeat insulation)
        {
            double layers = insulation == InsulationHeat.Layers && wire.WallMillimeters > 0 ? OverloadKernel.InsulationCapacity(wire) : 0;
            return new(OverloadKernel.Capacity(wire, insulation), layers, wire.OuterDiameterMillimeters / wire.Conductor.DiameterMillimeters);
        }
    }
}

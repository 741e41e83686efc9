using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The share of the time that a load is on.</summary>
/// <remarks>
/// <code>I(heat) = I(on)·√D, from a share;  I(heat) = I(on)·√[(1 − e^(−t/τ))/(1 − e^(−T/τ))], from the time on t in each period T</code>
/// <para>The current while on makes the drop; the heating current is the continuous one that makes a conductor as hot. Over pulses that are short against the time
/// constant τ of the conductor that is the r.m.s. current. Longer or rarer pulses make it hotter at their end than the r.m.s. current says: <see cref="FromTimes"/> counts that end,
/// with τ = 1.15 s, no longer than that of any stranded copper conductor from 30 AWG (0.05 mm²) up in any insulation that the library carries (<see cref="Conductors.InsulationMaterial"/>) of its usual wall,
/// its metal alone, in still air up to 10 K below the insulation's limit; thicker ones are slower and stay cooler than this says. Thinner metal is faster: the checks of a wire with less heat
/// capacity than 0.05 mm² of copper are then undetermined, unless it bears the load continuously. Moving air can be faster too: state such a load as continuous.
/// <see cref="FromFraction"/> takes the caller's word that the pulses are short.
/// <c>default</c> is not a duty cycle and is refused.</para>
/// <para>Source: exponential heating and cooling of one body with one time constant, heat-transfer textbooks.</para>
/// </remarks>
public readonly struct DutyCycle
{
    // Of 30 AWG in PTFE in air of 240 °C, by the model of repeating loads, 1.18 s: the hotter the wire, the more each kelvin loses.
    internal const double ShortestTimeConstant = 1.15;

    /// <summary>Heat capacity of 0.05 mm² of copper, J/(m·K): for less metal the time constant is not known to be as long.</summary>
    internal const double LeastHeatCapacity = 0.05e-6 * 3.45e6;

    private DutyCycle(double share, double heatShare)
    {
        Share = share;
        HeatShare = heatShare;
    }

    /// <summary>The share of the time, above 0 to 1.</summary>
    /// <exception cref="InvalidOperationException">This is a <c>default</c>, which is no duty cycle.</exception>
    public double Fraction => Share > 0 ? Share : throw NoValue.Read(nameof(DutyCycle));

    /// <summary>The share, or zero where there is no duty cycle.</summary>
    internal double Share { get; }

    /// <summary>The square of the heating current over the current while on, at least the share.</summary>
    internal double HeatShare { get; }

    /// <summary>Time on in each period, s; zero where only the share is known.</summary>
    internal double OnSeconds { get; private init; }

    /// <summary>Time from one switching on to the next, s; zero where only the share is known.</summary>
    internal double PeriodSeconds { get; private init; }

    /// <summary>A duty cycle from its share, for pulses that are short against the time constant of the thinnest wire: the caller vouches for that.</summary>
    /// <param name="fraction">Share of the time, above 0 to 1.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static DutyCycle FromFraction(double fraction)
    {
        double share = Accept.Positive(fraction, 1, "", nameof(fraction));
        return new DutyCycle(share, share);
    }

    /// <summary>A duty cycle from the time on in each period: the conductor counts as hot as it is at the end of a pulse.</summary>
    /// <param name="on">Time on, positive, at most the period.</param>
    /// <param name="period">Time from one switching on to the next, positive.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static DutyCycle FromTimes(Duration on, Duration period)
    {
        double t = Accept.Seconds(period, nameof(period));
        double pulse = Accept.Positive(Accept.Seconds(on, nameof(on)), t, "s", nameof(on)), share = pulse / t;
        return new DutyCycle(share, Math.Max(share, EndOfPulse(pulse, t))) { OnSeconds = pulse, PeriodSeconds = t };
    }

    /// <summary>What the start of a motor adds, as a share of the heat of its current: its share of the time, as a start passes; where it lasts as long as the time on, that of the pulse. Zero where no times are stated.</summary>
    internal double StartShareOf(double seconds) => OnSeconds > 0 ? seconds < OnSeconds ? seconds / PeriodSeconds : HeatShare : 0;

    // Of the steady rise, what is left at the end of a pulse after many.
    private static double EndOfPulse(double on, double period) =>
        ExponentialRise(on / ShortestTimeConstant) / ExponentialRise(period / ShortestTimeConstant);

    private static double ExponentialRise(double time) => -ExpLog.Expm1(-time);
}

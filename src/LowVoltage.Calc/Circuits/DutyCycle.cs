using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The share of the time that a load is on.</summary>
/// <remarks>
/// <code>I(heat) = I(on)·√D</code>
/// <para>The r.m.s. current heats the conductor; the current while on makes the drop. True only where the pulses are short against the time a wire takes to warm
/// up, which is some seconds for the thinnest and minutes for thick ones, and not rare: a thin wire is hotter at the end of a hard pulse after a long pause than its mean current says. <see cref="FromTimes"/> knows the pulse: one of more than two seconds is counted as
/// continuous for the heat. <see cref="FromFraction"/> takes the caller's word that the pulses are short. <c>default</c> is not a duty cycle and is refused.</para>
/// </remarks>
public readonly struct DutyCycle
{
    // Short for wires from some square millimetres on, which warm up in a minute. The swing of one pulse is not added: for thin wires and rare pulses it is more than the mean.
    private const double ShortSeconds = 2;

    private DutyCycle(double fraction, double heatFraction)
    {
        Share = fraction;
        HeatFraction = heatFraction;
    }

    /// <summary>The share of the time, above 0 to 1.</summary>
    /// <exception cref="InvalidOperationException">This is a <c>default</c>, which is no duty cycle.</exception>
    public double Fraction => Share > 0 ? Share : throw NoValue.Read(nameof(DutyCycle));

    /// <summary>The share, or zero where there is no duty cycle.</summary>
    internal double Share { get; }

    /// <summary>The share that thins the heat: 1 for pulses too long to be averaged.</summary>
    internal double HeatFraction { get; }

    /// <summary>A duty cycle from its share, for pulses of a second or two at most: the caller vouches for that.</summary>
    /// <param name="fraction">Share of the time, above 0 to 1.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static DutyCycle FromFraction(double fraction)
    {
        double share = Accept.Positive(fraction, 1, "", nameof(fraction));
        return new DutyCycle(share, share);
    }

    /// <summary>A duty cycle from the time on in each period; heat is averaged only when the time on is at most two seconds.</summary>
    /// <param name="on">Time on, positive, at most the period.</param>
    /// <param name="period">Time from one switching on to the next, positive.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static DutyCycle FromTimes(Duration on, Duration period)
    {
        double t = Accept.Seconds(period, nameof(period));
        double pulse = Accept.Positive(Accept.Seconds(on, nameof(on)), t, "s", nameof(on));
        return new DutyCycle(pulse / t, pulse <= ShortSeconds ? pulse / t : 1);
    }
}

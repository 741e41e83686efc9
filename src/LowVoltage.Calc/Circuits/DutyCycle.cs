using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The share of the time that a load is on.</summary>
/// <remarks>
/// <code>I(heat) = I(on)·√D</code>
/// <para>The r.m.s. current heats the conductor; the current while on makes the drop. True where a period is short against the minutes a
/// wire takes to warm up; for long periods count the load as continuous. <c>default</c> is not a duty cycle and is refused.</para>
/// </remarks>
public readonly struct DutyCycle
{
    private DutyCycle(double fraction) => Fraction = fraction;

    /// <summary>The share of the time, above 0 to 1.</summary>
    public double Fraction { get; }

    /// <summary>A duty cycle from its share.</summary>
    /// <param name="fraction">Share of the time, above 0 to 1.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and at most 1.</exception>
    public static DutyCycle FromFraction(double fraction) => new(Accept.Positive(fraction, 1, "", nameof(fraction)));

    /// <summary>A duty cycle from the time on in each period.</summary>
    /// <param name="on">Time on, positive, at most the period.</param>
    /// <param name="period">Time from one switching on to the next, positive.</param>
    /// <returns>The duty cycle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static DutyCycle FromTimes(Duration on, Duration period)
    {
        double t = Accept.Seconds(period, nameof(period));
        return new DutyCycle(Accept.Positive(Accept.Seconds(on, nameof(on)), t, "s", nameof(on)) / t);
    }
}

using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>Joule integrals of current pulses by their shape: lamp, motor and capacitor inrush.</summary>
/// <remarks>
/// <code>rectangle ip²·t; trapezoid (ib² + ib·ip + ip²)·t/3; half sine ip²·t/2; triangle or ramp ip²·t/3; parabola ip²·t/5; exponential ip²·τ/2</code>
/// All are exact integrals of i².
/// </remarks>
public static class PulseShape
{
    /// <summary>The source, for the shapes; each value is the exact integral.</summary>
    public static Reference Reference { get; } = new() { Title = "Fuse selection guide", Locator = "Joule integral by wave shape", Kind = ReferenceKind.Handbook };

    /// <summary>A constant current that starts and ends at once.</summary>
    /// <param name="peak">The current, ip. Positive.</param>
    /// <param name="duration">Duration, t. Positive.</param>
    /// <returns>ip²·t.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral Rectangle(ElectricCurrent peak, Duration duration) => Pulse(1, peak, duration);

    /// <summary>A current that changes evenly from one value to another and ends: a motor running up.</summary>
    /// <param name="begin">The current at one end, ib. Zero or greater.</param>
    /// <param name="peak">The current at the other end, ip. Positive.</param>
    /// <param name="duration">Duration, t. Positive.</param>
    /// <returns>(ib² + ib·ip + ip²)·t/3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral Trapezoid(ElectricCurrent begin, ElectricCurrent peak, Duration duration)
    {
        double b = Accept.AmperesOrZero(begin, nameof(begin)), p = Accept.Amperes(peak, nameof(peak));
        return Joule(((b * b) + (b * p) + (p * p)) / 3, Accept.Seconds(duration, nameof(duration)));
    }

    /// <summary>Half a period of a sine.</summary>
    /// <param name="peak">The crest, ip. Positive.</param>
    /// <param name="duration">Duration of the half period, t. Positive.</param>
    /// <returns>ip²·t/2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral HalfSine(ElectricCurrent peak, Duration duration) => Pulse(1.0 / 2, peak, duration);

    /// <summary>A triangle of any slant, or a ramp.</summary>
    /// <param name="peak">The crest, ip. Positive.</param>
    /// <param name="duration">Duration, t. Positive.</param>
    /// <returns>ip²·t/3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral Triangle(ElectricCurrent peak, Duration duration) => Pulse(1.0 / 3, peak, duration);

    /// <summary>A current that rises with the square of time, or falls as ip·(1 − x)².</summary>
    /// <param name="peak">The crest, ip. Positive.</param>
    /// <param name="duration">Duration, t. Positive.</param>
    /// <returns>ip²·t/5.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral Parabola(ElectricCurrent peak, Duration duration) => Pulse(1.0 / 5, peak, duration);

    /// <summary>A current that starts at its peak and dies away exponentially: a capacitor charged through a resistance.</summary>
    /// <param name="peak">The current at the start, ip. Positive.</param>
    /// <param name="timeConstant">Time constant of the current, τ = R·C. Positive.</param>
    /// <returns>ip²·τ/2, for the whole pulse.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static JouleIntegral Exponential(ElectricCurrent peak, Duration timeConstant)
    {
        double amperes = Accept.Amperes(peak, nameof(peak));
        return Joule(amperes * amperes / 2, Accept.Seconds(timeConstant, nameof(timeConstant)));
    }

    private static JouleIntegral Pulse(double shape, in ElectricCurrent peak, in Duration duration)
    {
        double amperes = Accept.Amperes(peak, nameof(peak));
        return Joule(amperes * amperes * shape, Accept.Seconds(duration, nameof(duration)));
    }

    private static JouleIntegral Joule(double meanSquare, double seconds) => JouleIntegral.FromAmpereSquaredSeconds(meanSquare * seconds);
}

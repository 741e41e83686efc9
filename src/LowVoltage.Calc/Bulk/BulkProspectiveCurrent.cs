using System.Numerics;
using System.Runtime.CompilerServices;

namespace LowVoltage.Calc.Bulk;

/// <summary>The current of a dead short circuit at the end of a path, in bulk: the least, which must still open the fuse, and the greatest, which it must break.</summary>
/// <remarks>
/// <code>least = Vmin/(Rmax + R(θ hot))    greatest = Vmax/(Rmin + R(θ cold))</code>
/// <para>One formula under two names, so that the ends of the ranges are not mixed up. What is not counted (inductance, motors, an arc) stands at
/// <see cref="Circuits.ProspectiveCurrent"/>; a source that holds or disconnects has no place here. <b>Same bits</b> as there.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkProspectiveCurrent
{
    /// <summary>The least current, Vmin/(Rmax + R(θ hot)).</summary>
    /// <param name="leastSourceVolts">Least open-circuit voltage Vmin in V: above 0, to 1e6.</param>
    /// <param name="greatestSourceOhms">Greatest resistance of the source, Rmax, in Ω: above 0, to 1e9.</param>
    /// <param name="hotPathOhms">Resistance of the path, out and back and joints, with hot conductors, in Ω: 0 to 1e9.</param>
    /// <param name="amperes">Where the results go: the current in A.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void Least(
        ReadOnlySpan<double> leastSourceVolts, ReadOnlySpan<double> greatestSourceOhms, ReadOnlySpan<double> hotPathOhms, Span<double> amperes) => Sweep.Run(
            default(Bridged),
            new(leastSourceVolts, nameof(leastSourceVolts), BulkRange.Volts),
            new(greatestSourceOhms, nameof(greatestSourceOhms), BulkRange.Ohms),
            new(hotPathOhms, nameof(hotPathOhms), BulkRange.OhmsOrZero),
            amperes,
            nameof(amperes));

    /// <summary>The greatest current, Vmax/(Rmin + R(θ cold)).</summary>
    /// <param name="greatestSourceVolts">Greatest open-circuit voltage Vmax in V: above 0, to 1e6.</param>
    /// <param name="leastSourceOhms">Least resistance of the source, Rmin, in Ω: above 0, to 1e9.</param>
    /// <param name="coldPathOhms">Resistance of the path, out and back and joints, with cold conductors, in Ω: 0 to 1e9.</param>
    /// <param name="amperes">Where the results go: the current in A.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void Greatest(
        ReadOnlySpan<double> greatestSourceVolts, ReadOnlySpan<double> leastSourceOhms, ReadOnlySpan<double> coldPathOhms, Span<double> amperes) => Sweep.Run(
            default(Bridged),
            new(greatestSourceVolts, nameof(greatestSourceVolts), BulkRange.Volts),
            new(leastSourceOhms, nameof(leastSourceOhms), BulkRange.Ohms),
            new(coldPathOhms, nameof(coldPathOhms), BulkRange.OhmsOrZero),
            amperes,
            nameof(amperes));

    private readonly struct Bridged : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) => a / (b + c);
    }
}

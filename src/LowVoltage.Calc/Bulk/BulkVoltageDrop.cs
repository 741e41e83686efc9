using System.Numerics;
using System.Runtime.CompilerServices;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Bulk;

/// <summary>The drop formula and the section that a drop asks for, in bulk.</summary>
/// <remarks>
/// <code>ΔV = R′·L·I    ΔV = (R′f·Lf + R′r·Lr)·I    S = ρ(θ)·L·I/ΔV</code>
/// <para><b>Lengths</b> are metres of conductor that carry the current. Nothing is doubled here.</para>
/// <para><b>Same bits</b> as <see cref="Circuits.VoltageDrop"/>, with the resistivity of <see cref="ConductorMaterial.ResistivityAt"/>.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkVoltageDrop
{
    /// <summary>The drop along a conductor, ΔV = R′·L·I.</summary>
    /// <param name="ohmsPerMeter">Resistance per metre at the conductor's temperature, R′, in Ω/m: 0 to 1e9.</param>
    /// <param name="meters">Length of conductor L in m: 0 to 1e7.</param>
    /// <param name="amperes">Current I in A: 0 to 1e7.</param>
    /// <param name="volts">Where the results go: ΔV in V.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void Along(
        ReadOnlySpan<double> ohmsPerMeter, ReadOnlySpan<double> meters, ReadOnlySpan<double> amperes, Span<double> volts) => Sweep.Run(
            default(OneWay),
            new(ohmsPerMeter, nameof(ohmsPerMeter), BulkRange.OhmsPerMeterOrZero),
            new(meters, nameof(meters), BulkRange.MetersOrZero),
            new(amperes, nameof(amperes), BulkRange.AmperesOrZero),
            volts,
            nameof(volts));

    /// <summary>The drop along the way out and the way back, ΔV = (R′f·Lf + R′r·Lr)·I.</summary>
    /// <param name="feedOhmsPerMeter">Resistance per metre of the feed at its temperature, R′f, in Ω/m: 0 to 1e9.</param>
    /// <param name="feedMeters">Length of the feed, Lf, in m: 0 to 1e7.</param>
    /// <param name="returnOhmsPerMeter">Resistance per metre of the return at its temperature, R′r, in Ω/m: 0 to 1e9.</param>
    /// <param name="returnMeters">Length of the return, Lr, in m: 0 to 1e7.</param>
    /// <param name="amperes">Current I in A: 0 to 1e7.</param>
    /// <param name="volts">Where the results go: ΔV in V.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void OutAndBack(
        ReadOnlySpan<double> feedOhmsPerMeter,
        ReadOnlySpan<double> feedMeters,
        ReadOnlySpan<double> returnOhmsPerMeter,
        ReadOnlySpan<double> returnMeters,
        ReadOnlySpan<double> amperes,
        Span<double> volts) => Sweep.Run(
            default(BothWays),
            new(feedOhmsPerMeter, nameof(feedOhmsPerMeter), BulkRange.OhmsPerMeterOrZero),
            new(feedMeters, nameof(feedMeters), BulkRange.MetersOrZero),
            new(returnOhmsPerMeter, nameof(returnOhmsPerMeter), BulkRange.OhmsPerMeterOrZero),
            new(returnMeters, nameof(returnMeters), BulkRange.MetersOrZero),
            new(amperes, nameof(amperes), BulkRange.AmperesOrZero),
            volts,
            nameof(volts));

    /// <summary>The smallest section whose drop stays within an allowance, S = ρ(θ)·L·I/ΔV.</summary>
    /// <param name="material">The metal, which gives ρ20 and α20.</param>
    /// <param name="celsius">Conductor temperature θ in °C: −100 to the melting point of the metal.</param>
    /// <param name="meters">Length of conductor L, out plus back, in m: above 0, to 1e7.</param>
    /// <param name="amperes">Current I in A: above 0, to 1e7.</param>
    /// <param name="allowedVolts">Allowed drop ΔV in V: above 0, to 1e6.</param>
    /// <param name="squareMillimeters">Where the results go: S in mm²; go up to the next standard size.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void LeastArea(
        ConductorMaterial material,
        ReadOnlySpan<double> celsius,
        ReadOnlySpan<double> meters,
        ReadOnlySpan<double> amperes,
        ReadOnlySpan<double> allowedVolts,
        Span<double> squareMillimeters)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        Sweep.Run(
            new Area(material),
            new(celsius, nameof(celsius), BulkRange.Celsius(ConductorMaterial.LowestCelsius, material.MeltingPointCelsius)),
            new(meters, nameof(meters), BulkRange.Meters),
            new(amperes, nameof(amperes), BulkRange.Amperes),
            new(allowedVolts, nameof(allowedVolts), BulkRange.Volts),
            squareMillimeters,
            nameof(squareMillimeters));
    }

    private readonly struct OneWay : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => true;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) => a * b * c;
    }

    private readonly struct BothWays : IBulkKernel
    {
        public int Inputs => 5;

        public bool FromZero => true;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            ((a * b) + (c * d)) * e;
    }

    private readonly struct Area(ConductorMaterial material) : IBulkKernel
    {
        private readonly BulkResistance.Ratio ratio = new(material);
        private readonly Vector<double> ohmMeters20 = new(material.OhmMeters20);

        public int Inputs => 4;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            ohmMeters20 * ratio.At(a) * new Vector<double>(1e6) * b * c / d;
    }
}

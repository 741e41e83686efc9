using System.Numerics;
using System.Runtime.CompilerServices;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Bulk;

/// <summary>Resistance of conductors in bulk: at temperatures, and of the way out and back.</summary>
/// <remarks>
/// <code>R′(θ) = R′20·[1 + α20·(θ − 20)]    R = R′f·Lf + R′r·Lr</code>
/// <para><b>Same bits</b> as <see cref="Conductor.ResistancePerLength"/> and <see cref="Circuits.VoltageDrop.OutAndBack"/>.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkResistance
{
    /// <summary>Resistance per metre at a temperature, R′(θ).</summary>
    /// <param name="material">The metal, which gives α20.</param>
    /// <param name="ohmsPerMeter20">Resistance per metre at 20 °C, R′20, in Ω/m: 0 to 1e9.</param>
    /// <param name="celsius">Conductor temperature θ in °C: −100 to the melting point of the metal.</param>
    /// <param name="ohmsPerMeter">Where the results go: R′(θ) in Ω/m.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void PerMeter(
        ConductorMaterial material, ReadOnlySpan<double> ohmsPerMeter20, ReadOnlySpan<double> celsius, Span<double> ohmsPerMeter)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        Sweep.Run(
            new AtTemperature(material),
            new(ohmsPerMeter20, nameof(ohmsPerMeter20), BulkRange.OhmsPerMeterOrZero),
            new(celsius, nameof(celsius), BulkRange.Celsius(ConductorMaterial.LowestCelsius, material.MeltingPointCelsius)),
            ohmsPerMeter,
            nameof(ohmsPerMeter));
    }

    /// <summary>Resistance of the way out and the way back, R = R′f·Lf + R′r·Lr.</summary>
    /// <param name="feedOhmsPerMeter">Resistance per metre of the feed, R′f, in Ω/m: 0 to 1e9.</param>
    /// <param name="feedMeters">Length of the feed, Lf, in m: 0 to 1e7.</param>
    /// <param name="returnOhmsPerMeter">Resistance per metre of the return, R′r, in Ω/m: 0 to 1e9.</param>
    /// <param name="returnMeters">Length of the return, Lr, in m: 0 to 1e7. Nothing is doubled here.</param>
    /// <param name="ohms">Where the results go: R in Ω.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void OutAndBack(
        ReadOnlySpan<double> feedOhmsPerMeter,
        ReadOnlySpan<double> feedMeters,
        ReadOnlySpan<double> returnOhmsPerMeter,
        ReadOnlySpan<double> returnMeters,
        Span<double> ohms) => Sweep.Run(
            default(BothWays),
            new(feedOhmsPerMeter, nameof(feedOhmsPerMeter), BulkRange.OhmsPerMeterOrZero),
            new(feedMeters, nameof(feedMeters), BulkRange.MetersOrZero),
            new(returnOhmsPerMeter, nameof(returnOhmsPerMeter), BulkRange.OhmsPerMeterOrZero),
            new(returnMeters, nameof(returnMeters), BulkRange.MetersOrZero),
            ohms,
            nameof(ohms));

    /// <summary>ρ(θ)/ρ20 of a metal.</summary>
    internal readonly struct Ratio(ConductorMaterial material)
    {
        private readonly Vector<double> alpha = new(material.TemperatureCoefficient);

        internal Vector<double> At(Vector<double> celsius) => Vector<double>.One + (alpha * (celsius - new Vector<double>(20)));
    }

    private readonly struct AtTemperature(ConductorMaterial material) : IBulkKernel
    {
        private readonly Ratio ratio = new(material);

        public int Inputs => 2;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) => a * ratio.At(b);
    }

    private readonly struct BothWays : IBulkKernel
    {
        public int Inputs => 4;

        public bool FromZero => true;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) => (a * b) + (c * d);
    }
}

using System.Numerics;
using System.Runtime.CompilerServices;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Bulk;

/// <summary>Temperature of a conductor that heats itself, in bulk, by the square law from one rated current.</summary>
/// <remarks>
/// <code>θ = θa + Δθr·(I/Ir)²</code>
/// <para><b>Symbols.</b> θa [°C] ambient; Ir [A] rated current of one conductor; Δθr [K] how far that current brings it above the ambient; I [A].</para>
/// <para>The model, its source and where it errs are those of <see cref="Circuits.ConductorTemperature"/>: exact at 0 and Ir, below the truth
/// above Ir. <b>Same bits</b> as <see cref="Circuits.ConductorTemperature.AtCurrent"/> where θr − θa is Δθr to the last bit.</para>
/// <para>A result beyond the melting point is no wire: the next call that takes it as a conductor temperature refuses it.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkConductorTemperature
{
    /// <summary>Conductor temperature at a current in an ambient, θ = θa + Δθr·(I/Ir)².</summary>
    /// <param name="ratedAmperes">Rated current Ir of one conductor in A: above 0, to 1e7.</param>
    /// <param name="ratedRiseKelvins">Rise Δθr at the rated current in K: above 0, to 1100. For a published rating, its conductor temperature less its base ambient.</param>
    /// <param name="ambientCelsius">Ambient θa in °C: −100 to 1000.</param>
    /// <param name="amperes">r.m.s. current I of one conductor in A: 0 to 1e7.</param>
    /// <param name="celsius">Where the results go: θ in °C.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void AtCurrent(
        double ratedAmperes, double ratedRiseKelvins, ReadOnlySpan<double> ambientCelsius, ReadOnlySpan<double> amperes, Span<double> celsius) => Sweep.Run(
            new SquareLaw(
                Accept.Positive(ratedAmperes, Accept.MostAmperes, "A", nameof(ratedAmperes)),
                Accept.Positive(ratedRiseKelvins, 1100, "K", nameof(ratedRiseKelvins))),
            new(ambientCelsius, nameof(ambientCelsius), BulkRange.Celsius(-100, 1000)),
            new(amperes, nameof(amperes), BulkRange.AmperesOrZero),
            celsius,
            nameof(celsius));

    private readonly struct SquareLaw(double ratedAmperes, double riseKelvins) : IBulkKernel
    {
        private readonly Vector<double> rated = new(ratedAmperes);
        private readonly Vector<double> rise = new(riseKelvins);

        public int Inputs => 2;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e)
        {
            Vector<double> load = b / rated;
            return a + (rise * load * load);
        }
    }
}

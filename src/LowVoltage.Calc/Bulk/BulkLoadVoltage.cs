using System.Numerics;
using System.Runtime.CompilerServices;

namespace LowVoltage.Calc.Bulk;

/// <summary>Voltage at the load of a source behind a series resistance, in bulk, for the loads that have a closed form.</summary>
/// <remarks>
/// <code>constant current U = V − R·I    resistance U = V/(1 + R/Rl)    constant power U = [V + √(V² − 4·R·P)]/2</code>
/// <para><b>Symbols.</b> V [V] open-circuit voltage; R [Ω] all resistance in series: source, conductors out and back at their temperature, joints.</para>
/// <para><b>No operating point.</b> A constant current that would drop the whole voltage, or a power that cannot come through the resistance
/// (V² &lt; 4RP), has none. Its result is exactly 0 V, which no real point has, and the return value counts them. Never NaN. Of the two points of a
/// constant power the stable one, with the higher voltage, is given.</para>
/// <para><b>Same bits</b> as <see cref="Circuits.OperatingPoint"/> with conductors at a stated temperature, where R and P are the same to the last bit.
/// The operating point rounds R by way of the resistance at 20 °C, so its R may be another in the last bits; a <see cref="UnitsNet.Power"/> holds
/// 15 digits.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkLoadVoltage
{
    /// <summary>A load that draws the same current at any voltage, U = V − R·I.</summary>
    /// <param name="sourceVolts">Open-circuit voltage V of the source in V: above 0, to 1e6.</param>
    /// <param name="ohms">Resistance R in series in Ω: 0 to 1e9.</param>
    /// <param name="amperes">Current I of the load in A: above 0, to 1e7.</param>
    /// <param name="loadVolts">Where the results go: U in V, or 0 where there is no operating point.</param>
    /// <returns>How many have no operating point.</returns>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static int ConstantCurrent(
        ReadOnlySpan<double> sourceVolts, ReadOnlySpan<double> ohms, ReadOnlySpan<double> amperes, Span<double> loadVolts)
    {
        return Sweep.Run(
            default(OfCurrent),
            new(sourceVolts, nameof(sourceVolts), BulkRange.Volts),
            new(ohms, nameof(ohms), BulkRange.OhmsOrZero),
            new(amperes, nameof(amperes), BulkRange.Amperes),
            loadVolts,
            nameof(loadVolts));
    }

    /// <summary>A load that is a resistance, U = V/(1 + R/Rl). It always has an operating point.</summary>
    /// <param name="sourceVolts">Open-circuit voltage V of the source in V: above 0, to 1e6.</param>
    /// <param name="ohms">Resistance R in series in Ω: 0 to 1e9.</param>
    /// <param name="loadOhms">Resistance Rl of the load in Ω: above 0, to 1e9.</param>
    /// <param name="loadVolts">Where the results go: U in V.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void Resistance(
        ReadOnlySpan<double> sourceVolts, ReadOnlySpan<double> ohms, ReadOnlySpan<double> loadOhms, Span<double> loadVolts) => Sweep.Run(
            default(OfResistance),
            new(sourceVolts, nameof(sourceVolts), BulkRange.Volts),
            new(ohms, nameof(ohms), BulkRange.OhmsOrZero),
            new(loadOhms, nameof(loadOhms), BulkRange.Ohms),
            loadVolts,
            nameof(loadVolts));

    /// <summary>A load that draws the same power at any voltage, U = [V + √(V² − 4·R·P)]/2.</summary>
    /// <param name="sourceVolts">Open-circuit voltage V of the source in V: above 0, to 1e6.</param>
    /// <param name="ohms">Resistance R in series in Ω: 0 to 1e9.</param>
    /// <param name="watts">Power P that the load takes at its terminals in W: above 0, to 1e12.</param>
    /// <param name="loadVolts">Where the results go: U in V, or 0 where there is no operating point.</param>
    /// <returns>How many have no operating point.</returns>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static int ConstantPower(
        ReadOnlySpan<double> sourceVolts, ReadOnlySpan<double> ohms, ReadOnlySpan<double> watts, Span<double> loadVolts)
    {
        return Sweep.Run(
            default(OfPower),
            new(sourceVolts, nameof(sourceVolts), BulkRange.Volts),
            new(ohms, nameof(ohms), BulkRange.OhmsOrZero),
            new(watts, nameof(watts), BulkRange.Watts),
            loadVolts,
            nameof(loadVolts));
    }

    private readonly struct OfCurrent : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => true;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e)
        {
            Vector<double> volts = a - (b * c);
            return Vector.ConditionalSelect(Vector.GreaterThan(volts, Vector<double>.Zero), volts, Vector<double>.Zero);
        }
    }

    private readonly struct OfResistance : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            a / (Vector<double>.One + (b * (Vector<double>.One / c)));
    }

    private readonly struct OfPower : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => true;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e)
        {
            Vector<double> square = (a * a) - (new Vector<double>(4) * b * c);
            Vector<double> volts = (a + Vector.SquareRoot(square)) * new Vector<double>(0.5);
            return Vector.ConditionalSelect(Vector.GreaterThanOrEqual(square, Vector<double>.Zero), volts, Vector<double>.Zero);
        }
    }
}

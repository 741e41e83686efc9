using System.Numerics;
using System.Runtime.CompilerServices;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Bulk;

/// <summary>Short-circuit heating without loss (IEC 60949), in bulk: temperature, time, Joule integral, section or current from the others.</summary>
/// <remarks>
/// <code>I²t = K²·S²·ln((θf + β)/(θi + β))    θf = θi + (θi + β)·[exp(I²t/(K·S)²) − 1]</code>
/// <para>Symbols, source, valid range and what is assumed are those of <see cref="AdiabaticHeating"/>; the section is metal, S [mm²].</para>
/// <para><b>Same bits</b> as <see cref="AdiabaticHeating"/>: both take exp and ln from the same additions and multiplications, within 3 units in the last
/// place of the true value, whatever the machine.</para>
/// <para><b>Bulk.</b> Every span holds one value for each case, all of one length. Nothing is allocated. The results may stand where an input stands
/// (the very same memory), and then nothing is written before all is checked; otherwise, when a value is refused, the results hold nothing to read.
/// The ranges are those of the typed calls. A number of cases below a few dozen is better served by the typed calls.</para>
/// </remarks>
public static class BulkAdiabaticHeating
{
    private const double LongestSeconds = 5;

    /// <summary>Conductor temperature at the end of a short circuit, θf; no more than the melting point.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="squareMillimeters">Section of metal S in mm²: above 0, to 1e6.</param>
    /// <param name="amperes">Fault current I, constant, in A: above 0, to 1e7.</param>
    /// <param name="seconds">Duration t in s: above 0, to 5.</param>
    /// <param name="initialCelsius">Conductor temperature at the start, θi, in °C: from −100 to the melting point.</param>
    /// <param name="finalCelsius">Where the results go: θf in °C. Exactly the melting point where the conductor reaches it: then there is no final temperature.</param>
    /// <returns>How many reach the melting point.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static int FinalTemperature(
        ConductorMaterial material,
        ReadOnlySpan<double> squareMillimeters,
        ReadOnlySpan<double> amperes,
        ReadOnlySpan<double> seconds,
        ReadOnlySpan<double> initialCelsius,
        Span<double> finalCelsius)
    {
        double melting = Given(material).MeltingPointCelsius;
        return Sweep.Run(
            new Final(new Metal(material, melting), melting),
            new(squareMillimeters, nameof(squareMillimeters), BulkRange.SquareMillimeters),
            new(amperes, nameof(amperes), BulkRange.Amperes),
            new(seconds, nameof(seconds), BulkRange.Seconds(LongestSeconds)),
            new(initialCelsius, nameof(initialCelsius), BulkRange.Celsius(ConductorMaterial.LowestCelsius, melting)),
            finalCelsius,
            nameof(finalCelsius));
    }

    /// <summary>Time until a conductor reaches a temperature, t = K²·S²·ln((θf + β)/(θi + β))/I².</summary>
    /// <param name="material">The metal.</param>
    /// <param name="limitCelsius">The temperature reached, θf, in °C, one for all: above −100, at most the melting point of the metal.</param>
    /// <param name="squareMillimeters">Section of metal S in mm²: above 0, to 1e6.</param>
    /// <param name="amperes">Fault current I, constant, in A: above 0, to 1e7.</param>
    /// <param name="initialCelsius">Conductor temperature at the start, θi, in °C: from −100, below the limit by at least 1e-12.</param>
    /// <param name="seconds">Where the results go: t in s. Beyond 5 s it is outside the source's range and still a lower bound.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void TimeToReach(
        ConductorMaterial material,
        double limitCelsius,
        ReadOnlySpan<double> squareMillimeters,
        ReadOnlySpan<double> amperes,
        ReadOnlySpan<double> initialCelsius,
        Span<double> seconds) => Sweep.Run(
            new Time(new Metal(material, Limit(material, limitCelsius))),
            new(squareMillimeters, nameof(squareMillimeters), BulkRange.SquareMillimeters),
            new(amperes, nameof(amperes), BulkRange.Amperes),
            new(initialCelsius, nameof(initialCelsius), Below(limitCelsius)),
            seconds,
            nameof(seconds));

    /// <summary>The Joule integral that takes a conductor to a temperature, what a fuse may let through: k²·S².</summary>
    /// <param name="material">The metal.</param>
    /// <param name="limitCelsius">The temperature reached, θf, in °C, one for all: above −100, at most the melting point of the metal.</param>
    /// <param name="squareMillimeters">Section of metal S in mm²: above 0, to 1e6.</param>
    /// <param name="initialCelsius">Conductor temperature at the start, θi, in °C: from −100, below the limit by at least 1e-12.</param>
    /// <param name="ampereSquaredSeconds">Where the results go: k²·S² in A²s.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void WithstandJouleIntegral(
        ConductorMaterial material,
        double limitCelsius,
        ReadOnlySpan<double> squareMillimeters,
        ReadOnlySpan<double> initialCelsius,
        Span<double> ampereSquaredSeconds) => Sweep.Run(
            new Withstand(new Metal(material, Limit(material, limitCelsius))),
            new(squareMillimeters, nameof(squareMillimeters), BulkRange.SquareMillimeters),
            new(initialCelsius, nameof(initialCelsius), Below(limitCelsius)),
            ampereSquaredSeconds,
            nameof(ampereSquaredSeconds));

    /// <summary>The smallest section that a current takes no further than a temperature in a time, S = I·√t/k.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="limitCelsius">The temperature reached, θf, in °C, one for all: above −100, at most the melting point of the metal.</param>
    /// <param name="amperes">Fault current I, constant, in A: above 0, to 1e7.</param>
    /// <param name="seconds">Duration t in s: above 0, to 5.</param>
    /// <param name="initialCelsius">Conductor temperature at the start, θi, in °C: from −100, below the limit by at least 1e-12.</param>
    /// <param name="squareMillimeters">Where the results go: S in mm²; go up to the next standard size.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void LeastArea(
        ConductorMaterial material,
        double limitCelsius,
        ReadOnlySpan<double> amperes,
        ReadOnlySpan<double> seconds,
        ReadOnlySpan<double> initialCelsius,
        Span<double> squareMillimeters) => Sweep.Run(
            new Section(new Metal(material, Limit(material, limitCelsius))),
            new(amperes, nameof(amperes), BulkRange.Amperes),
            new(seconds, nameof(seconds), BulkRange.Seconds(LongestSeconds)),
            new(initialCelsius, nameof(initialCelsius), Below(limitCelsius)),
            squareMillimeters,
            nameof(squareMillimeters));

    /// <summary>The constant current that takes a conductor to a temperature in a time, I = k·S/√t.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="limitCelsius">The temperature reached, θf, in °C, one for all: above −100, at most the melting point of the metal.</param>
    /// <param name="squareMillimeters">Section of metal S in mm²: above 0, to 1e6.</param>
    /// <param name="seconds">Duration t in s: above 0, to 5.</param>
    /// <param name="initialCelsius">Conductor temperature at the start, θi, in °C: from −100, below the limit by at least 1e-12.</param>
    /// <param name="amperes">Where the results go: I in A.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length, or the results overlap a part of an input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range; the message names parameter, index, value and range.</exception>
    public static void GreatestCurrent(
        ConductorMaterial material,
        double limitCelsius,
        ReadOnlySpan<double> squareMillimeters,
        ReadOnlySpan<double> seconds,
        ReadOnlySpan<double> initialCelsius,
        Span<double> amperes) => Sweep.Run(
            new Current(new Metal(material, Limit(material, limitCelsius))),
            new(squareMillimeters, nameof(squareMillimeters), BulkRange.SquareMillimeters),
            new(seconds, nameof(seconds), BulkRange.Seconds(LongestSeconds)),
            new(initialCelsius, nameof(initialCelsius), Below(limitCelsius)),
            amperes,
            nameof(amperes));

    private static ConductorMaterial Given(ConductorMaterial material) => material ?? throw new ArgumentNullException(nameof(material));

    private static double Limit(ConductorMaterial material, double limitCelsius) =>
        limitCelsius <= Given(material).MeltingPointCelsius && limitCelsius > ConductorMaterial.LowestCelsius
            ? limitCelsius
            : Accept.Refuse(
                nameof(limitCelsius), limitCelsius, "°C",
                $"above {Accept.Text(ConductorMaterial.LowestCelsius)} °C and at most {Accept.Text(material.MeltingPointCelsius)} °C, where {material.Name} melts");

    private static BulkRange Below(double limitCelsius) => BulkRange.CelsiusBelow(ConductorMaterial.LowestCelsius, limitCelsius);

    // Vector.Min minds the not-a-numbers, in other ways on other targets, and pays for it.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Lesser(Vector<double> a, Vector<double> b) => Vector.ConditionalSelect(Vector.LessThan(a, b), a, b);

    // What the formulas need of the metal, and the temperature reached: the limit, or the melting point.
    private readonly struct Metal(ConductorMaterial material, double endCelsius)
    {
        internal Vector<double> ConstantSquared { get; } = new(AdiabaticKernel.ConstantSquared(material));

        internal Vector<double> Beta { get; } = new(-material.InferredZeroCelsius);

        internal Vector<double> End { get; } = new(endCelsius);

        internal Vector<double> EndAboveZero { get; } = new(endCelsius - material.InferredZeroCelsius);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Vector<double> LogRatio(Vector<double> initial) => VectorExpLog.LogRatio(initial + Beta, End - initial, EndAboveZero);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Vector<double> KFactor(Vector<double> initial) => Vector.SquareRoot(ConstantSquared * LogRatio(initial));
    }

    private readonly struct Final(Metal metal, double melting) : IBulkKernel
    {
        public int Inputs => 4;

        public bool FromZero => false;

        public bool Counts => true;

        public double None => melting;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e)
        {
            // Every metal has long melted at exp(40), so a larger exponent need not be told apart.
            Vector<double> exponent = Lesser(b * b * c / (metal.ConstantSquared * a * a), new Vector<double>(40));
            return Lesser(d + ((d + metal.Beta) * VectorExpLog.Expm1(exponent)), metal.End);
        }
    }

    private readonly struct Time(Metal metal) : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e)
        {
            Vector<double> ratio = a / b;
            return metal.ConstantSquared * ratio * ratio * metal.LogRatio(c);
        }
    }

    private readonly struct Withstand(Metal metal) : IBulkKernel
    {
        public int Inputs => 2;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            metal.ConstantSquared * a * a * metal.LogRatio(b);
    }

    private readonly struct Section(Metal metal) : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            a * Vector.SquareRoot(b) / metal.KFactor(c);
    }

    private readonly struct Current(Metal metal) : IBulkKernel
    {
        public int Inputs => 3;

        public bool FromZero => false;

        public bool Counts => false;

        public double None => 0;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e) =>
            metal.KFactor(c) * a / Vector.SquareRoot(b);
    }
}

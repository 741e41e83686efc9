using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>One rating of a fuse series: the 15 A blade fuse.</summary>
/// <remarks>Immutable. One object per rating of a series, so that choosing a fuse allocates nothing; compare by reference.</remarks>
public sealed partial class FuseRating
{
    internal FuseRating(FuseSeries series, double amperes, double? breakingAmperes, double? bodyMillimeters, TimeCurrentCurve? curve)
    {
        Series = series;
        Amperes = amperes;
        BreakingAmperes = breakingAmperes;
        BodyMillimeters = bodyMillimeters;
        Curve = curve;
    }

    /// <summary>Rated current, In.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>The series that the rating belongs to; in a combined series, its own.</summary>
    public FuseSeries Series { get; }

    /// <summary>Highest voltage of the circuit; null where the source states none.</summary>
    public ElectricPotential? VoltageRating => Series.Volts is double volts ? ElectricPotential.FromVolts(volts) : null;

    /// <summary>What the voltage rating was stated for.</summary>
    public RatingBasis VoltageBasis => Series.VoltageBasis;

    /// <summary>Greatest current that the fuse interrupts safely at its rated voltage; null where the source states none.</summary>
    public ElectricCurrent? BreakingCapacity => BreakingAmperes is double amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>What the breaking capacity was stated for.</summary>
    public RatingBasis BreakingCapacityBasis => Series.BreakingCapacityBasis;

    /// <summary>Length of the body where it codes the rating (glass fuses of SAE J554), else null.</summary>
    public Length? BodyLength => BodyMillimeters is double millimeters ? Length.FromMillimeters(millimeters) : null;

    /// <summary>The operating-time limits; null where none are published for this rating.</summary>
    public TimeCurrentCurve? Curve { get; }

    /// <summary>The curve, where it says something of a fault: not the conventional currents alone.</summary>
    internal TimeCurrentCurve? FaultCurve => Curve is { IsConventionalOnly: false } ? Curve : null;

    /// <summary>What no operating times are published for, in words.</summary>
    internal object Untimed => Curve is { IsConventionalOnly: true } ? $"{this} above its conventional fusing current of {Accept.Text(Curve.FusingAmperes)} A" : this;

    internal double Amperes { get; }

    internal double? BreakingAmperes { get; }

    internal double? BodyMillimeters { get; }

    /// <summary>The least and the longest operating time at a current.</summary>
    /// <param name="current">Constant current through the fuse. Positive.</param>
    /// <returns>The fuse opens no sooner than the first and no later than the second. The first is zero where none is stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    /// <exception cref="OperatingTimeNotStatedException">The rating has no published limits, or the fuse need not open at this current.</exception>
    /// <remarks>See <see cref="TimeCurrentCurve"/> for what holds at, between and beyond the stated points.</remarks>
    public (Duration Least, Duration Longest) OperatingTime(ElectricCurrent current) =>
        TryOperatingTime(current, out Duration least, out Duration longest) ? (least, longest) : throw NotStated(current);

    /// <summary>The least and the longest operating time at a current, when a limit is stated.</summary>
    /// <param name="current">Constant current through the fuse. Positive.</param>
    /// <param name="least">The fuse opens no sooner; zero where none is stated.</param>
    /// <param name="longest">The fuse opens no later; zero when the result is false.</param>
    /// <returns>False when the rating has no published limits or the fuse need not open at this current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public bool TryOperatingTime(ElectricCurrent current, out Duration least, out Duration longest)
    {
        double amperes = Accept.Amperes(current, nameof(current));
        least = TryLeastSeconds(amperes, out double shortSeconds) ? Duration.FromSeconds(shortSeconds) : Duration.Zero;
        bool opens = TryLongestSeconds(amperes, out double longSeconds);
        longest = Duration.FromSeconds(longSeconds);
        return opens;
    }

    /// <summary>The rating in words: <c>15 A blade fuse (ISO 8820-3 type C)</c>.</summary>
    public override string ToString() => $"{Accept.Text(Amperes)} A {Series.Kind} ({Series.Name})";

    /// <summary>Least operating time in s at a current in A; false where none is stated. Does not allocate.</summary>
    internal bool TryLeastSeconds(double amperes, out double seconds)
    {
        seconds = 0;
        return Curve is not null && Curve.TryLeastSeconds(amperes, out seconds);
    }

    /// <summary>Longest operating time in s at a current in A; false where the fuse need not open or nothing is stated. Does not allocate.</summary>
    internal bool TryLongestSeconds(double amperes, out double seconds)
    {
        seconds = 0;
        return Curve is not null && Curve.TryLongestSeconds(amperes, out seconds);
    }

    private OperatingTimeNotStatedException NotStated(in ElectricCurrent current) => new(
        Curve is null
            ? $"No operating-time limits are published for the {this}."
            : $"The {this} need not open at {Accept.Text(current.Amperes)} A; its conventional fusing current is {Accept.Text(Curve.FusingAmperes)} A.");
}

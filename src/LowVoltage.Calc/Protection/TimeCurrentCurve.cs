using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The band in which a protective device opens: least and longest operating time against constant current.</summary>
/// <remarks>
/// <para><b>At</b> a stated point: exactly the stated time. <b>Between</b> points: straight in log-log coordinates. For the longest time that is
/// on the safe side as long as the real curve is hollow in log-log coordinates, as fuse curves are, which is an assumption: <see cref="ProvenLongestTime"/> makes none, the protective
/// checks take the line and say where the points alone would not have protected (<see cref="LongestTimeBasis"/>); for the least time it is the customary reading and not
/// proven, and <see cref="ProvenLeastTime"/> is.</para>
/// <para><b>Below</b> the first longest point (the conventional fusing current): the device need not open, so there is no longest time.
/// <b>Up to</b> the non-fusing current it does not open within the conventional time. Between the non-fusing current and the first
/// stated least time that least time holds already, because a smaller current never opens a device sooner.</para>
/// <para><b>Beyond</b> the last point of a fuse: constant Joule integral, t = t_last·(I_last/I)². For the longest time that is on the safe side, since the
/// real Joule integral falls towards its adiabatic value; for the least time it is an estimate for the same reason. Where a standard states one longest time alone, that of the conventional
/// fusing current, the checks take no time beyond it: what rests on one is undetermined. Beyond the last point of a circuit-breaker: the longest time
/// stays (a mechanism does not become faster without end), the least falls at constant Joule integral.</para>
/// <para>Immutable, thread-safe. Asking allocates nothing.</para>
/// </remarks>
public sealed partial class TimeCurrentCurve
{
    private readonly LogLogLine longest;
    private readonly LogLogLine? least;
    private readonly TimeCurrentPoint? nonFusing;

    private TimeCurrentCurve(LogLogLine longest, LogLogLine? least, TimeCurrentPoint? nonFusing, bool conventionalOnly)
    {
        IsConventionalOnly = conventionalOnly;
        this.longest = longest;
        this.least = least;
        this.nonFusing = nonFusing;
    }

    /// <summary>The conventional fusing current: from here on a longest time is stated.</summary>
    public ElectricCurrent FusingCurrent => ElectricCurrent.FromAmperes(longest.FirstX);

    /// <summary>The conventional non-fusing current, which is carried for <see cref="NonFusingTime"/>; null where none is stated.</summary>
    public ElectricCurrent? NonFusingCurrent => nonFusing?.Current;

    /// <summary>How long the non-fusing current is carried at least; null where none is stated.</summary>
    public Duration? NonFusingTime => nonFusing?.Time;

    /// <summary>The least Joule integral that opens the device at high current, from the last least point; null where none is stated.</summary>
    public JouleIntegral? LeastJouleIntegral => least is null ? null : Joule(least);

    /// <summary>The most Joule integral let through at high current, from the last longest point.</summary>
    public JouleIntegral LongestJouleIntegral => Joule(longest);

    internal double FusingAmperes => longest.FirstX;

    internal LogLogLine LongestLine => longest;

    internal LogLogLine? LeastLine => least;

    /// <summary>Whether the longest time stays beyond the last point, as a circuit-breaker's does: its Joule integral then says nothing.</summary>
    internal bool IsBreaker => longest.Slope(longest.Count - 1) == 0;

    /// <summary>Whether a standard states the conventional currents alone: then a line drawn from one time of an hour says nothing of a fault.</summary>
    internal bool IsConventionalOnly { get; }

    internal double? NonFusingAmperes => nonFusing?.Amperes;

    internal TimeCurrentPoint? NonFusing => nonFusing;

    /// <summary>A fuse's curve from points of its maker or standard.</summary>
    /// <param name="least">Least (pre-arcing) times by rising current; may be empty when none are known.</param>
    /// <param name="longest">Longest (total operating) times by rising current, beginning at the conventional fusing current. At least one.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">A list is not monotone (currents must rise, times must not), or a least time exceeds a longest one.</exception>
    public static TimeCurrentCurve Create(IReadOnlyList<TimeCurrentPoint> least, IReadOnlyList<TimeCurrentPoint> longest) =>
        TimeCurrentCurveBuilder.Build(least, longest, null, breaker: false);

    /// <summary>A fuse's curve with its conventional non-fusing current.</summary>
    /// <param name="least">Least (pre-arcing) times by rising current; may be empty when none are known.</param>
    /// <param name="longest">Longest (total operating) times by rising current, beginning at the conventional fusing current. At least one.</param>
    /// <param name="nonFusing">The current that is carried, and for how long at least.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">A list is not monotone, a least time exceeds a longest one, or the non-fusing current is not the smallest current.</exception>
    public static TimeCurrentCurve Create(
        IReadOnlyList<TimeCurrentPoint> least, IReadOnlyList<TimeCurrentPoint> longest, TimeCurrentPoint nonFusing) =>
        TimeCurrentCurveBuilder.Build(least, longest, nonFusing, breaker: false);

    /// <summary>A circuit-breaker's curve: beyond the last point the longest time stays what it is.</summary>
    /// <param name="least">Least times by rising current; may be empty when none are known.</param>
    /// <param name="longest">Longest (total) times by rising current, beginning at the conventional tripping current. At least one.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">A list is not monotone (currents must rise, times must not), or a least time exceeds a longest one.</exception>
    public static TimeCurrentCurve CreateCircuitBreaker(IReadOnlyList<TimeCurrentPoint> least, IReadOnlyList<TimeCurrentPoint> longest) =>
        TimeCurrentCurveBuilder.Build(least, longest, null, breaker: true);

    /// <summary>The device opens no sooner than this.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <returns>The least time; null where none is stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public Duration? LeastTime(ElectricCurrent current) =>
        TryLeastSeconds(Accept.Amperes(current, nameof(current)), out double seconds) ? Duration.FromSeconds(seconds) : null;

    /// <summary>The device opens no later than this.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <returns>The longest time; null below the conventional fusing current, where the device need not open.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public Duration? LongestTime(ElectricCurrent current) =>
        TryLongestSeconds(Accept.Amperes(current, nameof(current)), out double seconds) ? Duration.FromSeconds(seconds) : null;

    /// <summary>The least time that follows from the stated points alone: that of the next stated current at or above this one.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <returns>The time; null beyond the last stated current, where nothing is proven.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    /// <remarks>A device never opens sooner at a smaller current, so the step holds without any assumption about the curve between points.</remarks>
    public Duration? ProvenLeastTime(ElectricCurrent current) =>
        TryProvenLeastSeconds(Accept.Amperes(current, nameof(current)), out double seconds) ? Duration.FromSeconds(seconds) : null;

    /// <summary>The longest time that follows from the stated points: that of the last stated current at or below this one.</summary>
    /// <param name="current">Constant current. Positive.</param>
    /// <returns>The time; null below the conventional fusing current, where the device need not open.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    /// <remarks>
    /// A device never opens later at a larger current, so the step holds without any assumption about the curve between points. Beyond the last one it is <see cref="LongestTime"/>,
    /// on the safe side by itself. Of a high-current blade fuse at 150 % the points prove 1800 s, where the line between 135 % and 200 % says 723 s.
    /// </remarks>
    public Duration? ProvenLongestTime(ElectricCurrent current) =>
        TryProvenLongestSeconds(Accept.Amperes(current, nameof(current)), out double seconds) ? Duration.FromSeconds(seconds) : null;

    internal static TimeCurrentCurve FromLines(LogLogLine longest, LogLogLine? least, TimeCurrentPoint? nonFusing, bool conventionalOnly) => new(longest, least, nonFusing, conventionalOnly);

    /// <summary>Least time in s at a current in A; false where none is stated.</summary>
    internal bool TryLeastSeconds(double amperes, out double seconds)
    {
        if (TryNonFusingSeconds(amperes, out seconds))
        {
            return true;
        }

        if (least is null)
        {
            return false;
        }

        seconds = least.Covers(amperes) ? least.At(amperes) : least.Y(0);
        return true;
    }

    /// <summary>Longest time in s at a current in A; false below the conventional fusing current.</summary>
    internal bool TryLongestSeconds(double amperes, out double seconds)
    {
        bool opens = longest.Covers(amperes);
        seconds = opens ? longest.At(amperes) : 0;
        return opens;
    }

    /// <summary>Longest time in s that the stated points alone prove; false below the conventional fusing current.</summary>
    internal bool TryProvenLongestSeconds(double amperes, out double seconds)
    {
        bool opens = longest.Covers(amperes);
        int piece = opens ? longest.PieceAt(amperes) : 0;
        seconds = !opens ? 0 : piece + 1 < longest.Count ? longest.Y(piece) : longest.At(amperes);
        return opens;
    }

    /// <summary>Least time in s that the stated points alone prove, at a current in A.</summary>
    internal bool TryProvenLeastSeconds(double amperes, out double seconds)
    {
        if (TryNonFusingSeconds(amperes, out seconds))
        {
            return true;
        }

        return least is not null && least.TryStepAt(amperes, out seconds);
    }

    /// <summary>The greatest I²·t of the longest times between two currents, in A²s, and the current where it is reached.</summary>
    /// <remarks>
    /// Between two stated points t is a power of I, and so is I²·t: it is monotone there, and the greatest value of a range stands at one of its ends
    /// or at a stated point inside it. The lower current must open the fuse.
    /// </remarks>
    internal double GreatestLongestJouleIntegral(double leastAmperes, double greatestAmperes, out double worstAmperes)
    {
        worstAmperes = leastAmperes;
        double greatest = leastAmperes * leastAmperes * longest.At(leastAmperes);
        for (int i = 0; i <= longest.Count; i++)
        {
            double amperes = i < longest.Count ? longest.X(i) : greatestAmperes;
            double joules = amperes * amperes * longest.At(amperes);
            if (amperes > leastAmperes && amperes <= greatestAmperes && joules > greatest)
            {
                // Where the integral is constant, the least current stands for all: rounding shall not choose.
                worstAmperes = joules > greatest * (1 + 1e-9) ? amperes : worstAmperes;
                greatest = joules;
            }
        }

        return greatest;
    }

    private static JouleIntegral Joule(LogLogLine line) => JouleIntegral.FromAmpereSquaredSeconds(line.LastX * line.LastX * line.LastY);

    private bool TryNonFusingSeconds(double amperes, out double seconds)
    {
        // 1e-12: two ways of writing the same current.
        bool carried = nonFusing is TimeCurrentPoint point && amperes <= point.Amperes * (1 + 1e-12);
        seconds = carried ? nonFusing!.Value.Seconds : 0;
        return carried;
    }
}

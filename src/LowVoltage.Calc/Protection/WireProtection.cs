using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a fuse against a wire: the verdict, and the current at which it is tightest.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed partial class WireProtection
{
    private readonly double amperes;
    private readonly double limit;
    private readonly double? fuseSeconds;
    private readonly double? reached;

    // What was asked, for the working.
    private readonly ProtectedWire? asked;
    private readonly TimeCurrentCurve? curve;
    private readonly string device = "";
    private readonly double prospective;

    internal WireProtection(string reason) => Reason = reason;

    internal WireProtection(TimeCurrentCurve curve, string device, ProtectedWire asked, int index, double prospective)
        : this(curve, device, asked, asked.Limits(), index, prospective)
    {
    }

    internal WireProtection(TimeCurrentCurve curve, string device, ProtectedWire asked, in WireLimits wire, int index, double prospective)
    {
        this.asked = asked;
        this.curve = curve;
        this.device = device;
        this.prospective = prospective;
        TightestPoint point = FuseAgainstWireKernel.Tightest(wire, curve, prospective);
        amperes = point.Amperes;
        Regime = point.Regime;
        WeakestWire = index;
        limit = wire.LimitCelsius(Regime);
        Verdict = point.Ratio >= 1 ? ProtectionVerdict.Protected : ProtectionVerdict.NotProtected;
        double exact = FuseAgainstWireKernel.ExactRatio(wire, curve, point);

        // Within a millionth of 1 the table's understatement decides, and the ratio must not contradict the verdict.
        TimeRatio = Verdict == ProtectionVerdict.NotProtected && exact >= 1 ? point.Ratio : exact;
        if (Regime != ProtectionRegime.Sustained && curve.TryLongestSeconds(amperes, out double seconds))
        {
            fuseSeconds = seconds;
        }

        if (Verdict == ProtectionVerdict.Protected)
        {
            bool proven = FuseAgainstWireKernel.TightestByStatedPoints(wire, curve, prospective).Ratio >= 1;
            Basis = proven ? LongestTimeBasis.StatedPoints : LongestTimeBasis.CustomaryLine;
        }

        reached = wire.ReachedCelsius(amperes, fuseSeconds);
        Reason = Say();
    }

    /// <summary>The verdict.</summary>
    public ProtectionVerdict Verdict { get; }

    /// <summary>Which limit is the tightest.</summary>
    public ProtectionRegime Regime { get; }

    /// <summary>Index of the wire that decides.</summary>
    public int WeakestWire { get; }

    /// <summary>The current at which the fuse is closest to failing the wire, or fails it worst; null when nothing was evaluated.</summary>
    public ElectricCurrent? TightestCurrent => Verdict == ProtectionVerdict.NotEvaluated ? null : ElectricCurrent.FromAmperes(amperes);

    /// <summary>
    /// Wire time over fuse time there: at least 1 when protected, infinite when the wire never reaches its limit; 0 when the fuse need not open at a
    /// current that the wire does not stand, and when nothing was evaluated.
    /// </summary>
    public double TimeRatio { get; }

    /// <summary>The fuse's longest time there; null where it need not open.</summary>
    public Duration? FuseTime => fuseSeconds is double seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>Temperature of the conductor when the fuse has opened at that current, or that it settles at; null when the metal melts, and when nothing was evaluated.</summary>
    public Temperature? TemperatureReached => reached is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The limit that it is held against; null when nothing was evaluated.</summary>
    public Temperature? Limit => Verdict == ProtectionVerdict.NotEvaluated ? null : Temperature.FromDegreesCelsius(limit);

    /// <summary>What the longest times of the device rest on where it protects; null where it does not, and when nothing was evaluated.</summary>
    public LongestTimeBasis? Basis { get; }

    /// <summary>The assumption that the verdict rests on, as a sentence; null where it needs none.</summary>
    public string? Assumption => Basis == LongestTimeBasis.CustomaryLine
        ? $"Between two stated longest times the {device} is taken to follow the straight line in log-log coordinates; the stated times alone would not prove that it protects the wire."
        : null;

    /// <summary>The reason in a sentence with the numbers.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Reason;

    /// <summary>Less time to spare; where time says nothing, because the fuse need not open, less room below the limit or further beyond it.</summary>
    internal bool IsWeakerThan(WireProtection other) => TimeRatio.Equals(other.TimeRatio)
        ? (reached ?? double.PositiveInfinity) - limit > (other.reached ?? double.PositiveInfinity) - other.limit
        : TimeRatio < other.TimeRatio;

    private string Say()
    {
        string hot = reached is double celsius ? $"the wire is at {Accept.Short(celsius)} °C" : "the wire melts";
        string held = $"against {Accept.Short(limit)} °C";
        string when = fuseSeconds is double seconds
            ? $"at {Accept.Short(amperes)} A the {device} opens within {Accept.Short(seconds)} s, when {hot} {held}"
            : $"up to {Accept.Short(amperes)} A the {device} need not open, and {hot} in the long run {held}";
        return (Verdict == ProtectionVerdict.Protected ? "Protected; tightest " : "Not protected: ") + when + ".";
    }
}

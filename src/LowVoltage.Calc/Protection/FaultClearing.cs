using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Protection;

/// <summary>The moment at which a fuse ends a short circuit whose current falls as the conductors heat: soonest and latest.</summary>
/// <remarks>
/// <para>Time-current curves are stated for constant currents. For a current that only falls, as here, the following hold.</para>
/// <para><b>Latest</b> (for how hot the wire gets). A fuse has opened for sure at the first moment T at which
/// <code>∫I²dt up to T ≥ I(T)²·t_longest(I(T))</code>
/// that is, when it has had the Joule integral that it would need at a constant current as small as the smallest it has seen. <b>Safe because</b> more current
/// earlier melts a fuse element with less Joule integral: exactly so for one lump that loses heat, whatever the law of the loss (dJ/dx = I²/(I² − loss) falls
/// with I), and for any element that conducts heat linearly (its response to a pulse only dies away, and the pulse is spent sooner). Beyond the last stated
/// point this is the constant Joule integral of the curve itself.</para>
/// <para>The customary sum of time shares, ∫dt/t_longest(I) ≥ 1, is <b>not</b> safe for a falling current and is not used: most of the time at a small current
/// passes near the melting temperature, so a share gained at a large one is worth less than it says.</para>
/// <para>A circuit-breaker's time does not follow a Joule integral. For it, only "more current never opens it later" is used: open at
/// the first T ≥ t_longest(I(T)).</para>
/// <para><b>Soonest</b> (for what the fuse lets pass at least). No sooner than at the first, largest current held constant: t_least(I(0)).</para>
/// <para>The wire loses no heat: it is hotter, its current smaller and the latest moment later than in truth. Past 5 s that is a loose bound.</para>
/// </remarks>
public static class FaultClearing
{
    private const int SamplesPerPiece = 64;

    /// <summary>The latest clearing: the fuse has opened by then.</summary>
    /// <param name="path">The loop; the least prospective current to show that the fuse opens.</param>
    /// <param name="fuse">The fuse.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Latest(FaultPath path, FuseRating fuse)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return fuse.Curve is { } curve
            ? Latest(path, curve)
            : new FaultOpening(FaultOutcome.NotEvaluated, null, $"No operating times are published for the {fuse}.");
    }

    /// <summary>The latest clearing: the device has opened by then.</summary>
    /// <param name="path">The loop; the least prospective current to show that the device opens.</param>
    /// <param name="curve">The device's curve.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Latest(FaultPath path, TimeCurrentCurve curve)
    {
        FaultKernel fault = (path ?? throw new ArgumentNullException(nameof(path))).Kernel;
        _ = curve ?? throw new ArgumentNullException(nameof(curve));
        double first = fault.AmperesAt(0);
        return Latest(fault, curve, out double joules) switch
        {
            FaultOutcome.Opens => Open(new FaultState(fault, joules, melts: false), "The device has opened after"),
            FaultOutcome.ConductorMelts => new FaultOpening(
                FaultOutcome.ConductorMelts, new FaultState(fault, joules, melts: true),
                $"A conductor melts after {Accept.Text(fault.SecondsTo(joules))} s, before the device has opened for sure."),
            _ => new FaultOpening(
                FaultOutcome.NeedNotOpen, null,
                curve.TryLongestSeconds(first, out _)
                    ? $"As the conductors heat, the current falls from {Accept.Text(first)} A below the conventional fusing current of {Accept.Text(curve.FusingAmperes)} A before the device has opened for sure."
                    : $"The fault draws {Accept.Text(first)} A, less than the conventional fusing current of {Accept.Text(curve.FusingAmperes)} A."),
        };
    }

    /// <summary>The latest clearing on doubles: what happens, and the Joule integral by then, A²s. Does not allocate.</summary>
    internal static FaultOutcome Latest(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        joules = 0;
        return !curve.TryLongestSeconds(fault.AmperesAt(0), out _) ? FaultOutcome.NeedNotOpen
            : TryOpen(fault, curve, out joules) ? FaultOutcome.Opens
            : curve.TryLongestSeconds(fault.AmperesAt(fault.MeltingJoules), out _) ? FaultOutcome.ConductorMelts
            : FaultOutcome.NeedNotOpen;
    }

    /// <summary>The soonest clearing: the fuse has not opened before.</summary>
    /// <param name="path">The loop; the greatest prospective current to show what passes at least.</param>
    /// <param name="fuse">The fuse.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Soonest(FaultPath path, FuseRating fuse)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return fuse.Curve is { } curve
            ? Soonest(path, curve)
            : new FaultOpening(FaultOutcome.NotEvaluated, null, $"No operating times are published for the {fuse}.");
    }

    /// <summary>The soonest clearing: the device has not opened before.</summary>
    /// <param name="path">The loop; the greatest prospective current to show what passes at least.</param>
    /// <param name="curve">The device's curve.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Soonest(FaultPath path, TimeCurrentCurve curve)
    {
        FaultKernel fault = (path ?? throw new ArgumentNullException(nameof(path))).Kernel;
        _ = curve ?? throw new ArgumentNullException(nameof(curve));
        double first = fault.AmperesAt(0);
        if (!curve.TryLeastSeconds(first, out double seconds))
        {
            return new FaultOpening(FaultOutcome.NotEvaluated, null, $"No least operating time is stated at {Accept.Text(first)} A.");
        }

        return fault.TryJoulesAfter(seconds, out double joules)
            ? Open(new FaultState(fault, joules, melts: false), "The device opens no sooner than after")
            : new FaultOpening(
                FaultOutcome.ConductorMelts, new FaultState(fault, joules, melts: true),
                $"A conductor melts after {Accept.Text(fault.SecondsTo(joules))} s, before the device can open.");
    }

    private static FaultOpening Open(FaultState state, string what) => new(
        FaultOutcome.Opens, state,
        $"{what} {Accept.Text(state.Seconds)} s, at {Accept.Text(state.Amperes)} A, {Accept.Text(state.Joules)} A²s and {Accept.Text(state.HottestCelsius)} °C.");

    // Between two stated points the rule is smooth; one that it meets only between two samples is missed, which makes the answer later, never sooner.
    private static bool TryOpen(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        LogLogLine longest = curve.LongestLine;
        joules = longest.LastX * longest.LastX * longest.LastY;
        if (!curve.IsBreaker && joules <= fault.MeltingJoules && fault.AmperesAt(joules) >= longest.LastX)
        {
            // It ends while the Joule integral of the curve is still constant: that is the one it needs.
            return true;
        }

        Surplus surplus = new(fault, curve);
        double from = 0, first = fault.AmperesAt(0);
        for (int i = curve.LongestLine.Count - 1; i >= 0; i--)
        {
            double to = curve.LongestLine.X(i) < first ? JoulesAt(fault, curve.LongestLine.X(i)) : 0;
            if (to > from && TryPiece(surplus, from, to, out joules))
            {
                return true;
            }

            from = Math.Max(from, to);
        }

        joules = fault.MeltingJoules;
        return false;
    }

    private static bool TryPiece(in Surplus surplus, double from, double to, out double joules)
    {
        double before = from;
        for (int i = 1; i <= SamplesPerPiece; i++)
        {
            joules = from + ((to - from) * i / SamplesPerPiece);
            if (surplus.Evaluate(joules) >= 0)
            {
                // Of the bracket the end that has opened, so that the rule holds at the answer.
                joules = Brent.TryFindRoot(surplus, before, joules, 1e-12 * joules, out double root) && surplus.Evaluate(root * (1 + 1e-12)) >= 0
                    ? root
                    : joules;
                return true;
            }

            before = joules;
        }

        joules = to;
        return false;
    }

    /// <summary>The Joule integral at which the current has fallen to a value, or that of melting when it has not by then.</summary>
    private static double JoulesAt(in FaultKernel fault, double amperes) =>
        fault.AmperesAt(fault.MeltingJoules) >= amperes
        || !Brent.TryFindRoot(new Fall(fault, amperes), 0, fault.MeltingJoules, 1e-13 * fault.MeltingJoules, out double root)
            ? fault.MeltingJoules
            : root;

    /// <summary>How far the rule of the latest clearing is met; at least zero when the device has opened.</summary>
    private readonly struct Surplus(FaultKernel fault, TimeCurrentCurve curve) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double amperes = fault.AmperesAt(x);
            return !curve.TryLongestSeconds(amperes, out double seconds) ? double.NegativeInfinity
                : curve.IsBreaker ? fault.SecondsTo(x) - seconds
                : x - (amperes * amperes * seconds);
        }
    }

    private readonly struct Fall(FaultKernel fault, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => fault.AmperesAt(x) - amperes;
    }
}

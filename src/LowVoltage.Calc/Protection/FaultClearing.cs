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
/// <para><b>The answer is the root itself</b>, to 1e-12: on a piece of the curve, t = t₀·(I/I₀)^−p, the need is a power of I(J). Where p ≤ 2 it falls with J and is met
/// once. Elsewhere its logarithm, and so the need, is convex in J, since the loop's resistance is a sum of growing exponentials; what the device has had is convex too
/// (its time) or straight (its Joule integral). Steps by the steepest slope that is possible up to their end never pass the first root.
/// So the latest time is never beyond the longest time at the current it ends with.</para>
/// <para><b>Others' current</b> in a conductor of the loop is counted by a bound (<see cref="FaultSegment.Sharing"/>): heated by I²·(1 + Io/Il)², Il being first the
/// conventional fusing current, the least at which the device still opens, then the current at the answer so found. Never earlier than the truth.</para>
/// <para>The wire loses no heat: it is hotter, its current smaller and the latest moment later than in truth. Past 5 s that is a loose bound.</para>
/// </remarks>
public static class FaultClearing
{
    private const int MostSteps = 200;
    private const double RootAccuracy = 1e-12;

    // How often the bound on others' current is drawn closer; the first time wins nearly all of it.
    private const int Refinements = 4;

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
        return Latest(ref fault, curve, out double joules) switch
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

    /// <summary>The latest clearing on doubles: what happens, and the Joule integral by then, A²s. Does not allocate, but for others' current.</summary>
    /// <param name="fault">The loop; where others' current flows in it, on return the bound that proves the answer.</param>
    /// <param name="curve">The device's curve.</param>
    /// <param name="joules">The Joule integral.</param>
    internal static FaultOutcome Latest(ref FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        fault = fault.DownTo(curve.FusingAmperes);
        FaultOutcome outcome = Find(fault, curve, out joules);
        for (int i = 0; i < Refinements && fault.HasOthers && outcome == FaultOutcome.Opens; i++)
        {
            // The true current is at least this one up to there, so the closer bound holds up to there as well.
            FaultKernel closer = fault.DownTo(fault.AmperesAt(joules));
            if (Find(closer, curve, out double sooner) != FaultOutcome.Opens || sooner > joules)
            {
                break;
            }

            (fault, joules) = (closer, sooner);
        }

        return outcome;
    }

    private static FaultOutcome Find(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
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
        _ = path ?? throw new ArgumentNullException(nameof(path));
        FaultKernel fault = path.Kernel.DownTo((curve ?? throw new ArgumentNullException(nameof(curve))).FusingAmperes);
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

    private static bool TryOpen(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        LogLogLine longest = curve.LongestLine;
        joules = longest.LastX * longest.LastX * longest.LastY;
        if (!curve.IsBreaker && joules <= fault.MeltingJoules && fault.AmperesAt(joules) >= longest.LastX)
        {
            // It ends while the Joule integral of the curve is still constant: that is the one it needs.
            return true;
        }

        double from = 0, first = fault.AmperesAt(0);
        for (int i = longest.Count - 1; i >= 0; i--)
        {
            double to = longest.X(i) < first ? JoulesAt(fault, longest.X(i)) : 0;
            if (to > from && TryPiece(new Surplus(fault, longest, i, curve.IsBreaker), from, to, out joules))
            {
                return true;
            }

            from = Math.Max(from, to);
        }

        joules = fault.MeltingJoules;
        return false;
    }

    /// <summary>The first Joule integral of a piece at which the device has opened.</summary>
    private static bool TryPiece(in Surplus surplus, double from, double to, out double joules)
    {
        joules = from;
        if (surplus.Evaluate(from) >= 0)
        {
            return true;
        }

        if (surplus.Growth > 0)
        {
            return TryConvex(surplus, from, to, out joules);
        }

        // The need only falls: one root, or none.
        joules = to;
        if (surplus.Evaluate(to) < 0)
        {
            return false;
        }

        if (Brent.TryFindRoot(surplus, from, to, 0, out double root))
        {
            // Of the bracket the end that has opened, so that the rule holds at the answer.
            joules = surplus.Evaluate(root) >= 0 ? root : Math.Min(to, root * (1 + RootAccuracy));
        }

        return true;
    }

    private static bool TryConvex(in Surplus surplus, double from, double to, out double joules)
    {
        joules = from;
        for (int i = 0; i < MostSteps; i++)
        {
            double needed = surplus.Needed(joules, out double neededSlope), value = surplus.Had(joules) - needed;
            if (value >= 0)
            {
                return true;
            }

            // The slope of what it has had grows: that at the end of the step bounds it all along.
            double slope = surplus.HadSlope(joules) - neededSlope;
            double reach = slope > 0 ? Math.Min(to, joules - (2 * value / slope)) : to;
            double bound = surplus.HadSlope(reach) - neededSlope;
            double next = bound > 0 ? Math.Min(reach, joules - (value / bound)) : reach;

            // As near to the root as this: past it.
            joules = Math.Min(to, Math.Max(next, joules * (1 + RootAccuracy)));
            if (joules >= to)
            {
                return surplus.Evaluate(to) >= 0;
            }
        }

        // A need that is grazed without end: not met, which makes the answer later, never sooner.
        joules = to;
        return false;
    }

    /// <summary>The Joule integral at which the current has fallen to a value, or that of melting when it has not by then.</summary>
    private static double JoulesAt(in FaultKernel fault, double amperes) =>
        fault.AmperesAt(fault.MeltingJoules) >= amperes
        || !Brent.TryFindRoot(new Fall(fault, amperes), 0, fault.MeltingJoules, 1e-13 * fault.MeltingJoules, out double root)
            ? fault.MeltingJoules
            : root;

    /// <summary>How far the rule of the latest clearing is met on one piece of the curve; at least zero when the device has opened.</summary>
    private readonly struct Surplus(FaultKernel fault, LogLogLine longest, int piece, bool breaker) : IScalarFunction
    {
        /// <summary>Power of 1/I by which the need grows.</summary>
        internal double Growth { get; } = -longest.Slope(piece) - (breaker ? 0 : 2);

        public double Evaluate(double x) => Had(x) - Needed(x, out _);

        /// <summary>Joule integral, or seconds, that the device has had.</summary>
        internal double Had(double joules) => breaker ? fault.SecondsTo(joules) : joules;

        internal double HadSlope(double joules)
        {
            double amperes = breaker ? fault.AmperesAt(joules) : 1;
            return 1 / (amperes * amperes);
        }

        internal double Needed(double joules, out double slope)
        {
            double amperes = fault.AmperesAt(joules, out double fall);
            double seconds = longest.Y(piece) * Math.Exp(longest.Slope(piece) * Math.Log(amperes / longest.X(piece)));
            double needed = breaker ? seconds : amperes * amperes * seconds;
            slope = Growth * fall * needed;
            return needed;
        }
    }

    private readonly struct Fall(FaultKernel fault, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => fault.AmperesAt(x) - amperes;
    }
}

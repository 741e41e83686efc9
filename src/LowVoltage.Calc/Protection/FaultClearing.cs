using LowVoltage.Calc.Heating;
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
/// <para><b>The answer is the root itself</b>, to 1e-13: on a piece of the curve, t = t₀·(I/I₀)^−p, the need is a power of I(J). Where p ≤ 2 it falls with J and is met
/// once. Elsewhere its logarithm, and so the need, is convex in J, since the loop's resistance is a sum of growing exponentials; what the device has had is convex too
/// (its time) or straight (its Joule integral). Steps by the steepest slope that is possible up to their end never pass the first root.
/// So the latest time is never beyond the longest time at the current it ends with.</para>
/// <para><b>Others' current</b> in a conductor of the loop is counted by a bound (<see cref="FaultSegment.Sharing"/>): heated by I²·(1 + Io/Il)², Il being first the
/// conventional fusing current, the least at which the device still opens, then the current at the answer so found. Never earlier than the truth.</para>
/// <para>The wire loses no heat: it is hotter, its current smaller and the latest moment later than it really is. Past 5 s that is a loose bound.</para>
/// </remarks>
public static partial class FaultClearing
{
    /// <summary>The latest clearing: the fuse has opened by then.</summary>
    /// <param name="path">The loop; the least prospective current to show that the fuse opens.</param>
    /// <param name="fuse">The fuse.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Latest(FaultPath path, FuseRating fuse)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return fuse.FaultCurve is { } curve
            ? Latest(path, curve)
            : new FaultOpening(FaultOutcome.NotEvaluated, null, $"No operating times are published for the {fuse.Untimed}.");
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

    /// <summary>The soonest clearing: the fuse has not opened before.</summary>
    /// <param name="path">The loop; the greatest prospective current to show what passes at least.</param>
    /// <param name="fuse">The fuse.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static FaultOpening Soonest(FaultPath path, FuseRating fuse)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        return fuse.FaultCurve is { } curve
            ? Soonest(path, curve)
            : new FaultOpening(FaultOutcome.NotEvaluated, null, $"No operating times are published for the {fuse.Untimed}.");
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
}

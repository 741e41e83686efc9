using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Protection;

/// <summary>Whether a fuse holds while a circuit starts: one start, and the number of starts in its life.</summary>
/// <remarks>
/// <code>
/// one start:    ∫ dt/t_least(i(t)) ≤ 1                       over the time in which i exceeds the rating
/// all starts:   ∫ i² dt ≤ share(starts)·least i²·t_least(i)  over the same time; least from the peak down to the first stated point
/// </code>
/// <para><b>One start.</b> The sum of the shares of melting. A current that is held gives exactly its least time. <b>Safe</b> for a current that only falls, as a start's does
/// (<see cref="StartWaveform"/>): at a smaller current an element spends less of its melting time getting warm and more of it close to melting, so the shares gained
/// before are worth less than the sum says, and at melting the sum is at least one.</para>
/// <para><b>All starts.</b> As <see cref="PulseAgainstFuse"/>, whose shares it takes (<see cref="PulseWithstand"/>): the whole Joule integral above the rating counts, the
/// running current in it too.</para>
/// <para><b>Verdict.</b> Within by the stated points where they prove it; else by the customary line between and beyond them, and the outcome says so
/// (<see cref="StartBasis.CustomaryLine"/>): a design may pass on it, with the assumption printed. Exceeded when the line does not pass either. Not
/// proven, never a pass, when no least time is published.</para>
/// </remarks>
public static class StartAgainstFuse
{
    /// <summary>Starts in the life of a fuse unless stated: some three a day for ten years. Common practice, no published source.</summary>
    public const int DefaultStarts = 10_000;

    // Between two starts a fuse cools down: the shares for repeated pulses are published for pulses at least so far apart.
    internal const double LeastSecondsApart = 10;

    // Two ways of writing the same time.
    private const double Rounding = 1e-12;

    /// <summary>The source of the shares for repeated starts.</summary>
    public static Reference Reference { get; } = PulseWithstand.Reference;

    /// <summary>A start against a fuse.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="start">The current of the start.</param>
    /// <param name="starts">Starts expected in the fuse's life, at least 10 s apart: 1 to 100 000.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static StartOutcome Check(FuseRating fuse, StartWaveform start, int starts = DefaultStarts)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        _ = start ?? throw new ArgumentNullException(nameof(start));
        _ = Accept.Count(starts, 1, PulseWithstand.MostPulses, nameof(starts));
        return new StartOutcome(Find(fuse, start, PulseWithstand.ShareFor(starts)), fuse, start, starts);
    }

    /// <summary>The same on doubles.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="start">The current of the start.</param>
    /// <param name="share">Of the Joule integral that it withstands that often.</param>
    /// <param name="verdictOnly">Whether only the verdict is asked for: of a start that is exceeded the number may then be less than it is, yet above one.</param>
    internal static StartFinding Find(FuseRating fuse, StartWaveform start, double share, bool verdictOnly = false)
    {
        double rated = fuse.Amperes, peak = start.PeakAmperes;
        StartFinding found = new() { Peak = peak, Basis = StartBasis.WithinRating, Verdict = RatingVerdict.Within };
        if (peak <= rated)
        {
            return found;
        }

        found.Seconds = start.SecondsAbove(rated);
        if (double.IsInfinity(found.Seconds))
        {
            // It is not the start that the fuse does not hold: it is the load.
            found.Verdict = RatingVerdict.Exceeded;
            found.Basis = StartBasis.None;
            found.Once = found.Often = double.PositiveInfinity;
            return found;
        }

        found.Joules = start.JoulesAbove(rated);
        if (fuse.Curve is not { } curve || !curve.TryLeastSeconds(peak, out double seconds))
        {
            found.Verdict = RatingVerdict.NotProven;
            found.Basis = StartBasis.None;
            return found;
        }

        if (curve.TryProvenLeastSeconds(peak, out double proven))
        {
            Judge(ref found, StartBasis.StatedPoints, start.MeltingAbove(rated, curve, proven: true), share * PulseAgainstFuse.Least(curve, peak, proven));
            if (found.Verdict == RatingVerdict.Within)
            {
                return found;
            }
        }

        double allowed = share * PulseAgainstFuse.Least(curve, peak, seconds);
        bool settled = verdictOnly && found.Joules / allowed > 1 + Rounding;
        Judge(ref found, StartBasis.CustomaryLine, settled ? 0 : start.MeltingAbove(rated, curve, proven: false), allowed);
        return found;
    }

    private static void Judge(ref StartFinding found, StartBasis basis, double melting, double allowed)
    {
        found.Basis = basis;
        found.Once = melting;
        found.Allowed = allowed;
        found.Often = found.Joules / allowed;
        found.Verdict = found.Share <= 1 + Rounding ? RatingVerdict.Within : RatingVerdict.Exceeded;
    }
}

/// <summary>A start against a fuse on doubles.</summary>
internal struct StartFinding
{
    internal RatingVerdict Verdict;
    internal StartBasis Basis;

    /// <summary>Highest current, A.</summary>
    internal double Peak;

    /// <summary>Time above the rating, s; infinite when the running current is above it.</summary>
    internal double Seconds;

    /// <summary>∫i²dt in that time, A²s.</summary>
    internal double Joules;

    /// <summary>What the fuse stands for the number of starts, A²s.</summary>
    internal double Allowed;

    /// <summary>Share of melting in one start.</summary>
    internal double Once;

    /// <summary>Joule integral over what is allowed for the number of starts.</summary>
    internal double Often;

    /// <summary>The larger of the two.</summary>
    internal readonly double Share => Math.Max(Once, Often);
}

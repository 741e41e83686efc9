using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Design;

/// <summary>Looks for the wire that does its duty and the fuse that serves load and wire; where nothing passes, for the nearest.</summary>
/// <remarks>
/// The wire is chosen first, for strength, drop, rating, heat and start; then the fuse. What neither more copper nor another rating cures (a breaking capacity that is too
/// small, a fuse too far from its source, a source that is too low) grows no wire: it stands as a failed check on the wire and fuse that are right otherwise. So
/// does what is not published of a fuse, as undetermined.
/// </remarks>
internal sealed partial class CircuitSearch(BranchState at, IReadOnlyList<Conductor> sizes, FuseRating[] fuses)
{
    // A larger fuse that settles what the smallest cannot is taken up to this multiple of it: beyond, it is another circuit's fuse.
    private const double MostMultiple = 2;

    // The same where nothing is published of the smallest: the next of known times, 3 A above 1 A among blades, is what is fitted, and it proves its protection.
    private const double MostMultipleOfUntimed = 3;

    // Of two sizes that fail alike, a larger one must bring the worst check this much nearer to its limit.
    private const double Nearness = 0.1;

    // More than checks can fail.
    private const int NotRated = 100;

    private readonly double mostDropVolts = at.DropLimit.TryVolts(at.Source.NominalVolts, at.Intermittent, out double volts) ? volts : double.PositiveInfinity;

    private bool? lost;

    /// <summary>What the search found.</summary>
    internal readonly struct Choice
    {
        /// <summary>Place of the wire in the series.</summary>
        internal int Size { get; init; }

        internal FuseRating? Fuse { get; init; }

        /// <summary>Whether nothing passes and this comes nearest.</summary>
        internal bool IsNearest { get; init; }
    }

    internal Choice Find()
    {
        for (int i = 0; i < sizes.Count; i++)
        {
            at.SetCandidate(sizes[i]);
            CheckTally run = default;
            if (!IsOutWhenCool() && run.WirePasses(at) && at.IsRated && at.Duty.Exists && FirstFuse(run) is { } fuse)
            {
                return new Choice { Size = i, Fuse = fuse };
            }
        }

        return Nearest();
    }

    /// <summary>Whether the candidate is out before it is rated: no size can be rated here, it is too thin, or it drops too much even as cool as the air.</summary>
    /// <remarks>
    /// A warmer conductor has more resistance, and every kind of load then leaves more of the voltage in the path: what is too much here is too much at any
    /// temperature that the rating could give. The answer "no" says nothing.
    /// </remarks>
    private bool IsOutWhenCool()
    {
        if (at.Site.Rating.Gap.Exists)
        {
            return true;
        }

        for (int i = 0; i < at.OwnCount; i++)
        {
            if (at.Stretches[i].Conductor.AreaSquareMillimeters < at.MinimumSquareMillimeters * (1 - BranchState.Rounding))
            {
                return true;
            }
        }

        // A little less resistance than the coolest, so that rounding cannot decide.
        double ohms = at.CoolPathOhms * (1 - BranchState.Rounding);
        return IsOutAt(SupplyLevel.Minimum, ohms) || IsOutAt(SupplyLevel.Maximum, ohms);
    }

    private bool IsOutAt(SupplyLevel level, double ohms)
    {
        LoopPoint point = LoopKernel.Solve(
            at.Source.VoltsAt(level) - at.SharedVolts, at.Source.OhmsAt(level) + ohms, 0, at.Load, LoadState.Running, at.Source.HeldAmperes);
        return point.Exists
            ? (point.Amperes * ohms) + at.SharedVolts > mostDropVolts
            : point.Reason is NoOperatingPoint.PowerOutOfReach or NoOperatingPoint.CurrentOutOfReach;
    }

    /// <summary>The smallest fuse that serves load and wire; one that passes everything before one that leaves something undetermined, and that before one that fails what no size cures.</summary>
    /// <remarks>
    /// A fuse whose operating times are not published is taken only where no smaller fuse with published times has failed: what stops a smaller fuse stops a
    /// larger one too, unless somebody knows better.
    /// </remarks>
    private FuseRating? FirstFuse(in CheckTally wire)
    {
        double least = at.LeastFuseAmperes * (1 - BranchState.Rounding), most = at.MostFuseAmperes * (1 + BranchState.Rounding);
        FuseRating? kept = null;
        int keptClass = int.MaxValue, skipped = -1;
        double last = double.PositiveInfinity;
        bool stopped = false;
        for (int i = 0; i < fuses.Length && fuses[i].Amperes <= most && fuses[i].Amperes <= last; i++)
        {
            FuseRating fuse = fuses[i];
            if (fuse.Amperes < least || FuseVoltageCheck.IsBelow(at, fuse))
            {
                continue;
            }

            CheckTally run = wire;
            at.SetFuse(fuse);
            if (!run.QuickFusePasses(at))
            {
                stopped = true;
                continue;
            }

            // The full checks can only make it worse: one that is no better than what is kept needs none. Where it was passed over, whether it stops may matter later.
            // But one of known times comes before one of which nothing is published, whatever else neither can do.
            bool knows = kept is { FaultCurve: null } && fuse.FaultCurve is not null;
            if (kept is not null && Class(run, wire) >= keptClass + (knows ? 1 : 0))
            {
                skipped = skipped < 0 ? i : skipped;
                continue;
            }

            stopped = stopped || (fuse.FaultCurve is null && skipped >= 0 && AnyStops(skipped, i, least));
            at.SetFuse(fuse);
            if (!run.RestOfFusePasses(at))
            {
                stopped = true;
            }
            else if (fuse.FaultCurve is not null || !stopped)
            {
                int own = Class(run, wire);
                if (own == 0)
                {
                    return fuse;
                }

                last = Math.Min(last, fuse.Amperes * (fuse.FaultCurve is null ? MostMultipleOfUntimed : MostMultiple));
                (kept, keptClass) = own < keptClass + (knows ? 1 : 0) ? (fuse, own) : (kept, keptClass);
            }
        }

        return kept;
    }

    // Passes, leaves something undetermined, fails what no size cures.
    private static int Class(in CheckTally run, in CheckTally wire) => run.Incurable - wire.Incurable > 0 ? 2 : run.Undetermined - wire.Undetermined > 0 ? 1 : 0;

    private bool AnyStops(int from, int to, double least)
    {
        for (int i = from; i < to; i++)
        {
            CheckTally run = default;
            at.SetFuse(fuses[i]);
            if (fuses[i].Amperes >= least && !FuseVoltageCheck.IsBelow(at, fuses[i]) && !(run.QuickFusePasses(at) && run.RestOfFusePasses(at)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Why a size was not taken: the worst failure of the wire, else that of the fuse that came nearest on it, else what is undetermined.</summary>
    internal CheckResult WhyNot(Conductor size)
    {
        at.SetCandidate(size);
        CheckRun run = default;
        run.AskWire(at);
        if (run.Failed == 0 && at.Duty.Exists && at.IsRated)
        {
            _ = NearestFuse(run, out run);
        }

        return run.Curable > 0 ? run.WorstCurable : run.Failed > 0 ? run.Worst : run.FirstUndetermined;
    }
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A short whose current comes by one way, so that every fuse on that way ends it: one path in a row, with the kernel that the checks of a circuit use.</summary>
/// <remarks>
/// The current falls as the wires heat (<see cref="FaultClearing"/>); where it is too late already at a current that stays, that. What other circuits draw through the way is counted
/// as there. Where several sources or a ring feed the way, they count as a source without resistance at the voltage that the fault leaves them at first: as the wires heat the current then falls faster
/// than it really does.
/// </remarks>
internal sealed class ShortRow
{
    private const double Rounding = 1e-9;
    private const double Nothing = 1e-9;

    private readonly FaultCase at;
    private readonly int node;
    private readonly int to;
    private readonly FeedWay way;
    private readonly int[] branches;
    private readonly int[] fuses;
    private readonly int single;

    internal ShortRow(FaultCase at, int node, int to)
    {
        (this.at, this.node, this.to) = (at, node, to);
        way = at.Graph.WayFrom(node);
        FeedWay back = at.Graph.WayFrom(to);
        branches = [.. way.Branches, .. back.Branches];
        fuses = [.. way.Branches.Where(k => at.Harness.BranchArray[k] is HarnessFuse)];
        single = at.Feeding.Single(way, back);
        Applies = !Array.Exists(back.Branches, k => at.Harness.BranchArray[k] is HarnessFuse) && !way.Branches.Intersect(back.Branches).Any() && (single >= 0 || fuses.Length > 0);
        IsDead = way.End == FeedEnd.Dead || back.End == FeedEnd.Dead;
    }

    /// <summary>Whether every fuse on the way ends the fault.</summary>
    internal bool Applies { get; }

    internal bool IsDead { get; }

    /// <summary>The fuses on the way, the nearest first.</summary>
    internal int[] Fuses => fuses;

    /// <summary>What happens; null where fuses that are not on the way may open before.</summary>
    internal ShortResult? Answer()
    {
        ShortResult result = new();
        if (Greatest(out HarnessState? strongest) is not { } greatest)
        {
            return ShortResult.Unknown("Nothing bounds the current: a source without resistance is shorted.");
        }

        result.Greatest = greatest;
        List<Course> courses = [];
        foreach (FaultScenario scenario in at.Scenarios)
        {
            HarnessState? state = at.SolveShort(scenario, node, to, []);
            if (state is not { Exists: true })
            {
                return ShortResult.Unknown(state is null ? "Nothing bounds the current: a source without resistance is shorted." : "The harness with this fault could not be solved.");
            }

            if (Math.Abs(state.ShortAmperes) > Nothing * Math.Max(1, greatest))
            {
                courses.Add(Follow(state));
            }
        }

        if (courses.Count == 0)
        {
            result.Ending = greatest > Nothing ? FaultEnding.Undetermined : FaultEnding.NoCurrent;
            result.Reason = greatest > Nothing ? "Between its least and its greatest current nothing is known: the least is nothing." : "";
            return single >= 0 || greatest <= Nothing ? result : null;
        }

        result.Least = courses.Min(c => c.Amperes);
        if (single < 0 && (!courses.TrueForAll(c => c.Sure >= 0) || OthersMayOpen(strongest!, courses.Max(c => c.Seconds[c.Sure]))))
        {
            return null;
        }

        Course worst = courses.OrderBy(c => c.Sure >= 0 ? 1 : 0).ThenByDescending(c => c.Sure >= 0 ? c.Seconds[c.Sure] : 0).First();
        if (worst.Sure >= 0)
        {
            Clear(result, courses, worst, greatest);
        }
        else
        {
            Stay(result, worst, greatest);
        }

        return result;
    }

    // In closed form where one source feeds the way, for then nothing else can carry any of it.
    private double? Greatest(out HarnessState? state)
    {
        state = null;
        if (single >= 0)
        {
            double found = ProspectiveCurrent.GreatestAt(at.Harness.SourceArray[single].Source!.Numbers, branches.Sum(at.Feeding.CoolOhms));
            return double.IsInfinity(found) ? null : found;
        }

        state = at.SolveShort(FaultScenario.Greatest, node, to, []);
        return state is { Exists: true } ? Math.Abs(state.ShortAmperes) : null;
    }

    private Course Follow(HarnessState state)
    {
        Course course = new(fuses.Length, Math.Abs(state.ShortAmperes), [.. branches.Select(k => Others(state, k))]);
        double limit = at.Harness.Rules.FusePractice.FaultSeconds;
        for (int n = 0; n < fuses.Length; n++)
        {
            course.Seconds[n] = double.PositiveInfinity;
            if (CurveOf(n) is not { } curve || !curve.TryLongestSeconds(course.Amperes, out double seconds))
            {
                continue;
            }

            if (seconds > limit)
            {
                (course.Seconds[n], course.Last[n]) = (seconds, course.Amperes);
                continue;
            }

            FaultKernel kernel = Kernel(course, curve, seconds, out bool holds);
            if (holds)
            {
                (course.Seconds[n], course.Last[n]) = (seconds, course.Amperes);
                continue;
            }

            FaultOutcome outcome = FaultClearing.Latest(ref kernel, curve, out double joules);
            course.Melts |= outcome == FaultOutcome.ConductorMelts;
            if (outcome == FaultOutcome.Opens)
            {
                (course.Seconds[n], course.Last[n]) = (kernel.SecondsTo(joules), kernel.AmperesAt(joules));
            }
        }

        for (int n = 0; n < fuses.Length; n++)
        {
            if (!double.IsInfinity(course.Seconds[n]) && (course.Sure < 0 || course.Seconds[n] < course.Seconds[course.Sure]))
            {
                course.Sure = n;
            }
        }

        return course;
    }

    private double Others(HarnessState state, int branch)
    {
        double others = Math.Abs(state.Amperes[branch]) - Math.Abs(state.ShortAmperes);
        return others > Rounding * Math.Abs(state.ShortAmperes) ? others : 0;
    }

    // The loop with all its wires. Holds: the source is at its limit and still is when the fuse has opened.
    private FaultKernel Kernel(Course course, TimeCurrentCurve curve, double seconds, out bool holds)
    {
        holds = false;
        double volts = 0, ohms = single >= 0 ? at.Harness.SourceArray[single].Source!.Numbers.GreatestOhms : 0, hot = 0;
        List<FaultLink> links = [];
        bool shared = false;
        for (int n = 0; n < branches.Length; n++)
        {
            int k = branches[n];
            ohms += at.Harness.BranchArray[k].FixedOhms;
            if (at.IsWire(k))
            {
                Checks.SegmentState s = at.Wires[k];
                FaultLink link = new(s.Conductor, s.Meters, s.UnratedCelsius, s.Parallel, course.Others[n]);
                links.Add(link);
                hot += link.Ohms;
                volts += link.Ohms * course.Others[n];
                shared |= course.Others[n] > 0;
            }
        }

        volts += course.Amperes * (ohms + hot);
        if (single >= 0 && !shared && at.Harness.SourceArray[single].Source!.Numbers is { Beyond: null } source)
        {
            FaultKernel free = new(source.MinimumVolts, ohms, [.. links]);
            if (course.Amperes < free.AmperesAt(0) * (1 - Rounding))
            {
                // The source holds its limit: as the check has it, it counts as one of more resistance once it no longer does.
                double constant = course.Amperes * course.Amperes * seconds;
                holds = constant <= free.MeltingJoules && free.AmperesAt(constant) >= course.Amperes;
                return new FaultKernel(source.MinimumVolts, (source.MinimumVolts / course.Amperes) - hot, [.. links]);
            }
        }

        return new FaultKernel(volts, ohms, [.. links]);
    }

    private bool OthersMayOpen(HarnessState strongest, double by)
    {
        for (int k = 0; k < at.Harness.BranchArray.Length; k++)
        {
            double amperes = Math.Abs(strongest.Amperes[k]);
            if (at.Harness.BranchArray[k] is HarnessFuse fuse && !fuses.Contains(k) && amperes > 0
                && (fuse.Rating!.Curve is not { } curve ? amperes > fuse.Rating.Amperes : FuseMelting.MayOpen(curve, amperes) && !(curve.TryLeastSeconds(amperes, out double least) && least > by)))
            {
                return true;
            }
        }

        return false;
    }

    private void Clear(ShortResult result, List<Course> courses, Course worst, double greatest)
    {
        result.Ending = FaultEnding.Cleared;
        int sure = worst.Sure;
        SortedSet<int> wrong = [];
        for (int n = 1; n < fuses.Length; n++)
        {
            if (n == sure || MayOpenBefore(n, courses, greatest))
            {
                _ = wrong.Add(n);
            }
        }

        result.Openings.Add(Opening(sure, greatest, worst.Seconds[sure], worst.Amperes));
        foreach (int n in wrong.Where(n => n != sure))
        {
            result.Openings.Add(Opening(n, greatest, null, worst.Amperes));
        }

        foreach (int n in wrong)
        {
            string[] lost = [.. LoadsBehind(fuses[n]).Except(LoadsBehind(fuses[0]))];
            if (lost.Length > 0)
            {
                result.WrongFuses.Add(at.Harness.BranchArray[fuses[n]].Id);
                result.LostLoads.AddRange(lost.Except(result.LostLoads));
                result.SurelyWrong |= n == sure && courses.TrueForAll(c => c.Sure == sure);
            }
        }

        FaultHeat heat = new(at, CurveOf(sure)!, courses.Min(c => c.Sure == sure ? c.Last[sure] : c.Amperes), AtFuse(sure, greatest));
        for (int n = 0; n < branches.Length; n++)
        {
            if (at.IsWire(branches[n]))
            {
                result.Wires.Add(heat.Of(branches[n], courses.Max(c => c.Others[n])));
            }
        }
    }

    private FuseOpening Opening(int n, double greatest, double? longest, double least)
    {
        TimeCurrentCurve? curve = CurveOf(n);
        double most = greatest + Carried(n);
        double? soonest = curve is not null && FuseMelting.MayOpen(curve, most) && curve.TryLeastSeconds(most, out double seconds) ? seconds : null;
        return new FuseOpening(at.Harness.BranchArray[fuses[n]].Id, soonest, longest, least, most);
    }

    // Before the nearest fuse has opened for sure, at the same current: at the least and at the greatest.
    private bool MayOpenBefore(int n, List<Course> courses, double greatest)
    {
        if (CurveOf(n) is not { } curve || CurveOf(0) is not { } nearest)
        {
            return false;
        }

        double most = greatest + Carried(n);
        bool atMost = FuseMelting.MayOpen(curve, most) && nearest.TryLongestSeconds(greatest, out double longest) && (!curve.TryLeastSeconds(most, out double least) || least <= longest);
        return atMost || courses.Exists(c =>
            FuseMelting.MayOpen(curve, c.Amperes + c.OthersOf(Array.IndexOf(branches, fuses[n]))) && (!curve.TryLeastSeconds(c.Amperes + c.OthersOf(Array.IndexOf(branches, fuses[n])), out double its) || its <= c.Seconds[0]));
    }

    // What a fuse carries for loads that the fault leaves alone, at most.
    private double Carried(int n) => Math.Max(0, at.Duty.On[fuses[n]] - (way.Branches.Length > 0 ? at.Duty.On[way.Branches[0]] : 0));

    private IEnumerable<string> LoadsBehind(int fuse) =>
        at.Harness.LoadArray.Where((l, k) => at.Duty.IsOn(k) && at.Graph.WayFrom(at.Harness.NodeIndex(l.Positive)).Branches.Contains(fuse)).Select(l => l.Id);

    private double AtFuse(int n, double greatest) => single < 0 ? greatest : Math.Min(Accept.MostAmperes, ProspectiveCurrent.GreatestAt(
        at.Harness.SourceArray[single].Source!.Numbers, way.Branches.Skip(Array.IndexOf(way.Branches, fuses[n]) + 1).Sum(at.Feeding.CoolOhms)));

    private void Stay(ShortResult result, Course worst, double greatest)
    {
        int unknown = Array.Find(fuses, k => ((HarnessFuse)at.Harness.BranchArray[k]).Rating!.Curve is null);
        if (Array.Exists(fuses, k => ((HarnessFuse)at.Harness.BranchArray[k]).Rating!.Curve is null))
        {
            (result.Ending, result.Reason) = (FaultEnding.Undetermined, $"No operating times are published for {at.Harness.BranchArray[unknown]}.");
            return;
        }

        double fusing = fuses.Length == 0 || worst.Melts ? greatest : Math.Min(greatest, Enumerable.Range(0, fuses.Length).Min(n => CurveOf(n)!.FusingAmperes));
        result.Ending = FaultEnding.NotCleared;
        result.Reason = worst.Melts ? "A wire melts before a fuse has opened for sure."
            : fuses.Length > 0 && fusing <= worst.Amperes ? "As the wires heat, the current falls below what opens a fuse for sure." : "";
        result.Remaining = Math.Max(worst.Amperes, fusing);
        for (int n = 0; n < branches.Length; n++)
        {
            if (at.IsWire(branches[n]))
            {
                FaultHeat.AddStaying(at, result, branches[n], result.Remaining.Value + worst.Others[n]);
            }
        }
    }

    private TimeCurrentCurve? CurveOf(int n) => ((HarnessFuse)at.Harness.BranchArray[fuses[n]]).Rating!.Curve;

    /// <summary>The course in one scenario: the current at first, and for every fuse on the way when it has opened for sure and at which current.</summary>
    private sealed class Course(int count, double amperes, double[] others)
    {
        internal double Amperes { get; } = amperes;

        internal double[] Others { get; } = others;

        internal double[] Seconds { get; } = new double[count];

        internal double[] Last { get; } = new double[count];

        internal int Sure { get; set; } = -1;

        internal bool Melts { get; set; }

        internal double OthersOf(int branch) => Others[branch];
    }
}

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
internal sealed partial class ShortRow
{
    private const double Rounding = 1e-9;
    private const double Nothing = 1e-9;

    private readonly FaultCase at;
    private readonly ShortStates states;
    private readonly FeedWay way;
    private readonly int[] branches;
    private readonly int[] fuses;
    private readonly int single;

    internal ShortRow(FaultCase at, ShortStates states, int node, int to)
    {
        (this.at, this.states) = (at, states);
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
            HarnessState? state = states.Of(scenario);
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

        state = states.Of(FaultScenario.Greatest);
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

            if (seconds > limit || !Array.Exists(branches, at.IsWire))
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
    }
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Follows a short from one opening fuse to the next, whatever feeds it: solved, the next fuse found, solved again with that fuse open.</summary>
/// <remarks>
/// <para>In a stage the current through every fuse counts as constant. At the latest it is the one that flows when the stage ends: the wires, heated without loss by what flows at its beginning, are
/// as hot then, and that is repeated until the moment no longer changes. More current before only opens a fuse sooner. At the soonest the first, largest current counts.</para>
/// </remarks>
internal sealed class ShortSteps(FaultCase at, ShortStates states, int node, int to)
{
    private const int MostRounds = 12;
    private const double Settled = 1e-3;

    /// <summary>A share of the first current, and a current in A, below which a fault is over.</summary>
    private const double Over = 1e-6;

    private readonly int[] fuses = [.. Enumerable.Range(0, at.Harness.BranchArray.Length).Where(k => at.Harness.BranchArray[k] is HarnessFuse && !at.Duty.Open.Contains(k))];

    /// <summary>Follows the short.</summary>
    /// <param name="scenario">With what strength it is fed.</param>
    /// <param name="soonest">Whether each fuse opens after its least time; else after its longest.</param>
    /// <param name="gone">Fuses that have opened already.</param>
    internal ShortStory Run(FaultScenario scenario, bool soonest, IReadOnlyCollection<int>? gone = null)
    {
        ShortStory story = new(at.Harness.BranchArray.Length);
        Dictionary<int, FuseMelting> melting = [];
        HashSet<int> open = [.. gone ?? []];
        bool first = true;
        double[] ohms = [.. at.OhmsOf(scenario)];
        while (true)
        {
            HarnessNetwork? network = null;
            if (Solve(scenario, open, ohms, story, ref network) is not { } state)
            {
                return story;
            }

            double amperes = Math.Abs(state.ShortAmperes);
            story.FirstAmperes = first ? amperes : story.FirstAmperes;
            if (IsOver(scenario, open, ohms, amperes, story))
            {
                story.Ending = first ? FaultEnding.NoCurrent : FaultEnding.Cleared;
                return story;
            }

            story.First ??= state;
            first = false;

            (story.RemainingAmperes, story.LastThrough) = (amperes, state.Amperes);
            Note(story, state);
            int next = Next(state, melting, story.Seconds, soonest, out double seconds);
            if (next >= 0 && !soonest && scenario.Hot && seconds <= at.Harness.Rules.FusePractice.FaultSeconds)
            {
                next = Settle(scenario, open, state, melting, story, ref network, ref seconds);
            }

            if (next < 0)
            {
                return End(story, state);
            }

            Pass(story, state, melting, seconds, heats: scenario.Hot && !soonest, ohms);
            story.Opened.Add((next, story.Seconds, Math.Abs(state.Amperes[next])));
            _ = open.Add(next);
        }
    }

    // What is left may be the current of loads that find a way through the short: with them off no source drives any.
    private bool IsOver(FaultScenario scenario, HashSet<int> open, double[] ohms, double amperes, ShortStory story)
    {
        double nothing = Over * Math.Max(1, story.FirstAmperes);
        return amperes <= nothing
            || (scenario.LoadsOn && amperes <= at.RunningTotal && WithoutLoads(scenario, open, ohms) is { Exists: true } without && Math.Abs(without.ShortAmperes) <= nothing);
    }

    private HarnessState? WithoutLoads(FaultScenario scenario, HashSet<int> open, double[] ohms)
    {
        HarnessNetwork? network = null;
        return With(scenario with { LoadsOn = false }, open, ohms, ref network);
    }

    private HarnessState? Solve(FaultScenario scenario, HashSet<int> open, double[] ohms, ShortStory story, ref HarnessNetwork? network)
    {
        HarnessState? state = open.Count == 0 ? states.Of(scenario) : With(scenario, open, ohms, ref network);
        story.Ending = FaultEnding.Undetermined;
        story.Reason = state is null ? "Nothing bounds the current: a source without resistance is shorted." : state.Exists ? "" : "The harness with this fault could not be solved.";
        return state is { Exists: true } ? state : null;
    }

    private HarnessState? With(FaultScenario scenario, HashSet<int> open, double[] ohms, ref HarnessNetwork? network)
    {
        network ??= at.NetworkOf(scenario, node, to, open);
        network?.SetOhms(ohms);
        return network?.Solve(scenario.Level);
    }

    // The wires as hot as they are when the stage ends, until that moment no longer moves. −1 where by then no fuse need open.
    private int Settle(FaultScenario scenario, HashSet<int> open, HarnessState first, Dictionary<int, FuseMelting> melting, ShortStory story, ref HarnessNetwork? network, ref double seconds)
    {
        int next = -1;
        for (int round = 0; round < MostRounds; round++)
        {
            double[] warmer = OhmsAfter(story, first, seconds, out bool melts);
            if (melts)
            {
                story.Reason = "A wire melts before a fuse has opened for sure.";
                return -1;
            }

            if (With(scenario, open, warmer, ref network) is not { Exists: true } later)
            {
                return -1;
            }

            double before = seconds;
            next = Next(later, melting, story.Seconds, soonest: false, out seconds);
            if (next < 0)
            {
                story.Reason = "As the wires heat, the current falls below what opens a fuse for sure.";
                return -1;
            }

            if (Math.Abs(seconds - before) <= Settled * before || seconds > at.Harness.Rules.FusePractice.FaultSeconds)
            {
                return next;
            }
        }

        story.Reason = "As the wires heat, the current falls faster than the moment of opening can be found.";
        return -1;
    }

    private int Next(HarnessState state, Dictionary<int, FuseMelting> melting, double now, bool soonest, out double seconds)
    {
        int found = -1;
        seconds = double.PositiveInfinity;
        foreach (int k in fuses)
        {
            double amperes = Math.Abs(state.Amperes[k]);
            if (!(amperes > 0) || CurveOf(k) is not { } curve)
            {
                continue;
            }

            FuseMelting of = melting.TryGetValue(k, out FuseMelting known) ? known : default;
            bool opens = soonest ? of.TrySoonest(curve, amperes, now, out double its) : of.TryLatest(curve, amperes, out its);
            if (opens && its < seconds)
            {
                (found, seconds) = (k, its);
            }
        }

        return found;
    }

    /// <summary>Fuses without published times that carry more than their rating.</summary>
    internal int[] UnknownFuses(HarnessState state) =>
        [.. fuses.Where(k => CurveOf(k) is null && Math.Abs(state.Amperes[k]) > ((HarnessFuse)at.Harness.BranchArray[k]).Rating!.Amperes)];

    private ShortStory End(ShortStory story, HarnessState state)
    {
        // A fuse without times that carries more than its rating may open or not.
        int unknown = UnknownFuses(state).DefaultIfEmpty(-1).First();
        story.Ending = unknown >= 0 ? FaultEnding.Undetermined : FaultEnding.NotCleared;
        story.Reason = unknown >= 0 ? $"No operating times are published for {at.Harness.BranchArray[unknown]}." : story.Reason;
        return story;
    }

    private void Pass(ShortStory story, HarnessState state, Dictionary<int, FuseMelting> melting, double seconds, bool heats, double[] ohms)
    {
        foreach (int k in fuses)
        {
            if (CurveOf(k) is { } curve && state.Amperes[k] != 0)
            {
                FuseMelting of = melting.TryGetValue(k, out FuseMelting known) ? known : default;
                of.Pass(curve, Math.Abs(state.Amperes[k]), seconds);
                melting[k] = of;
            }
        }

        if (heats)
        {
            OhmsAfter(story, state, seconds, out _).CopyTo(ohms, 0);
        }

        for (int k = 0; k < ohms.Length; k++)
        {
            story.Joules[k] += state.Amperes[k] * state.Amperes[k] * seconds;
        }

        story.Seconds += seconds;
    }

    private double[] OhmsAfter(ShortStory story, HarnessState state, double seconds, out bool melts)
    {
        double[] ohms = new double[state.Amperes.Length];
        melts = false;
        for (int k = 0; k < ohms.Length; k++)
        {
            ohms[k] = at.Harness.BranchArray[k].FixedOhms;
            if (!at.IsWire(k))
            {
                continue;
            }

            ref readonly SegmentState wire = ref at.Wires[k];
            double joules = story.Joules[k] + (state.Amperes[k] * state.Amperes[k] * seconds);
            double celsius = at.HeatedCelsius(k, joules, wire.UnratedCelsius);
            melts |= celsius >= wire.Conductor.Material.MeltingPointCelsius;
            ohms[k] += wire.OhmsAt(celsius);
        }

        return ohms;
    }

    private static void Note(ShortStory story, HarnessState state)
    {
        for (int k = 0; k < story.Most.Length; k++)
        {
            story.Most[k] = Math.Max(story.Most[k], Math.Abs(state.Amperes[k]));
        }
    }

    private TimeCurrentCurve? CurveOf(int fuse) => ((HarnessFuse)at.Harness.BranchArray[fuse]).Rating!.Curve;
}

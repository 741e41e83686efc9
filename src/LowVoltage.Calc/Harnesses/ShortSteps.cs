using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Follows a short from one opening fuse to the next, whatever feeds it: solved, the next fuse found, solved again with that fuse open.</summary>
/// <remarks>
/// <para>At the soonest the first, largest current of a stage counts. At the latest the wires heat without loss and the current falls: where that moves the moment, the stage is gone through in steps, each heated by
/// the current at its beginning, while a fuse is credited with the one at its end. It has opened when it has had the Joule integral that it would need at the current that flows then (<see cref="FaultClearing"/>).</para>
/// </remarks>
internal sealed partial class ShortSteps(FaultCase at, ShortStates states, int node, int to)
{
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
            Stage? stage = null;
            if (next >= 0 && !soonest && scenario.Hot && seconds <= at.Harness.Rules.FusePractice.FaultSeconds)
            {
                stage = new Stage(scenario, open, state, melting, story);
                next = Settle(stage, ref network, next, ref seconds);
            }

            if (next < 0)
            {
                return End(story, state, scenario, open, ohms);
            }

            Pass(story, state, melting, seconds, stage, heats: scenario.Hot && !soonest, ohms);
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

    private ShortStory End(ShortStory story, HarnessState state, FaultScenario scenario, HashSet<int> open, double[] ohms)
    {
        // A fuse without times that carries more than its rating may open or not.
        int unknown = UnknownFuses(state).DefaultIfEmpty(-1).First();
        story.Ending = unknown >= 0 ? FaultEnding.Undetermined : FaultEnding.NotCleared;
        story.Reason = unknown >= 0 ? $"No operating times are published for {at.Harness.BranchArray[unknown]}." : story.Reason;
        if (unknown < 0)
        {
            // What flows without the short as well, between two batteries or to the loads, has no part in it.
            HarnessNetwork network = at.NetworkOf(scenario, open, null);
            network.SetOhms(ohms);
            HarnessState without = network.Solve(scenario.Level);
            story.Own = [.. state.Amperes.Select((through, k) => Math.Min(Math.Abs(through), Math.Abs(through - (without.Exists ? without.Amperes[k] : 0))))];
        }

        return story;
    }

    private void Pass(ShortStory story, HarnessState state, Dictionary<int, FuseMelting> melting, double seconds, Stage? stage, bool heats, double[] ohms)
    {
        foreach (int k in fuses)
        {
            if (CurveOf(k) is { } curve && state.Amperes[k] != 0)
            {
                FuseMelting of = melting.TryGetValue(k, out FuseMelting known) ? known : default;
                if (stage?.Last is { } end && !curve.IsBreaker)
                {
                    of.PassFalling(curve, Math.Abs(end.Amperes[k]), stage.Had[k]);
                }
                else
                {
                    of.Pass(curve, Math.Abs(state.Amperes[k]), seconds);
                }

                melting[k] = of;
            }
        }

        for (int k = 0; k < ohms.Length; k++)
        {
            story.Joules[k] += stage?.Joules?[k] ?? (state.Amperes[k] * state.Amperes[k] * seconds);
        }

        if (heats)
        {
            OhmsAfter(story.Joules, out _).CopyTo(ohms, 0);
        }

        story.Seconds += seconds;
    }

    private double[] OhmsAfter(double[] joules, out bool melts)
    {
        double[] ohms = new double[joules.Length];
        melts = false;
        for (int k = 0; k < ohms.Length; k++)
        {
            ohms[k] = at.Harness.BranchArray[k].FixedOhms;
            if (!at.IsWire(k))
            {
                continue;
            }

            ref readonly SegmentState wire = ref at.Wires[k];
            double celsius = at.HeatedCelsius(k, joules[k], wire.UnratedCelsius);
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

    private TimeCurrentCurve? CurveOf(int fuse) => ((HarnessFuse)at.Harness.BranchArray[fuse]).Rating!.FaultCurve;
}

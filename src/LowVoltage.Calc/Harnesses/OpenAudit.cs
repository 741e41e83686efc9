using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What an interrupted branch does to the loads, by solving the harness without it and comparing.</summary>
internal sealed class OpenAudit
{
    /// <summary>A change of a load's voltage that counts, as a share of what it was.</summary>
    internal const double Noticeable = 0.02;

    private const double Live = 0.01;

    private readonly FaultCase at;
    private readonly List<int>[] branchesAt;
    private readonly HashSet<int>[] ways;
    private readonly LoadCondition[] before;
    private readonly int[] rows;
    private readonly Dictionary<int, (List<FaultedLoad> Loads, string Reason)> answers = [];

    internal OpenAudit(FaultCase at)
    {
        this.at = at;
        Harness harness = at.Harness;
        branchesAt = [.. Enumerable.Range(0, harness.Nodes.Count).Select(_ => new List<int>())];
        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            branchesAt[at.Graph.From[k]].Add(k);
            branchesAt[at.Graph.To[k]].Add(k);
        }

        ways = [.. harness.LoadArray.Select(l => new HashSet<int>(at.Graph.WayFrom(harness.NodeIndex(l.Positive)).Branches.Concat(at.Graph.WayFrom(harness.NodeIndex(l.Negative)).Branches)))];
        before = [.. Enumerable.Range(0, harness.LoadArray.Length).Select(at.Healthy.ConditionOf)];
        rows = new SeriesRows(harness, branchesAt).Of;
    }

    /// <summary>The loads that change; where a pulled fuse leaves its far end live also through what; and why nothing can be said, or empty.</summary>
    /// <remarks>Branches in a row with nothing between them carry one current: what interrupts one of them interrupts all, and is solved once. A fuse is solved for itself: its far end may stay live.</remarks>
    internal (List<FaultedLoad> Loads, string? LiveThrough, string Reason) Of(int branch)
    {
        bool isFuse = at.Harness.BranchArray[branch] is HarnessFuse;
        if (!isFuse && answers.TryGetValue(rows[branch], out (List<FaultedLoad> Loads, string Reason) known))
        {
            return (known.Loads, null, known.Reason);
        }

        (List<FaultedLoad> Loads, string? LiveThrough, string Reason) found = Solve(branch);
        answers[rows[branch]] = (found.Loads, found.Reason);
        return found;
    }

    private (List<FaultedLoad> Loads, string? LiveThrough, string Reason) Solve(int branch)
    {
        List<FaultedLoad> loads = [];
        if (!at.Healthy.Exists)
        {
            return (loads, null, "The harness without a fault has no solution to compare with.");
        }

        HarnessState state = at.SolveOpen([branch]);
        if (!state.Exists)
        {
            return (loads, null, state.End == NetworkEnd.PowerOutOfReach && state.Hardest >= 0
                ? $"With it open, load {at.Harness.LoadArray[state.Hardest].Id} of constant power cannot be supplied."
                : "The harness with this fault could not be solved.");
        }

        BackFeed feed = new(at, state, branchesAt);
        for (int k = 0; k < at.Harness.LoadArray.Length; k++)
        {
            if (EffectOn(k, branch, state) is { } effect)
            {
                bool fed = effect is LoadEffect.Reversed or LoadEffect.FedBack;
                loads.Add(new FaultedLoad(
                    at.Harness.LoadArray[k].Id, effect, at.Healthy.VoltsAcross(k), state.VoltsAcross(k), state.LoadAmperes[k], fed ? feed.ToLoad(k) : null));
            }
        }

        loads.Sort((a, b) => a.Effect != b.Effect ? a.Effect.CompareTo(b.Effect) : string.CompareOrdinal(a.Load, b.Load));
        return (loads, at.Harness.BranchArray[branch] is HarnessFuse ? LiveThrough(branch, state, feed) : null, "");
    }

    private LoadEffect? EffectOn(int load, int branch, HarnessState state)
    {
        LoadCondition was = before[load], now = state.ConditionOf(load);
        double volts = state.VoltsAcross(load), had = at.Healthy.VoltsAcross(load);
        bool wasFed = was is LoadCondition.Running or LoadCondition.Starved or LoadCondition.CutOut or LoadCondition.Restartable;
        return now switch
        {
            LoadCondition.Off => null,
            LoadCondition.Reversed => was == LoadCondition.Reversed ? null : LoadEffect.Reversed,
            LoadCondition.Dead => was is LoadCondition.Dead ? null : LoadEffect.Dead,
            _ when Math.Abs(volts) < Live * at.Harness.NominalVolts => was is LoadCondition.Dead || Math.Abs(had) < Live * at.Harness.NominalVolts ? null : LoadEffect.Dead,
            _ when was is LoadCondition.Dead or LoadCondition.Reversed => LoadEffect.FedBack,
            _ when ways[load].Contains(branch) => LoadEffect.FedBack,
            LoadCondition.CutOut or LoadCondition.Restartable or LoadCondition.Starved => was == now ? null : LoadEffect.DropsOut,
            _ when !wasFed => null,
            _ => volts < had * (1 - Noticeable) ? LoadEffect.Dims : volts > had * (1 + Noticeable) ? LoadEffect.Rises : null,
        };
    }

    // The end away from the source that the fuse was put there for.
    private string? LiveThrough(int fuse, HarnessState state, BackFeed feed)
    {
        int end = at.Graph.To[fuse], other = at.Graph.From[fuse], reference = at.Harness.NodeIndex(at.Harness.Reference);
        bool live = state.Grounds[end] == state.Grounds[reference] && Math.Abs(state.Volts[end] - state.Volts[reference]) >= Live * at.Harness.NominalVolts;
        return live && state.Grounds[other] == state.Grounds[end] ? feed.ToNode(end, fuse) : null;
    }
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>The conductor that brings current where it should not come: the nearest branch whose current has turned round, or has begun to flow.</summary>
internal sealed class BackFeed
{
    private const double Least = 1e-6;

    // A current that was no more than this share of what it is now has begun to flow: where returns are shared a little always does.
    private const double Little = 0.25;

    private readonly FaultCase at;
    private readonly HarnessState state;
    private readonly List<int>[] branchesAt;
    private readonly double least;

    internal BackFeed(FaultCase at, HarnessState state, List<int>[] branchesAt)
    {
        (this.at, this.state, this.branchesAt) = (at, state, branchesAt);
        double most = Math.Max(1e-3, at.Healthy.Amperes.Concat(state.Amperes).Select(Math.Abs).DefaultIfEmpty(0).Max());
        least = Least * most;
    }

    /// <summary>From a load: from its terminals outward; where no branch carries it, a load through which current flows the wrong way; null where nothing flows.</summary>
    internal string? ToLoad(int load)
    {
        HarnessLoad of = at.Harness.LoadArray[load];
        return Nearest([at.Harness.NodeIndex(of.Positive), at.Harness.NodeIndex(of.Negative)]) ?? OtherLoad(load);
    }

    /// <summary>To a node: the nearest branch that has turned round, else the one by which a source is nearest.</summary>
    internal string? ToNode(int node, int open) => Nearest([node]) ?? FromSource(node, open);

    private string? FromSource(int node, int open)
    {
        Dictionary<int, int> first = new() { [node] = -1 };
        Queue<int> waiting = new([node]);
        while (waiting.Count > 0)
        {
            int here = waiting.Dequeue();
            if (Array.Exists(at.Harness.SourceArray, s => at.Harness.NodeIndex(s.Positive) == here))
            {
                return first[here] >= 0 ? at.Harness.BranchArray[first[here]].Id : null;
            }

            foreach (int branch in branchesAt[here].Where(k => k != open && !at.Duty.Open.Contains(k)))
            {
                int other = at.Graph.Other(branch, here);
                if (!first.ContainsKey(other))
                {
                    first.Add(other, first[here] >= 0 ? first[here] : branch);
                    waiting.Enqueue(other);
                }
            }
        }

        return null;
    }

    private string? Nearest(int[] from)
    {
        HashSet<int> seen = [.. from];
        Queue<int> waiting = new(from);
        while (waiting.Count > 0)
        {
            int node = waiting.Dequeue();
            foreach (int branch in branchesAt[node].Where(Carries))
            {
                if (HasTurned(branch))
                {
                    return at.Harness.BranchArray[branch].Id;
                }
            }

            foreach (int branch in branchesAt[node].Where(Carries))
            {
                int other = at.Graph.Other(branch, node);
                if (seen.Add(other))
                {
                    waiting.Enqueue(other);
                }
            }
        }

        return null;
    }

    // The load that brings it the current where that enters, else the one that takes it on where it leaves.
    private string? OtherLoad(int load)
    {
        HarnessLoad of = at.Harness.LoadArray[load];
        bool backwards = state.LoadAmperes[load] < 0;
        (string enters, string leaves) = backwards ? (of.Negative, of.Positive) : (of.Positive, of.Negative);
        return Carrying(load, enters, comes: true) ?? Carrying(load, leaves, comes: false);
    }

    private string? Carrying(int load, string node, bool comes)
    {
        for (int k = 0; k < at.Harness.LoadArray.Length; k++)
        {
            HarnessLoad other = at.Harness.LoadArray[k];
            bool backwards = state.LoadAmperes[k] < 0;
            string its = comes == backwards ? other.Positive : other.Negative;
            if (k != load && its == node && Math.Abs(state.LoadAmperes[k]) > least)
            {
                return other.Id;
            }
        }

        return null;
    }

    private bool Carries(int branch) => Math.Abs(state.Amperes[branch]) > least;

    private bool HasTurned(int branch)
    {
        double before = at.Healthy.Exists ? at.Healthy.Amperes[branch] : 0, now = state.Amperes[branch];
        return Math.Abs(before) <= Math.Max(least, Little * Math.Abs(now)) || Math.Sign(before) != Math.Sign(now);
    }
}

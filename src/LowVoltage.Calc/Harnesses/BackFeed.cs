namespace LowVoltage.Calc.Harnesses;

/// <summary>The conductor that brings current where it should not come: the nearest branch whose current has turned round, or has begun to flow.</summary>
internal sealed class BackFeed
{
    private const double Least = 1e-6;

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

    /// <summary>To a node.</summary>
    internal string? ToNode(int node) => Nearest([node]);

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

    private string? OtherLoad(int load)
    {
        for (int k = 0; k < at.Harness.LoadArray.Length; k++)
        {
            if (k != load && state.LoadAmperes[k] < -least)
            {
                return at.Harness.LoadArray[k].Id;
            }
        }

        return null;
    }

    private bool Carries(int branch) => Math.Abs(state.Amperes[branch]) > least;

    private bool HasTurned(int branch)
    {
        double before = at.Healthy.Exists ? at.Healthy.Amperes[branch] : 0, now = state.Amperes[branch];
        return Math.Abs(before) <= least || Math.Sign(before) != Math.Sign(now);
    }
}

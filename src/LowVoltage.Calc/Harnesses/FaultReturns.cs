namespace LowVoltage.Calc.Harnesses;

/// <summary>What a short at a node touches: the way back of what the node feeds, and the nearest ground.</summary>
/// <remarks>
/// At a load's terminal it is the load's other terminal; elsewhere where the returns of all loads that the node feeds have come together; of a node that feeds nothing by a single way,
/// such as one in a ring, the negative terminal of the source that is nearest. Nodes of the ways back themselves have no short to their return.
/// </remarks>
internal sealed class FaultReturns
{
    private const int None = -1;

    private readonly FaultCase at;
    private readonly List<int>[] fedBy;
    private readonly int[][] backs;
    private readonly bool[] isBack;
    private readonly bool[] isGround;
    private readonly List<int>[] branchesAt;

    internal FaultReturns(FaultCase at)
    {
        this.at = at;
        Harness harness = at.Harness;
        int nodes = harness.Nodes.Count;
        (fedBy, backs, isBack, isGround, branchesAt) = (new List<int>[nodes], new int[harness.LoadArray.Length][], new bool[nodes], new bool[nodes], new List<int>[nodes]);
        for (int n = 0; n < nodes; n++)
        {
            isGround[n] = harness.Nodes[n].Kind == NodeKind.Ground;
            (fedBy[n], branchesAt[n]) = ([], []);
        }

        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (!at.Duty.Open.Contains(k))
            {
                branchesAt[at.Graph.From[k]].Add(k);
                branchesAt[at.Graph.To[k]].Add(k);
            }

            if (harness.BranchArray[k] is HarnessResistance { IsChassis: true })
            {
                isGround[at.Graph.From[k]] = isGround[at.Graph.To[k]] = true;
            }
        }

        for (int k = 0; k < backs.Length; k++)
        {
            int minus = harness.NodeIndex(harness.LoadArray[k].Negative);
            backs[k] = NodesOf(minus);
            foreach (int node in backs[k])
            {
                isBack[node] = true;
            }

            foreach (int node in NodesOf(harness.NodeIndex(harness.LoadArray[k].Positive)))
            {
                fedBy[node].Add(k);
            }
        }

        foreach (HarnessSource source in harness.SourceArray)
        {
            isBack[harness.NodeIndex(source.Negative)] = true;
        }
    }

    /// <summary>The loads that a node feeds.</summary>
    internal IReadOnlyList<int> FedBy(int node) => fedBy[node];

    /// <summary>The node on the way back that a short at a node touches; −1 for none.</summary>
    internal int ReturnOf(int node)
    {
        List<int> loads = fedBy[node];
        if (loads.Count == 0)
        {
            return isBack[node] || isGround[node] ? None : SourceNear(node);
        }

        int own = loads.FindIndex(k => at.Harness.NodeIndex(at.Harness.LoadArray[k].Positive) == node);
        int found = own >= 0 ? backs[loads[own]][0] : Joined(loads);
        return found == node ? None : found;
    }

    /// <summary>The ground point nearest to a node of the way back; −1 where there is none, or it is that node.</summary>
    internal int GroundNear(int back) => Nearest(back, n => isGround[n]) is int found && found != back ? found : None;

    private int Joined(List<int> loads)
    {
        Dictionary<int, int> came = [];
        foreach (int node in loads.SelectMany(k => backs[k]))
        {
            came[node] = (came.TryGetValue(node, out int count) ? count : 0) + 1;
        }

        int[] way = backs[loads[0]];
        foreach (int node in way)
        {
            if (came[node] == loads.Count)
            {
                return node;
            }
        }

        return way[way.Length - 1];
    }

    private int SourceNear(int node)
    {
        Harness harness = at.Harness;
        int plus = Nearest(node, n => Array.Exists(harness.SourceArray, s => harness.NodeIndex(s.Positive) == n));
        return plus == None ? None : harness.NodeIndex(Array.Find(harness.SourceArray, s => harness.NodeIndex(s.Positive) == plus)!.Negative);
    }

    private int Nearest(int from, Func<int, bool> wanted)
    {
        HashSet<int> seen = [from];
        Queue<int> waiting = new([from]);
        while (waiting.Count > 0)
        {
            int node = waiting.Dequeue();
            if (wanted(node))
            {
                return node;
            }

            foreach (int branch in branchesAt[node])
            {
                int other = at.Graph.Other(branch, node);
                if (seen.Add(other))
                {
                    waiting.Enqueue(other);
                }
            }
        }

        return None;
    }

    private int[] NodesOf(int node)
    {
        List<int> nodes = [node];
        foreach (int branch in at.Graph.WayFrom(node).Branches)
        {
            nodes.Add(node = at.Graph.Other(branch, node));
        }

        return [.. nodes];
    }
}

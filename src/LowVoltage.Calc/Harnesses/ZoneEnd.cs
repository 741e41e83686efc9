namespace LowVoltage.Calc.Harnesses;

/// <summary>One end of what a fuse protects: the way from the fuse to a load, or to the next fuse, and the way back.</summary>
/// <param name="Fuse">Index of the fuse's branch; −1 where none lies on the way.</param>
/// <param name="Path">Branches from the end to the fuse.</param>
/// <param name="Upstream">Branches from the fuse to where the way ends.</param>
/// <param name="Back">Branches on the way back.</param>
/// <param name="Feed">The whole way from the end to what feeds it.</param>
/// <param name="Return">The whole way back.</param>
/// <param name="Behind">Indices of the loads whose current passes the fuse; without a fuse the load itself.</param>
/// <param name="Load">Index of the load at the end; −1 where the next fuse is there.</param>
/// <param name="NextFuse">Index of the next fuse's branch; −1 where the load is there.</param>
internal sealed record ZoneEnd(int Fuse, int[] Path, int[] Upstream, int[] Back, FeedWay Feed, FeedWay Return, int[] Behind, int Load, int NextFuse)
{
    /// <summary>Whether it passes other fuses' zones: then only what starts at its end is asked of this fuse.</summary>
    internal bool IsOfStart { get; init; }

    /// <summary>Wires of no fuse before this one that are held against it too.</summary>
    internal int[] Leads { get; init; } = [];

    /// <summary>The same with the wires between the source and the fuse where no other fuse protects those; null where there are none.</summary>
    internal ZoneEnd? WithLeads(Harness harness)
    {
        int[] wires = [.. Upstream.Where(k => harness.BranchArray[k] is HarnessWire)];
        return Fuse < 0 || IsOfStart || wires.Length == 0 || Upstream.Any(k => harness.BranchArray[k] is HarnessFuse) ? null : this with { Leads = wires };
    }

    /// <summary>Every end of every fuse's zone in a load case.</summary>
    internal static List<ZoneEnd> Of(CaseDuty duty)
    {
        Harness harness = duty.Harness;
        HarnessGraph graph = duty.Graph;
        int loads = harness.LoadArray.Length;
        FeedWay[] feeds = new FeedWay[loads], backs = new FeedWay[loads];
        Dictionary<int, List<int>> behind = [];
        int[] through = new int[harness.Nodes.Count];
        for (int k = 0; k < loads; k++)
        {
            feeds[k] = graph.WayFrom(harness.NodeIndex(harness.LoadArray[k].Positive));
            backs[k] = graph.WayFrom(harness.NodeIndex(harness.LoadArray[k].Negative));
            foreach (int fuse in feeds[k].Branches.Where(b => harness.BranchArray[b] is HarnessFuse))
            {
                (behind.TryGetValue(fuse, out List<int>? list) ? list : behind[fuse] = []).Add(k);
            }

            foreach (int node in NodesOf(graph, harness.NodeIndex(harness.LoadArray[k].Negative), backs[k]))
            {
                through[node]++;
            }
        }

        List<ZoneEnd> ends = [];
        HashSet<(int, int)> pairs = [];
        for (int k = 0; k < loads; k++)
        {
            if (feeds[k].End == FeedEnd.Dead || backs[k].End == FeedEnd.Dead || duty.Group.Steady.UseOf(harness.LoadArray[k].Id) == LoadUse.Off)
            {
                continue;
            }

            int[] branches = feeds[k].Branches;
            int next = Array.FindIndex(branches, b => harness.BranchArray[b] is HarnessFuse), own = next < 0 ? branches.Length : next;
            int fuse = next < 0 ? -1 : branches[next];
            ends.Add(new ZoneEnd(fuse, [.. branches.Take(own)], [.. branches.Skip(own + 1)], backs[k].Branches, feeds[k], backs[k], fuse < 0 ? [k] : [.. behind[fuse]], k, -1));
            for (int at = next; at >= 0; at = next)
            {
                next = Array.FindIndex(branches, at + 1, b => harness.BranchArray[b] is HarnessFuse);
                if (next >= 0 && pairs.Add((branches[next], branches[at])))
                {
                    int[] back = JoinedBack(harness, graph, k, backs[k], behind[branches[at]], backs, through);
                    ends.Add(new ZoneEnd(
                        branches[next], [.. branches.Skip(at + 1).Take(next - at - 1)], [.. branches.Skip(next + 1)], back, feeds[k], backs[k], [.. behind[branches[next]]], -1, branches[at]));
                }
            }
        }

        return ends;
    }

    // From where others' returns have come in, or where those of all the loads behind have joined, which lies nearest to a fault before the next fuse; of one load alone the whole way.
    private static int[] JoinedBack(Harness harness, HarnessGraph graph, int load, FeedWay back, List<int> behind, FeedWay[] backs, int[] through)
    {
        Dictionary<int, int> own = [];
        foreach (int k in behind)
        {
            foreach (int node in NodesOf(graph, harness.NodeIndex(harness.LoadArray[k].Negative), backs[k]))
            {
                own[node] = (own.TryGetValue(node, out int count) ? count : 0) + 1;
            }
        }

        int at = harness.NodeIndex(harness.LoadArray[load].Negative);
        for (int n = 0; n < back.Branches.Length; n++)
        {
            if (through[at] > own[at] || (behind.Count > 1 && own[at] == behind.Count))
            {
                return [.. back.Branches.Skip(n)];
            }

            at = graph.Other(back.Branches[n], at);
        }

        return through[at] > own[at] || (behind.Count > 1 && own[at] == behind.Count) ? [] : back.Branches;
    }

    private static IEnumerable<int> NodesOf(HarnessGraph graph, int node, FeedWay way)
    {
        yield return node;
        foreach (int branch in way.Branches)
        {
            yield return node = graph.Other(branch, node);
        }
    }
}

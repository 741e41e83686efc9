namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The branches on the way of each load, out and back; through a ring or between sources by the way of least resistance.</summary>
internal sealed class HarnessWays
{
    private readonly HashSet<int>[] ways;
    private readonly int[] fuses;
    private readonly Harness harness;

    internal HarnessWays(Harness harness, CaseDuty duty)
    {
        this.harness = harness;
        ways = new HashSet<int>[harness.LoadArray.Length];
        fuses = [.. Enumerable.Repeat(-1, harness.BranchArray.Length)];
        for (int l = 0; l < ways.Length; l++)
        {
            HarnessLoad load = harness.LoadArray[l];
            FeedWay feed = harness.Graph.WayFrom(harness.NodeIndex(load.Positive)), back = harness.Graph.WayFrom(harness.NodeIndex(load.Negative));
            int[] rest = Shortest(duty, feed.EndNode, plus: true), restBack = Shortest(duty, back.EndNode, plus: false);
            ways[l] = [.. feed.Branches, .. rest, .. back.Branches, .. restBack];
            Fuse([.. feed.Branches, .. rest], back.Branches);
        }
    }

    internal HashSet<int> Of(int load) => ways[load];

    /// <summary>The fuse that protects a wire: the nearest before it, for a way back the one of the load's own way out; the largest where there are several.</summary>
    internal HarnessFuse? FuseOf(int branch) => fuses[branch] < 0 ? null : (HarnessFuse)harness.BranchArray[fuses[branch]];

    private void Fuse(int[] feed, int[] back)
    {
        int nearest = Array.FindIndex(feed, k => harness.BranchArray[k] is HarnessFuse);
        for (int n = 0, next = nearest; n < feed.Length && next >= 0; n++)
        {
            if (n == next)
            {
                next = Array.FindIndex(feed, n + 1, k => harness.BranchArray[k] is HarnessFuse);
                continue;
            }

            Take(feed[n], feed[next]);
        }

        foreach (int k in back.Where(_ => nearest >= 0))
        {
            Take(k, feed[nearest]);
        }
    }

    private void Take(int branch, int fuse)
    {
        double amperes(int k) => k < 0 ? 0 : ((HarnessFuse)harness.BranchArray[k]).Rating?.Amperes ?? 0;
        fuses[branch] = amperes(fuse) >= amperes(fuses[branch]) ? fuse : fuses[branch];
    }

    private int[] Shortest(CaseDuty duty, int node, bool plus)
    {
        HashSet<int> ends = [.. harness.SourceArray.Select(s => harness.NodeIndex(plus ? s.Positive : s.Negative))];
        double[] far = [.. Enumerable.Repeat(double.PositiveInfinity, harness.Nodes.Count)];
        int[] by = [.. Enumerable.Repeat(-1, harness.Nodes.Count)];
        bool[] done = new bool[harness.Nodes.Count];
        far[node] = 0;
        while (true)
        {
            int at = -1;
            for (int k = 0; k < far.Length; k++)
            {
                at = !done[k] && !double.IsInfinity(far[k]) && (at < 0 || far[k] < far[at]) ? k : at;
            }

            if (at < 0)
            {
                return [];
            }

            if (ends.Contains(at))
            {
                List<int> way = [];
                for (int k = at; by[k] >= 0; k = harness.Graph.Other(by[k], k))
                {
                    way.Insert(0, by[k]);
                }

                return [.. way];
            }

            done[at] = true;
            for (int k = 0; k < harness.BranchArray.Length; k++)
            {
                if (harness.Graph.From[k] == at || harness.Graph.To[k] == at)
                {
                    int other = harness.Graph.Other(k, at);
                    double distance = far[at] + duty.OhmsNow(k);
                    if (distance < far[other])
                    {
                        (far[other], by[other]) = (distance, k);
                    }
                }
            }
        }
    }
}

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
            int source = duty.Nearest(l);
            int[] rest = Rest(duty, feed.EndNode, source, plus: true), restBack = Rest(duty, back.EndNode, source, plus: false);
            ways[l] = [.. feed.Branches, .. rest, .. back.Branches, .. restBack];
            Fuse([.. feed.Branches, .. rest], back.Branches);
        }
    }

    // Out from and back to the one source that the drop is counted from.
    private static int[] Rest(CaseDuty duty, int node, int source, bool plus) => source < 0 ? [] :
        NearestWay.To(duty, node, [duty.Harness.NodeIndex(plus ? duty.Harness.SourceArray[source].Positive : duty.Harness.SourceArray[source].Negative)], out _);

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
}

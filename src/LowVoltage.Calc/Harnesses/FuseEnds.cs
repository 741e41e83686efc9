namespace LowVoltage.Calc.Harnesses;

/// <summary>All ways that say something about a fuse in a load case: those of its own zone, those through a ring behind it, and those of starts that pass it on the way to another fuse's zone.</summary>
internal sealed class FuseEnds
{
    private readonly CaseDuty duty;

    internal FuseEnds(CaseDuty duty)
    {
        this.duty = duty;
        Own = ZoneEnd.Of(duty);
        Rings = [.. Own.Where(end => end.Load >= 0 && end.Fuse < 0).Select(ThroughRing).OfType<ZoneEnd>()];
        Starts = [.. StartsOf([.. Own.Where(end => end.Load >= 0), .. Rings])];
    }

    /// <summary>To each load and to each next fuse.</summary>
    internal List<ZoneEnd> Own { get; }

    /// <summary>From a fuse that all of a load's current passes, by the way of least resistance through the ring or the wires in parallel behind it: less current than all ways together bring.</summary>
    internal List<ZoneEnd> Rings { get; }

    /// <summary>From each fuse to a load that is in another fuse's zone, and from each fuse in a way back.</summary>
    internal List<ZoneEnd> Starts { get; }

    /// <summary>Those of one fuse.</summary>
    internal IEnumerable<ZoneEnd> OfFuse(int fuse) => Own.Concat(Rings).Concat(Starts).Where(end => end.Fuse == fuse);

    /// <summary>The nodes that a fuse shields from every source: the load side of one that all the current there passes; null where it is none.</summary>
    private HashSet<int>? Shielded(int fuse, int node)
    {
        HashSet<int> reached = duty.Graph.Reached(node, k => k != fuse);
        return reached.Overlaps(duty.Harness.SourceArray.SelectMany(s => new[] { duty.Harness.NodeIndex(s.Positive), duty.Harness.NodeIndex(s.Negative) })) ? null : reached;
    }

    private ZoneEnd? ThroughRing(ZoneEnd end)
    {
        HarnessBranch[] branches = duty.Harness.BranchArray;
        int node = duty.Harness.NodeIndex(duty.Harness.LoadArray[end.Load].Positive), fuse = -1;
        HashSet<int>? inside = null;
        for (int k = 0; k < branches.Length; k++)
        {
            if (branches[k] is HarnessFuse && Shielded(k, node) is { } shielded && (inside is null || shielded.Count < inside.Count))
            {
                (fuse, inside) = (k, shielded);
            }
        }

        if (fuse < 0)
        {
            return null;
        }

        int outer = inside!.Contains(duty.Graph.From[fuse]) ? duty.Graph.To[fuse] : duty.Graph.From[fuse];
        int[] path = [.. NearestWay.To(duty, node, [outer], out _).TakeWhile(k => k != fuse)];
        FeedWay before = duty.Graph.WayFrom(outer);
        int[] behind = [.. Own.Where(e => e.Load >= 0 && inside.Contains(duty.Harness.NodeIndex(duty.Harness.LoadArray[e.Load].Positive))).Select(e => e.Load)];
        return end with { Fuse = fuse, Path = path, Upstream = before.Branches, Feed = before with { Branches = [.. path, fuse, .. before.Branches] }, Behind = behind };
    }

    private IEnumerable<ZoneEnd> StartsOf(List<ZoneEnd> ends)
    {
        foreach (ZoneEnd end in ends)
        {
            int[] way = WayOf(end);
            for (int at = end.Path.Length + 1; at < way.Length; at++)
            {
                if (IsFuse(way[at]))
                {
                    yield return end with { Fuse = way[at], Path = [.. way.Take(at)], Upstream = [.. way.Skip(at + 1)], Behind = Behind(ends, way[at]), IsOfStart = true };
                }
            }

            foreach (int fuse in end.Back.Where(IsFuse))
            {
                yield return end with { Fuse = fuse, Path = way, Upstream = [], Back = [.. end.Back.Where(k => k != fuse)], Behind = Behind(ends, fuse), IsOfStart = true };
            }
        }
    }

    private bool IsFuse(int branch) => duty.Harness.BranchArray[branch] is HarnessFuse;

    private static int[] WayOf(ZoneEnd end) => [.. end.Path, .. end.Fuse >= 0 ? [end.Fuse] : Array.Empty<int>(), .. end.Upstream];

    private static int[] Behind(List<ZoneEnd> ends, int fuse) => [.. ends.Where(end => WayOf(end).Contains(fuse) || end.Back.Contains(fuse)).Select(end => end.Load).Distinct()];
}

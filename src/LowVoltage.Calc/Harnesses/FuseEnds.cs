namespace LowVoltage.Calc.Harnesses;

/// <summary>All ways that say something about a fuse in a load case: those of its own zone, those through a ring behind it, and those of starts that pass it on the way to another fuse's zone.</summary>
internal sealed class FuseEnds
{
    private readonly CaseDuty duty;
    private readonly Dictionary<int, Ring?> rings = [];

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
        // The same for all loads whose own ways end at the same place.
        if (!rings.TryGetValue(end.Feed.EndNode, out Ring? ring))
        {
            rings.Add(end.Feed.EndNode, ring = RingAt(end.Feed.EndNode));
        }

        if (ring is null)
        {
            return null;
        }

        int[] path = [.. end.Path, .. ring.Way], behind = [.. Own.Where(e => e.Load >= 0 && ring.Inside.Contains(duty.Harness.NodeIndex(duty.Harness.LoadArray[e.Load].Positive))).Select(e => e.Load)];
        FeedWay before = duty.Graph.WayFrom(ring.Outer);
        return end with
        {
            Fuse = ring.Fuse, Path = path, Upstream = before.Branches, Feed = before with { Branches = [.. path, ring.Fuse, .. before.Branches] }, Behind = behind,

            // Behind fuses of their own the wires are theirs.
            IsOfStart = Array.Exists(ring.Way, IsFuse),
        };
    }

    // The fuse nearest to a node that all the current there passes, and the way to it.
    private Ring? RingAt(int node)
    {
        // It lies on each way to a source, so on this one too.
        int[] way = NearestWay.From(duty, node, plus: true, out _);
        int at = Array.FindIndex(way, k => IsFuse(k) && Shielded(k, node) is not null), fuse = at < 0 ? -1 : way[at];
        HashSet<int>? inside = at < 0 ? null : Shielded(fuse, node);
        if (inside is null)
        {
            return null;
        }

        int outer = inside.Contains(duty.Graph.From[fuse]) ? duty.Graph.To[fuse] : duty.Graph.From[fuse];
        return new Ring(fuse, outer, inside, [.. way.Take(at)]);
    }

    private sealed record Ring(int Fuse, int Outer, HashSet<int> Inside, int[] Way);

    private IEnumerable<ZoneEnd> StartsOf(List<ZoneEnd> ends)
    {
        Dictionary<int, int[]> behind = ends.SelectMany(end => WayOf(end).Concat(end.Back).Where(IsFuse).Select(fuse => (Fuse: fuse, end.Load)))
            .GroupBy(pair => pair.Fuse).ToDictionary(group => group.Key, group => (int[])[.. group.Select(pair => pair.Load).Distinct()]);
        foreach (ZoneEnd end in ends)
        {
            int[] way = WayOf(end);
            for (int at = end.Path.Length + 1; at < way.Length; at++)
            {
                if (IsFuse(way[at]))
                {
                    yield return end with { Fuse = way[at], Path = [.. way.Take(at)], Upstream = [.. way.Skip(at + 1)], Behind = behind[way[at]], IsOfStart = true };
                }
            }

            foreach (int fuse in end.Back.Where(IsFuse))
            {
                yield return end with { Fuse = fuse, Path = way, Upstream = [], Back = [.. end.Back.Where(k => k != fuse)], Behind = behind[fuse], IsOfStart = true };
            }
        }
    }

    private bool IsFuse(int branch) => duty.Harness.BranchArray[branch] is HarnessFuse;

    private static int[] WayOf(ZoneEnd end) => [.. end.Path, .. end.Fuse >= 0 ? [end.Fuse] : Array.Empty<int>(), .. end.Upstream];
}

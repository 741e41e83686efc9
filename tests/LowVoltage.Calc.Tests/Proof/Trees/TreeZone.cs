namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>One end of what a fuse protects: a load, or the next fuse, with the way there from the source and the way back.</summary>
/// <param name="Fuse">The fuse; −1 where none lies before.</param>
/// <param name="Feed">Parts from the positive terminal to the end.</param>
/// <param name="Back">Parts from the negative terminal to the end; to the next fuse what the loads behind it share with others.</param>
/// <param name="Load">The load; −1 for the next fuse.</param>
internal sealed record TreeZone(int Fuse, int[] Feed, int[] Back, int Load)
{
    /// <summary>Parts of the feed behind the fuse.</summary>
    public int[] Own => [.. Feed.Skip(Array.IndexOf(Feed, Fuse) + 1)];

    public static TreeZone[] Of(OwnTree tree)
    {
        List<TreeZone> zones = [];
        for (int load = 0; load < tree.Loads.Length; load++)
        {
            int[] feed = tree.WayTo(tree.Given.Loads[load].Plus);
            zones.Add(new(LastFuse(tree, feed), feed, tree.WayTo(tree.Given.Loads[load].Minus), load));
        }

        for (int next = 0; next < tree.Fuses.Length; next++)
        {
            int[] feed = tree.WayTo(tree.Given.Parts[next].Before);
            if (tree.Fuses[next] is not null && tree.Behind[next].Length > 0 && LastFuse(tree, feed) is >= 0 and int fuse)
            {
                // A fault before it finds the way back where that of other loads has come in.
                int[] back = tree.WayTo(tree.Given.Loads[tree.Behind[next][0]].Minus), its = tree.Behind[next];
                zones.Add(new(fuse, feed, [.. back.Where(part => tree.Behind[part].Length > its.Length && its.All(tree.Behind[part].Contains))], -1));
            }
        }

        return [.. zones];
    }

    /// <summary>The way of a fault in the feed part at an index, a share along it; the wires that go back beside it count for the same share of the zone's length, what is shared as a whole.</summary>
    public FaultPiece[] FaultAt(OwnTree tree, int index, double share)
    {
        double meters(int part) => tree.Wires[part]?.Meters ?? 0;
        double length = Own.Sum(meters), along = length > 0 ? (Feed.Take(index).Except(Feed.Except(Own)).Sum(meters) + (share * meters(Feed[index]))) / length : 1;
        IEnumerable<FaultPiece> feed = Feed.Take(index + 1).Select((part, k) => new FaultPiece(part, k == index ? share : 1));
        return [.. feed, .. Back.Select(part => new FaultPiece(part, tree.Behind[part].Length == 1 ? along : 1))];
    }

    /// <summary>The way of a fault at the very end.</summary>
    public FaultPiece[] FaultAtEnd() => [.. Feed.Concat(Back).Select(part => new FaultPiece(part, 1))];

    private static int LastFuse(OwnTree tree, int[] way) => Array.FindLast([-1, .. way], part => part < 0 || tree.Fuses[part] is not null);
}

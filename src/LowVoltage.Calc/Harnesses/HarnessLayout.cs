namespace LowVoltage.Calc.Harnesses;

/// <summary>Where everything of a harness stands in a drawing: columns from the sources to the loads and on to the way back, a row for every load.</summary>
/// <remarks>Nodes that only join two branches in a row are not drawn as nodes: their branches stand one behind the other on one line.</remarks>
internal sealed class HarnessLayout
{
    private const int None = -1;

    private readonly HarnessGraph graph;
    private readonly int[] by;
    private readonly int[] depth;
    private readonly bool[] feedSide;
    private readonly double[] row;
    private readonly bool[] plain;
    private readonly List<int>[] children;

    internal HarnessLayout(Harness harness)
    {
        Harness = harness;
        graph = harness.Graph;
        int nodes = harness.Nodes.Count;
        by = [.. Enumerable.Repeat(None, nodes)];
        depth = [.. Enumerable.Repeat(None, nodes)];
        (feedSide, row, plain, children) = (new bool[nodes], new double[nodes], new bool[nodes], new List<int>[nodes]);
        for (int k = 0; k < nodes; k++)
        {
            children[k] = [];
        }

        FindPlain();
        Grow([.. harness.SourceArray.Select(s => harness.NodeIndex(s.Positive)).Distinct()], feed: true);
        Grow([.. harness.SourceArray.Select(s => harness.NodeIndex(s.Negative)).Distinct()], feed: false);
        for (int k = 0; k < nodes; k++)
        {
            if (depth[k] < 0)
            {
                Grow([k], feed: true);
            }
        }

        Place();
    }

    internal Harness Harness { get; }

    /// <summary>Loads from top to bottom.</summary>
    internal List<int> Loads { get; } = [];

    internal int FeedColumns { get; private set; }

    internal int ReturnColumns { get; private set; }

    internal double Rows { get; private set; }

    internal bool IsFeed(int node) => feedSide[node];

    internal int Depth(int node) => depth[node];

    internal double Row(int node) => row[node];

    /// <summary>Whether a node is drawn; one that only joins two branches in a row is not.</summary>
    internal bool IsDrawn(int node) => !plain[node];

    /// <summary>The lines of the tree: from a drawn node to the next, with the branches between them in that order.</summary>
    internal IEnumerable<(int From, int To, int[] Branches)> Lines()
    {
        for (int node = 0; node < by.Length; node++)
        {
            if (plain[node] || by[node] < 0)
            {
                continue;
            }

            List<int> branches = [];
            int at = node;
            do
            {
                branches.Insert(0, by[at]);
                at = graph.Other(by[at], at);
            }
            while (plain[at] && by[at] >= 0);

            yield return (at, node, [.. branches]);
        }
    }

    /// <summary>Branches that are in no line of the tree.</summary>
    internal IEnumerable<int> Ties()
    {
        HashSet<int> inTree = [.. by];
        return Enumerable.Range(0, Harness.BranchArray.Length).Where(k => !inTree.Contains(k));
    }

    private void FindPlain()
    {
        int[] branches = new int[plain.Length], others = new int[plain.Length];
        for (int k = 0; k < Harness.BranchArray.Length; k++)
        {
            branches[graph.From[k]]++;
            branches[graph.To[k]]++;
        }

        foreach (int node in Harness.SourceArray.SelectMany(s => new[] { s.Positive, s.Negative }).Concat(Harness.LoadArray.SelectMany(l => new[] { l.Positive, l.Negative })).Select(id => Harness.NodeIndex(id)))
        {
            others[node]++;
        }

        for (int k = 0; k < plain.Length; k++)
        {
            plain[k] = branches[k] == 2 && others[k] == 0;
        }
    }

    private void Grow(int[] roots, bool feed)
    {
        Queue<int> waiting = new();
        foreach (int root in roots.Where(r => depth[r] < 0))
        {
            (depth[root], feedSide[root]) = (0, feed);
            waiting.Enqueue(root);
        }

        while (waiting.Count > 0)
        {
            int node = waiting.Dequeue();
            for (int k = 0; k < Harness.BranchArray.Length; k++)
            {
                if (graph.From[k] != node && graph.To[k] != node)
                {
                    continue;
                }

                int other = graph.Other(k, node);
                if (depth[other] < 0)
                {
                    (by[other], feedSide[other]) = (k, feed);
                    depth[other] = depth[node] + (plain[other] ? 0 : 1);
                    children[node].Add(other);
                    waiting.Enqueue(other);
                }
            }
        }

        // A row of plain nodes that ends in a tie still needs its place: it is drawn where it ends.
        for (int k = 0; k < plain.Length; k++)
        {
            plain[k] = plain[k] && !(depth[k] >= 0 && children[k].Count == 0);
        }
    }

    private void Place()
    {
        foreach (int root in Enumerable.Range(0, by.Length).Where(n => by[n] < 0 && feedSide[n]))
        {
            Descend(root);
        }

        foreach (int load in Enumerable.Range(0, Harness.LoadArray.Length).Where(k => !Loads.Contains(k)))
        {
            Loads.Add(load);
        }

        Rows = Math.Max(Rows, Loads.Count);
        foreach (int node in Enumerable.Range(0, by.Length).Where(n => !feedSide[n]).OrderByDescending(n => depth[n]))
        {
            double[] below = [.. LoadsAt(node).Select(k => (double)Loads.IndexOf(k)), .. children[node].Select(c => row[c])];
            row[node] = below.Length > 0 ? below.Average() : Rows++;
        }

        Apart();
        FeedColumns = Enumerable.Range(0, by.Length).Where(n => feedSide[n]).Select(n => depth[n]).DefaultIfEmpty(0).Max() + 1;
        ReturnColumns = Enumerable.Range(0, by.Length).Where(n => !feedSide[n]).Select(n => depth[n]).DefaultIfEmpty(0).Max() + 1;
    }

    // Depth first, so that the lines of the way out do not cross; a node stands in the middle of what it feeds.
    private double Descend(int node)
    {
        List<double> below = [];
        foreach (int load in LoadsAt(node).Where(k => feedSide[Harness.NodeIndex(Harness.LoadArray[k].Positive)] && Harness.NodeIndex(Harness.LoadArray[k].Positive) == node && !Loads.Contains(k)))
        {
            below.Add(Loads.Count);
            Loads.Add(load);
        }

        below.AddRange(children[node].Select(Descend));
        if (below.Count == 0)
        {
            Loads.Add(None);
            below.Add(Loads.Count - 1);
        }

        Rows = Math.Max(Rows, Loads.Count);
        return row[node] = 0.5 * (below.Min() + below.Max());
    }

    private IEnumerable<int> LoadsAt(int node) => Enumerable.Range(0, Harness.LoadArray.Length).Where(k =>
        Harness.NodeIndex(Harness.LoadArray[k].Positive) == node || Harness.NodeIndex(Harness.LoadArray[k].Negative) == node);

    // Two nodes of one column never stand on each other.
    private void Apart()
    {
        foreach (IGrouping<int, int> column in Enumerable.Range(0, by.Length).Where(n => !feedSide[n] && !plain[n]).GroupBy(n => depth[n]))
        {
            double last = double.NegativeInfinity;
            foreach (int node in column.OrderBy(n => row[n]))
            {
                row[node] = Math.Max(row[node], last + 0.9);
                last = row[node];
                Rows = Math.Max(Rows, last + 1);
            }
        }
    }
}

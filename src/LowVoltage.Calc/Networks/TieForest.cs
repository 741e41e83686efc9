namespace LowVoltage.Calc.Networks;

/// <summary>The ties of a network as trees: each group of tied nodes hangs on one root, and has one unknown voltage.</summary>
internal sealed class TieForest
{
    private const int None = -1;

    private readonly Tie[] ties;
    private readonly int[] parent;
    private readonly int[] through;
    private readonly List<int>[] at;
    private readonly List<int> order = [];

    /// <param name="nodes">Number of nodes.</param>
    /// <param name="ties">The ties.</param>
    /// <param name="reference">Node that is the root of its own group.</param>
    internal TieForest(int nodes, Tie[] ties, int reference)
    {
        this.ties = ties;
        parent = [.. Enumerable.Repeat(None, nodes)];
        through = [.. Enumerable.Repeat(None, nodes)];
        Root = [.. Enumerable.Repeat(None, nodes)];
        at = new List<int>[nodes];
        for (int k = 0; k < ties.Length; k++)
        {
            (at[ties[k].Positive] ??= []).Add(k);
            (at[ties[k].Negative] ??= []).Add(k);
        }

        Grow(reference);
        for (int node = 0; node < nodes; node++)
        {
            Grow(node);
        }
    }

    /// <summary>Ties that close on themselves; empty when there is an answer.</summary>
    internal IReadOnlyList<int> Loop { get; private set; } = [];

    /// <summary>The root of each node's group.</summary>
    internal int[] Root { get; }

    /// <summary>Ties from the roots outward: a node's own tie comes after that of the node it hangs on.</summary>
    internal IReadOnlyList<int> Order => order;

    /// <summary>The node of a tie that is farther from the root.</summary>
    internal int Outer(int tie) => through[ties[tie].Positive] == tie ? ties[tie].Positive : ties[tie].Negative;

    private void Grow(int root)
    {
        if (Root[root] != None)
        {
            return;
        }

        Root[root] = root;
        Queue<int> waiting = new([root]);
        while (waiting.Count > 0)
        {
            int node = waiting.Dequeue();
            foreach (int tie in at[node] ?? [])
            {
                int other = ties[tie].Positive == node ? ties[tie].Negative : ties[tie].Positive;
                if (tie == through[node])
                {
                    continue;
                }

                if (Root[other] != None)
                {
                    Loop = Loop.Count > 0 ? Loop : Close(tie, node, other);
                    continue;
                }

                (Root[other], parent[other], through[other]) = (root, node, tie);
                order.Add(tie);
                waiting.Enqueue(other);
            }
        }
    }

    // The way from one node to the root and from the other, without what both share.
    private List<int> Close(int tie, int one, int other)
    {
        List<int> a = Up(one), b = Up(other);
        while (a.Count > 0 && b.Count > 0 && a[a.Count - 1] == b[b.Count - 1])
        {
            a.RemoveAt(a.Count - 1);
            b.RemoveAt(b.Count - 1);
        }

        b.Reverse();
        return [tie, .. a, .. b];
    }

    private List<int> Up(int node)
    {
        List<int> way = [];
        for (int n = node; through[n] != None; n = parent[n])
        {
            way.Add(through[n]);
        }

        return way;
    }
}

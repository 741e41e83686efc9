namespace LowVoltage.Calc.Harnesses;

/// <summary>What hangs on what: from which side each branch is fed, and the way from any node back to what feeds it. Immutable.</summary>
/// <remarks>
/// A branch is <em>fed from one end</em> when taking it out cuts off a part in which no source has a terminal. From a node the way back is unique as long as it runs through such branches;
/// it ends at the terminal of the one source, at a part that several sources feed, or at a ring.
/// </remarks>
internal sealed class HarnessGraph
{
    private const int None = -1;

    private readonly List<int>[] at;
    private readonly int[] toward;
    private readonly FeedEnd[] ends;

    private HarnessGraph(int[] from, int[] to, List<int>[] at, int[] toward, FeedEnd[] ends, int[] part, int[] order)
    {
        From = from;
        To = to;
        this.at = at;
        this.toward = toward;
        this.ends = ends;
        Part = part;
        Order = order;
    }

    /// <summary>Node index at either end of each branch.</summary>
    internal int[] From { get; }

    internal int[] To { get; }

    /// <summary>Nodes that branches join have the same number.</summary>
    internal int[] Part { get; }

    /// <summary>The nodes, each after the one that feeds it.</summary>
    internal int[] Order { get; }

    /// <summary>The branch that feeds a node, or −1 where its way ends.</summary>
    internal int FeedOf(int node) => toward[node];

    /// <summary>Whether a branch is fed from one end, and the node at its far end.</summary>
    internal bool IsFedFromOneEnd(int branch, out int far)
    {
        far = toward[To[branch]] == branch ? To[branch] : toward[From[branch]] == branch ? From[branch] : None;
        return far >= 0;
    }

    internal int Other(int branch, int node) => From[branch] == node ? To[branch] : From[branch];

    /// <summary>The branches at a node, without those that are interrupted.</summary>
    internal IReadOnlyList<int> At(int node) => at[node] ?? (IReadOnlyList<int>)[];

    /// <summary>The nodes that can be reached from one through branches of a kind that are not interrupted, that one included.</summary>
    internal HashSet<int> Reached(int node, Func<int, bool> passes)
    {
        HashSet<int> reached = [node];
        Queue<int> next = new([node]);
        while (next.Count > 0)
        {
            int here = next.Dequeue();
            foreach (int k in At(here))
            {
                if (passes(k) && reached.Add(Other(k, here)))
                {
                    next.Enqueue(Other(k, here));
                }
            }
        }

        return reached;
    }

    /// <summary>The way from a node to what feeds it: its branches in that order, the node where it ends, and at what.</summary>
    internal FeedWay WayFrom(int node)
    {
        List<int> branches = [];
        int end = node;
        while (toward[end] >= 0)
        {
            branches.Add(toward[end]);
            end = Other(toward[end], end);
        }

        return new FeedWay([.. branches], end, ends[end]);
    }

    internal static HarnessGraph Of(Harness harness, IReadOnlyCollection<int> open)
    {
        int nodes = harness.Nodes.Count, count = harness.BranchArray.Length;
        int[] from = new int[count], to = new int[count];
        List<int>[] at = new List<int>[nodes];
        HashSet<int> gone = [.. open];
        for (int k = 0; k < count; k++)
        {
            (from[k], to[k]) = (harness.NodeIndex(harness.BranchArray[k].From), harness.NodeIndex(harness.BranchArray[k].To));
            if (!gone.Contains(k))
            {
                (at[from[k]] ??= []).Add(k);
                (at[to[k]] ??= []).Add(k);
            }
        }

        bool[] terminal = new bool[nodes];
        foreach (HarnessSource source in harness.SourceArray)
        {
            terminal[harness.NodeIndex(source.Positive)] = terminal[harness.NodeIndex(source.Negative)] = true;
        }

        return new Walk(from, to, at, terminal).Find();
    }

    /// <summary>One depth-first walk over every part of the harness.</summary>
    private sealed class Walk(int[] from, int[] to, List<int>[] at, bool[] terminal)
    {
        private readonly int[] found = [.. Enumerable.Repeat(None, at.Length)];
        private readonly int[] low = new int[at.Length];
        private readonly int[] by = [.. Enumerable.Repeat(None, at.Length)];
        private readonly int[] terminals = new int[at.Length];
        private readonly int[] toward = [.. Enumerable.Repeat(None, at.Length)];
        private readonly int[] part = new int[at.Length];
        private readonly FeedEnd[] ends = new FeedEnd[at.Length];
        private readonly List<int> all = [];
        private int clock;

        internal HarnessGraph Find()
        {
            for (int pass = 0; pass < 2; pass++)
            {
                // First from the terminals of sources; what is left then has none.
                for (int node = 0; node < at.Length; node++)
                {
                    if (found[node] < 0 && (pass == 1 || terminal[node]))
                    {
                        Grow(node, dead: pass == 1);
                    }
                }
            }

            return new HarnessGraph(from, to, at, toward, ends, part, [.. all]);
        }

        private void Grow(int root, bool dead)
        {
            List<int> order = Descend(root);
            all.AddRange(order);
            for (int k = order.Count - 1; k > 0; k--)
            {
                int node = order[k], above = by[node] == None ? root : Other(by[node], node);
                low[above] = Math.Min(low[above], low[node]);
                terminals[above] += terminals[node];
            }

            bool single = terminals[root] <= 1;
            foreach (int node in order)
            {
                bool bridge = node != root && low[node] > found[Other(by[node], node)];
                toward[node] = bridge && terminals[node] == 0 && !dead ? by[node] : None;
                ends[node] = dead ? FeedEnd.Dead
                    : node == root ? single ? FeedEnd.Source : FeedEnd.SeveralSources
                    : bridge ? FeedEnd.SeveralSources : FeedEnd.Ring;
                part[node] = root;
            }
        }

        private List<int> Descend(int root)
        {
            List<int> order = [];
            int[] next = new int[at.Length];
            Stack<int> way = new();
            Enter(root, None);
            while (way.Count > 0)
            {
                int node = way.Peek();
                List<int>? here = at[node];
                if (here is null || next[node] >= here.Count)
                {
                    _ = way.Pop();
                    continue;
                }

                int branch = here[next[node]++], other = Other(branch, node);
                if (branch == by[node])
                {
                    continue;
                }

                if (found[other] >= 0)
                {
                    low[node] = Math.Min(low[node], found[other]);
                    continue;
                }

                Enter(other, branch);
            }

            return order;

            void Enter(int node, int branch)
            {
                found[node] = low[node] = clock++;
                by[node] = branch;
                terminals[node] = terminal[node] ? 1 : 0;
                order.Add(node);
                way.Push(node);
            }
        }

        private int Other(int branch, int node) => from[branch] == node ? to[branch] : from[branch];
    }
}

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The wires of a problem as a tree: below a wire those that serve part of its loads.</summary>
internal sealed class SizingTree
{
    private SizingTree(int[] order, int[][] below, int[] roots, int[][] ownLoads)
    {
        Order = order;
        Below = below;
        Roots = roots;
        OwnLoads = ownLoads;
    }

    /// <summary>The wires, each after those below it.</summary>
    internal int[] Order { get; }

    internal int[][] Below { get; }

    internal int[] Roots { get; }

    /// <summary>Loads of a wire that no wire below it serves.</summary>
    internal int[][] OwnLoads { get; }

    /// <summary>The tree; null where two wires share some of their loads but neither serves all of the other's.</summary>
    internal static SizingTree? TryCreate(SizingProblem problem)
    {
        int count = problem.Wires;

        // Few loads first: when a wire's turn comes, what hangs below it is there, and the last wire that took a load stands for all of it.
        int[] order = [.. Enumerable.Range(0, count).OrderBy(w => problem.Loads[w].Length)];
        int[] top = [.. Enumerable.Repeat(-1, problem.Allowance.Length)];
        int[][] below = new int[count][], own = new int[count][];
        foreach (int wire in order)
        {
            HashSet<int> tops = [];
            List<int> bare = [];
            int covered = 0;
            foreach (int load in problem.Loads[wire])
            {
                if (top[load] < 0)
                {
                    bare.Add(load);
                }
                else if (tops.Add(top[load]))
                {
                    covered += problem.Loads[top[load]].Length;
                }
            }

            if (covered + bare.Count != problem.Loads[wire].Length)
            {
                return null;
            }

            (below[wire], own[wire]) = ([.. tops], [.. bare]);
            foreach (int load in problem.Loads[wire])
            {
                top[load] = wire;
            }
        }

        HashSet<int> roots = [.. top.Where(t => t >= 0)];
        foreach (int wire in order.Where(w => problem.Loads[w].Length == 0))
        {
            roots.Add(wire);
        }

        return new SizingTree(order, below, [.. roots], own);
    }
}

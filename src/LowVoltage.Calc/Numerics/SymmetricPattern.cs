namespace LowVoltage.Calc.Numerics;

/// <summary>Where the numbers of a sparse symmetric factorisation L·D·Lᵀ stand: order of elimination, filled pattern, and what updates what.</summary>
/// <remarks>
/// <para>The order is that of least degree: the unknown with the fewest neighbours left goes next, and its neighbours become neighbours of one another. A tree is
/// so eliminated from its leaves, without fill. Found once; any number of factorisations with other numbers use it. Immutable.</para>
/// <para><b>Source.</b> D. J. Rose, "A graph-theoretic study of the numerical solution of sparse positive definite systems of linear equations" (1972), from memory.</para>
/// </remarks>
internal sealed class SymmetricPattern
{
    private SymmetricPattern(int[] position, int[] starts, int[] rows, int[] targets)
    {
        Position = position;
        Starts = starts;
        Rows = rows;
        Targets = targets;
    }

    /// <summary>How many unknowns there are.</summary>
    internal int Count => Position.Length;

    /// <summary>When each unknown is eliminated: rows and columns below are numbered by that.</summary>
    internal int[] Position { get; }

    /// <summary>Where each column begins in <see cref="Rows"/>; one more than columns.</summary>
    internal int[] Starts { get; }

    /// <summary>Rows below the diagonal, column by column, rising.</summary>
    internal int[] Rows { get; }

    /// <summary>For every column, for every pair of its rows, the entry that their product is taken off, in the order of the arithmetic.</summary>
    internal int[] Targets { get; }

    /// <param name="count">Number of unknowns.</param>
    /// <param name="ends">Pairs of unknowns that meet, two numbers each; a pair may be repeated.</param>
    internal static SymmetricPattern Create(int count, IReadOnlyList<(int A, int B)> ends)
    {
        HashSet<int>[] near = new HashSet<int>[count];
        for (int i = 0; i < count; i++)
        {
            near[i] = [];
        }

        foreach ((int a, int b) in ends)
        {
            if (a != b)
            {
                near[a].Add(b);
                near[b].Add(a);
            }
        }

        int[] position = new int[count];
        int[][] columns = Eliminate(near, position);
        return Number(position, columns);
    }

    /// <summary>The entry where two different columns, by their positions, meet.</summary>
    internal int EntryOf(int one, int other)
    {
        int column = Math.Min(one, other);
        return Array.BinarySearch(Rows, Starts[column], Starts[column + 1] - Starts[column], Math.Max(one, other));
    }

    // Returns the neighbours that each unknown had when it went, by position.
    private static int[][] Eliminate(HashSet<int>[] near, int[] position)
    {
        int count = near.Length;
        DegreeQueue queue = new(near);
        int[][] columns = new int[count][];
        for (int step = 0; step < count; step++)
        {
            int next = queue.Take();
            int[] left = [.. near[next]];
            columns[step] = left;
            position[next] = step;
            foreach (int one in left)
            {
                near[one].Remove(next);
                foreach (int other in left)
                {
                    if (other != one)
                    {
                        near[one].Add(other);
                    }
                }

                queue.Put(one);
            }

            near[next].Clear();
        }

        return columns;
    }

    private static SymmetricPattern Number(int[] position, int[][] columns)
    {
        int count = columns.Length;
        int[] starts = new int[count + 1];
        for (int k = 0; k < count; k++)
        {
            starts[k + 1] = starts[k] + columns[k].Length;
        }

        int[] rows = new int[starts[count]];
        long pairs = 0;
        for (int k = 0; k < count; k++)
        {
            int[] column = columns[k];
            for (int i = 0; i < column.Length; i++)
            {
                rows[starts[k] + i] = position[column[i]];
            }

            Array.Sort(rows, starts[k], column.Length);
            pairs += (long)column.Length * (column.Length - 1) / 2;
        }

        SymmetricPattern pattern = new(position, starts, rows, new int[pairs]);
        pattern.FindTargets();
        return pattern;
    }

    private void FindTargets()
    {
        int next = 0;
        for (int k = 0; k < Count; k++)
        {
            for (int i = Starts[k]; i < Starts[k + 1]; i++)
            {
                for (int j = i + 1; j < Starts[k + 1]; j++)
                {
                    Targets[next++] = EntryOf(Rows[i], Rows[j]);
                }
            }
        }
    }

    /// <summary>Unknowns by degree. An entry that has become stale is passed over when it comes up.</summary>
    private sealed class DegreeQueue
    {
        private readonly HashSet<int>[] near;
        private readonly List<Stack<int>> buckets = [];
        private readonly bool[] taken;
        private int lowest;

        internal DegreeQueue(HashSet<int>[] near)
        {
            this.near = near;
            taken = new bool[near.Length];
            for (int i = near.Length - 1; i >= 0; i--)
            {
                Put(i);
            }
        }

        internal void Put(int unknown)
        {
            int degree = near[unknown].Count;
            while (buckets.Count <= degree)
            {
                buckets.Add(new Stack<int>());
            }

            buckets[degree].Push(unknown);
            lowest = Math.Min(lowest, degree);
        }

        internal int Take()
        {
            while (true)
            {
                while (buckets[lowest].Count == 0)
                {
                    lowest++;
                }

                int unknown = buckets[lowest].Pop();
                if (!taken[unknown] && near[unknown].Count == lowest)
                {
                    taken[unknown] = true;
                    return unknown;
                }
            }
        }
    }
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>Branches that carry one current: those that meet where nothing else does, straight or through one load.</summary>
internal sealed class SeriesRows
{
    private readonly int[] row;

    /// <param name="harness">The harness.</param>
    /// <param name="branchesAt">The branches at every node.</param>
    internal SeriesRows(Harness harness, List<int>[] branchesAt)
    {
        row = [.. Enumerable.Range(0, harness.BranchArray.Length)];
        int[] others = new int[branchesAt.Length];
        foreach (HarnessSource source in harness.SourceArray)
        {
            others[harness.NodeIndex(source.Positive)] += 2;
            others[harness.NodeIndex(source.Negative)] += 2;
        }

        foreach (HarnessLoad load in harness.LoadArray)
        {
            others[harness.NodeIndex(load.Positive)]++;
            others[harness.NodeIndex(load.Negative)]++;
        }

        for (int node = 0; node < branchesAt.Length; node++)
        {
            if (branchesAt[node].Count == 2 && others[node] == 0)
            {
                Join(branchesAt[node][0], branchesAt[node][1]);
            }
        }

        foreach (HarnessLoad load in harness.LoadArray)
        {
            int plus = harness.NodeIndex(load.Positive), minus = harness.NodeIndex(load.Negative);
            if (branchesAt[plus].Count == 1 && others[plus] == 1 && branchesAt[minus].Count == 1 && others[minus] == 1)
            {
                Join(branchesAt[plus][0], branchesAt[minus][0]);
            }
        }

        Of = [.. row.Select((_, k) => Lead(k))];
    }

    /// <summary>The row of every branch.</summary>
    internal int[] Of { get; }

    private void Join(int one, int other) => row[Lead(one)] = Lead(other);

    private int Lead(int branch)
    {
        while (row[branch] != branch)
        {
            branch = row[branch] = row[row[branch]];
        }

        return branch;
    }
}

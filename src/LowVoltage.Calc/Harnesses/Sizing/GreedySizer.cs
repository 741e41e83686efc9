namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>A good choice where there is no tree: grow what cures most for its cost, then take back whatever is not needed.</summary>
/// <remarks>No proof goes with it; <see cref="SizingBound"/> says by how much it may miss the least.</remarks>
internal static class GreedySizer
{
    /// <summary>Options that keep every allowance; null where not even the largest do.</summary>
    internal static int[]? Solve(SizingProblem problem) => From(problem, new int[problem.Wires]) is { } first ? SizingBound.Improve(problem, first) : null;

    /// <summary>The same from any choice: grown where it passes an allowance, then taken back.</summary>
    internal static int[]? From(SizingProblem problem, int[] start)
    {
        int[] options = [.. start];
        double[] left = problem.Left(options);
        while (Array.Exists(left, l => l < 0))
        {
            (int wire, int option) = Best(problem, options, left);
            if (wire < 0)
            {
                return null;
            }

            Set(problem, options, left, wire, option);
        }

        while (Shrink(problem, options, left) || Swap(problem, options, left))
        {
        }

        return options;
    }

    // The step of one wire, by any number of sizes, that cures most of what is passed for each unit of cost.
    private static (int Wire, int Option) Best(SizingProblem problem, int[] options, double[] left)
    {
        (int Wire, int Option) best = (-1, 0);
        double most = 0;
        for (int w = 0; w < problem.Wires; w++)
        {
            for (int option = options[w] + 1; option < problem.Cost[w].Length; option++)
            {
                double gain = problem.Drop[w][options[w]] - problem.Drop[w][option], cured = 0;
                foreach (int load in problem.Loads[w])
                {
                    cured += left[load] < 0 ? Math.Min(gain, -left[load]) : 0;
                }

                double cost = Math.Max(problem.Cost[w][option] - problem.Cost[w][options[w]], 1e-12);
                if (cured / cost > most)
                {
                    (most, best) = (cured / cost, (w, option));
                }
            }
        }

        return best;
    }

    private static bool Shrink(SizingProblem problem, int[] options, double[] left)
    {
        (int wire, int to, double most) = (-1, 0, 0.0);
        for (int w = 0; w < problem.Wires; w++)
        {
            for (int option = 0; option < options[w]; option++)
            {
                double saved = problem.Cost[w][options[w]] - problem.Cost[w][option];
                if (saved > most && Room(problem, left, w) >= problem.Drop[w][option] - problem.Drop[w][options[w]])
                {
                    (wire, to, most) = (w, option, saved);
                }
            }
        }

        if (wire >= 0)
        {
            Set(problem, options, left, wire, to);
        }

        return wire >= 0;
    }

    // One wire a size up lets another go down by more than that costs.
    private static bool Swap(SizingProblem problem, int[] options, double[] left)
    {
        for (int up = 0; up < problem.Wires; up++)
        {
            if (options[up] + 1 >= problem.Cost[up].Length || problem.Loads[up].Length == 0)
            {
                continue;
            }

            int old = options[up];
            double price = problem.Cost[up][old + 1] - problem.Cost[up][old];
            Set(problem, options, left, up, old + 1);

            // Only a wire that shares a load with it gains any room: the others were taken back already.
            foreach (int down in problem.Beside[up])
            {
                for (int option = 0; option < options[down]; option++)
                {
                    if (problem.Cost[down][options[down]] - problem.Cost[down][option] > price * (1 + 1e-12) && Room(problem, left, down) >= problem.Drop[down][option] - problem.Drop[down][options[down]])
                    {
                        Set(problem, options, left, down, option);
                        return true;
                    }
                }
            }

            Set(problem, options, left, up, old);
        }

        return false;
    }

    private static double Room(SizingProblem problem, double[] left, int wire)
    {
        double room = double.PositiveInfinity;
        foreach (int load in problem.Loads[wire])
        {
            room = Math.Min(room, left[load]);
        }

        return room;
    }

    private static void Set(SizingProblem problem, int[] options, double[] left, int wire, int option)
    {
        double gain = problem.Drop[wire][options[wire]] - problem.Drop[wire][option];
        foreach (int load in problem.Loads[wire])
        {
            left[load] += gain;
        }

        options[wire] = option;
    }
}

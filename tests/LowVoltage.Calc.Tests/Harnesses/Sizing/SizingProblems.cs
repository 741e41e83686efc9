using LowVoltage.Calc.Harnesses.Sizing;

namespace LowVoltage.Calc.Tests.Harnesses.Sizing;

/// <summary>Random sizing problems, and the least by trying everything.</summary>
internal static class SizingProblems
{
    /// <summary>A tree of wires: below each the parts of its loads.</summary>
    public static SizingProblem Tree(Random random, int loads, int options)
    {
        List<int[]> sets = [];
        Split([.. Enumerable.Range(0, loads)], random, sets);
        return Of(random, sets, loads, options);
    }

    /// <summary>Wires that serve any loads.</summary>
    public static SizingProblem Mesh(Random random, int loads, int wires, int options) => Of(
        random, [.. Enumerable.Range(0, wires).Select(_ => Enumerable.Range(0, loads).Where(_ => random.NextDouble() < 0.5).DefaultIfEmpty(random.Next(loads)).ToArray())], loads, options);

    /// <summary>The least cost by trying every choice; null where none keeps the allowances.</summary>
    public static double? TryEverything(SizingProblem problem)
    {
        int[] options = new int[problem.Wires];
        double? best = null;
        while (true)
        {
            if (problem.Fits(options) && (best is null || problem.CostOf(options) < best))
            {
                best = problem.CostOf(options);
            }

            int at = 0;
            while (at < options.Length && ++options[at] == problem.Cost[at].Length)
            {
                options[at++] = 0;
            }

            if (at == options.Length)
            {
                return best;
            }
        }
    }

    private static void Split(int[] loads, Random random, List<int[]> sets)
    {
        sets.Add(loads);
        if (random.NextDouble() < 0.2)
        {
            // The way back of the same loads.
            sets.Add(loads);
        }

        if (loads.Length > 1)
        {
            int cut = random.Next(1, loads.Length);
            Split(loads[..cut], random, sets);
            Split(loads[cut..], random, sets);
        }
    }

    private static SizingProblem Of(Random random, List<int[]> sets, int loads, int options)
    {
        double[][] cost = new double[sets.Count][], drop = new double[sets.Count][];
        for (int w = 0; w < sets.Count; w++)
        {
            double length = 0.5 + (5 * random.NextDouble()), amperes = sets[w].Length * (1 + random.NextDouble());
            double[] areas = [.. Enumerable.Range(0, options).Select(k => 0.5 * Math.Pow(1.6, k) * (1 + (0.1 * random.NextDouble())))];
            (cost[w], drop[w]) = ([.. areas.Select(a => a * length)], [.. areas.Select(a => 0.02 * amperes * length / a)]);
        }

        return new SizingProblem(cost, drop, [.. sets], [.. Enumerable.Range(0, loads).Select(_ => 0.1 + (0.6 * random.NextDouble()))]);
    }
}

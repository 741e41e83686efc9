using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Harnesses.Sizing;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The sizing of a tree of wires at given currents alone, 14 sizes each, without finding currents and without verifying.</summary>
public class SizingTreeBenchmarks
{
    private SizingProblem problem = null!;

    [Params(100, 1000)]
    public int Wires { get; set; }

    /// <summary>It must have an answer; else it would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        Random random = new(7);
        List<int[]> sets = [];
        int loads = 0;
        while (sets.Count < Wires)
        {
            // A feed to a group of circuits, each with its own way out and back.
            int[] group = [.. Enumerable.Range(loads, 8)];
            loads += group.Length;
            sets.Add(group);
            foreach (int load in group)
            {
                sets.Add([load]);
                sets.Add([load]);
            }
        }

        sets.Add([.. Enumerable.Range(0, loads)]);
        double[][] cost = new double[sets.Count][], drop = new double[sets.Count][];
        for (int w = 0; w < sets.Count; w++)
        {
            double length = 0.5 + (5 * random.NextDouble()), amperes = sets[w].Length * (1 + random.NextDouble()), least = sets[w].Length;
            double[] areas = [.. Enumerable.Range(0, 14).Select(k => 0.5 * least * Math.Pow(1.45, k))];
            (cost[w], drop[w]) = ([.. areas.Select(a => a * length)], [.. areas.Select(a => 0.02 * amperes * length / a)]);
        }

        problem = new SizingProblem(cost, drop, [.. sets], [.. Enumerable.Range(0, loads).Select(_ => 0.5 + (0.5 * random.NextDouble()))]);
        if (Solve() is null)
        {
            throw new InvalidOperationException("No sizes keep the allowances.");
        }
    }

    [Benchmark(Description = "Size a tree of wires at given currents")]
    public int[]? Solve() => TreeSizer.TryCreate(problem)!.Solve();
}

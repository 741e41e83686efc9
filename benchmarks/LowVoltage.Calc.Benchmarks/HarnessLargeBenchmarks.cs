using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>A harness of 10 000 branches solved: once more, and in a load case that is new to it, for which the order of elimination is found again.</summary>
public class HarnessLargeBenchmarks
{
    private Harness harness = null!;

    /// <summary>It must have a solution; else it would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        harness = FaultAuditBenchmarks.Make(10_000, 1).ToBuilder().Add(LoadCase.AllOn).Build();
        if (!harness.Solve().Exists)
        {
            throw new InvalidOperationException("The harness has no solution.");
        }
    }

    [Benchmark(Description = "Solve a harness of 10 000 branches once more", Baseline = true)]
    public HarnessSolution Solve() => harness.Solve(SupplyLevel.Minimum);

    [Benchmark(Description = "Solve it in a load case that is new to it")]
    public HarnessSolution SolveAnew() => harness.Solve(SupplyLevel.Minimum, LoadCase.Create("all on once more"));
}

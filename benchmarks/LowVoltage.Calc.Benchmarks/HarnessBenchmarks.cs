using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>A harness of 10, 100 and 1 000 branches: solved once, verified over its load cases, drawn; and one sample of a batch.</summary>
public class HarnessBenchmarks
{
    private Harness harness = null!;

    [Params(10, 100, 1000)]
    public int Branches { get; set; }

    /// <summary>It must have a solution; else it would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        harness = FaultAuditBenchmarks.Make(Branches, 1).ToBuilder().Add(LoadCase.AllOn).Build();
        if (!harness.Solve().Exists)
        {
            throw new InvalidOperationException("The harness has no solution.");
        }
    }

    [Benchmark(Description = "Solve a harness once more", Baseline = true)]
    public HarnessSolution Solve() => harness.Solve(SupplyLevel.Minimum);

    [Benchmark(Description = "Solve a harness in a load case that is new to it, the order of elimination included")]
    public HarnessSolution SolveAnew() => harness.Solve(SupplyLevel.Minimum, LoadCase.Create("all on once more"));

    [Benchmark(Description = "Verify a harness")]
    public HarnessVerification Verify() => HarnessDesigner.Verify(harness);

    [Benchmark(Description = "Bound a harness over its tolerances")]
    public HarnessBounds Bound() => HarnessBounds.Of(harness, Tolerances.None.WithLoads(Ratio.FromPercent(10)).WithLengths(Ratio.FromPercent(5)));
}

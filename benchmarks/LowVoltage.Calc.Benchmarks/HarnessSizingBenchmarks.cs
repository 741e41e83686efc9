using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>A harness of 10, 30 and 100 branches sized for the least copper, verified included.</summary>
public class HarnessSizingBenchmarks
{
    private Harness harness = null!;

    [Params(10, 30, 100)]
    public int Branches { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        HarnessBuilder builder = FaultAuditBenchmarks.Make(Branches, 1).ToBuilder().Add(LoadCase.AllOn);
        foreach (HarnessWire wire in FaultAuditBenchmarks.Make(Branches, 1).Branches.OfType<HarnessWire>())
        {
            _ = builder.Replace(wire.WithConductor(null));
        }

        harness = builder.Build();
    }

    [Benchmark(Description = "Size a harness for the least copper")]
    public HarnessDesign Design() => HarnessDesigner.Design(harness);
}

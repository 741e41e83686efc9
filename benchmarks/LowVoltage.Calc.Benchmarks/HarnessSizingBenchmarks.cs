using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>A harness of 10, 100 and 1 000 branches sized for the least copper, verified included: as a tree, and with a wire that closes a ring.</summary>
public class HarnessSizingBenchmarks
{
    private Harness harness = null!;

    [Params(10, 100, 1000)]
    public int Branches { get; set; }

    [Params(false, true)]
    public bool Ring { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        Harness drawn = FaultAuditBenchmarks.Make(Branches, 1);
        HarnessBuilder builder = drawn.ToBuilder().Add(LoadCase.AllOn);
        HarnessWire[] wires = [.. drawn.Branches.OfType<HarnessWire>()];
        foreach (HarnessWire wire in wires)
        {
            _ = builder.Replace(wire.WithConductor(null));
        }

        if (Ring)
        {
            // From the first feed's end to another feed's.
            HarnessWire other = wires.Last(w => w.To != wires[1].To && drawn.Loads.Any(l => l.Positive == w.To));
            _ = builder.Add(HarnessWire.Create("ring", wires[1].To, other.To, null, Length.FromMeters(2), other.Place, other.Insulation));
        }

        harness = builder.Build();
    }

    [Benchmark(Description = "Size a harness for the least copper")]
    public HarnessDesign Design() => HarnessDesigner.Design(harness);
}

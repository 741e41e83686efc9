using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The main job on the typical circuit: 60 W, 5.5 m each way, 50 °C, six loaded conductors, a lead-acid battery.</summary>
public class DesignerBenchmarks
{
    private readonly CircuitRequirements typical = Circuits60V.Typical(50);
    private readonly CircuitRequirements aircraft = Circuits60V.Aircraft();
    private readonly Conductor wire = Conductor.Iso6722(MetricSize.FromSquareMillimeters(4));
    private readonly FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(7.5));

    [Benchmark]
    public CircuitDesign RoadVehicle() => CircuitDesigner.Design(typical, DesignRules.RoadVehicle);

    [Benchmark]
    public CircuitDesign SmallCraft() => CircuitDesigner.Design(typical, DesignRules.SmallCraft);

    [Benchmark]
    public CircuitDesign LightAircraft() => CircuitDesigner.Design(aircraft, DesignRules.LightAircraft);

    [Benchmark]
    public CircuitDesign Bench() => CircuitDesigner.Design(typical, DesignRules.Bench);

    /// <summary>A design whose reader asks for everything: each smaller size with its reason, the path, every text.</summary>
    [Benchmark]
    public int RoadVehicleReadInFull()
    {
        CircuitDesign design = CircuitDesigner.Design(typical, DesignRules.RoadVehicle);
        return design.Rejected.Count + design.Assumptions.Count + design.Cautions.Count + design.ToString().Length
            + design.Checks.Sum(check => check.Note.Length) + design.Path!.Feed.Count;
    }

    [Benchmark]
    public CircuitDesign Verify() => CircuitDesigner.Verify(typical, wire, fuse, DesignRules.RoadVehicle);

    [Benchmark]
    public DesignLimit<Length> LongestRun() => CircuitDesigner.LongestRun(typical, wire, fuse, DesignRules.RoadVehicle);
}

/// <summary>Many different circuits one after another on one core: the time must grow in proportion.</summary>
public class ManyCircuitsBenchmarks
{
    private CircuitRequirements[] circuits = [];

    [Params(10, 1000, 10_000)]
    public int Count { get; set; }

    [GlobalSetup]
    public void Setup() => circuits = Circuits60V.Varied(Count);

    [Benchmark]
    public int Design()
    {
        int feasible = 0;
        foreach (CircuitRequirements circuit in circuits)
        {
            feasible += CircuitDesigner.Design(circuit, DesignRules.RoadVehicle).IsFeasible ? 1 : 0;
        }

        return feasible;
    }
}

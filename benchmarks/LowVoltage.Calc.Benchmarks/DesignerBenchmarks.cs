using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The main job on the typical circuit: 60 W, 5.5 m each way, 50 °C, six loaded conductors, a lead-acid battery.</summary>
public class DesignerBenchmarks
{
    private readonly CircuitRequirements typical = Circuits60V.Typical(50);
    private readonly CircuitRequirements aircraft = Circuits60V.Aircraft();
    private readonly Conductor wire = Conductor.Iso6722(MetricSize.FromSquareMillimeters(4));
    private readonly FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(7.5));
    private readonly CircuitDesign made = CircuitDesigner.Design(Circuits60V.Typical(50), DesignRules.RoadVehicle);

    private static bool settled;

    /// <summary>A design that finds nothing stops early; that would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        CircuitDesign[] designs = [RoadVehicle(), SmallCraft(), LightAircraft(), Bench(), Verify()];
        if (!designs.All(design => design.IsFeasible))
        {
            throw new InvalidOperationException("A circuit of the benchmarks is not feasible.");
        }

        if (!settled)
        {
            Settling.Run(() => RoadVehicle(), () => SmallCraft(), () => LightAircraft(), () => Bench(), () => Verify(), () => RoadVehicleReadInFull(), () => Rejected(), () => Explain(), () => LongestRun(), () => LargestCurrent(), () => LargestPower(), () => HottestAmbient(), () => MostLoadedConductors());
            settled = true;
        }
    }

    [Benchmark(Description = "Design, road vehicle")]
    public CircuitDesign RoadVehicle() => CircuitDesigner.Design(typical, DesignRules.RoadVehicle);

    [Benchmark(Description = "Design, small craft")]
    public CircuitDesign SmallCraft() => CircuitDesigner.Design(typical, DesignRules.SmallCraft);

    [Benchmark(Description = "Design, light aircraft (ETFE, two loaded)")]
    public CircuitDesign LightAircraft() => CircuitDesigner.Design(aircraft, DesignRules.LightAircraft);

    [Benchmark(Description = "Design, bench")]
    public CircuitDesign Bench() => CircuitDesigner.Design(typical, DesignRules.Bench);

    [Benchmark(Description = "Verify, road vehicle")]
    public CircuitDesign Verify() => CircuitDesigner.Verify(typical, wire, fuse, DesignRules.RoadVehicle);

    /// <summary>A design whose reader asks for everything: each smaller size with its reason, the path, every text.</summary>
    [Benchmark(Description = "Design, road vehicle, and every text of it read")]
    public int RoadVehicleReadInFull()
    {
        CircuitDesign design = CircuitDesigner.Design(typical, DesignRules.RoadVehicle);
        return design.Rejected.Count + design.Assumptions.Count + design.Cautions.Count + design.ToString().Length
            + design.Checks.Sum(check => check.Note.Length) + design.Path!.Feed.Count;
    }

    [Benchmark(Description = "Rejected, why each smaller size was not taken")]
    public int Rejected() => CircuitDesigner.Design(typical, DesignRules.RoadVehicle).Rejected.Count;

    [Benchmark(Description = "Explain, the working of a design")]
    public WorkedSolution Explain() => made.Explain();

    [Benchmark(Description = "LongestRun")]
    public DesignLimit<Length> LongestRun() => CircuitDesigner.LongestRun(typical, wire, fuse, DesignRules.RoadVehicle);

    [Benchmark(Description = "LargestCurrent")]
    public DesignLimit<ElectricCurrent> LargestCurrent() => CircuitDesigner.LargestCurrent(typical, wire, fuse, DesignRules.RoadVehicle);

    [Benchmark(Description = "LargestPower")]
    public DesignLimit<Power> LargestPower() => CircuitDesigner.LargestPower(typical, wire, fuse, DesignRules.RoadVehicle);

    [Benchmark(Description = "HottestAmbient")]
    public DesignLimit<Temperature> HottestAmbient() => CircuitDesigner.HottestAmbient(typical, wire, fuse, DesignRules.RoadVehicle);

    [Benchmark(Description = "MostLoadedConductors")]
    public DesignLimit<int> MostLoadedConductors() => CircuitDesigner.MostLoadedConductors(typical, wire, fuse, DesignRules.RoadVehicle);
}

/// <summary>Many different circuits one after another on one core: the time must grow in proportion.</summary>
public class ManyCircuitsBenchmarks
{
    private const int SettlingCount = 1000;

    private CircuitRequirements[] circuits = [];

    [Params(10, 1000, 100_000)]
    public int Count { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        circuits = Circuits60V.Varied(Count);
        if (Count <= SettlingCount)
        {
            Settling.Run(() => Design());
        }
    }

    [GlobalCleanup]
    public void Cleanup() => circuits = [];

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

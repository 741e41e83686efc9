using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Every fault of a harness of 10, 100 and 1 000 branches, with one battery and with two: a short at every node, an interruption of every branch.</summary>
public class FaultAuditBenchmarks
{
    // A circuit has a fuse, a feed and a way back.
    private const int BranchesOfACircuit = 3;

    private Harness harness = null!;

    [Params(10, 100, 1000)]
    public int Branches { get; set; }

    [Params(1, 2)]
    public int Batteries { get; set; }

    /// <summary>Every fault must have an answer; else it would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        harness = Make(Branches, Batteries);
        if (Audit().Faults.Any(f => f.Rank == FaultRank.Undetermined))
        {
            throw new InvalidOperationException("A fault has no answer.");
        }
    }

    [Benchmark(Description = "Audit every fault of a harness")]
    public FaultAudit Audit() => FaultAudit.Run(harness, [LoadCase.AllOn]);

    internal static Harness Make(int branches, int batteries)
    {
        Place place = Place.Create(Temperature.FromDegreesCelsius(40));
        Conductor Wire(double size) => Conductor.Iso6722(MetricSize.FromSquareMillimeters(size));
        FuseRating Fuse(FuseSeries series, double amperes) => series.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));
        InsulationMaterial insulation = InsulationMaterial.CrossLinkedPolyethylene;
        HarnessBuilder builder = new HarnessBuilder("benchmark", DesignRules.RoadVehicle).Busbars("panel").Grounds("frame");
        for (int n = 1; n <= batteries; n++)
        {
            _ = builder.Terminals($"plus {n}", $"fused {n}", $"minus {n}").Source($"battery {n}", $"plus {n}", $"minus {n}", Battery.LeadAcid(ElectricCurrent.FromAmperes(600)))
                .Fuse($"main {n}", $"plus {n}", $"fused {n}", Fuse(FuseSeries.RoadVehicleHighCurrentBlade, 80))
                .Wire($"lead {n}", $"fused {n}", "panel", Wire(16), Length.FromMeters(1 + n), place, insulation)
                .Chassis($"strap {n}", "frame", $"minus {n}", ElectricResistance.FromMilliohms(2));
        }

        // Ten circuits to a block, each block behind a fuse of its own.
        for (int n = 0, used = 3 * batteries; used + BranchesOfACircuit <= branches; n++, used += BranchesOfACircuit)
        {
            string block = $"block {n / 10}";
            if (n % 10 == 0)
            {
                used += 2;
                _ = builder.Busbars(block).Terminals($"{block} fused").Fuse($"{block} fuse", "panel", $"{block} fused", Fuse(FuseSeries.RoadVehicleHighCurrentBlade, 40))
                    .Wire($"{block} feed", $"{block} fused", block, Wire(6), Length.FromMeters(2), place, insulation);
            }

            _ = builder.Terminals($"f{n}", $"+{n}", $"-{n}").Fuse($"fuse {n}", block, $"f{n}", Fuse(FuseSeries.RoadVehicleBlade, 7.5))
                .Wire($"feed {n}", $"f{n}", $"+{n}", Wire(1.5), Length.FromMeters(1 + (n % 7)), place, insulation)
                .Wire($"back {n}", $"-{n}", "frame", Wire(1.5), Length.FromMeters(0.5), place, insulation)
                .Load($"load {n}", $"+{n}", $"-{n}", n % 2 == 0 ? Load.Lamp(Power.FromWatts(2), ElectricPotential.FromVolts(12)) : Load.ConstantPower(Power.FromWatts(2), minimumVoltage: ElectricPotential.FromVolts(9)));
        }

        return builder.Build();
    }
}

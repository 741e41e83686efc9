using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Physics that takes a quadrature: an overload in still air, a bundle, a fault, a fuse against a wire.</summary>
public class HeatAndTimeBenchmarks
{
    private readonly Wire wire = Wire.Create(
        Conductor.Iec60228(MetricSize.FromSquareMillimeters(1.5), Iec60228Class.Flexible), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));

    private readonly Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(30) };
    private readonly Temperature start = Temperature.FromDegreesCelsius(70);
    private readonly Temperature limit = Temperature.FromDegreesCelsius(160);
    private readonly ElectricCurrent overload = ElectricCurrent.FromAmperes(60);
    private readonly ElectricCurrent prospective = ElectricCurrent.FromAmperes(600);
    private readonly Duration seconds = Duration.FromSeconds(5);
    private readonly FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));
    private WireBundle bundle = null!;
    private ProtectedWire free = null!;
    private ProtectedWire derated = null!;
    private FaultPath path = null!;
    private WireLimits limits;

    [GlobalSetup]
    public void Setup()
    {
        bundle = WireBundle.Create(wire, 12, 12);
        free = ProtectedWire.Create(wire, air);
        derated = free.Carrying(ElectricCurrent.FromAmperes(15));
        limits = derated.Limits();
        path = FaultPath.Create(
            ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(15), FaultSegment.Create(wire.Conductor, Length.FromMeters(6), start));
    }

    [Benchmark]
    public ElectricCurrent BundleCurrent() => BundleHeat.CurrentFor(bundle, air, start);

    [Benchmark]
    public Duration? TimeToReach() => OverloadHeating.TimeToReach(wire, air, overload, limit, start);

    [Benchmark]
    public Temperature? TemperatureAfter() => OverloadHeating.TemperatureAfter(wire, air, overload, seconds, start);

    [Benchmark]
    public ElectricCurrent CurrentToReach() => OverloadHeating.CurrentToReach(wire, air, limit, seconds, start);

    [Benchmark]
    public FaultOpening FaultClears() => FaultClearing.Latest(path, fuse);

    [Benchmark]
    public WireProtection FuseAgainstFreeWire() => FuseAgainstWire.Check(fuse, free, prospective);

    [Benchmark]
    public WireProtection FuseAgainstDeratedWire() => FuseAgainstWire.Check(fuse, derated, prospective);

    /// <summary>What the designer asks of each fuse.</summary>
    [Benchmark]
    public double VerdictKernel() => FuseAgainstWireKernel.Verdict(limits, fuse.Curve!, 600).Ratio;
}

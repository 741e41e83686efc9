using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The operating point on doubles for each kind of load, conductor at a fixed temperature and heating itself.</summary>
public class OperatingPointBenchmarks
{
    private readonly FixedConductorTemperature fixedTemperature = new(60, 1.157);

    private readonly SelfHeatedConductorTemperature selfHeated =
        new(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), 40, 25, 105);

    private readonly double rawVolts = 12.6;
    private readonly double rawOhms = 0.12;
    private readonly double rawWatts = 60;
    private Load load = null!;

    [Params("power", "current", "resistance", "lamp", "motor")]
    public string Kind { get; set; } = "";

    [GlobalSetup]
    public void Setup() => load = Circuits60V.LoadOf(Array.IndexOf(["power", "current", "resistance", "lamp", "motor"], Kind), 60);

    /// <summary>Constant power in closed form, whatever the kind: the measure for all.</summary>
    [Benchmark(Baseline = true)]
    public double RawDoubles() => (rawVolts - Math.Sqrt((rawVolts * rawVolts) - (4 * rawOhms * rawWatts))) / (2 * rawOhms);

    [Benchmark]
    public double FixedTemperature() => OperatingPointKernel.Solve(12.6, 0.02, 0.09, fixedTemperature, load, LoadState.Running).Amperes;

    [Benchmark]
    public double SelfHeated() => OperatingPointKernel.Solve(12.6, 0.02, 0.09, selfHeated, load, LoadState.Running).Amperes;
}

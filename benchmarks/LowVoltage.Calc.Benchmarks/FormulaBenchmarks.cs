using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Resistance of a wire at a temperature: one argument.</summary>
public class ResistanceBenchmarks
{
    private readonly Conductor wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);
    private readonly Temperature celsius = Temperature.FromDegreesCelsius(75);
    private readonly Temperature fahrenheit = Temperature.FromDegreesFahrenheit(167);
    private readonly double raw20 = 8.282e-3;
    private readonly double rawAlpha = 0.00393;
    private readonly double rawCelsius = 75;

    [Benchmark(Baseline = true)]
    public double RawDoubles() => raw20 * (1 + (rawAlpha * (rawCelsius - 20)));

    [Benchmark]
    public LinearResistance Typed() => wire.ResistancePerLength(celsius);

    [Benchmark]
    public LinearResistance TypedOtherUnits() => wire.ResistancePerLength(fahrenheit);
}

/// <summary>Drop along a run: two quantities of UnitsNet and one of ours.</summary>
public class VoltageDropBenchmarks
{
    private readonly LinearResistance perLength = LinearResistance.FromOhmsPerMeter(8.282e-3);
    private readonly Length meters = Length.FromMeters(11);
    private readonly Length feet = Length.FromFeet(36);
    private readonly ElectricCurrent amperes = ElectricCurrent.FromAmperes(5);
    private readonly ElectricCurrent milliamperes = ElectricCurrent.FromMilliamperes(5000);
    private readonly double rawPerMeter = 8.282e-3;
    private readonly double rawMeters = 11;
    private readonly double rawAmperes = 5;

    [Benchmark(Baseline = true)]
    public double RawDoubles() => rawPerMeter * rawMeters * rawAmperes;

    [Benchmark]
    public ElectricPotential Typed() => VoltageDrop.Along(perLength, meters, amperes);

    [Benchmark]
    public ElectricPotential TypedOtherUnits() => VoltageDrop.Along(perLength, feet, milliamperes);
}

/// <summary>Temperature after a short circuit: three arguments.</summary>
public class FinalTemperatureBenchmarks
{
    private readonly Conductor wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);
    private readonly ElectricCurrent amperes = ElectricCurrent.FromAmperes(500);
    private readonly ElectricCurrent kiloamperes = ElectricCurrent.FromKiloamperes(0.5);
    private readonly Duration seconds = Duration.FromSeconds(0.2);
    private readonly Duration milliseconds = Duration.FromMilliseconds(200);
    private readonly Temperature celsius = Temperature.FromDegreesCelsius(70);
    private readonly Temperature kelvins = Temperature.FromKelvins(343.15);
    private readonly double rawSquared = 226 * 226;
    private readonly double rawArea = 2.08;
    private readonly double rawAmperes = 500;
    private readonly double rawSeconds = 0.2;
    private readonly double rawCelsius = 70;

    [Benchmark(Baseline = true)]
    public double RawDoubles() =>
        rawCelsius + ((rawCelsius + 234.5) * (Math.Exp(rawAmperes * rawAmperes * rawSeconds / (rawSquared * rawArea * rawArea)) - 1));

    [Benchmark]
    public Temperature Typed() => AdiabaticHeating.FinalTemperature(wire, amperes, seconds, celsius);

    [Benchmark]
    public Temperature TypedOtherUnits() => AdiabaticHeating.FinalTemperature(wire, kiloamperes, milliseconds, kelvins);
}

/// <summary>Time to a temperature in a short circuit: three arguments.</summary>
public class TimeToReachBenchmarks
{
    private readonly Conductor wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);
    private readonly ElectricCurrent amperes = ElectricCurrent.FromAmperes(500);
    private readonly ElectricCurrent kiloamperes = ElectricCurrent.FromKiloamperes(0.5);
    private readonly Temperature celsius = Temperature.FromDegreesCelsius(70);
    private readonly Temperature kelvins = Temperature.FromKelvins(343.15);
    private readonly Temperature limit = Temperature.FromDegreesCelsius(160);
    private readonly Temperature limitKelvins = Temperature.FromKelvins(433.15);
    private readonly double rawSquared = 226 * 226;
    private readonly double rawArea = 2.08;
    private readonly double rawAmperes = 500;
    private readonly double rawCelsius = 70;
    private readonly double rawLimit = 160;

    [Benchmark(Baseline = true)]
    public double RawDoubles() =>
        rawSquared * rawArea * rawArea * Math.Log((rawLimit + 234.5) / (rawCelsius + 234.5)) / (rawAmperes * rawAmperes);

    [Benchmark]
    public Duration Typed() => AdiabaticHeating.TimeToReach(wire, amperes, celsius, limit);

    [Benchmark]
    public Duration TypedOtherUnits() => AdiabaticHeating.TimeToReach(wire, kiloamperes, kelvins, limitKelvins);
}

/// <summary>Heat balance: the typed call against its kernel. The solution is iterative; there is no closed formula in raw doubles.</summary>
public class HeatBalanceBenchmarks
{
    private readonly Wire wire = Wire.Create(
        Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));

    private readonly Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(40) };
    private readonly Temperature celsius = Temperature.FromDegreesCelsius(70);
    private readonly Temperature kelvins = Temperature.FromKelvins(343.15);
    private readonly ElectricCurrent amperes = ElectricCurrent.FromAmperes(20);
    private HeatBalanceKernel kernel;

    [GlobalSetup]
    public void Setup() => kernel = HeatBalanceKernel.For(wire, air);

    [Benchmark(Baseline = true)]
    public double KernelCurrentFor() => kernel.AmperesFor(70);

    [Benchmark]
    public ElectricCurrent CurrentFor() => HeatBalance.CurrentFor(wire, air, celsius);

    [Benchmark]
    public ElectricCurrent CurrentForOtherUnits() => HeatBalance.CurrentFor(wire, air, kelvins);

    [Benchmark]
    public Temperature TemperatureAt() => HeatBalance.TemperatureAt(wire, air, amperes);
}

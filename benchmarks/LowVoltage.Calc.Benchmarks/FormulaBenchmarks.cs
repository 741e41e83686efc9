using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Resistance of a wire at a temperature: one argument. Formulas this short are timed a thousand at a time.</summary>
public class ResistanceBenchmarks
{
    private const int Calls = 1000;

    private readonly Conductor wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);
    private readonly double[] raw = [.. Enumerable.Range(0, Calls).Select(i => 20 + (i * 0.1))];
    private readonly double raw20 = 8.282e-3;
    private readonly double rawAlpha = 0.00393;
    private Temperature[] celsius = [];
    private Temperature[] fahrenheit = [];

    [GlobalSetup]
    public void Setup()
    {
        celsius = [.. raw.Select(value => Temperature.FromDegreesCelsius(value))];
        fahrenheit = [.. celsius.Select(value => Temperature.FromDegreesFahrenheit(value.DegreesFahrenheit))];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Calls)]
    public double RawDoubles()
    {
        double sum = 0;
        foreach (double value in raw)
        {
            sum += raw20 * (1 + (rawAlpha * (value - 20)));
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Calls)]
    public double Typed() => Sum(celsius);

    [Benchmark(OperationsPerInvoke = Calls)]
    public double TypedOtherUnits() => Sum(fahrenheit);

    private double Sum(Temperature[] temperatures)
    {
        double sum = 0;
        foreach (Temperature temperature in temperatures)
        {
            sum += wire.ResistancePerLength(temperature).OhmsPerMeter;
        }

        return sum;
    }
}

/// <summary>Drop along a run: two quantities of UnitsNet and one of ours.</summary>
public class VoltageDropBenchmarks
{
    private const int Calls = 1000;

    private readonly LinearResistance perLength = LinearResistance.FromOhmsPerMeter(8.282e-3);
    private readonly double rawPerMeter = 8.282e-3;
    private readonly double rawAmperes = 5;
    private readonly double[] raw = [.. Enumerable.Range(1, Calls).Select(i => i * 0.01)];
    private readonly ElectricCurrent amperes = ElectricCurrent.FromAmperes(5);
    private readonly ElectricCurrent milliamperes = ElectricCurrent.FromMilliamperes(5000);
    private Length[] meters = [];
    private Length[] feet = [];

    [GlobalSetup]
    public void Setup()
    {
        meters = [.. raw.Select(value => Length.FromMeters(value))];
        feet = [.. meters.Select(value => Length.FromFeet(value.Feet))];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Calls)]
    public double RawDoubles()
    {
        double sum = 0;
        foreach (double value in raw)
        {
            sum += rawPerMeter * value * rawAmperes;
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Calls)]
    public double Typed() => Sum(meters, amperes);

    [Benchmark(OperationsPerInvoke = Calls)]
    public double TypedOtherUnits() => Sum(feet, milliamperes);

    private double Sum(Length[] lengths, ElectricCurrent current)
    {
        double sum = 0;
        foreach (Length length in lengths)
        {
            sum += VoltageDrop.Along(perLength, length, current).Value;
        }

        return sum;
    }
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

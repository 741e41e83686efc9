using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Benchmarks.Formulas;
using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Cases in spans: a bulk call against the same formula in a loop over raw doubles, and against a loop of typed calls on quantities.</summary>
/// <remarks>1000 cases of four inputs fit the nearest caches; 100 000 do not. The raw loops check nothing; bulk and typed calls check every value.</remarks>
public abstract class BulkBenchmarks
{
    private const double Agreement = 1e-9;

    [Params(1000, 100_000)]
    public int Cases { get; set; }

    protected double[] Results { get; private set; } = [];

    /// <summary>Draws the cases; then all three ways must give the same numbers.</summary>
    [GlobalSetup]
    public void Setup()
    {
        Results = new double[Cases];
        Fill(new Random(1));
        RawDoubles();
        double[] raw = [.. Results];
        Bulk();
        Require("bulk", raw);
        Typed();
        Require("typed", raw);
    }

    [Benchmark(Baseline = true)]
    public void RawDoubles() => RunRaw();

    [Benchmark]
    public void Bulk() => RunBulk();

    [Benchmark]
    public void Typed() => RunTyped();

    protected abstract void RunRaw();

    protected abstract void RunBulk();

    protected abstract void RunTyped();

    protected abstract void Fill(Random random);

    private void Require(string variant, double[] raw)
    {
        for (int i = 0; i < raw.Length; i++)
        {
            if (!(Math.Abs(Results[i] - raw[i]) <= Agreement * Math.Abs(raw[i])))
            {
                throw new InvalidOperationException($"{GetType().Name}, case {i}: {variant} gives {Results[i]:R}, the raw formula {raw[i]:R}.");
            }
        }
    }

    protected double[] Draw(Random random, double least, double most) =>
        [.. Enumerable.Range(0, Cases).Select(_ => least + ((most - least) * random.NextDouble()))];
}

/// <summary>ΔV = (R′f·Lf + R′r·Lr)·I: five inputs, four operations.</summary>
public class BulkDropBenchmarks : BulkBenchmarks
{
    private double[] feedOhms = [], feedMeters = [], returnOhms = [], returnMeters = [], amperes = [];
    private (LinearResistance Feed, Length Out, LinearResistance Return, Length Back, ElectricCurrent Current)[] typed = [];

    protected override void RunRaw() => RawLoops.Drop(feedOhms, feedMeters, returnOhms, returnMeters, amperes, Results);

    protected override void RunBulk() => BulkVoltageDrop.OutAndBack(feedOhms, feedMeters, returnOhms, returnMeters, amperes, Results);

    protected override void RunTyped()
    {
        for (int i = 0; i < typed.Length; i++)
        {
            var (feed, way, back, wayBack, current) = typed[i];
            Results[i] = (VoltageDrop.OutAndBack(feed, way, back, wayBack) * current).Volts;
        }
    }

    protected override void Fill(Random random)
    {
        (feedOhms, feedMeters) = (Draw(random, 1e-3, 2e-2), Draw(random, 0.5, 10));
        (returnOhms, returnMeters, amperes) = (Draw(random, 1e-3, 2e-2), Draw(random, 0.5, 10), Draw(random, 0.1, 30));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            LinearResistance.FromOhmsPerMeter(feedOhms[i]), Length.FromMeters(feedMeters[i]),
            LinearResistance.FromOhmsPerMeter(returnOhms[i]), Length.FromMeters(returnMeters[i]), ElectricCurrent.FromAmperes(amperes[i])))];
    }
}

/// <summary>S = ρ(θ)·L·I/ΔV: four inputs, one division.</summary>
public class BulkSizingBenchmarks : BulkBenchmarks
{
    private readonly ConductorMaterial copper = Copper.Metal;
    private double[] celsius = [], meters = [], amperes = [], allowed = [];
    private (Temperature At, Length Length, ElectricCurrent Current, ElectricPotential Allowed)[] typed = [];

    protected override void RunRaw() => RawLoops.Sizing(celsius, meters, amperes, allowed, Results);

    protected override void RunBulk() => BulkVoltageDrop.LeastArea(copper, celsius, meters, amperes, allowed, Results);

    protected override void RunTyped()
    {
        for (int i = 0; i < typed.Length; i++)
        {
            var (at, length, current, drop) = typed[i];
            Results[i] = VoltageDrop.LeastArea(copper.ResistivityAt(at), length, current, drop).SquareMillimeters;
        }
    }

    protected override void Fill(Random random)
    {
        (celsius, meters) = (Draw(random, -20, 100), Draw(random, 0.5, 20));
        (amperes, allowed) = (Draw(random, 0.1, 30), Draw(random, 0.1, 1));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            Temperature.FromDegreesCelsius(celsius[i]), Length.FromMeters(meters[i]), ElectricCurrent.FromAmperes(amperes[i]), ElectricPotential.FromVolts(allowed[i])))];
    }
}

/// <summary>U = [V + √(V² − 4RP)]/2, or 0 where there is no operating point: three inputs, one square root.</summary>
public class BulkLoadVoltageBenchmarks : BulkBenchmarks
{
    private double[] volts = [], ohms = [], watts = [];
    private (Source Source, CircuitPath Path, Load Load)[] typed = [];
    private readonly ConductorTemperature warm = ConductorTemperature.At(Temperature.FromDegreesCelsius(20));

    protected override void RunRaw() => RawLoops.LoadVoltage(volts, ohms, watts, Results);

    protected override void RunBulk() => BulkLoadVoltage.ConstantPower(volts, ohms, watts, Results);

    /// <summary>The typed call solves the whole point (losses, elements, sentences), so its ratio says little.</summary>
    protected override void RunTyped()
    {
        for (int i = 0; i < typed.Length; i++)
        {
            OperatingPoint point = OperatingPoint.Solve(typed[i].Source, typed[i].Path, typed[i].Load, warm);
            Results[i] = point.Exists ? point.VoltageAtLoad.Volts : 0;
        }
    }

    protected override void Fill(Random random)
    {
        (volts, ohms, watts) = (Draw(random, 11, 15), Draw(random, 0.01, 0.5), Draw(random, 5, 100));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            Source.Ideal(ElectricPotential.FromVolts(volts[i])),
            CircuitPath.Create(Segment.Create(Copper.Wire, Length.FromMeters(ohms[i] / Copper.OhmsPerMeter20)), ReturnPath.Chassis(ElectricResistance.Zero)),
            Load.ConstantPower(Power.FromWatts(watts[i]))))];
    }
}

/// <summary>θf = θi + (θi + β)·(exp(I²t/(K·S)²) − 1), no more than the melting point: four inputs, one exponential.</summary>
public class BulkFinalTemperatureBenchmarks : BulkBenchmarks
{
    private readonly ConductorMaterial copper = Copper.Metal;
    private double[] areas = [], amperes = [], seconds = [], celsius = [];
    private (Area Area, ElectricCurrent Current, Duration Time, Temperature Initial)[] typed = [];

    protected override void RunRaw() => RawLoops.FinalTemperature(areas, amperes, seconds, celsius, Results);

    protected override void RunBulk() => BulkAdiabaticHeating.FinalTemperature(copper, areas, amperes, seconds, celsius, Results);

    protected override void RunTyped()
    {
        for (int i = 0; i < typed.Length; i++)
        {
            var (area, current, time, initial) = typed[i];
            AdiabaticHeating.TryFinalTemperature(copper, area, current, time, initial, out Temperature final);
            Results[i] = final.DegreesCelsius;
        }
    }

    protected override void Fill(Random random)
    {
        (areas, amperes) = (Draw(random, 1, 6), Draw(random, 100, 500));
        (seconds, celsius) = (Draw(random, 0.01, 0.2), Draw(random, 20, 90));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            Area.FromSquareMillimeters(areas[i]), ElectricCurrent.FromAmperes(amperes[i]), Duration.FromSeconds(seconds[i]), Temperature.FromDegreesCelsius(celsius[i])))];
    }
}

/// <summary>t = K²·S²·ln((θf + β)/(θi + β))/I²: three inputs, one logarithm.</summary>
public class BulkTimeToReachBenchmarks : BulkBenchmarks
{
    private readonly ConductorMaterial copper = Copper.Metal;
    private readonly double limit = 160;
    private double[] areas = [], amperes = [], celsius = [];
    private (Area Area, ElectricCurrent Current, Temperature Initial)[] typed = [];

    protected override void RunRaw() => RawLoops.TimeToReach(limit, areas, amperes, celsius, Results);

    protected override void RunBulk() => BulkAdiabaticHeating.TimeToReach(copper, limit, areas, amperes, celsius, Results);

    protected override void RunTyped()
    {
        Temperature end = Temperature.FromDegreesCelsius(limit);
        for (int i = 0; i < typed.Length; i++)
        {
            var (area, current, initial) = typed[i];
            Results[i] = AdiabaticHeating.TimeToReach(copper, area, current, initial, end).Seconds;
        }
    }

    protected override void Fill(Random random)
    {
        (areas, amperes, celsius) = (Draw(random, 1, 6), Draw(random, 100, 500), Draw(random, 20, 90));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            Area.FromSquareMillimeters(areas[i]), ElectricCurrent.FromAmperes(amperes[i]), Temperature.FromDegreesCelsius(celsius[i])))];
    }
}

/// <summary>S = I·√t/k with k = K·√ln(…): three inputs, a logarithm and two square roots.</summary>
public class BulkShortCircuitSizingBenchmarks : BulkBenchmarks
{
    private readonly ConductorMaterial copper = Copper.Metal;
    private readonly double limit = 160;
    private double[] amperes = [], seconds = [], celsius = [];
    private (ElectricCurrent Current, Duration Time, Temperature Initial)[] typed = [];

    protected override void RunRaw() => RawLoops.ShortCircuitSizing(limit, amperes, seconds, celsius, Results);

    protected override void RunBulk() => BulkAdiabaticHeating.LeastArea(copper, limit, amperes, seconds, celsius, Results);

    protected override void RunTyped()
    {
        Temperature end = Temperature.FromDegreesCelsius(limit);
        for (int i = 0; i < typed.Length; i++)
        {
            var (current, time, initial) = typed[i];
            Results[i] = AdiabaticHeating.AreaFor(copper, current, time, initial, end).SquareMillimeters;
        }
    }

    protected override void Fill(Random random)
    {
        (amperes, seconds, celsius) = (Draw(random, 100, 500), Draw(random, 0.01, 2), Draw(random, 20, 90));
        typed = [.. Enumerable.Range(0, Cases).Select(i => (
            ElectricCurrent.FromAmperes(amperes[i]), Duration.FromSeconds(seconds[i]), Temperature.FromDegreesCelsius(celsius[i])))];
    }
}

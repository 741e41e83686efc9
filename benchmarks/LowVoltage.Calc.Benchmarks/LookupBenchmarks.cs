using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>A current of the small-craft table, bare and with its two factors, every step kept.</summary>
public class TableBenchmarks
{
    private readonly AwgSize size = AwgSize.FromNumber(14);
    private readonly Temperature rating = Temperature.FromDegreesCelsius(75);
    private readonly ElectricPotential volts = ElectricPotential.FromVolts(12);

    [Benchmark(Baseline = true)]
    public TableRating Lookup() => Cfr33Part183Table5.Table.Rating(size, rating);

    [Benchmark]
    public DeratedAmpacity LookupAndDerate() => DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(size, rating))
        .With(Cfr33Part183EngineSpace.Factor(rating)).With(Cfr33Part183ConductorCount.Factor(4, volts));
}

/// <summary>Choosing a fuse and reading its times.</summary>
public class FuseBenchmarks
{
    private readonly double[] rawRatings = [.. FuseSeries.RoadVehicleBlade.Ratings.Select(fuse => fuse.Current.Amperes)];
    private readonly ElectricCurrent load = ElectricCurrent.FromAmperes(13);
    private readonly ElectricCurrent fault = ElectricCurrent.FromAmperes(40);
    private readonly FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(13));
    private readonly double rawLoad = 13;

    [Benchmark(Baseline = true)]
    public double RawDoubles()
    {
        foreach (double rating in rawRatings)
        {
            if (rating >= rawLoad)
            {
                return rating;
            }
        }

        return double.NaN;
    }

    [Benchmark]
    public FuseRating SmallestAtLeast() => FuseSeries.RoadVehicleBlade.SmallestAtLeast(load);

    [Benchmark]
    public (Duration Least, Duration Longest) OperatingTime() => fuse.OperatingTime(fault);
}

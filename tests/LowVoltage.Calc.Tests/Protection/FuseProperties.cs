using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using LowVoltage.Calc.Tests.Validation;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A current, 10 mA to 20 kA, log-uniform.</summary>
public sealed record Amperes(double Value);

public static class FuseCases
{
    public static Arbitrary<Amperes> Current() => AdiabaticCases.LogUniform(0.01, 20_000).Select(a => new Amperes(a)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(FuseCases)], MaxTest = 500)]
public class FuseProperties
{
    private static readonly FuseSeries[] All = [.. FuseSeriesTablesTests.Series.Values];

    // Series whose every rating has the same rows, so that the limits themselves are comparable. Not among them: gG below 16 A and the upper
    // ratings of sheet 1, for which fewer rows are known than for their neighbours.
    private static readonly FuseRating[][] Comparable =
    [
        [.. FuseSeries.RoadVehicleBlade.Ratings.Where(r => r.Curve is not null)],
        [.. FuseSeries.RoadVehicleSmallBlade.Ratings],
        [.. FuseSeries.RoadVehicleHighCurrentBlade.Ratings.Where(r => r.Curve is not null)],
        [.. FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip).Ratings],
        [.. FuseSeries.RoadVehicleGlass.Ratings],
        [.. FuseSeries.Iec60127Sheet1.Ratings.Where(r => r.Current.Amperes <= 4)],
        [.. FuseSeries.Iec60127Sheet2.Ratings],
        [.. FuseSeries.Iec60127Sheet3.Ratings],
        [.. FuseSeries.Iec60127Sheet5.Ratings],
        [.. FuseSeries.IndustrialGg.Ratings.Where(r => r.Current.Amperes >= 16)],
    ];

    [Property]
    public bool ALargerFuse_NeverOpensSooner(Amperes current)
    {
        foreach (FuseRating[] series in Comparable)
        {
            for (int i = 1; i < series.Length; i++)
            {
                if (Least(series[i - 1], current) > Least(series[i], current) * (1 + 1e-12)
                    || Longest(series[i - 1], current) > Longest(series[i], current) * (1 + 1e-12))
                {
                    return false;
                }
            }
        }

        return true;
    }

    [Property]
    public bool AFuse_NeverOpensLaterAtMoreCurrent(Amperes current) => All.SelectMany(s => s.Ratings).All(fuse =>
        Longest(fuse, new Amperes(current.Value * 1.001)) <= Longest(fuse, current) && Least(fuse, new Amperes(current.Value * 1.001)) <= Least(fuse, current));

    [Property]
    public bool Least_NeverExceedsLongest_AndProvenNeverExceedsLeast(Amperes current) => All.SelectMany(s => s.Ratings).All(fuse =>
        Least(fuse, current) <= Longest(fuse, current) && Proven(fuse, current) <= Least(fuse, current) * (1 + 1e-12));

    [Property]
    public bool SmallestAtLeast_HoldsAndTheNextSmallerDoesNot(Amperes current) => All.All(series =>
        !series.TrySmallestAtLeast(ElectricCurrent.FromAmperes(current.Value), out FuseRating? fuse)
            ? series.Ratings[^1].Current.Amperes < current.Value
            : fuse.Current.Amperes >= current.Value * (1 - 1e-9) && (series.NextSmaller(fuse.Current)?.Current.Amperes ?? 0) < current.Value);

    [Property]
    public bool LargestAtMost_HoldsAndTheNextLargerDoesNot(Amperes current) => All.All(series =>
        !series.TryLargestAtMost(ElectricCurrent.FromAmperes(current.Value), out FuseRating? fuse)
            ? series.Ratings[0].Current.Amperes > current.Value
            : fuse.Current.Amperes <= current.Value * (1 + 1e-9) && (series.NextLarger(fuse.Current)?.Current.Amperes ?? double.MaxValue) > current.Value);

    [Property]
    public bool OperatingTime_DoesNotDependOnUnits(Amperes current)
    {
        ElectricCurrent plain = ElectricCurrent.FromAmperes(current.Value), milli = ElectricCurrent.FromMilliamperes(current.Value * 1000);
        return All.SelectMany(s => s.Ratings).Where(f => f.TryOperatingTime(plain, out _, out _)).All(fuse =>
            fuse.TryOperatingTime(milli, out _, out Duration other) && Math.Abs((other.Seconds / fuse.OperatingTime(plain).Longest.Seconds) - 1) < 1e-9);
    }

    [Fact]
    public void Lookups_DoNotAllocate()
    {
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(15.0)!;
        double sum = 0;
        for (int i = 0; i < 100; i++)
        {
            sum += Look(fuse, 10 + i);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += Look(fuse, 10 + i);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static double Look(FuseRating fuse, double amperes) =>
        (fuse.TryLongestSeconds(amperes, out double longest) ? longest : 0) + (fuse.TryLeastSeconds(amperes, out double least) ? least : 0)
        + (FuseSeries.RoadVehicleBlade.SmallestAtLeast(amperes)?.Amperes ?? 0);

    private static double Longest(FuseRating fuse, Amperes current) => fuse.TryLongestSeconds(current.Value, out double s) ? s : double.PositiveInfinity;

    private static double Least(FuseRating fuse, Amperes current) => fuse.TryLeastSeconds(current.Value, out double s) ? s : 0;

    private static double Proven(FuseRating fuse, Amperes current) =>
        fuse.Curve is not null && fuse.Curve.TryProvenLeastSeconds(current.Value, out double s) ? s : 0;
}

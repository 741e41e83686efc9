using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Protection;

public class FuseSeriesTests
{
    private static readonly FuseSeries Blade = FuseSeries.RoadVehicleBlade;
    private static readonly Reference Source = Reference.CommonPractice("test");

    [Theory]
    [InlineData(13, 15)]
    [InlineData(15, 15)]
    [InlineData(15.0000000001, 15)]
    [InlineData(15.001, 20)]
    [InlineData(0.1, 1)]
    [InlineData(40, 40)]
    public void SmallestAtLeast_PicksTheNextRating(double amperes, double expected) =>
        Assert.Equal(expected, Blade.SmallestAtLeast(A(amperes)).Current.Amperes);

    [Theory]
    [InlineData(13, 10)]
    [InlineData(15, 15)]
    [InlineData(14.9999999999, 15)]
    [InlineData(14.999, 10)]
    [InlineData(5000, 40)]
    public void LargestAtMost_PicksTheRatingBelow(double amperes, double expected) =>
        Assert.Equal(expected, Blade.LargestAtMost(A(amperes)).Current.Amperes);

    [Fact]
    public void SmallestAtLeast_ForAComputedThirtyAmperes_PicksThirty()
    {
        double computed = 21 / 0.7; // 30.000000000000004
        Assert.True(computed > 30);
        Assert.Equal(30, Blade.SmallestAtLeast(A(computed)).Current.Amperes);
        Assert.True(Blade.Contains(A(computed)));
    }

    [Fact]
    public void Selection_OutsideTheSeries_SaysWhatItHolds()
    {
        Assert.False(Blade.TrySmallestAtLeast(A(41), out FuseRating? none));
        Assert.Null(none);
        ArgumentOutOfRangeException above = Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.SmallestAtLeast(A(41)));
        Assert.Contains("at most 40 A", above.Message, StringComparison.Ordinal);
        Assert.Contains("41 A", above.Message, StringComparison.Ordinal);
        Assert.False(Blade.TryLargestAtMost(A(0.5), out none));
        Assert.Null(none);
        ArgumentOutOfRangeException below = Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.LargestAtMost(A(0.5)));
        Assert.Contains("at least 1 A", below.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.TrySmallestAtLeast(A(0), out _));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.TryLargestAtMost(A(-1), out _));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.Contains(A(0)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.NextLarger(A(0)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Blade.NextSmaller(A(0)));
    }

    [Fact]
    public void NextLargerAndNextSmaller_StepThroughTheSeries()
    {
        Assert.Equal(20, Blade.NextLarger(A(15))!.Current.Amperes);
        Assert.Equal(10, Blade.NextSmaller(A(15))!.Current.Amperes);
        Assert.Equal(15, Blade.NextLarger(A(14))!.Current.Amperes);
        Assert.Equal(10, Blade.NextSmaller(A(14))!.Current.Amperes);
        Assert.Null(Blade.NextLarger(A(40)));
        Assert.Null(Blade.NextSmaller(A(1)));
        Assert.True(Blade.Contains(A(7.5)));
        Assert.False(Blade.Contains(A(7.6)));
        Assert.False(Blade.Contains(A(50)));
    }

    [Fact]
    public void Designation_NamesRatingKindAndStandard()
    {
        Assert.Equal("15 A blade fuse (ISO 8820-3 type C)", Blade.SmallestAtLeast(A(15)).ToString());
        Assert.Equal("7.5 A small blade fuse (ISO 8820-3 type F, 58 V)", FuseSeries.RoadVehicleSmallBlade58.SmallestAtLeast(A(7)).ToString());
        Assert.Equal("ISO 8820-3 type C", Blade.ToString());
    }

    [Fact]
    public void Combine_KeepsEachRatingsOwnSeriesAndPrefersTheEarlier()
    {
        FuseSeries all = FuseSeries.Combine("vehicle", Blade, FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.RoadVehicleStrip51);
        Assert.Equal(Blade.Ratings.Count + FuseSeries.RoadVehicleHighCurrentBlade.Ratings.Count + FuseSeries.RoadVehicleStrip51.Ratings.Count, all.Ratings.Count);
        FuseRating thirty = all.SmallestAtLeast(A(30));
        Assert.Same(Blade, thirty.Series);
        Assert.Equal(1000, thirty.BreakingCapacity!.Value.Amperes);
        Assert.Same(Blade, all.LargestAtMost(A(30)).Series);
        Assert.Same(FuseSeries.RoadVehicleHighCurrentBlade, all.NextLarger(A(40))!.Series);
        Assert.Same(Blade, all.NextSmaller(A(50))!.Series);
        FuseRating large = all.SmallestAtLeast(A(130));
        Assert.Equal(2000, large.BreakingCapacity!.Value.Amperes);
        Assert.Equal("150 A strip fuse (ISO 8820-5 type SF 51)", large.ToString());
        Assert.Null(all.VoltageRating);
        Assert.Null(all.BreakingCapacity);
        Assert.Equal("vehicle", all.Name);
        Assert.Throws<InvalidOperationException>(() => all.WithLimits(OperatingTimeLimits.RoadVehicleStrip));
        Assert.Throws<ArgumentException>("series", () => FuseSeries.Combine("none"));
        Assert.Throws<ArgumentNullException>("name", () => FuseSeries.Combine(null!, Blade));
        Assert.Throws<ArgumentNullException>("series", () => FuseSeries.Combine("x", null!));
        Assert.Throws<ArgumentNullException>("series", () => FuseSeries.Combine("x", Blade, null!));
    }

    [Fact]
    public void Combine_ReversedOrder_PrefersTheOtherSeries() =>
        Assert.Same(FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.Combine("x", FuseSeries.RoadVehicleHighCurrentBlade, Blade).SmallestAtLeast(A(30)).Series);

    [Fact]
    public void Strip_HasNoOperatingTimesUntilTheCallerAsksForThem()
    {
        FuseRating plain = FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(100));
        Assert.Null(plain.Curve);
        OperatingTimeNotStatedException none = Assert.Throws<OperatingTimeNotStatedException>(() => plain.OperatingTime(A(500)));
        Assert.Contains("100 A strip fuse (ISO 8820-5 type SF 51)", none.Message, StringComparison.Ordinal);
        Assert.False(plain.TryOperatingTime(A(500), out Duration least, out Duration longest));
        Assert.Equal((0, 0), (least.Seconds, longest.Seconds));
        FuseSeries remembered = FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip);
        (Duration shortest, Duration last) = remembered.SmallestAtLeast(A(100)).OperatingTime(A(200));
        Assert.Equal((1, 15), (shortest.Seconds, last.Seconds));
        Assert.Equal(2000, remembered.BreakingCapacity!.Value.Amperes);
        Assert.Equal(RatingBasis.DirectCurrent, remembered.BreakingCapacityBasis);
        Assert.Same(OperatingTimeLimits.RoadVehicleStrip, remembered.Limits);
        Assert.Equal(ReferenceKind.FromMemory, remembered.Limits!.Reference.Kind);
        Assert.Throws<ArgumentNullException>("limits", () => FuseSeries.RoadVehicleStrip51.WithLimits(null!));
    }

    [Fact]
    public void RatingsOutsideTheStandardsRows_HaveNoCurve()
    {
        Assert.Null(Blade.SmallestAtLeast(A(2)).Curve);
        Assert.NotNull(Blade.SmallestAtLeast(A(3)).Curve);
        Assert.NotNull(FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(80)).Curve);
        Assert.Null(FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(100)).Curve);
        Assert.Null(OperatingTimeLimits.Iec60127Sheet2.CurveFor(A(0.11)));
        Assert.Null(OperatingTimeLimits.IndustrialGg.CurveFor(A(90)));
    }

    [Fact]
    public void MiniatureFuses_AreRatedForAlternatingCurrent()
    {
        FuseRating fuse = FuseSeries.Iec60127Sheet2.SmallestAtLeast(A(5));
        Assert.Equal(50, fuse.BreakingCapacity!.Value.Amperes);
        Assert.Equal(35, FuseSeries.Iec60127Sheet2.BreakingCapacity!.Value.Amperes);
        Assert.Equal(RatingBasis.AlternatingCurrent, fuse.BreakingCapacityBasis);
        Assert.Equal(RatingBasis.AlternatingCurrent, fuse.VoltageBasis);
        Assert.Equal(RatingBasis.NotStated, FuseSeries.IndustrialGg.Ratings[0].BreakingCapacityBasis);
        Assert.Equal(RatingBasis.NotStated, FuseSeries.IndustrialGg.Ratings[0].VoltageBasis);
        Assert.Null(FuseSeries.IndustrialGg.BreakingCapacity);
        Assert.Null(FuseSeries.IndustrialGg.BreakingCapacityReference);
        Assert.Null(FuseSeries.IndustrialGg.VoltageRating);
        Assert.Equal(32, Blade.VoltageRating!.Value.Volts);
        Assert.Equal("scope", Blade.BreakingCapacityReference!.Locator);
    }

    [Fact]
    public void Create_FromACallersData_KeepsIt()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([], [TimeCurrentPoint.Create(A(4), Duration.FromSeconds(10))]);
        FuseSeries series = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "mine", Kind = "fuse", Reference = Source, Ratings = [A(2), A(3)], Curves = [curve, null],
            VoltageRating = ElectricPotential.FromVolts(48), VoltageBasis = RatingBasis.DirectCurrent, BreakingCapacity = A(500),
        });
        Assert.Same(curve, series.Ratings[0].Curve);
        Assert.Null(series.Ratings[1].Curve);
        Assert.Equal(48, series.Ratings[1].VoltageRating!.Value.Volts);
        Assert.Equal(RatingBasis.NotStated, series.Ratings[1].BreakingCapacityBasis);
        Assert.Same(Source, series.BreakingCapacityReference);
    }

    /// <summary>A 40 A fuse by whose own curve 7 A open it within 100 s passed for carrying 7.9 A.</summary>
    [Fact]
    public void Create_CurveThatOpensBelowItsRating_IsRefused()
    {
        TimeCurrentPoint at(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), Duration.FromSeconds(seconds));
        FuseSeries create(TimeCurrentCurve curve) => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(2), A(40)], Curves = [null, curve] });
        TimeCurrentCurve opens = TimeCurrentCurve.Create([], [at(7, 100), at(50, 0.05)]), mayOpen = TimeCurrentCurve.Create([at(39, 0.04)], [at(60, 100), at(200, 0.05)]);

        Assert.StartsWith(
            "Curves[1] of x opens the device of 40 A at 7 A; accepted is a curve that begins at the rating or above it.",
            Assert.Throws<ArgumentException>("definition", () => create(opens)).Message,
            StringComparison.Ordinal);
        Assert.Contains("40 A at 39 A", Assert.Throws<ArgumentException>("definition", () => create(mayOpen)).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "curve opens the device of 40 A at 7 A",
            Assert.Throws<ArgumentException>("curve", () => UpstreamProtection.Device("breaker", A(40), null, null, opens)).Message,
            StringComparison.Ordinal);
        Assert.Equal(40, create(TimeCurrentCurve.Create([], [at(40, 100), at(50, 0.05)])).Ratings[1].Current.Amperes);
    }

    [Fact]
    public void Create_FromBadData_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("definition", () => FuseSeries.Create(null!));
        Assert.Throws<ArgumentNullException>("definition", () => FuseSeries.Create(Define(name: null!)));
        Assert.Throws<ArgumentNullException>("definition", () => FuseSeries.Create(new() { Name = "x", Kind = null!, Reference = Source, Ratings = [A(1)] }));
        Assert.Throws<ArgumentNullException>("definition", () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = null!, Ratings = [A(1)] }));
        Assert.Throws<ArgumentNullException>("definition", () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = null! }));
        Assert.Throws<ArgumentException>("definition", () => FuseSeries.Create(Define()));
        Assert.Contains(
            "rise", Assert.Throws<ArgumentException>("definition", () => FuseSeries.Create(Define("x", 2, 2))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("Ratings", () => FuseSeries.Create(Define("x", 0)));
        Assert.Throws<ArgumentException>("definition", () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], Curves = [] }));
        Assert.Throws<ArgumentOutOfRangeException>(
            "VoltageBasis", () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], VoltageBasis = (RatingBasis)7 }));
        Assert.Throws<ArgumentOutOfRangeException>(
            "VoltageRating",
            () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], VoltageRating = ElectricPotential.FromVolts(-1) }));
        Assert.Throws<ArgumentOutOfRangeException>(
            "BreakingCapacity", () => FuseSeries.Create(new() { Name = "x", Kind = "f", Reference = Source, Ratings = [A(1)], BreakingCapacity = A(0) }));
    }

    [Fact]
    public void PreferredNumbers_Ratings_SpanDecadesWithoutRoundingNoise()
    {
        FuseSeries r20 = PreferredNumbers.R20.Ratings(A(0.9), A(112));
        Assert.Equal(0.9, r20.Ratings[0].Current.Amperes);
        Assert.Equal(112, r20.Ratings[^1].Current.Amperes);
        Assert.Equal(43, r20.Ratings.Count); // 0.9, two decades of 20, 100 and 112
        Assert.Equal([0.63, 1, 1.6, 2.5, 4], PreferredNumbers.R5.Ratings(A(0.5), A(5)).Ratings.Select(r => r.Current.Amperes));
        Assert.Equal("ISO 3 R20", r20.Name);
        Assert.Equal("R10", PreferredNumbers.R10.ToString());
        Assert.Throws<ArgumentOutOfRangeException>("most", () => PreferredNumbers.R5.Ratings(A(1.1), A(1.2)));
        Assert.Throws<ArgumentOutOfRangeException>("least", () => PreferredNumbers.R5.Ratings(A(0), A(1)));
    }

    private static FuseSeriesDefinition Define(string name = "x", params double[] ratings) =>
        new() { Name = name, Kind = "fuse", Reference = Source, Ratings = [.. ratings.Select(A)] };

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}

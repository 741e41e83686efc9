using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Protection;

public class TimeCurrentCurveTests
{
    private static readonly FuseRating Fifteen = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(13));

    [Fact]
    public void OperatingTime_BetweenGates_IsLogLog()
    {
        // 40 A through 15 A is 266.7 %: between 200 % (0.15 s, 5 s) and 350 % (0.04 s, 0.5 s).
        (Duration least, Duration longest) = Fifteen.OperatingTime(A(40));
        double share = Math.Log(40.0 / 30) / Math.Log(52.5 / 30);
        Assert.Equal(0.15 * Math.Pow(0.04 / 0.15, share), least.Seconds, 12);
        Assert.Equal(5 * Math.Pow(0.5 / 5, share), longest.Seconds, 12);
    }

    [Fact]
    public void OperatingTime_BeyondTheLastGate_HasConstantJouleIntegral()
    {
        (Duration least, Duration longest) = Fifteen.OperatingTime(A(900)); // ten times the 90 A of 600 %
        Assert.Equal(0.02 / 100, least.Seconds, 15);
        Assert.Equal(0.1 / 100, longest.Seconds, 15);
        Assert.Equal(90.0 * 90 * 0.1, Fifteen.Curve!.LongestJouleIntegral.AmpereSquaredSeconds, 9);
        Assert.Equal(90.0 * 90 * 0.02, Fifteen.Curve.LeastJouleIntegral!.Value.AmpereSquaredSeconds, 9);
    }

    [Fact]
    public void OperatingTime_BelowTheConventionalFusingCurrent_NeedNotComeToAnEnd()
    {
        TimeCurrentCurve curve = Fifteen.Curve!;
        Assert.Equal(20.25, curve.FusingCurrent.Amperes);
        Assert.Equal(16.5, curve.NonFusingCurrent!.Value.Amperes);
        Assert.Equal(360_000, curve.NonFusingTime!.Value.Seconds);
        Assert.Equal(1800, curve.LongestTime(A(20.25))!.Value.Seconds);
        Assert.Null(curve.LongestTime(A(20.24)));
        Assert.Equal(360_000, curve.LeastTime(A(16.5))!.Value.Seconds);
        Assert.Equal(360_000, curve.LeastTime(A(1))!.Value.Seconds);

        // Above the non-fusing current only the first stated least time holds.
        Assert.Equal(0.75, curve.LeastTime(A(16.6))!.Value.Seconds);
        Assert.Equal(0.75, curve.LeastTime(A(20.25))!.Value.Seconds);
        Assert.False(Fifteen.TryOperatingTime(A(20), out _, out _));
        OperatingTimeNotStatedException refused = Assert.Throws<OperatingTimeNotStatedException>(() => Fifteen.OperatingTime(A(20)));
        Assert.Contains("need not open at 20 A", refused.Message, StringComparison.Ordinal);
        Assert.Contains("20.25 A", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SmallBlade_At135PerCent_CarriesTheLongerTime() =>
        Assert.Equal(1800, Fifteen.Curve!.LongestTime(A(15 * 1.35))!.Value.Seconds);

    [Fact]
    public void ProvenLeastTime_IsTheStepOfTheNextStatedCurrent()
    {
        TimeCurrentCurve curve = Fifteen.Curve!;
        Assert.Equal(0.04, curve.ProvenLeastTime(A(40))!.Value.Seconds);
        Assert.Equal(0.15, curve.ProvenLeastTime(A(30))!.Value.Seconds);
        Assert.Equal(0.75, curve.ProvenLeastTime(A(17))!.Value.Seconds);
        Assert.Equal(360_000, curve.ProvenLeastTime(A(16))!.Value.Seconds);
        Assert.Null(curve.ProvenLeastTime(A(91)));
    }

    [Fact]
    public void OperatingTime_WithoutAStatedLeastTime_BeginsAtZero()
    {
        FuseRating glass = FuseSeries.RoadVehicleGlass.SmallestAtLeast(A(20));
        (Duration least, Duration longest) = glass.OperatingTime(A(27));
        Assert.Equal((0, 3600), (least.Seconds, longest.Seconds));
        Assert.Null(glass.Curve!.LeastTime(A(27)));
        Assert.Null(glass.Curve.ProvenLeastTime(A(27)));
        Assert.Null(glass.Curve.LeastJouleIntegral);
        Assert.Equal(31.7, glass.BodyLength!.Value.Millimeters, 12);
    }

    [Fact]
    public void Create_FromPoints_AnswersThemExactly()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([P(10, 0.1)], [P(8, 100), P(20, 1)], P(6, 3600));
        Assert.Equal(100, curve.LongestTime(A(8))!.Value.Seconds);
        Assert.Equal(1, curve.LongestTime(A(20))!.Value.Seconds);
        Assert.Equal(0.1, curve.LeastTime(A(7))!.Value.Seconds);
        Assert.Equal(0.025, curve.LeastTime(A(20))!.Value.Seconds, 15);
        Assert.Equal(3600, curve.LeastTime(A(6))!.Value.Seconds);
    }

    [Fact]
    public void CircuitBreaker_BeyondItsLastPoint_GetsNoFaster()
    {
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([P(50, 0.02)], [P(14.5, 3600), P(100, 0.1)]);
        Assert.Equal(0.1, breaker.LongestTime(A(1000))!.Value.Seconds, 15);
        Assert.Equal(0.02 / 400, breaker.LeastTime(A(1000))!.Value.Seconds, 15);
        Assert.Null(breaker.NonFusingCurrent);
        Assert.Null(breaker.NonFusingTime);
    }

    [Fact]
    public void Create_FromBadPoints_SaysWhichAndWhy()
    {
        Assert.Throws<ArgumentNullException>("least", () => TimeCurrentCurve.Create(null!, [P(8, 100)]));
        Assert.Throws<ArgumentNullException>("longest", () => TimeCurrentCurve.Create([], null!));
        Assert.Throws<ArgumentException>("longest", () => TimeCurrentCurve.Create([], []));
        Assert.Contains(
            "longest[1]", Assert.Throws<ArgumentException>("longest", () => TimeCurrentCurve.Create([], [P(8, 100), P(8, 50)])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("longest", () => TimeCurrentCurve.Create([], [P(8, 100), P(9, 101)]));
        Assert.Throws<ArgumentException>("least", () => TimeCurrentCurve.Create([P(8, 1), P(7, 1)], [P(8, 100)]));
        Assert.Contains(
            "longest[0]", Assert.Throws<ArgumentException>("longest", () => TimeCurrentCurve.Create([], [default])).Message, StringComparison.Ordinal);
        _ = TimeCurrentCurve.Create([], [P(8, 100), P(9, 100)]);
    }

    [Fact]
    public void Create_WithLeastAboveLongest_IsRefusedWhereverTheyCross()
    {
        string message = Assert.Throws<ArgumentException>("least", () => TimeCurrentCurve.Create([P(8, 101)], [P(8, 100)])).Message;
        Assert.Contains("8 A", message, StringComparison.Ordinal);
        Assert.Contains("101 s", message, StringComparison.Ordinal);
        _ = TimeCurrentCurve.Create([P(8, 100)], [P(8, 100)]);

        // Below the conventional fusing current there is no longest time to exceed.
        TimeCurrentCurve early = TimeCurrentCurve.Create([P(7, 500), P(9, 2)], [P(8, 100)]);
        Assert.Equal(500, early.LeastTime(A(7))!.Value.Seconds);

        // Crossing at a point of the longest line only, and before the first least point.
        Assert.Throws<ArgumentException>("least", () => TimeCurrentCurve.Create([P(10, 1), P(100, 1)], [P(10, 10), P(30, 0.5), P(300, 0.001)]));
        Assert.Throws<ArgumentException>("least", () => TimeCurrentCurve.Create([P(100, 20)], [P(10, 10)]));
    }

    [Theory]
    [InlineData(9, 3600)]
    [InlineData(8, 3600)]
    [InlineData(6, 0.05)]
    public void Create_WithABadNonFusingPoint_IsRefused(double amperes, double seconds) =>
        Assert.Throws<ArgumentException>("nonFusing", () => TimeCurrentCurve.Create([P(10, 0.1)], [P(8, 100)], P(amperes, seconds)));

    [Fact]
    public void Points_RefuseWhatIsNoPoint()
    {
        Assert.Throws<ArgumentOutOfRangeException>("current", () => P(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>("time", () => P(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Fifteen.OperatingTime(A(0)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Fifteen.Curve!.LongestTime(A(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Fifteen.Curve!.LeastTime(A(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Fifteen.Curve!.ProvenLeastTime(A(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("rating", () => OperatingTimeLimits.RoadVehicleBlade.CurveFor(A(0)));
        TimeCurrentPoint point = P(20.25, 1800);
        Assert.Equal("20.25 A, 1800 s", point.ToString());
        Assert.Equal((20.25, 1800), (point.Current.Amperes, point.Time.Seconds));
        Assert.True(point == P(20.25, 1800) && point != P(20.25, 1801) && point != P(20, 1800) && point.Equals((object)point));
        Assert.Equal(point.GetHashCode(), P(20.25, 1800).GetHashCode());
    }

    [Fact]
    public void Gates_ReadLikeTheStandard()
    {
        IReadOnlyList<OperatingTimeGate> gates = OperatingTimeLimits.RoadVehicleBlade.Gates;
        Assert.Equal("110 %: not within 360000 s", gates[0].ToString());
        Assert.True(gates[0].IsNonFusing);
        Assert.Equal("135 %: 0.75 s to 1800 s", gates[1].ToString());
        Assert.False(gates[1].IsNonFusing);
        Assert.Equal("135 %: within 3600 s", OperatingTimeLimits.RoadVehicleGlass.Gates[1].ToString());
        Assert.Equal("33 A: not within 10 s", OperatingTimeLimits.IndustrialGg.Gates.First(g => g.Current is not null).ToString());
        Assert.Equal("ISO 8820-3 type C", OperatingTimeLimits.RoadVehicleBlade.ToString());
    }

    private static TimeCurrentPoint P(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), Duration.FromSeconds(seconds));

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}

using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A time-current curve at, before and beyond its points, its greatest Joule integral, and what it refuses.</summary>
public class TimeCurrentCurveBoundaryTests
{
    [Fact]
    public void Fuse_WithANonFusingCurrent_KeepsItsJouleIntegralBeyondTheLastPoint()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([P(20, 1)], [P(15, 100), P(30, 4)], P(10, 3600));
        Assert.False(curve.IsBreaker);
        Assert.Equal(0.04, curve.LongestTime(A(300))!.Value.Seconds, 1e-12);
        Assert.Equal(90 * 90 * 0.1 / (900 * 900), OperatingTimeLimits.RoadVehicleBlade.CurveFor(A(15))!.LongestTime(A(900))!.Value.Seconds, 1e-12);
    }

    /// <summary>Up to the non-fusing current its time; from there to the first least point that point's time; nothing longer below the fusing current.</summary>
    [Fact]
    public void Times_BeforeTheFirstPoints_AreWhatIsStated()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([P(20, 1), P(40, 0.1)], [P(15, 100), P(30, 4)], P(10, 3600));
        Assert.Equal(3600, curve.LeastTime(A(10))!.Value.Seconds);
        Assert.Equal(3600, curve.LeastTime(A(10 * (1 + 1e-12)))!.Value.Seconds);
        Assert.Equal(1, curve.LeastTime(A(10 * (1 + 3e-12)))!.Value.Seconds);
        Assert.Equal(1, curve.LeastTime(A(19))!.Value.Seconds);
        Assert.False(curve.TryLongestSeconds(14, out double none));
        Assert.Equal(0, none);
        Assert.Null(curve.LongestTime(A(14.999)));
        Assert.Equal(100, curve.LongestTime(A(15))!.Value.Seconds);
    }

    /// <summary>
    /// I²t of the longest times, read off: 15² · 100 = 22 500 A²s, 30² · 40 = 36 000 A²s, 60² · 1 = 3600 A²s, then constant. Between points a power, so at an end or at a
    /// stated point.
    /// </summary>
    [Theory]
    [InlineData(15, 100, 36_000, 30)]
    [InlineData(15, 30, 36_000, 30)]
    [InlineData(30, 100, 36_000, 30)]
    [InlineData(60, 1000, 3600, 60)]
    [InlineData(15, 15, 22_500, 15)]
    public void GreatestJouleIntegral_OfAFuse_StandsAtAPointOrAnEnd(double from, double to, double joules, double worst)
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([], [P(15, 100), P(30, 40), P(60, 1)]);
        Assert.Equal(1, curve.GreatestLongestJouleIntegral(from, to, out double amperes) / joules, 1e-12);
        Assert.Equal(worst, amperes);
    }

    [Fact]
    public void GreatestJouleIntegral_BetweenPoints_IsThatOfTheEnd()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([], [P(15, 100), P(30, 40), P(60, 1)]);
        double Seconds(double amperes) => 100 * Math.Pow(0.4, Math.Log(amperes / 15) / Math.Log(2));
        Assert.Equal(1, curve.GreatestLongestJouleIntegral(16, 20, out double rising) / (400 * Seconds(20)), 1e-12);
        Assert.Equal(20, rising);
        double steep = 40 * Math.Pow(1 / 40.0, Math.Log(40 / 30.0) / Math.Log(2));
        Assert.Equal(1, curve.GreatestLongestJouleIntegral(40, 50, out double falling) / (1600 * steep), 1e-12);
        Assert.Equal(40, falling);

        // A circuit-breaker's keeps its time: 1000² · 0.05 A²s at 1000 A.
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([], [P(15, 10), P(150, 0.05)]);
        Assert.Equal(1, breaker.GreatestLongestJouleIntegral(15, 1000, out double last) / 50_000, 1e-12);
        Assert.Equal(1000, last);
    }

    /// <summary>Where the integral is constant, rounding does not choose: the least current stands for all, whatever the other end.</summary>
    [Fact]
    public void GreatestJouleIntegral_WhereItIsConstant_NamesTheLeastCurrent()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.Create([], [P(15, 100), P(60, 0.7)]);
        for (int i = 1; i <= 300; i++)
        {
            _ = curve.GreatestLongestJouleIntegral(61.3, 61.3 + (0.37 * i), out double amperes);
            Assert.Equal(61.3, amperes);
        }
    }

    /// <summary>The least line above the longest at one of its own points only, at one of the other's only, and neither.</summary>
    [Fact]
    public void Create_LeastAboveLongestAtOnePoint_IsRefused()
    {
        // At 15 A the longest time is 100 · 1.5^−3.32 = 26 s; at 10 A and 20 A the least ones are smaller.
        Assert.StartsWith(
            "The least time must not exceed the longest; at 15 A they are 50 s and 26.0", Wrong("least", [P(15, 50), P(16, 1)], [P(10, 100), P(20, 10), P(100, 9.9)]), StringComparison.Ordinal);

        // At 20 A the least time is 50 · 2^−3.56 = 4.24 s; at 10 A and 30 A it is smaller.
        Assert.StartsWith(
            "The least time must not exceed the longest; at 20 A they are 4.2", Wrong("least", [P(10, 50), P(30, 1)], [P(10, 100), P(20, 2), P(40, 1.9)]), StringComparison.Ordinal);

        // Below its first point the least time is that point's: 5 s at 10 A, not the 243 s that its line points to.
        Assert.Equal(5, TimeCurrentCurve.Create([P(20, 5), P(40, 0.1)], [P(10, 6), P(20, 5.5)]).LeastTime(A(10))!.Value.Seconds);
    }

    [Fact]
    public void Create_TimesThatTouch_ForgiveRoundingOnly()
    {
        Assert.NotNull(TimeCurrentCurve.Create([P(10, 5 * (1 + 1e-9))], [P(10, 5)]));
        Assert.StartsWith("The least time must not exceed the longest", Wrong("least", [P(10, 5 * (1 + 2e-9))], [P(10, 5)]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 5, "0 A, 5 s")]
    [InlineData(5, 0, "5 A, 0 s")]
    [InlineData(0, 0, "no point")]
    public void Create_PointWithoutCurrentOrTime_IsRefused(double amperes, double seconds, string text)
    {
        TimeCurrentPoint point = new(amperes, seconds);
        Assert.StartsWith($"longest[0] must have a positive current and time; it was {text}.", Wrong("longest", [], [point]), StringComparison.Ordinal);
        Assert.StartsWith(
            $"nonFusing must have a smaller current than every other point and no shorter time than the first least one; it was {text}.",
            Assert.Throws<ArgumentException>("nonFusing", () => TimeCurrentCurve.Create([], [P(10, 5)], point)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_NonFusingCurrentAtItsLimits_IsBelowEveryOther()
    {
        Assert.Throws<ArgumentException>("nonFusing", () => TimeCurrentCurve.Create([P(8, 1)], [P(10, 5)], P(8, 100)));
        Assert.Throws<ArgumentException>("nonFusing", () => TimeCurrentCurve.Create([], [P(10, 5)], P(10, 100)));
        Assert.Throws<ArgumentException>("nonFusing", () => TimeCurrentCurve.Create([P(8, 1)], [P(10, 5)], P(7, 0.999)));
        Assert.Equal(1, TimeCurrentCurve.Create([P(8, 1)], [P(10, 5)], P(7, 1)).NonFusingTime!.Value.Seconds);
        Assert.StartsWith("longest must hold at least one point; it was empty.", Wrong("longest", [], []), StringComparison.Ordinal);
    }

    private static string Wrong(string name, TimeCurrentPoint[] least, TimeCurrentPoint[] longest) =>
        Assert.Throws<ArgumentException>(name, () => TimeCurrentCurve.Create(least, longest)).Message;

    private static TimeCurrentPoint P(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), S(seconds));
}

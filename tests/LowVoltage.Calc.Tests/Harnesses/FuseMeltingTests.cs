using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Shares of melting over two stages. The 10 A blade fuse opens after 0.15 s to 5 s at 20 A, 0.04 s to 0.5 s at 35 A, 0.02 s to 0.1 s at 60 A; it carries 11 A.</summary>
public class FuseMeltingTests
{
    private static readonly TimeCurrentCurve Ten = Blade(10).Curve!;

    // Half of the 5 s at 20 A have passed: half of the 0.1 s at 60 A are left.
    [Fact]
    public void Latest_CurrentRises_SharesAreAdded()
    {
        Assert.True(After(20, 2.5).TryLatest(Ten, 60, out double seconds));
        Assert.Equal(0.05, seconds, 12);
    }

    // Half of the 0.5 s at 35 A are worth less than half of the 5 s at 20 A: counted from anew.
    [Fact]
    public void Latest_CurrentFalls_IsCountedAnew()
    {
        Assert.True(After(35, 0.25).TryLatest(Ten, 20, out double seconds));
        Assert.Equal(5, seconds, 12);
    }

    // At 12 A no longest time is stated.
    [Fact]
    public void Latest_BelowFusingCurrent_NeedNotOpen() => Assert.False(default(FuseMelting).TryLatest(Ten, 12, out _));

    // Half of the 0.04 s at 35 A have passed: half of the 0.15 s at 20 A are left.
    [Fact]
    public void Soonest_CurrentFalls_SharesAreAdded()
    {
        Assert.True(After(35, 0.02).TrySoonest(Ten, 20, now: 0.02, out double seconds));
        Assert.Equal(0.075, seconds, 12);
    }

    // 0.01 s have passed at 20 A; had 35 A flowed all along, it would open after 0.04 s: 0.03 s are left.
    [Fact]
    public void Soonest_CurrentRises_AsIfItHadAlwaysBeenThatMuch()
    {
        Assert.True(After(20, 0.01).TrySoonest(Ten, 35, now: 0.01, out double seconds));
        Assert.Equal(0.03, seconds, 12);
    }

    [Theory]
    [InlineData(11, false)]
    [InlineData(11.5, true)]
    public void Soonest_UpToTheNonFusingCurrent_DoesNotOpen(double amperes, bool opens) => Assert.Equal(opens, default(FuseMelting).TrySoonest(Ten, amperes, 0, out _));

    // A breaker's mechanism keeps no share.
    [Fact]
    public void Latest_Breaker_IsCountedAnew()
    {
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([], [Point(13, 100), Point(50, 2)]);
        FuseMelting half = default;
        half.Pass(breaker, 13, 50);

        Assert.True(half.TryLatest(breaker, 50, out double seconds));
        Assert.Equal(2, seconds, 12);
    }

    private static FuseMelting After(double amperes, double seconds)
    {
        FuseMelting melting = default;
        melting.Pass(Ten, amperes, seconds);
        return melting;
    }

    private static TimeCurrentPoint Point(double amperes, double seconds) => TimeCurrentPoint.Create(ElectricCurrent.FromAmperes(amperes), Duration.FromSeconds(seconds));
}

using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>What the outcome of a fuse against a wire says, for a wire with a closed form (<see cref="LinearWire"/>) and a device of constant time.</summary>
public class WireProtectionOutcomeTests
{
    private static readonly LinearWire Model = new(1);

    [Theory]
    [InlineData(1.5, ProtectionVerdict.Protected)]
    [InlineData(1.000001, ProtectionVerdict.Protected)]
    [InlineData(0.5, ProtectionVerdict.NotProtected)]
    [InlineData(0.999999, ProtectionVerdict.NotProtected)]
    public void TimeRatio_IsTheExactOne(double ratio, ProtectionVerdict verdict)
    {
        WireProtection outcome = At(100, ratio, Model);
        Assert.Equal(verdict, outcome.Verdict);
        Assert.Equal(1, outcome.TimeRatio / ratio, 1e-9);
        Assert.Equal(100, outcome.TightestCurrent!.Value.Amperes);
    }

    /// <summary>The table stays a ten-millionth below the truth: so near to 1 it decides, and the ratio shown must not contradict the verdict.</summary>
    [Fact]
    public void TimeRatio_AHairAboveOne_FollowsTheVerdict()
    {
        WireProtection outcome = At(100, 1 + 5e-8, Model);
        Assert.Equal(ProtectionVerdict.NotProtected, outcome.Verdict);
        Assert.InRange(outcome.TimeRatio, 1 - 1e-7, 1 - 1e-9);
    }

    [Fact]
    public void Reason_EveryOutcome_IsASentenceWithItsNumbers()
    {
        double seconds = Model.Seconds(100, 160) / 1.5;
        string hot = Model.Celsius(100, seconds).ToString("G4", CultureInfo.InvariantCulture), time = seconds.ToString("G4", CultureInfo.InvariantCulture);
        Assert.Equal($"Protected; tightest at 100 A the test device opens within {time} s, when the wire is at {hot} °C against 160 °C.", At(100, 1.5, Model).Reason);

        // 500 A settle at 20 °C + 500² · 0.02/0.2 = 25 020 °C; the metal melts at 1400 °C.
        WireProtection melts = new(Breaker(20, 60), "test device", Asked, Model.Limits(), 0, 500);
        Assert.Equal("Not protected: at 500 A the test device opens within 60 s, when the wire melts against 95 °C.", melts.Reason);
        Assert.Null(melts.TemperatureReached);

        // 30 A settle at 20 °C + 30² · 0.02/0.2 = 110 °C.
        WireProtection warm = new(Breaker(30, 60), "test device", Asked, Model.Limits(), 0, 500);
        Assert.Equal("Not protected: up to 30 A the test device need not open, and the wire is at 110 °C in the long run against 95 °C.", warm.Reason);
    }

    /// <summary>
    /// Less time to spare is weaker, whatever the temperatures are: 1.5 of a fast rise leaves 29 K (x = 1000 − 950·(860/950)^(1/1.5) = 111 K of 140 K), 2 of a
    /// slow approach to 141 K only 8.5 K (x = 141 − 91·91^(−1/2) = 131.5 K).
    /// </summary>
    [Fact]
    public void IsWeakerThan_DifferentRatios_ComparesTime()
    {
        WireProtection fast = At(100, 1.5, Model), slow = At(Math.Sqrt(1410), 2, new LinearWire(0.2));
        Assert.Equal(130.99, fast.TemperatureReached!.Value.DegreesCelsius, 0.01);
        Assert.Equal(151.46, slow.TemperatureReached!.Value.DegreesCelsius, 0.01);
        Assert.True(fast.IsWeakerThan(slow));
        Assert.False(slow.IsWeakerThan(fast));
    }

    /// <summary>Where neither need open, the wire with less room below its limit: 110 °C against 95 °C is worse than 110 °C against 100 °C.</summary>
    [Fact]
    public void IsWeakerThan_NoTimeToCompare_ComparesTheRoomBelowTheLimit()
    {
        WireProtection further = new(Breaker(30, 60), "d", Asked, Model.Limits(), 0, 500), nearer = new(Breaker(30, 60), "d", Asked, Model.Limits(70, 100, 100), 0, 500);
        Assert.Equal((0.0, 0.0), (further.TimeRatio, nearer.TimeRatio));
        Assert.True(further.IsWeakerThan(nearer));
        Assert.False(nearer.IsWeakerThan(further));
        Assert.False(further.IsWeakerThan(new WireProtection(Breaker(30, 60), "d", Asked, Model.Limits(), 0, 500)));
    }

    [Fact]
    public void Check_EqualWires_TheFirstDecides()
    {
        ProtectedWire wire = ProtectedWire.Create(Solid(1.5, 0.6), Air(30));
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));
        Assert.Equal(0, FuseAgainstWire.Check(fuse, [wire, wire, wire], A(500)).WeakestWire);
        WireProtection device = FuseAgainstWire.Check(Breaker(100, 60), [wire], A(500));
        Assert.StartsWith("Not protected: up to 100 A the device need not open, and ", device.Reason, StringComparison.Ordinal);
        Assert.Equal(
            "wires must hold at least one wire; it was empty. (Parameter 'wires')",
            Assert.Throws<ArgumentException>("wires", () => FuseAgainstWire.Check(fuse, [], A(500))).Message);
    }

    /// <summary>Just what free air carries is free air: not one coefficient, but convection and radiation that grow with the rise.</summary>
    [Fact]
    public void Carrying_JustWhatFreeAirCarries_IsFreeAir()
    {
        Wire wire = Solid(1.5, 0.6);
        HeatBalanceKernel free = HeatBalanceKernel.For(wire, Air(30));
        double limit = wire.Insulation.ContinuousLimit.DegreesCelsius;
        ProtectedWire carrying = ProtectedWire.Create(wire, Air(30)).Carrying(A(free.AmperesFor(limit)));
        Assert.Equal(free.AmperesFor(limit - 25), carrying.Limits().Heat.AmperesFor(limit - 25), 1e-12);
        double half = ProtectedWire.Create(wire, Air(30)).Carrying(A(0.999999 * free.AmperesFor(limit))).Limits().Heat.AmperesFor(limit - 25);
        Assert.True(Math.Abs((half / free.AmperesFor(limit - 25)) - 1) > 0.01);
    }

    /// <summary>The device takes the wire's own time to 160 °C at a current, divided by a ratio, at every current: tightest at that, the greatest.</summary>
    private static WireProtection At(double amperes, double ratio, LinearWire wire) =>
        new(Breaker(20, wire.Seconds(amperes, 160) / ratio), "test device", Asked, wire.Limits(), 0, amperes);

    // Only the working would look at it.
    private static ProtectedWire Asked => ProtectedWire.Create(Solid(1.5, 0.6), Air(30));

    private static TimeCurrentCurve Breaker(double amperes, double seconds) =>
        TimeCurrentCurve.CreateCircuitBreaker([], [TimeCurrentPoint.Create(A(amperes), S(seconds))]);
}

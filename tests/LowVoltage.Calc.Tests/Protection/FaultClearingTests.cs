using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A loop and a fuse element: one lump that loses heat with a time constant and melts at a stated steady current.</summary>
public sealed record ClearingCase(double Volts, double Milliohms, double Meters, double Diameter, double MeltShare, double TimeConstant, double Power);

public static class ClearingCases
{
    public static Arbitrary<ClearingCase> Case() => (
        from volts in AdiabaticCases.LogUniform(3, 60)
        from ohms in AdiabaticCases.LogUniform(1, 100)
        from meters in AdiabaticCases.LogUniform(0.1, 30)
        from diameter in AdiabaticCases.LogUniform(0.3, 4)
        from share in AdiabaticCases.LogUniform(0.02, 0.95)
        from constant in AdiabaticCases.LogUniform(0.001, 10)
        from power in Gen.Choose(10, 20)
        select new ClearingCase(volts, ohms, meters, diameter, share, constant, power / 10.0)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(ClearingCases)], MaxTest = 500)]
public class FaultClearingTests
{
    private static readonly FuseRating Fifteen = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(15));

    /// <summary>
    /// The rule of the latest clearing is safe: a fuse element simulated in time under the falling current has melted by then. Its constant-current curve,
    /// which the library is given, comes from the same element: x′ = I²/Im² − x^p, melting at x = 1.
    /// </summary>
    [Property]
    public bool Latest_SimulatedFuseElement_HasOpenedByThen(ClearingCase c)
    {
        FaultPath path = FaultPath.Create(FaultCase.V(c.Volts), FaultCase.M(c.Milliohms), FaultCase.Segment(c.Meters, c.Diameter, 20));
        double melting = c.MeltShare * path.ProspectiveCurrent.Amperes;
        FaultOpening latest = FaultClearing.Latest(path, Element(c, melting));
        if (latest.Outcome != FaultOutcome.Opens)
        {
            return true;
        }

        double seconds = latest.State!.Time.Seconds;
        return Simulate(c, melting, t => FaultTransient.StateAfter(path, S(t)).Current.Amperes, seconds) >= 1 - 1e-4;
    }

    /// <summary>Why the sum of time shares is not used: for a current that falls it calls the same kind of element open when it is not.</summary>
    [Fact]
    public void SumOfTimeShares_FallingCurrent_IsTooSoon()
    {
        ClearingCase element = new(0, 0, 0, 0, 0, 1, 1);
        double Time(double amperes) => -Math.Log(1 - (1 / (amperes * amperes)));

        // Half the time at four times the melting current, then at 1.05 times until the shares add up to one.
        double first = 0.5 * Time(4), second = 0.5 * Time(1.05);
        double reached = Simulate(element, 1, t => t < first ? 4 : 1.05, first + second);
        Assert.True(reached < 0.97, $"{reached}");
    }

    [Fact]
    public void Latest_ConstantCurrent_IsTheLongestTime()
    {
        // 1e5 V behind 1 kΩ drive 100 A whatever the wire does; beyond 90 A the 15 A blade has 810 A²s.
        FaultPath path = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1000), FaultCase.Segment(1, 2, 20));
        FaultOpening latest = FaultClearing.Latest(path, Fifteen), soonest = FaultClearing.Soonest(path, Fifteen);
        Assert.Equal(FaultOutcome.Opens, latest.Outcome);
        Assert.Equal(0.081, latest.State!.Time.Seconds, 5);
        Assert.Equal(810, latest.State.LetThrough.AmpereSquaredSeconds, 6);
        Assert.Equal(0.0162, soonest.State!.Time.Seconds, 5);
        FaultPath small = FaultPath.Create(FaultCase.V(1e5), ElectricResistance.FromOhms(1e5 / 30), FaultCase.Segment(1, 2, 20));
        Assert.Equal(5, FaultClearing.Latest(small, Fifteen).State!.Time.Seconds, 3);
        Assert.Equal(0.15, FaultClearing.Soonest(small, Fifteen).State!.Time.Seconds, 3);
    }

    [Fact]
    public void Latest_RealSource_HoldsItsRuleAtTheAnswer()
    {
        FaultPath path = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(20), FaultCase.Segment(3, 0.8, 20));
        FaultOpening latest = FaultClearing.Latest(path, Fifteen);
        Assert.Equal(FaultOutcome.Opens, latest.Outcome);
        double amperes = latest.State!.Current.Amperes;
        Assert.Equal(1, latest.State.LetThrough.AmpereSquaredSeconds / (amperes * amperes * Fifteen.OperatingTime(A(amperes)).Longest.Seconds), 8);
        Assert.True(amperes < path.ProspectiveCurrent.Amperes);
        Assert.True(latest.State.Time.Seconds > Fifteen.OperatingTime(path.ProspectiveCurrent).Longest.Seconds);
        Assert.True(FaultClearing.Soonest(path, Fifteen).State!.Time.Seconds < latest.State.Time.Seconds);
        Assert.Contains("has opened after", latest.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Latest_LargerFuse_NeverSooner()
    {
        FaultPath path = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(20), FaultCase.Segment(3, 2, 20));
        double before = 0;
        foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings.Where(r => r.Curve is not null))
        {
            double seconds = FaultClearing.Latest(path, fuse).State!.Time.Seconds;
            Assert.True(seconds >= before);
            before = seconds;
        }
    }

    [Fact]
    public void Latest_WhatItCannotSay_IsSaid()
    {
        FaultPath path = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(20), FaultCase.Segment(3, 0.2, 20));

        // 0.2 mm copper: 12.6 V/(0.02 + 3 · 0.549 Ω) = 7.56 A.
        Assert.Equal(FaultOutcome.NeedNotOpen, FaultClearing.Latest(path, Fifteen).Outcome);
        Assert.Null(FaultClearing.Latest(path, Fifteen).State);
        Assert.Contains("7.5", FaultClearing.Latest(path, Fifteen).Reason, StringComparison.Ordinal);

        // A 5 A blade fuses at 6.75 A: the current falls below while the wire heats.
        FaultOpening falls = FaultClearing.Latest(path, FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(5)));
        Assert.Equal(FaultOutcome.NeedNotOpen, falls.Outcome);
        Assert.Contains("falls", falls.Reason, StringComparison.Ordinal);

        // 30 A blade, 120 A to 20 A in 0.1 mm wire: the wire is the fuse.
        FaultPath thin = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(20), FaultCase.Segment(0.01, 0.1, 20));
        FaultOpening melts = FaultClearing.Latest(thin, FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(30)));
        Assert.Equal(FaultOutcome.ConductorMelts, melts.Outcome);
        Assert.True(melts.State!.IsMelting);
        Assert.Equal(FaultOutcome.ConductorMelts, FaultClearing.Soonest(thin, FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(30))).Outcome);
        FuseRating unknown = FuseSeries.RoadVehicleStrip51.Ratings[0];
        Assert.Equal(FaultOutcome.NotEvaluated, FaultClearing.Latest(path, unknown).Outcome);
        Assert.Equal(FaultOutcome.NotEvaluated, FaultClearing.Soonest(path, unknown).Outcome);
        Assert.Throws<ArgumentNullException>("fuse", () => FaultClearing.Latest(path, (FuseRating)null!));
        Assert.Throws<ArgumentNullException>("curve", () => FaultClearing.Latest(path, (TimeCurrentCurve)null!));
        Assert.Throws<ArgumentNullException>("path", () => FaultClearing.Latest(null!, Fifteen));
        Assert.Throws<ArgumentNullException>("path", () => FaultClearing.Soonest(null!, Fifteen));
    }

    [Fact]
    public void Latest_CircuitBreaker_TakesItsTimeWhateverFlows()
    {
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker(
            [], [TimeCurrentPoint.Create(A(20), S(100)), TimeCurrentPoint.Create(A(100), S(0.05))]);
        FaultPath path = FaultPath.Create(FaultCase.V(12.6), FaultCase.M(10), FaultCase.Segment(1, 2, 20));
        FaultOpening latest = FaultClearing.Latest(path, breaker);
        Assert.Equal(0.05, latest.State!.Time.Seconds, 9);
        Assert.Equal(FaultOutcome.NotEvaluated, FaultClearing.Soonest(path, breaker).Outcome);
    }

    private static TimeCurrentCurve Element(ClearingCase c, double melting)
    {
        List<TimeCurrentPoint> longest = [];
        for (double ratio = 1.02; ratio < 200; ratio *= 1.15)
        {
            // ∫₀¹ τ·dx/(r² − x^p), the time to melting at a constant current.
            double time = c.TimeConstant * MathNet.Numerics.Integration.GaussLegendreRule.Integrate(x => 1 / ((ratio * ratio) - Math.Pow(x, c.Power)), 0, 1, 128);
            longest.Add(TimeCurrentPoint.Create(A(ratio * melting), S(time)));
        }

        return TimeCurrentCurve.Create([], longest);
    }

    private static double Simulate(ClearingCase c, double melting, Func<double, double> current, double seconds)
    {
        const int Steps = 4000;
        double x = 0, step = seconds / Steps;
        double Rate(double t, double y) => (Math.Pow(current(t) / melting, 2) - Math.Pow(Math.Max(y, 0), c.Power)) / c.TimeConstant;
        for (int i = 0; i < Steps && x < 1; i++)
        {
            double t = i * step;
            double k1 = Rate(t, x), k2 = Rate(t + (0.5 * step), x + (0.5 * step * k1)), k3 = Rate(t + (0.5 * step), x + (0.5 * step * k2));
            x += step / 6 * (k1 + (2 * k2) + (2 * k3) + Rate(t + step, x + (step * k3)));
        }

        return x;
    }
}

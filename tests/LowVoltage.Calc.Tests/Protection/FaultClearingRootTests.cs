using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A loop of thick wire and a device: a fuse of a carried series, or a breaker of two points.</summary>
public sealed record RootCase(double Volts, double Milliohms, double Meters, double Section, int Device, double ThinMeters)
{
    internal FaultPath Path => FaultPath.Create(
        FaultCase.V(Volts), FaultCase.M(Milliohms), Segment(Meters, Section), Segment(ThinMeters, Section / 3));

    internal TimeCurrentCurve Curve => RootCases.Devices[Device % RootCases.Devices.Count];

    private static FaultSegment Segment(double meters, double section) => FaultCase.Segment(meters, Math.Sqrt(section * 4 / Math.PI), 70);
}

public static class RootCases
{
    private static readonly FuseSeries[] Series =
    [
        FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip),
    ];

    internal static IReadOnlyList<TimeCurrentCurve> Devices { get; } =
    [
        .. Series.SelectMany(series => series.Ratings).Select(rating => rating.Curve).OfType<TimeCurrentCurve>(),
        .. new[] { 20.0, 63, 200 }.Select(rating => TimeCurrentCurve.CreateCircuitBreaker(
            [],
            [
                TimeCurrentPoint.Create(A(1.3 * rating), S(3600)), TimeCurrentPoint.Create(A(2 * rating), S(60)),
                TimeCurrentPoint.Create(A(5 * rating), S(6)), TimeCurrentPoint.Create(A(10 * rating), S(0.02)),
            ])),
    ];

    public static Arbitrary<RootCase> Case() => (
        from volts in AdiabaticCases.LogUniform(3, 60)
        from ohms in AdiabaticCases.LogUniform(0.5, 300)
        from meters in AdiabaticCases.LogUniform(0.3, 60)
        from section in AdiabaticCases.LogUniform(0.75, 120)
        from device in Gen.Choose(0, 10_000)
        from thin in AdiabaticCases.LogUniform(0.01, 30)
        select new RootCase(volts, ohms, meters, section, device, thin)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(RootCases)], MaxTest = 4000)]
public class FaultClearingRootTests
{
    /// <summary>The end of a coarse sample was once given for the root: 16.6 s for 50 mm², 347 s between two loops of 0.13 s.</summary>
    [Property]
    public bool Latest_RandomLoop_IsNeverBeyondTheLongestTimeAtTheCurrentItEndsWith(RootCase c)
    {
        FaultOpening latest = FaultClearing.Latest(c.Path, c.Curve);
        if (latest.Outcome != FaultOutcome.Opens)
        {
            return true;
        }

        return c.Curve.TryLongestSeconds(latest.State!.Amperes, out double longest) && latest.State.Seconds <= longest * (1 + 1e-9);
    }

    /// <summary>And it is the first moment of the rule: at no earlier one was it met, and at the answer it is.</summary>
    [Property]
    public bool Latest_RandomLoop_IsTheFirstMomentOfTheRule(RootCase c)
    {
        FaultKernel fault = c.Path.Kernel;
        FaultOutcome outcome = FaultClearing.Latest(ref fault, c.Curve, out double joules);
        double last = outcome == FaultOutcome.Opens ? joules : fault.MeltingJoules;
        for (int i = 0; i < 400; i++)
        {
            double early = last * Math.Pow(1e-6, i / 400.0) * (1 - 1e-8);
            if (Met(fault, c.Curve, early, 1e-9))
            {
                return false;
            }
        }

        return outcome != FaultOutcome.Opens || Met(fault, c.Curve, joules, -1e-9);
    }

    [Fact]
    public void RandomLoops_OfTheseRanges_OpenOftenEnoughToTestSomething()
    {
        int opens = 0, breakers = 0;
        foreach (RootCase c in RootCases.Case().Generator.Sample(1000))
        {
            bool open = FaultClearing.Latest(c.Path, c.Curve).Outcome == FaultOutcome.Opens;
            opens += open ? 1 : 0;
            breakers += open && c.Curve.IsBreaker ? 1 : 0;
        }

        Assert.InRange(opens, 300, 1000);
        Assert.InRange(breakers, 5, 1000);
    }

    /// <summary>The loop by which the property found the coarse sample: some 45 mm² and 15 mm² in a row.</summary>
    [Fact]
    public void Latest_ThickWire_IsTheRootAndNotTheEndOfASample()
    {
        RootCase c = new(17.90470104934834, 65.43081796846626, 2.7949408075331967, 44.65900495452789, 8021, 1.1669846270398008);
        FaultOpening latest = FaultClearing.Latest(c.Path, c.Curve);
        Assert.Equal(FaultOutcome.Opens, latest.Outcome);
        Assert.InRange(latest.State!.Time.Seconds / c.Curve.LongestTime(latest.State.Current)!.Value.Seconds, 0.9, 1 + 1e-9);
    }

    private static bool Met(in FaultKernel fault, TimeCurrentCurve curve, double joules, double margin)
    {
        double amperes = fault.AmperesAt(joules);
        if (!curve.TryLongestSeconds(amperes, out double seconds))
        {
            return false;
        }

        return curve.IsBreaker ? fault.SecondsTo(joules) >= seconds * (1 + margin) : joules >= amperes * amperes * seconds * (1 + margin);
    }
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>What the stated longest times prove by themselves, and what only the line between them says.</summary>
public class ProvenLongestTimeTests
{
    private static readonly TimeCurrentCurve Sixty = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60)).Curve!;

    /// <summary>At 150 % a high-current blade fuse opens within 723 s by the line between 135 % (1800 s) and 200 % (60 s); the stated times prove 1800 s.</summary>
    [Fact]
    public void ProvenLongestTime_BetweenTwoPoints_IsThatOfTheSmallerCurrent()
    {
        Assert.Equal(1800, Sixty.ProvenLongestTime(A(90))!.Value.Seconds, 1e-9);
        Assert.Equal(723, Sixty.LongestTime(A(90))!.Value.Seconds, 0.5);
        Assert.Equal(1800, Sixty.ProvenLongestTime(A(119.9))!.Value.Seconds, 1e-9);
        Assert.Equal(60, Sixty.ProvenLongestTime(A(120))!.Value.Seconds, 1e-9);
        Assert.Equal(1, Sixty.ProvenLongestTime(A(360))!.Value.Seconds, 1e-9);
        Assert.Equal(0.25, Sixty.ProvenLongestTime(A(720))!.Value.Seconds, 1e-9);
        Assert.Null(Sixty.ProvenLongestTime(A(80)));
        TimeCurrentCurve breaker = TimeCurrentCurve.CreateCircuitBreaker([], [TimeCurrentPoint.Create(A(20), S(100)), TimeCurrentPoint.Create(A(100), S(0.05))]);
        Assert.Equal(0.05, breaker.ProvenLongestTime(A(1000))!.Value.Seconds, 1e-12);
    }

    /// <summary>The verdict by the points alone against many single currents; and a pass by the line alone says so.</summary>
    [Theory]
    [InlineData(24)]
    [InlineData(28)]
    [InlineData(32)]
    [InlineData(50)]
    public void Check_ByThePointsAlone_AgreesWithSingleCurrents(double section)
    {
        Wire wire = Solid(Math.Sqrt(section * 4 / Math.PI), 1);
        ProtectedWire asked = ProtectedWire.Create(wire, Air(25)).Carrying(A(3.5 * section));
        WireProtection outcome = FuseAgainstWire.Check(Sixty, [asked], A(2000));
        WireLimits limits = asked.Limits();
        double least = double.PositiveInfinity;
        for (double amperes = Sixty.FusingAmperes; amperes <= 2000; amperes *= 1.0005)
        {
            Assert.True(Sixty.TryProvenLongestSeconds(amperes, out double seconds));
            double limit = seconds > 5 ? limits.OverloadCelsius : limits.ShortCircuitCelsius;
            least = Math.Min(least, OverloadHeating.Seconds(limits.Heat, limits.Capacity, amperes, limits.StartCelsius, limit) / seconds);
        }

        double found = FuseAgainstWireKernel.TightestByStatedPoints(limits, Sixty, 2000).Ratio;
        Assert.InRange(found, Math.Min(least, 1e6) * 0.97, least * (1 + 1e-6));
        LongestTimeBasis? expected = outcome.Verdict != ProtectionVerdict.Protected ? null : found >= 1 ? LongestTimeBasis.StatedPoints : LongestTimeBasis.CustomaryLine;
        Assert.Equal(expected, outcome.Basis);
        Assert.Equal(expected == LongestTimeBasis.CustomaryLine, outcome.Assumption is not null);
    }

    [Fact]
    public void Check_EveryBasis_Occurs()
    {
        LongestTimeBasis?[] found = [.. Enumerable.Range(10, 60).Select(section => FuseAgainstWire.Check(
            Sixty, [ProtectedWire.Create(Solid(Math.Sqrt(section * 4 / Math.PI), 1), Air(25)).Carrying(A(3.5 * section))], A(2000)).Basis)];
        Assert.Contains(null, found);
        Assert.Contains(LongestTimeBasis.StatedPoints, found);
        Assert.Contains(LongestTimeBasis.CustomaryLine, found);
    }
}

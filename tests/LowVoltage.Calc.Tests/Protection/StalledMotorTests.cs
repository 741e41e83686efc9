using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A stalled motor: three outcomes, each with a circuit of its own.</summary>
public class StalledMotorTests
{
    private static readonly ProtectedWire Thin = Of(0.75);
    private static readonly ProtectedWire Thick = Of(2.5);

    private static ProtectedWire Of(double section) => ProtectedWire.Create(Solid(Math.Sqrt(section * 4 / Math.PI), 0.5), Air(25));

    private static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(amperes));

    /// <summary>A motor that stalls at 8 A on 7.5 A once passed without a word, whatever its locked-rotor current was said to be.</summary>
    [Fact]
    public void Check_BelowTheFusingCurrent_SaysThatTheMotorNeedsACutOut()
    {
        StallCheck stall = StalledMotor.Check(Blade(7.5), [Thick], A(8), A(8));
        Assert.Equal(StallOutcome.WireBears, stall.Outcome);
        Assert.Null(stall.LongestTime);
        Assert.Equal(HeatBalance.TemperatureAt(Thick.Wire, Air(25), A(8)).DegreesCelsius, stall.TemperatureReached!.Value.DegreesCelsius, 1e-9);
        Assert.StartsWith("Stalled, the motor draws 8 A. The 7.5 A blade fuse (ISO 8820-3 type C) need not open; the wire is at ", stall.ToString(), StringComparison.Ordinal);
        Assert.EndsWith(" against 95 °C at 8 A, which it bears. Only a thermal cut-out of the motor's own ends that.", stall.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LargeStallCurrent_OpensTheFuse()
    {
        StallCheck stall = StalledMotor.Check(Blade(7.5), [Thick, Thin], A(30), A(45));
        Assert.Equal(StallOutcome.DeviceOpens, stall.Outcome);
        Assert.Equal(1, stall.WeakestWire);
        Assert.Equal(Blade(7.5).OperatingTime(A(30)).Longest.Seconds, stall.LongestTime!.Value.Seconds, 1e-12);
        Assert.True(stall.TemperatureReached!.Value.DegreesCelsius <= stall.Limit.DegreesCelsius);
        Assert.Contains("It does not protect the motor itself.", stall.Reason, StringComparison.Ordinal);
    }

    /// <summary>The wire carries it continuously, and the fuse opens all the same: that is the device's outcome.</summary>
    [Fact]
    public void Check_WireCarriesWhatOpensTheFuse_IsTheDevices()
    {
        StallCheck stall = StalledMotor.Check(Blade(5), [Thick], A(10), A(12));
        Assert.Equal(StallOutcome.DeviceOpens, stall.Outcome);
        Assert.Equal(5, stall.LongestTime!.Value.Seconds, 1e-9);
    }

    [Fact]
    public void Check_FuseTooLargeForTheWire_IsTooHot()
    {
        StallCheck stall = StalledMotor.Check(Blade(30), [Thin], A(25), A(38));
        Assert.Equal(StallOutcome.WireTooHot, stall.Outcome);
        Assert.Contains("Too much", stall.Reason, StringComparison.Ordinal);
        Assert.Null(stall.LongestTime);

        // A current within the range opens the fuse soon enough, one below it never.
        Assert.Equal(StallOutcome.DeviceOpens, StalledMotor.Check(Blade(15), [Thick], A(60), A(60)).Outcome);
    }

    /// <summary>Only the currents of the range count: beyond it the fuse is another check's matter.</summary>
    [Fact]
    public void Find_RangeOfCurrents_IsTheWorstOfTheSingleOnes()
    {
        WireLimits wire = Of(1).Limits();
        TimeCurrentCurve curve = Blade(20).Curve!;
        foreach ((double least, double greatest) in new[] { (27.0, 33.0), (28, 120), (45, 60), (80, 400) })
        {
            double range = StalledMotor.Find(wire, curve, least, greatest).Ratio, singles = double.PositiveInfinity;
            for (double amperes = least; amperes <= greatest; amperes *= 1.002)
            {
                singles = Math.Min(singles, StalledMotor.Find(wire, curve, amperes, amperes).Ratio);
            }

            singles = Math.Min(singles, StalledMotor.Find(wire, curve, greatest, greatest).Ratio);
            Assert.InRange(range, singles * (1 - 0.02), singles * (1 + 1e-6));
        }
    }

    [Fact]
    public void Check_NoTimes_IsNotEvaluatedUnlessTheWireBearsIt()
    {
        FuseRating strip = FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(80));
        Assert.Equal(StallOutcome.NotEvaluated, StalledMotor.Check(strip, [Thin], A(50), A(60)).Outcome);
        Assert.Equal(StallOutcome.WireBears, StalledMotor.Check(strip, [Thick], A(5), A(6)).Outcome);
        Assert.Throws<ArgumentException>("wires", () => StalledMotor.Check(strip, [], A(5), A(6)));
        Assert.Throws<ArgumentNullException>("wires", () => StalledMotor.Check(strip, [null!], A(5), A(6)));
        Assert.Throws<ArgumentOutOfRangeException>("greatest", () => StalledMotor.Check(strip, [Thin], A(7), A(6)));
        Assert.Throws<ArgumentNullException>("curve", () => StalledMotor.Check((TimeCurrentCurve)null!, [Thin], A(5), A(6)));
    }

    [Fact]
    public void Motor_PeakAboveLockedRotor_IsRefused()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("peak", () => Load.Motor(A(5), A(20), A(19), S(0.3)));
        Assert.Contains("peak must be from 5 A to 19 A; it was 20 A", refused.Message, StringComparison.Ordinal);
        Assert.Equal(19, Load.Motor(A(5), A(19), A(19), S(0.3)).CurrentAt(ElectricPotential.FromVolts(12), LoadState.LockedRotor).Amperes);
    }
}

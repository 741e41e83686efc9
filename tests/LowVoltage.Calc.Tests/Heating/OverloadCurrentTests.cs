using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Currents found back from closed forms: a wire whose loss is straight in temperature.</summary>
public class OverloadCurrentTests
{
    private static readonly LinearWire Linear = new();

    [Theory]
    [InlineData(60, 25, 160)]
    [InlineData(200, 25, 1083)]
    [InlineData(43.3, 25, 100)]
    [InlineData(5000, 25, 160)]
    [InlineData(60, 70, 160)]
    [InlineData(60, 0, 100)]
    public void CurrentToReach_LossIsStraight_IsTheCurrentOfTheClosedForm(double amperes, double from, double to)
    {
        Duration time = S(Linear.Seconds(amperes, from, to));
        Assert.Equal(amperes, OverloadHeating.CurrentToReach(Linear.Wire, Linear.Air, C(from), C(to), time).Amperes, 1e-7 * amperes);
    }

    /// <summary>A resistance that does not change: (I²·R − K·(θ1 − a))/(I²·R − K·(θ0 − a)) = exp(−K·t/C′).</summary>
    [Theory]
    [InlineData(1.7e-8, 10)]
    [InlineData(1.7e-8, 1e-3)]
    [InlineData(1.7, 10)]
    [InlineData(1e6, 10)]
    [InlineData(1e6, 200)]
    public void CurrentToReach_ConstantResistance_IsTheClosedForm(double ohmMeters, double seconds)
    {
        LinearWire wire = new(alpha: 0, ohmMeters: ohmMeters);
        double decay = Math.Exp(-wire.PerKelvin * seconds / wire.Capacity);
        double expected = Math.Sqrt(wire.PerKelvin * ((160 - 25) - (decay * (40 - 25))) / ((1 - decay) * wire.Ohms20));
        Assert.Equal(expected, OverloadHeating.CurrentToReach(wire.Wire, wire.Air, C(40), C(160), S(seconds)).Amperes, 1e-9 * expected);
    }

    /// <summary>Microseconds, no loss: I² = C′·ln(R1/R0)/(α·R20·t), also for a rise so small that the mean of the resistances is either of them.</summary>
    [Theory]
    [InlineData(25, 25.001)]
    [InlineData(25, 25.000_001)]
    [InlineData(25, 26)]
    [InlineData(25, 1000)]
    public void CurrentToReach_NoTimeForLoss_IsTheAdiabaticCurrent(double from, double to)
    {
        const double Seconds = 1e-6;
        double logarithm = LowVoltage.Calc.Numerics.ExpLog.Log1p(Linear.Alpha * (to - from) / (1 + (Linear.Alpha * (from - 20))));
        double expected = Math.Sqrt(Linear.Capacity * logarithm / (Linear.Alpha * Linear.Ohms20 * Seconds));
        double amperes = OverloadHeating.CurrentToReach(Linear.Wire, Linear.Air, C(to), S(Seconds)).Amperes;

        // The loss at the limit is the smaller part by K·(θ − a)·t/C′ = 2e-8 K/K of the rise; °C of a small rise are rounded to 1e-14.
        Assert.InRange(amperes / expected, 1 - 3e-8 - (1e-13 / (to - from)), 1 + 3e-8 + (1e-13 / (to - from)));
    }

    /// <summary>The air warms a cold wire: to 20 °C in 40 °C air from 0 °C without current in C′/K·ln 2 = 42 s, sooner only with current.</summary>
    [Fact]
    public void CurrentToReach_ColderThanTheAir_NeedsCurrentOnlyWhenPressed()
    {
        LinearWire wire = new(ambient: 40);
        double alone = wire.Capacity / wire.PerKelvin * Math.Log(2);
        Assert.Equal(0, OverloadHeating.CurrentToReach(wire.Wire, wire.Air, C(0), C(20), S(alone * 1.000_01)).Amperes);
        Assert.True(OverloadHeating.CurrentToReach(wire.Wire, wire.Air, C(0), C(20), S(alone * 0.999_9)).Amperes > 0);
        Duration second = S(wire.Seconds(100, 0, 20));
        Assert.Equal(100, OverloadHeating.CurrentToReach(wire.Wire, wire.Air, C(0), C(20), second).Amperes, 1e-5);
    }

    [Fact]
    public void AtTheLimitAlready_NeedsNeitherCurrentNorTime()
    {
        Wire wire = Solid(1.628, 0.6);
        Assert.Equal(0, OverloadHeating.CurrentToReach(wire, Air(40), C(80), C(80), S(1)).Amperes);
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => OverloadHeating.CurrentToReach(wire, Air(40), C(80.001), C(80), S(1)));
        Assert.True(OverloadHeating.CurrentToReach(wire, Air(40), C(79.999), C(80), S(1)).Amperes > 0);
        Assert.Equal(0, OverloadHeating.TimeToReach(wire, Air(40), A(0), C(40))!.Value.Seconds);
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => OverloadHeating.TimeToReach(wire, Air(40), A(0), C(39)));
        Assert.Null(OverloadHeating.TimeToReach(wire, Air(40), A(0), C(40.001)));
    }
}

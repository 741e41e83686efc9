using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Against the closed form of a wire whose loss is straight in temperature.</summary>
public class OverloadKernelTests
{
    private static readonly LinearWire Linear = new();

    [Theory]
    [InlineData(20, 25, 37)]
    [InlineData(40, 25, 80)]
    [InlineData(40, 70, 80)]
    [InlineData(200, 25, 1083)]
    [InlineData(60, 0, 100)]
    [InlineData(2000, 25, 250)]
    public void SecondsTo_LossIsStraight_IsTheClosedForm(double amperes, double from, double to)
    {
        double seconds = At(Linear, amperes, from).SecondsTo(Linear.Surface(to));
        Assert.InRange(seconds / Linear.Seconds(amperes, from, to), 1 - 1e-8, 1 + 1e-8);
    }

    [Theory]
    [InlineData(20, 25, 30)]
    [InlineData(20, 300, 30)]
    [InlineData(0, 160, 100)]
    [InlineData(60, 25, 10)]
    [InlineData(200, 25, 3)]
    [InlineData(60, 0, 1)]
    public void TryAdvance_LossIsStraight_IsTheClosedForm(double amperes, double from, double seconds)
    {
        Assert.True(At(Linear, amperes, from).TryAdvance(seconds, Linear.Surface(1083), out double surface));
        Assert.Equal(Linear.Surface(Linear.After(amperes, from, seconds)), surface, 1e-6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    public void TimeConstant_LossIsStraight_IsCapacityOverSlope(double amperes)
    {
        OverloadKernel overload = At(Linear, amperes, 25);
        Assert.True(overload.Settles);
        Assert.InRange(overload.TimeConstant * -Linear.Slope(amperes) / Linear.Capacity, 1 - 1e-12, 1 + 1e-12);
        Assert.Equal(double.PositiveInfinity, At(Linear, 2000, 25).TimeConstant);
    }

    /// <summary>A resistance that does not change has no temperature at which it vanishes.</summary>
    [Fact]
    public void SecondsTo_ConstantResistanceThatMelts_IsTheClosedForm()
    {
        LinearWire wire = new(alpha: 0);
        Assert.False(At(wire, 500, 25).Settles);
        Assert.InRange(At(wire, 500, 25).SecondsTo(wire.Surface(1083)) / wire.Seconds(500, 25, 1083), 1 - 1e-8, 1 + 1e-8);
        Assert.InRange(At(wire, 500, -40).SecondsTo(wire.Surface(0)) / wire.Seconds(500, -40, 0), 1 - 1e-8, 1 + 1e-8);
    }

    /// <summary>Closer than 1e-9 K it is the settled temperature itself; before, it takes a time constant for every e.</summary>
    [Theory]
    [InlineData(20, 25)]
    [InlineData(20, 200)]
    [InlineData(0, 90)]
    public void SecondsTo_CloseToTheSettledTemperature_CountsTimeConstants(double amperes, double from)
    {
        Assert.True(Linear.Kernel.TryBalance(amperes * amperes, out double pole));
        OverloadKernel overload = At(Linear, amperes, from);
        double sign = Math.Sign(Linear.Surface(from) - pole), start = Math.Abs(Linear.Kernel.SurfaceFor(from) - pole);
        foreach (double away in new[] { 1e-3, 1e-6, 2e-8, 2e-9 })
        {
            double surface = pole + (sign * away), expected = overload.TimeConstant * Math.Log(start / Math.Abs(surface - pole));
            Assert.InRange(overload.SecondsTo(surface) / expected, 1 - 1e-9, 1 + 1e-9);
        }

        Assert.Equal(double.PositiveInfinity, overload.SecondsTo(pole));
        Assert.Equal(double.PositiveInfinity, overload.SecondsTo(pole + (sign * 5e-10)));

        // On the other side of it, or further away than the start.
        Assert.Equal(double.PositiveInfinity, overload.SecondsTo(pole - (sign * 5)));
        Assert.Equal(double.PositiveInfinity, overload.SecondsTo(pole + (sign * (start + 1))));
        Assert.Equal(0, overload.SecondsTo(Linear.Kernel.SurfaceFor(from)));
    }

    [Fact]
    public void SecondsTo_WhereTheWireIsOrWas_IsZeroOrNever()
    {
        OverloadKernel melting = At(Linear, 2000, 100);
        Assert.Equal(0, melting.SecondsTo(Linear.Kernel.SurfaceFor(100)));
        Assert.Equal(double.PositiveInfinity, melting.SecondsTo(Linear.Surface(99)));
        Assert.Equal(double.PositiveInfinity, melting.SecondsTo(20 - (1 / Linear.Alpha)));
    }

    /// <summary>After no time the wire is as hot as it was, to the last bit.</summary>
    [Fact]
    public void TryAdvance_NoTime_ChangesNothing()
    {
        for (double start = -40.1; start < 1000; start += 7.7)
        {
            Assert.True(new OverloadKernel(Linear.Kernel, 20, 1, start).TryAdvance(0, 1083, out double same));
            Assert.Equal(start, same);
            Assert.True(new OverloadKernel(Linear.Kernel, 2000, 1, start).TryAdvance(0, 1083, out same));
            Assert.Equal(start, same);
        }
    }

    [Fact]
    public void TryAdvance_SettledOrSettlingAtTheLimit_StaysWithinIt()
    {
        // Without current it settles at the ambient temperature, exactly.
        OverloadKernel cooling = At(Linear, 0, 80);
        Assert.True(cooling.TryAdvance(1e9, 25, out double surface));
        Assert.Equal(25, surface, 1e-9);
        Assert.True(new OverloadKernel(Linear.Kernel, 0, 1, 25).TryAdvance(10, 100, out surface));
        Assert.Equal(25.0, surface);
    }

    /// <summary>At the very time in which the limit is reached it is not passed; a billionth later it is.</summary>
    [Theory]
    [InlineData(0.5, 200)]
    [InlineData(0.5, 2000)]
    [InlineData(0.5, 20_000)]
    [InlineData(0, 300)]
    [InlineData(3, 300)]
    public void TryAdvance_TimeToTheLimit_IsStillWithin(double wall, double amperes)
    {
        LinearWire wire = new(wall: wall);
        foreach (double limit in new[] { 90.0, 160, 250, 500, 1000, 1083 })
        {
            OverloadKernel overload = At(wire, amperes, 25);
            double most = wire.Kernel.SurfaceFor(limit), seconds = overload.SecondsTo(most);
            Assert.True(overload.TryAdvance(seconds, most, out double surface));
            Assert.Equal(most, surface, 1e-6);
            Assert.True(overload.TryAdvance(seconds * (1 - 1e-7), most, out _));
            Assert.False(overload.TryAdvance(seconds * (1 + 1e-7), most, out surface));
            Assert.Equal(most, surface, 1e-9);
        }
    }

    /// <summary>The metal alone, or with all of the insulation: 2e6 J/(m³·K) · π/4·(9 − 4) mm².</summary>
    [Fact]
    public void Capacity_OfOneBody_IsMetalAloneOrWithAllInsulation()
    {
        Assert.Equal(Linear.Capacity, OverloadKernel.Capacity(Linear.Wire, InsulationHeat.None), 1e-12);
        Assert.Equal(Linear.Capacity, OverloadKernel.Capacity(Linear.Wire, InsulationHeat.Layers), 1e-12);
        Assert.Equal(Linear.Capacity + (2 * Math.PI / 4 * 5), OverloadKernel.Capacity(Linear.Wire, InsulationHeat.All), 1e-9);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "insulation", () => OverloadKernel.Capacity(Linear.Wire, (InsulationHeat)7));
        Assert.StartsWith("insulation must be one of the named values.", refused.Message, StringComparison.Ordinal);
    }

    private static OverloadKernel At(LinearWire wire, double amperes, double from) =>
        new(wire.Kernel, amperes, wire.Capacity, wire.Kernel.SurfaceFor(from));
}

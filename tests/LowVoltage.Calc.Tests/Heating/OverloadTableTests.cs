using LowVoltage.Calc.Heating;
using MathNet.Numerics.Integration;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class OverloadTableTests
{
    private static readonly LinearWire Linear = new();

    [Theory]
    [InlineData(1, 6)]
    [InlineData(10, 33)]
    public void DoublesFor_HoldsThreeOfEveryNode(int intervals, int doubles) => Assert.Equal(doubles, OverloadTable.DoublesFor(intervals));

    /// <summary>Where the loss is straight the tangents are the curve, and the time is the closed form; 1e-9 is what the series is cut at.</summary>
    [Theory]
    [InlineData(1, 60, 25, 160)]
    [InlineData(1, 55, 25, 160)]
    [InlineData(1, 44, 25, 100)]
    [InlineData(1, 36, 25, 70)]
    [InlineData(2, 48, 60, 120)]
    [InlineData(3, 43.3, 25, 100)]
    [InlineData(10, 43.3, 25, 100)]
    [InlineData(3, 150, 25, 900)]
    [InlineData(10, 5000, 25, 160)]
    public void Seconds_LossIsStraight_IsTheClosedForm(int intervals, double amperes, double from, double to)
    {
        OverloadTable table = Table(Linear, from, to, intervals);
        double expected = Linear.Seconds(amperes, from, to);
        Assert.InRange(table.Seconds(amperes) / expected, 1 - 1e-9, 1 + 1e-9);
        Assert.Equal(Linear.Holding(to), table.SteadyAmperes, 1e-12 * table.SteadyAmperes);
    }

    /// <summary>Heat made less heat lost, from one value to another: ln(r)/(r − 1) on both sides of where the series takes over, z = (r − 1)/(r + 1) = 0.15.</summary>
    [Theory]
    [InlineData(0.149)]
    [InlineData(0.1499)]
    [InlineData(0.1501)]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void Seconds_AroundTheEndOfTheSeries_IsTheLogarithm(double z)
    {
        // One interval is halved where it is straight. In its second half D falls from (1 + x)/2 of the first value to x: z there = (1 − x)/(1 + 3x).
        double x = (1 - z) / (1 + (3 * z)), rise = 75;

        // P(100)/P(25) = x: I²·[R(100) − x·R(25)] = K·75.
        double amperes = Math.Sqrt(Linear.PerKelvin * rise / (Linear.OhmsAt(100) - (x * Linear.OhmsAt(25))));
        double first = amperes * amperes * Linear.OhmsAt(25);
        double expected = Linear.Capacity * rise * Math.Log(1 / x) / (first * (1 - x));
        Assert.InRange(Table(Linear, 25, 100, 1).Seconds(amperes) / expected, 1 - 1e-9, 1 + 1e-9);
    }

    /// <summary>A resistance that does not change and next to no loss: D is one value, where the logarithm would be 0/0.</summary>
    [Fact]
    public void Seconds_WithoutLossOrTemperatureCoefficient_IsHeatOverPower()
    {
        LinearWire wire = new(wall: 0, coefficient: 1e-12, alpha: 0);
        double expected = wire.Capacity * 75 / (1e6 * wire.Ohms20);
        Assert.InRange(Table(wire, 25, 100, 4).Seconds(1000) / expected, 1 - 1e-12, 1 + 1e-12);
    }

    /// <summary>Resistance grows as fast as the loss, α = 1 and R20 = K: D = R20·(θ − 19) − K·(θ − 20) is K at every temperature.</summary>
    [Fact]
    public void Seconds_DoesNotBend_TakesTheMiddle()
    {
        double conductance = Math.PI * 2e-3 * 20, square = Math.PI / 4 * 4e-6;
        LinearWire wire = new(wall: 0, alpha: 1, ohmMeters: conductance * square, ambient: 20);
        HeatBalanceKernel heat = wire.Kernel;
        Assert.Equal(wire.Outside, wire.Ohms20, 1e-15);
        Assert.InRange(Table(wire, 20, 21, 1).Seconds(1) * wire.PerKelvin / wire.Capacity, 1 - 1e-12, 1 + 1e-12);
        Assert.Equal(1, heat.Alpha);
    }

    /// <summary>Still air, W of the insulation counted: D is held below its tangents at the nodes. They are found anew, meet by bisection, and are integrated by Gauss.</summary>
    [Theory]
    [InlineData(1.628, 0.6, 1, 60, 25, 160)]
    [InlineData(1.628, 0.6, 3, 38, 40, 70)]
    [InlineData(1.628, 0, 2, 200, 25, 250)]
    [InlineData(1.628, 3, 2, 1000, 25, 160)]
    [InlineData(0.4, 0.2, 5, 7, 25, 105)]
    [InlineData(9, 1.3, 4, 500, 25, 90)]
    public void Seconds_StillAir_IsTheTimeUnderTheTangents(double diameter, double wall, int intervals, double amperes, double from, double to)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(diameter, wall), Air());
        OverloadTable table = new(new double[OverloadTable.DoublesFor(intervals)], heat, 7, from, to);
        Assert.InRange(table.Seconds(amperes) / UnderTangents(heat, amperes, from, to, intervals), 1 - 1e-9, 1 + 1e-9);
        double exact = 7 * new OverloadKernel(heat, amperes, 1, heat.SurfaceFor(from)).SecondsTo(heat.SurfaceFor(to));
        Assert.InRange(table.Seconds(amperes), 0, exact * (1 + 1e-8));
    }

    /// <summary>At the current at which resistance grows as fast as the loss at the start, the first tangent is level.</summary>
    [Fact]
    public void Seconds_LevelFirstTangent_MeetsWhereTheOtherDoes()
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(1.628, 0.6), Air());
        Tangent(heat, 0, 25, out double slope);
        double amperes = Math.Sqrt(-slope / (heat.OhmsPerMeter20 * heat.Alpha));
        OverloadTable table = new(new double[OverloadTable.DoublesFor(1)], heat, 7, 25, 30);
        Assert.InRange(table.Seconds(amperes) / UnderTangents(heat, amperes, 25, 30, 1), 1 - 1e-9, 1 + 1e-9);
    }

    [Fact]
    public void Seconds_AtOrPastTheLimitFromTheStart_IsZero()
    {
        OverloadTable there = Table(Linear, 90, 90, 3), past = Table(Linear, 91, 90, 3), below = Table(Linear, 89.9, 90, 3);
        Assert.True(there.IsThere && past.IsThere && !below.IsThere);
        Assert.Equal(0, there.Seconds(100));
        Assert.Equal(0, past.Seconds(100));
        Assert.Equal(0, past.Seconds(0));
        Assert.True(below.Seconds(100) > 0);

        // At the limit, and the current cannot hold it: never past it.
        Assert.Equal(double.PositiveInfinity, there.Seconds(1));
        Assert.Equal(0, Table(Linear, 25, 20, 3).SteadyAmperes);
        Assert.Equal(0, Table(Linear, 25, 20, 3).Seconds(0));
    }

    /// <summary>The steady current is that of the balance to the last bit, and at it the limit is never reached.</summary>
    [Fact]
    public void SteadyAmperes_BareWire_IsThatOfTheBalance()
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(1.628, 0), Air(25.3));
        for (double limit = 40; limit < 200; limit += 0.37)
        {
            OverloadTable table = new(new double[OverloadTable.DoublesFor(3)], heat, 7, 25.3, limit);
            Assert.Equal(heat.AmperesFor(limit), table.SteadyAmperes);
            Assert.Equal(double.PositiveInfinity, table.Seconds(table.SteadyAmperes));
            Assert.True(table.Seconds(table.SteadyAmperes * 1.001) < double.PositiveInfinity);
        }
    }

    private static OverloadTable Table(LinearWire wire, double from, double to, int intervals) =>
        new(new double[OverloadTable.DoublesFor(intervals)], wire.Kernel, wire.Capacity, from, to);

    private static double UnderTangents(in HeatBalanceKernel heat, double amperes, double from, double to, int intervals)
    {
        double low = heat.SurfaceFor(from), high = heat.SurfaceFor(to), sum = 0;
        for (int i = 0; i < intervals; i++)
        {
            double a = heat.ConductorAt(low + ((high - low) * i / intervals)), b = heat.ConductorAt(low + ((high - low) * (i + 1) / intervals));
            double da = Tangent(heat, amperes, a, out double sa), db = Tangent(heat, amperes, b, out double sb);
            double left = a, right = b;
            for (int k = 0; k < 60; k++)
            {
                double middle = 0.5 * (left + right);
                bool first = da + (sa * (middle - a)) < db + (sb * (middle - b));
                (left, right) = first ? (middle, right) : (left, middle);
            }

            sum += Gauss(x => 7 / (da + (sa * (x - a))), a, left) + Gauss(x => 7 / (db + (sb * (x - b))), left, b);
        }

        return sum;
    }

    private static double Gauss(Func<double, double> function, double from, double to)
    {
        double sum = 0;
        for (int i = 0; i < 8; i++)
        {
            sum += GaussLegendreRule.Integrate(function, from + ((to - from) * i / 8), from + ((to - from) * (i + 1) / 8), 32);
        }

        return sum;
    }

    /// <summary>D at a conductor temperature, and its slope: dq/dθ = q′/(1 + W·q′).</summary>
    private static double Tangent(in HeatBalanceKernel heat, double amperes, double celsius, out double slope)
    {
        double loss = heat.Loss(heat.SurfaceFor(celsius), out double surfaceSlope), square = amperes * amperes;
        slope = (square * heat.OhmsPerMeter20 * heat.Alpha) - (1 / ((1 / surfaceSlope) + heat.InnerResistance));
        return (square * heat.OhmsPerMeterAt(celsius)) - loss;
    }
}

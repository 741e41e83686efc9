using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Numerics;

public class CubicLineTests
{
    [Fact]
    public void At_AnyLine_IsTheClosedForm()
    {
        Random random = new(8);
        for (int n = 0; n < 20_000; n++)
        {
            double a = Math.Pow(10, -4 + (6 * random.NextDouble())), b = a * Math.Pow(10, -8 + (10 * random.NextDouble())), v = 100 * (random.NextDouble() - 0.5);
            double s = Math.Sqrt(3 * b / a), closed = 2 / s * Math.Sinh(Math.Asinh(1.5 * s * v / a) / 3);
            double i = CubicLine.At(v, a, b, out double slope);
            Assert.Equal(closed, i, 1e-13 * Math.Abs(closed));
            Assert.Equal(v, (a * i) + (b * i * i * i), 1e-14 * Math.Abs(v));
            Assert.Equal(1 / (a + (3 * b * i * i)), slope, 1e-13 * slope);
        }
    }

    [Fact]
    public void At_NoCube_IsOhmsLaw()
    {
        Assert.Equal(6, CubicLine.At(12, 2, 0, out double slope));
        Assert.Equal(0.5, slope);
        Assert.Equal(0, CubicLine.At(0, 2, 1, out slope));
        Assert.Equal(0.5, slope);
    }
}

using System.Numerics;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Numerics;

/// <summary>Our exp and ln against their series in whole numbers of 200 binary places, which no rounding of doubles has touched.</summary>
public class VectorExpLogTests
{
    private const int Places = 200;

    [Fact]
    public void Expm1_FromTinyToForty_IsWithinThreeUnitsInTheLastPlace()
    {
        double worst = 0;
        for (int i = 0; i < 20_000; i++)
        {
            double x = i < 10_000 ? Math.Pow(10, -12 + (i * 1.36e-3)) : (i - 10_000) * 4e-4;
            if (x is > 0 and <= 40)
            {
                worst = Math.Max(worst, Units(ExpLog.Expm1(x), Expm1(x)));
            }
        }

        Assert.InRange(worst, 0.4, 3);
    }

    [Fact]
    public void LogRatio_OfWireTemperatures_IsWithinThreeUnitsInTheLastPlace()
    {
        // 134.5 K to 1317.5 K above the inferred zero of copper, rises from a millionth of a kelvin to all of it.
        double worst = 0;
        Random random = new(7);
        for (int i = 0; i < 20_000; i++)
        {
            double from = 134.5 + (1000 * random.NextDouble()), rise = Math.Pow(10, -6 + (9 * random.NextDouble()));
            worst = Math.Max(worst, Units(ExpLog.LogRatio(from, rise, from + rise), LogRatio(from, rise)));
        }

        Assert.InRange(worst, 0.4, 3);
    }

    [Fact]
    public void LogRatio_NearThePlacesWhereThePowerOfTwoChanges_IsWithinThreeUnitsInTheLastPlace()
    {
        double worst = 0;
        for (double quotient = 1.3; quotient < 12; quotient *= 1.0007)
        {
            double from = 254.5, rise = from * (quotient - 1);
            worst = Math.Max(worst, Units(ExpLog.LogRatio(from, rise, from + rise), LogRatio(from, rise)));
        }

        Assert.InRange(worst, 0.4, 3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.3)]
    [InlineData(-3)]
    [InlineData(-36.9)]
    [InlineData(-37.1)]
    [InlineData(-1000)]
    [InlineData(699)]
    [InlineData(701)]
    public void Expm1_WholeRange_AgreesWithThePlainForm(double x)
    {
        // exp(x) − 1 loses no more than a few units in the last place where exp(x) is far from 1.
        double plain = Math.Exp(x) - 1;
        Assert.InRange(ExpLog.Expm1(x) - plain, -1e-15 * Math.Abs(plain), 1e-15 * Math.Abs(plain));
    }

    [Fact]
    public void Lanes_AllGiveWhatOneGives()
    {
        double[] x = [.. Enumerable.Range(0, Vector<double>.Count).Select(i => 0.01 + (i * 0.7))];
        Vector<double> rise = new(x), expm1 = VectorExpLog.Expm1(rise), log = VectorExpLog.LogRatio(new Vector<double>(2), rise, new Vector<double>(2) + rise);
        for (int i = 0; i < x.Length; i++)
        {
            Assert.Equal(ExpLog.Expm1(x[i]), expm1[i]);
            Assert.Equal(ExpLog.LogRatio(2, x[i], 2 + x[i]), log[i]);
        }
    }

    [Fact]
    public void TabulatedValues_AreMet()
    {
        // e − 1 and ln 2 to 17 digits, as any table of constants has them.
        Assert.Equal(1.7182818284590452, ExpLog.Expm1(1), 15);
        Assert.Equal(0.69314718055994531, ExpLog.LogRatio(1, 1, 2), 15);
        Assert.Equal(2.3025850929940457, ExpLog.LogRatio(1, 9, 10), 14);
        Assert.Equal(0, ExpLog.LogRatio(300, 0, 300));
    }

    // How far a double is from the exact value, in units of the double's last place.
    private static double Units(double value, BigInteger exact) =>
        Math.Exp(BigInteger.Log(BigInteger.Abs(Fixed(value) - exact) + 1) - BigInteger.Log(Fixed(Math.BitIncrement(value)) - Fixed(value)));

    private static BigInteger Fixed(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)((bits >> 52) & 0x7FF) - 1075 + Places;
        BigInteger mantissa = (bits & 0xFFFFFFFFFFFFF) | 0x10000000000000;
        return exponent >= 0 ? mantissa << exponent : mantissa >> -exponent;
    }

    private static BigInteger Expm1(double value)
    {
        BigInteger x = Fixed(value), term = x, sum = x;
        for (int n = 2; !term.IsZero; n++)
        {
            term = ((term * x) >> Places) / n;
            sum += term;
        }

        return sum;
    }

    // 2·artanh(s), s = rise/(2·from + rise).
    private static BigInteger LogRatio(double from, double rise)
    {
        BigInteger s = (Fixed(rise) << Places) / ((2 * Fixed(from)) + Fixed(rise)), power = s, sum = s;
        BigInteger square = (s * s) >> Places;
        for (int n = 3; !power.IsZero; n += 2)
        {
            power = (power * square) >> Places;
            sum += power / n;
        }

        return 2 * sum;
    }
}

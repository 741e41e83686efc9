using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Tests.Numerics;

/// <summary>The root finder against another library's, and against what its book promises.</summary>
public class BrentTests
{
    // Name, function, bracket. Smooth and simple roots, where the method is superlinear.
    private static readonly Dictionary<string, (Func<double, double> F, double Low, double High)> Smooth = new(StringComparer.Ordinal)
    {
        // Wallis, 1685: x³ − 2x − 5, the classical example; root 2.0945514815423265 (from memory).
        ["cubic"] = (x => (x * x * x) - (2 * x) - 5, 2, 3),
        ["cosine"] = (x => Math.Cos(x) - x, 0, 1),
        ["exponential"] = (x => Math.Exp(-x) - x, 0, 1),
        ["falling"] = (x => 5 - (x * x), 1, 4),
        ["logarithm"] = (x => Math.Log(x) - 1, 0.5, 10),
        ["both signs"] = (x => Math.Sinh(x + 0.4), -2, 3),
        ["other end"] = (x => Math.Sqrt(x) - 1.3, 1, 40),
        ["downhill"] = (x => 1 - Math.Pow(x, 1.7), 0.2, 6),
    };

    public static TheoryData<string> Names => [.. Smooth.Keys];

    private static bool Find(Func<double, double> f, double low, double high, double tolerance, out double root, out int evaluations)
    {
        Counted counted = new(f, []);
        bool found = Brent.TryFindRoot(counted, low, high, tolerance, out root);
        evaluations = counted.At.Count;
        return found;
    }

    [Theory, MemberData(nameof(Names))]
    public void TryFindRoot_SmoothFunction_AgreesWithAnotherLibrary(string name)
    {
        (Func<double, double> f, double low, double high) = Smooth[name];

        Assert.True(Find(f, low, high, 1e-13, out double root, out _));

        Assert.Equal(MathNet.Numerics.RootFinding.Brent.FindRoot(f, low, high, 1e-14, 200), root, 2e-13);
    }

    /// <summary>Superlinear: halving the bracket down to 1e-12 of it would take forty evaluations. Brent (1973), chapter 4, finds such roots in about ten.</summary>
    [Theory, MemberData(nameof(Names))]
    public void TryFindRoot_SmoothFunction_TakesAThirdOfHalving(string name)
    {
        (Func<double, double> f, double low, double high) = Smooth[name];
        double tolerance = 1e-12 * (high - low);

        Assert.True(Find(f, low, high, tolerance, out _, out int evaluations));

        Assert.InRange(evaluations, 3, 13);
    }

    /// <summary>Chapter 4 again: never more than about the square of what halving takes, however flat the function is.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(9)]
    [InlineData(19)]
    public void TryFindRoot_FlatRoot_EndsWithTheBracketNarrow(int power)
    {
        Assert.True(Find(x => Math.Pow(x - 1, power), -1, 4, 1e-9, out double root, out int evaluations));

        Assert.Equal(1, root, 1e-9);
        Assert.InRange(evaluations, 10, 33 * 33);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-5)]
    [InlineData(1e-2)]
    public void TryFindRoot_Tolerance_IsKeptOnBothSides(double tolerance)
    {
        foreach ((Func<double, double> f, double low, double high) in Smooth.Values)
        {
            double exact = MathNet.Numerics.RootFinding.Brent.FindRoot(f, low, high, 1e-14, 200);
            Assert.True(Find(f, low, high, tolerance, out double up, out _));
            Assert.True(Find(x => f(-x), -high, -low, tolerance, out double down, out _));
            Assert.Equal(exact, up, tolerance);
            Assert.Equal(-exact, down, tolerance);
        }
    }

    [Fact]
    public void TryFindRoot_RootAtAnEnd_IsThatEnd()
    {
        Assert.True(Find(x => x - 2, 2, 5, 1e-9, out double low, out int first));
        Assert.True(Find(x => x - 5, 2, 5, 1e-9, out double high, out int second));

        Assert.Equal((2.0, 5.0), (low, high));
        Assert.Equal((2, 2), (first, second));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void TryFindRoot_NoChangeOfSign_SaysSo(int sign)
    {
        Assert.False(Find(x => sign * ((x * x) + 1), -1, 1, 1e-9, out _, out _));
        Assert.False(Find(x => sign * 1e-200 * ((x * x) + 1), -1, 1, 1e-9, out _, out _));
        Assert.False(Find(_ => double.NaN, -1, 1, 1e-9, out _, out _));
    }

    /// <summary>The product of the two ends underflows to zero here; their signs do not.</summary>
    [Theory]
    [InlineData(1e-200)]
    [InlineData(-1e-200)]
    public void TryFindRoot_TinyValues_AreStillBracketed(double scale)
    {
        Assert.True(Find(x => scale * (x - 0.25), 0, 1, 1e-12, out double root, out _));

        Assert.Equal(0.25, root, 1e-12);
    }

    [Fact]
    public void TryFindRoot_NotANumberOnTheWay_SaysSo() =>
        Assert.False(Find(x => x is > 0.1 and < 0.9 ? double.NaN : x - 0.5, 0, 1, 1e-9, out _, out _));

    /// <summary>It never looks outside the bracket, where a function may not be defined.</summary>
    [Fact]
    public void TryFindRoot_AnyFunction_StaysInside()
    {
        foreach ((Func<double, double> f, double low, double high) in Smooth.Values)
        {
            Counted counted = new(f, []);
            Assert.True(Brent.TryFindRoot(counted, low, high, 1e-12, out _));
            Assert.All(counted.At, x => Assert.InRange(x, low, high));
        }
    }

    private readonly struct Counted(Func<double, double> f, List<double> at) : IScalarFunction
    {
        public List<double> At => at;

        public double Evaluate(double x)
        {
            at.Add(x);
            return f(x);
        }
    }
}

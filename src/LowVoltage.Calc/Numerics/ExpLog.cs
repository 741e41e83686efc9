using System.Numerics;

namespace LowVoltage.Calc.Numerics;

/// <summary>exp(x) − 1 and ln(1 + x) that keep a small x; netstandard2.0 and .NET have neither for doubles.</summary>
/// <remarks>One lane of <see cref="VectorExpLog"/>: a single call and a bulk one give the same bits.</remarks>
internal static class ExpLog
{
    // Beyond them exp(x) − 1 is −1, or 2^k leaves the doubles; the plain forms lose nothing there.
    private const double LeastExponent = -37;
    private const double MostExponent = 700;

    /// <summary>exp(x) − 1.</summary>
    internal static double Expm1(double x) =>
        x >= LeastExponent && x <= MostExponent ? VectorExpLog.Expm1(new Vector<double>(x))[0] : Math.Exp(x) - 1;

    /// <summary>ln(1 + x); x above −1.</summary>
    internal static double Log1p(double x) =>
        x > -1 && x <= double.MaxValue ? VectorExpLog.Log1p(new Vector<double>(x))[0] : Math.Log(1 + x);
}

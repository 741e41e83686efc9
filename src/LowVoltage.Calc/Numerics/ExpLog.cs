using System.Numerics;

namespace LowVoltage.Calc.Numerics;

/// <summary>exp(x) − 1, ln(1 + x) and ln(b/a) that keep a small x or a b near a; netstandard2.0 and .NET have none of them for doubles.</summary>
/// <remarks>
/// Two are one lane of <see cref="VectorExpLog"/>: a single call and a bulk one give the same bits. ln(1 + x) is Kahan's correction (N. J. Higham,
/// Accuracy and Stability of Numerical Algorithms, 2nd ed., 2002, section 1.14.1): a few units in the last place.
/// </remarks>
internal static class ExpLog
{
    // Beyond them exp(x) − 1 is −1, or 2^k leaves the doubles; the plain form loses nothing there.
    private const double LeastExponent = -37;
    private const double MostExponent = 700;

    /// <summary>exp(x) − 1.</summary>
    internal static double Expm1(double x) =>
        x >= LeastExponent && x <= MostExponent ? VectorExpLog.Expm1(new Vector<double>(x))[0] : Math.Exp(x) - 1;

    /// <summary>ln(1 + x); x above −1.</summary>
    internal static double Log1p(double x)
    {
        double u = 1 + x;
        return u == 1 ? x : Math.Log(u) * x / (u - 1);
    }

    /// <summary>ln((from + rise)/from), without losing a small rise; from, rise and to = from + rise are positive.</summary>
    internal static double LogRatio(double from, double rise, double to) =>
        VectorExpLog.LogRatio(new Vector<double>(from), new Vector<double>(rise), new Vector<double>(to))[0];
}

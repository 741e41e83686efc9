namespace LowVoltage.Calc.Numerics;

/// <summary>exp(x) − 1 and ln(1 + x) that keep a small x; netstandard2.0 and .NET have neither for doubles.</summary>
/// <remarks>Kahan's corrections (N. J. Higham, Accuracy and Stability of Numerical Algorithms, 2nd ed., 2002, section 1.14.1): a few units in the last place.</remarks>
internal static class ExpLog
{
    /// <summary>exp(x) − 1.</summary>
    internal static double Expm1(double x)
    {
        double u = Math.Exp(x);
        if (u == 1)
        {
            return x;
        }

        // Far from zero the subtraction loses nothing, and ln(u) would bring in the error of x instead.
        return x > 1 || x < -1 ? u - 1 : (u - 1) * x / Math.Log(u);
    }

    /// <summary>ln(1 + x); x above −1.</summary>
    internal static double Log1p(double x)
    {
        double u = 1 + x;
        return u == 1 ? x : Math.Log(u) * x / (u - 1);
    }
}

namespace LowVoltage.Calc.Numerics;

/// <summary>Brent's root finder on a bracket, over a struct function: no allocation, no exception.</summary>
/// <remarks>R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4. Converges on the width of the bracket, never on |f|.</remarks>
internal static class Brent
{
    private const int MostIterations = 200;

    /// <summary>Finds x in [low, high] with f(x) = 0, where f changes sign over the bracket.</summary>
    /// <param name="tolerance">Absolute accuracy in x; the relative accuracy of a double is added.</param>
    /// <returns>False when the ends do not bracket a root, or f is not finite.</returns>
    internal static bool TryFindRoot<TFunction>(in TFunction function, double low, double high, double tolerance, out double root)
        where TFunction : struct, IScalarFunction
    {
        double a = low, b = high;
        double fa = function.Evaluate(a), fb = function.Evaluate(b);
        root = b;
        if (fa == 0)
        {
            root = a;
            return true;
        }

        if (fb == 0)
        {
            return true;
        }

        if (!(fa * fb < 0) && !(fa < 0 && fb > 0) && !(fa > 0 && fb < 0))
        {
            return false;
        }

        double c = a, fc = fa, step = b - a, previous = step;
        for (int i = 0; i < MostIterations; i++)
        {
            if (Math.Abs(fc) < Math.Abs(fb))
            {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }

            double accuracy = (2 * 2.2e-16 * Math.Abs(b)) + (0.5 * tolerance);
            double half = 0.5 * (c - b);
            if (Math.Abs(half) <= accuracy || fb == 0)
            {
                root = b;
                return true;
            }

            if (Math.Abs(previous) >= accuracy && Math.Abs(fa) > Math.Abs(fb))
            {
                Interpolate(a, b, c, fa, fb, fc, half, accuracy, ref step, ref previous);
            }
            else
            {
                step = half;
                previous = half;
            }

            a = b;
            fa = fb;
            b += Math.Abs(step) > accuracy ? step : (half > 0 ? accuracy : -accuracy);
            fb = function.Evaluate(b);
            if (double.IsNaN(fb))
            {
                return false;
            }

            if ((fb > 0) == (fc > 0))
            {
                c = a;
                fc = fa;
                step = b - a;
                previous = step;
            }
        }

        root = b;
        return false;
    }

    // Secant when two points are known, inverse quadratic when three are; bisection when the step would be too large.
    private static void Interpolate(
        double a, double b, double c, double fa, double fb, double fc, double half, double accuracy, ref double step, ref double previous)
    {
        double p, q, s = fb / fa;
        if (a == c)
        {
            p = 2 * half * s;
            q = 1 - s;
        }
        else
        {
            double r = fb / fc, t = fa / fc;
            p = s * ((2 * half * t * (t - r)) - ((b - a) * (r - 1)));
            q = (t - 1) * (r - 1) * (s - 1);
        }

        if (p > 0)
        {
            q = -q;
        }
        else
        {
            p = -p;
        }

        if (2 * p < Math.Min((3 * half * q) - Math.Abs(accuracy * q), Math.Abs(previous * q)))
        {
            previous = step;
            step = p / q;
        }
        else
        {
            step = half;
            previous = half;
        }
    }
}

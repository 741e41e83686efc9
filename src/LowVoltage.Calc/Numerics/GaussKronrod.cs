namespace LowVoltage.Calc.Numerics;

/// <summary>Adaptive Gauss-Kronrod quadrature (7 and 15 points) over a struct function: no allocation, no exception.</summary>
/// <remarks>
/// R. Piessens et al., QUADPACK (1983): nodes and weights of rule qk15. Halves an interval while the two rules differ by more than the
/// tolerance. That is not shared out among the intervals: the kept rule is better by orders than the difference says, and rounding noise
/// then dies out with the width instead of being chased. An interval also ends where the two rules agree to the fraction asked for of its own
/// value: enough for an integrand of one sign, and it ends where the first, coarse rule missed a spike and the tolerance came out below the rounding.
/// </remarks>
internal static class GaussKronrod
{
    private const int MostDepth = 40;

    /// <summary>Integral of f from a to b.</summary>
    /// <param name="function">The integrand, of one sign.</param>
    /// <param name="a">Start.</param>
    /// <param name="b">End.</param>
    /// <param name="relative">Accuracy as a fraction of the integral.</param>
    internal static double Integrate<TFunction>(in TFunction function, double a, double b, double relative)
        where TFunction : struct, IScalarFunction
    {
        double whole = Rule(function, a, b, out double difference);
        return Settle(function, a, b, whole, difference, relative, relative * Math.Abs(whole), MostDepth);
    }

    private static double Settle<TFunction>(
        in TFunction function, double a, double b, double value, double difference, double relative, double tolerance, int depth)
        where TFunction : struct, IScalarFunction
    {
        // The difference is the error of the 7-point rule; that of the 15-point rule, which is kept, is smaller by orders.
        if (!(difference > Math.Max(tolerance, relative * Math.Abs(value))) || depth == 0)
        {
            return value;
        }

        double middle = 0.5 * (a + b);
        double left = Rule(function, a, middle, out double leftDifference);
        double right = Rule(function, middle, b, out double rightDifference);
        return Settle(function, a, middle, left, leftDifference, relative, tolerance, depth - 1)
            + Settle(function, middle, b, right, rightDifference, relative, tolerance, depth - 1);
    }

    private static double Rule<TFunction>(in TFunction function, double a, double b, out double difference)
        where TFunction : struct, IScalarFunction
    {
        double center = 0.5 * (a + b), half = 0.5 * (b - a);
        double middle = function.Evaluate(center);
        double f1 = Pair(function, center, half * 0.949107912342758524526189684047851);
        double f2 = Pair(function, center, half * 0.741531185599394439863864773280788);
        double f3 = Pair(function, center, half * 0.405845151377397166906606412076961);
        double gauss = (0.417959183673469387755102040816327 * middle)
            + (0.129484966168869693270611432679082 * f1)
            + (0.279705391489276667901467771423780 * f2)
            + (0.381830050505118944950369775488975 * f3);
        double kronrod = (0.209482141084727828012999174891714 * middle)
            + (0.063092092629978553290700663189204 * f1)
            + (0.140653259715525918745189590510238 * f2)
            + (0.190350578064785409913256402421014 * f3)
            + (0.022935322010529224963732008058970 * Pair(function, center, half * 0.991455371120812639206854697526329))
            + (0.104790010322250183839876322541518 * Pair(function, center, half * 0.864864423359769072789712788640926))
            + (0.169004726639267902826583426598550 * Pair(function, center, half * 0.586087235467691130294144691258584))
            + (0.204432940075298892414161999234649 * Pair(function, center, half * 0.207784955007898467600689403773245));
        difference = Math.Abs((kronrod - gauss) * half);
        return kronrod * half;
    }

    private static double Pair<TFunction>(in TFunction function, double center, double offset)
        where TFunction : struct, IScalarFunction =>
        function.Evaluate(center - offset) + function.Evaluate(center + offset);
}

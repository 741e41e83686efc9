namespace LowVoltage.Calc.Numerics;

/// <summary>A line of straight pieces in log-log coordinates: exact at its points, a power law between them and beyond the last.</summary>
/// <remarks>Abscissae rise, ordinates are positive; the caller has checked that. Nothing is answered below the first point. Does not allocate when asked.</remarks>
internal sealed class LogLogLine
{
    // Two ways of writing the same current (1.35 × 15 A, 20.25 A) differ by rounding only; they are the same point.
    private const double SamePoint = 1e-12;

    private readonly double[] xs;
    private readonly double[] ys;
    private readonly double[] slopes;

    /// <param name="xs">Abscissae, rising.</param>
    /// <param name="ys">Ordinates, positive.</param>
    /// <param name="slopeBeyond">d ln y / d ln x beyond the last point.</param>
    internal LogLogLine(double[] xs, double[] ys, double slopeBeyond)
    {
        this.xs = xs;
        this.ys = ys;
        slopes = new double[xs.Length];
        for (int i = 0; i < xs.Length - 1; i++)
        {
            slopes[i] = Math.Log(ys[i + 1] / ys[i]) / Math.Log(xs[i + 1] / xs[i]);
        }

        slopes[xs.Length - 1] = slopeBeyond;
    }

    internal double FirstX => xs[0];

    internal double LastX => xs[xs.Length - 1];

    internal double LastY => ys[ys.Length - 1];

    internal int Count => xs.Length;

    internal double X(int index) => xs[index];

    internal double Y(int index) => ys[index];

    /// <summary>d ln y / d ln x from a point to the next one, or beyond the last.</summary>
    internal double Slope(int index) => slopes[index];

    /// <summary>Whether x is at or beyond the first point.</summary>
    internal bool Covers(double x) => x >= xs[0] * (1 - SamePoint);

    /// <summary>The ordinate at x, which <see cref="Covers"/> accepts.</summary>
    internal double At(double x)
    {
        int i = PieceAt(x);
        return IsPoint(x, i) ? ys[i] : ys[i] * Math.Exp(slopes[i] * Math.Log(x / xs[i]));
    }

    /// <summary>Index of the point at or below x.</summary>
    internal int PieceAt(double x)
    {
        int i = xs.Length - 1;
        while (i > 0 && x < xs[i] * (1 - SamePoint))
        {
            i--;
        }

        return i;
    }

    /// <summary>Whether x is the point that <see cref="PieceAt"/> gave.</summary>
    internal bool IsPoint(double x, int index) => x <= xs[index] * (1 + SamePoint);

    /// <summary>The ordinate of the first point at or beyond x; false beyond the last point.</summary>
    internal bool TryStepAt(double x, out double y)
    {
        for (int i = 0; i < xs.Length; i++)
        {
            if (x <= xs[i] * (1 + SamePoint))
            {
                y = ys[i];
                return true;
            }
        }

        y = 0;
        return false;
    }
}

namespace LowVoltage.Calc.Numerics;

/// <summary>The numbers of one factorisation L·D·Lᵀ over a <see cref="SymmetricPattern"/>. Allocates once; then clear, add, factor and solve as often as needed.</summary>
/// <remarks>Not thread-safe: one owner. Without pivoting, which a positive definite matrix does not need; what is not positive definite is told by its pivot.</remarks>
internal sealed class SymmetricFactor
{
    // A pivot that rounding alone could have left of its diagonal.
    private const double Nothing = 1e-14;

    private readonly SymmetricPattern pattern;
    private readonly double[] before;

    internal SymmetricFactor(SymmetricPattern pattern)
    {
        this.pattern = pattern;
        Diagonal = new double[pattern.Count + 1];
        Lower = new double[pattern.Rows.Length + 1];
        before = new double[pattern.Count];
    }

    /// <summary>Before factoring the diagonal of the matrix, by position; then D. The last number is spare: entries that fall outside the matrix go there.</summary>
    internal double[] Diagonal { get; }

    /// <summary>Before factoring the entries below the diagonal, at <see cref="SymmetricPattern.EntryOf"/>; then L. The last number is spare.</summary>
    internal double[] Lower { get; }

    internal void Clear()
    {
        Array.Clear(Diagonal, 0, Diagonal.Length);
        Array.Clear(Lower, 0, Lower.Length);
    }

    /// <summary>Factors what was added.</summary>
    /// <returns>−1, or the position of the first pivot that is negative: the matrix is not positive definite.</returns>
    /// <remarks>A pivot of nothing (an unknown that nothing ties down) is taken as infinite: that unknown stays where it is.</remarks>
    internal int Factor()
    {
        double[] d = Diagonal, l = Lower;
        int[] starts = pattern.Starts, rows = pattern.Rows, targets = pattern.Targets;
        int count = pattern.Count, next = 0;
        Array.Copy(d, before, count);
        for (int k = 0; k < count; k++)
        {
            double pivot = d[k];
            if (!(Math.Abs(pivot) > Nothing * Math.Abs(before[k])))
            {
                d[k] = pivot = double.PositiveInfinity;
            }
            else if (pivot < 0)
            {
                return k;
            }

            int end = starts[k + 1];
            for (int i = starts[k]; i < end; i++)
            {
                double value = l[i], scaled = value / pivot;
                d[rows[i]] -= scaled * value;
                for (int j = i + 1; j < end; j++)
                {
                    l[targets[next++]] -= scaled * l[j];
                }

                l[i] = scaled;
            }
        }

        return -1;
    }

    /// <summary>Whether nothing ties down the unknown at a position.</summary>
    internal bool IsLoose(int position) => double.IsInfinity(Diagonal[position]);

    /// <summary>Solves in place; the right-hand side is ordered by position.</summary>
    internal void Solve(double[] x)
    {
        double[] d = Diagonal, l = Lower;
        int[] starts = pattern.Starts, rows = pattern.Rows;
        int count = pattern.Count;
        for (int k = 0; k < count; k++)
        {
            double value = x[k];
            for (int i = starts[k]; i < starts[k + 1]; i++)
            {
                x[rows[i]] -= l[i] * value;
            }
        }

        for (int k = count - 1; k >= 0; k--)
        {
            double value = x[k] / d[k];
            for (int i = starts[k]; i < starts[k + 1]; i++)
            {
                value -= l[i] * x[rows[i]];
            }

            x[k] = value;
        }
    }
}

using LowVoltage.Calc.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace LowVoltage.Calc.Tests.Numerics;

public class SymmetricFactorTests
{
    [Fact]
    public void Solve_RandomMatrices_AgreesWithADenseFactorisation()
    {
        Random random = new(77);
        for (int n = 0; n < 200; n++)
        {
            int count = 1 + random.Next(40);
            (int A, int B)[] ends = [.. Enumerable.Range(0, random.Next(3 * count)).Select(_ => (random.Next(count), random.Next(count))).Where(e => e.Item1 != e.Item2)];
            SymmetricPattern pattern = SymmetricPattern.Create(count, ends);
            Matrix<double> dense = Matrix<double>.Build.Dense(count, count);
            SymmetricFactor factor = new(pattern);
            for (int k = 0; k < count; k++)
            {
                dense[k, k] += factor.Diagonal[pattern.Position[k]] += 0.01 + random.NextDouble();
            }

            foreach ((int a, int b) in ends)
            {
                double g = random.NextDouble() * 100;
                (int p, int q) = (pattern.Position[a], pattern.Position[b]);
                factor.Diagonal[p] += g;
                factor.Diagonal[q] += g;
                factor.Lower[pattern.EntryOf(p, q)] -= g;
                dense[a, a] += g;
                dense[b, b] += g;
                dense[a, b] -= g;
                dense[b, a] -= g;
            }

            Vector<double> right = Vector<double>.Build.Dense(count, _ => random.NextDouble() - 0.5), expected = dense.Cholesky().Solve(right);
            double[] x = new double[count];
            for (int k = 0; k < count; k++)
            {
                x[pattern.Position[k]] = right[k];
            }

            Assert.Equal(-1, factor.Factor());
            factor.Solve(x);
            for (int k = 0; k < count; k++)
            {
                Assert.Equal(expected[k], x[pattern.Position[k]], 1e-9 * expected.AbsoluteMaximum());
            }
        }
    }

    [Fact]
    public void Create_ATree_HasNoFill()
    {
        Random random = new(3);
        (int, int)[] tree = [.. Enumerable.Range(1, 999).Select(k => (k, random.Next(k)))];
        SymmetricPattern pattern = SymmetricPattern.Create(1000, tree);
        Assert.Equal(999, pattern.Rows.Length);
        Assert.Equal(1000, pattern.Position.Distinct().Count());
        Assert.Empty(pattern.Targets);
    }

    [Fact]
    public void Factor_NotPositiveDefinite_NamesThePivot()
    {
        // 1 −2; −2 1: the second pivot is 1 − 4.
        SymmetricPattern pattern = SymmetricPattern.Create(2, [(0, 1)]);
        SymmetricFactor factor = new(pattern);
        factor.Diagonal[0] = factor.Diagonal[1] = 1;
        factor.Lower[0] = -2;
        Assert.Equal(1, factor.Factor());
    }

    [Fact]
    public void Factor_UnknownThatNothingTies_StaysWhereItIs()
    {
        // Two unknowns that only hold on to each other.
        SymmetricPattern pattern = SymmetricPattern.Create(2, [(0, 1)]);
        SymmetricFactor factor = new(pattern);
        factor.Diagonal[0] = factor.Diagonal[1] = 1;
        factor.Lower[0] = -1;
        Assert.Equal(-1, factor.Factor());
        double[] x = [1, -1];
        factor.Solve(x);
        Assert.True(factor.IsLoose(1));
        Assert.Equal([1.0, 0.0], x);
    }
}

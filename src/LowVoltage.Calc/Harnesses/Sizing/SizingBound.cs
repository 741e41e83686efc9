namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>A cost that no choice of sizes can be below, for any problem, tree or not.</summary>
/// <remarks>
/// <code>L(λ) = Σ over wires of least over options of (cost + drop·Σ λ of its loads) − Σ λ·allowance,   λ ≥ 0</code>
/// <para>Whoever keeps every allowance pays at least L(λ), whatever λ: a Lagrange bound. λ is raised where the choice of least L passes an allowance and lowered where it leaves room, with steps that shrink.</para>
/// </remarks>
internal static class SizingBound
{
    private const int Rounds = 600;

    /// <summary>The largest bound found.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="known">Cost of a choice that keeps every allowance: what the steps are measured by.</param>
    internal static double Of(SizingProblem problem, double known) => Climb(problem, known, null);

    /// <summary>The cheapest of a known choice and those that the climb passes, each cured of what it passes and taken back: the best choices often lie beside the best prices.</summary>
    internal static int[] Improve(SizingProblem problem, int[] known)
    {
        int[] best = known;
        double cost = problem.CostOf(known);
        _ = Climb(problem, cost, options =>
        {
            if (GreedySizer.From(problem, options) is { } cured && problem.CostOf(cured) is var its && its < cost)
            {
                (best, cost) = (cured, its);
            }
        });
        return best;
    }

    private static double Climb(SizingProblem problem, double known, Action<int[]>? visit)
    {
        double[] price = new double[problem.Allowance.Length];
        int[] options = new int[problem.Wires];
        double best = double.NegativeInfinity, pace = 1.5;
        int idle = 0;

        // Each visit grows and takes back a whole choice: fewer of them where there are many wires.
        int every = 10 * Math.Max(1, problem.Wires / 100);
        for (int n = 0; n < Rounds; n++)
        {
            double bound = Choose(problem, price, options);
            (best, idle) = bound > best * (1 + 1e-12) || best == double.NegativeInfinity ? (bound, 0) : (Math.Max(best, bound), idle + 1);
            if (idle == 15)
            {
                (pace, idle) = (0.6 * pace, 0);
            }

            if (n % every == 0)
            {
                visit?.Invoke(options);
            }

            double[] left = problem.Left(options);
            double square = left.Sum(l => l * l);
            double step = square > 0 ? pace * Math.Max(known - bound, 1e-6 * Math.Abs(known)) / square : 0;
            if (step == 0)
            {
                break;
            }

            for (int load = 0; load < price.Length; load++)
            {
                price[load] = Math.Max(0, price[load] - (step * left[load]));
            }
        }

        return Math.Min(best, known);
    }

    private static double Choose(SizingProblem problem, double[] price, int[] options)
    {
        double bound = 0;
        for (int w = 0; w < problem.Wires; w++)
        {
            double weight = problem.Loads[w].Sum(load => price[load]), least = double.PositiveInfinity;
            for (int option = 0; option < problem.Cost[w].Length; option++)
            {
                double cost = problem.Cost[w][option] + (weight * problem.Drop[w][option]);
                if (cost < least)
                {
                    (least, options[w]) = (cost, option);
                }
            }

            bound += least;
        }

        for (int load = 0; load < price.Length; load++)
        {
            bound -= price[load] * problem.Allowance[load];
        }

        return bound;
    }
}

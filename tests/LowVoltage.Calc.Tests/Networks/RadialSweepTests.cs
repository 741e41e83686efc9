using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>Random trees with constant powers against a forward-backward sweep, the other usual method; loaded up to and beyond what they can carry.</summary>
public class RadialSweepTests
{
    private const int Cases = 3000;

    [Fact]
    public void Solve_RandomTrees_AgreesWithTheSweep()
    {
        Random random = new(2718);
        int exist = 0, none = 0;
        for (int n = 0; n < Cases; n++)
        {
            Tree tree = new(random, 2 + random.Next(11));
            double[]? swept = tree.Sweep(out bool settled);
            if (!settled)
            {
                // So near the largest power that the sweep creeps.
                continue;
            }

            NetworkSolver solver = new(NetworkShape.Create(tree.Count, 0, tree.Elements(), []), tree.Elements(), []);
            NetworkEnd end = solver.Solve();
            Assert.Equal(swept is not null, end == NetworkEnd.Solved);
            Assert.Equal(NetworkEnd.Solved, swept is null ? NetworkEnd.Solved : end);
            if (swept is null)
            {
                none++;
                Assert.InRange(solver.Share, 0.01, 1);
                if (none % 10 == 0)
                {
                    AssertEdge(tree, solver.Share);
                }

                continue;
            }

            exist++;
            for (int k = 0; k < tree.Count; k++)
            {
                Assert.Equal(swept[k], solver.Volts[k], 1e-9 * tree.Volts);
            }
        }

        Assert.True(exist > Cases / 2, $"{exist} exist");
        Assert.True(none > Cases / 20, $"{none} do not");
    }

    // The share that the solver says can be supplied: a little less can by the sweep, a little more cannot.
    private static void AssertEdge(Tree tree, double share)
    {
        Assert.NotNull(tree.Times(share * (1 - 1e-4)).Sweep(out _));
        Assert.Null(tree.Times(share * (1 + 1e-4)).Sweep(out bool settled));
        Assert.True(settled);
    }

    private sealed class Tree
    {
        private readonly int[] parent;
        private readonly double[] ohms;
        private readonly double[] cubic;
        private readonly double[] watts;

        internal Tree(Random random, int loads)
        {
            Volts = 12 + (36 * random.NextDouble());
            Count = loads + 2;
            (parent, ohms, cubic, watts) = (new int[Count], new double[Count], new double[Count], new double[Count]);
            double most = Volts * Volts / 4;
            for (int k = 2; k < Count; k++)
            {
                parent[k] = 1 + random.Next(k - 1);
                ohms[k] = 0.01 * Math.Pow(20, random.NextDouble());
                double rated = 5 + (30 * random.NextDouble());
                cubic[k] = random.Next(4) == 0 ? 0 : 0.4 * ohms[k] / (rated * rated);
                watts[k] = most / ohms[k] / loads * 0.5 * Math.Pow(random.NextDouble(), 2);
            }
        }

        private Tree(Tree other, double times)
        {
            (Volts, Count, parent, ohms, cubic) = (other.Volts, other.Count, other.parent, other.ohms, other.cubic);
            watts = [.. other.watts.Select(w => w * times)];
        }

        internal double Volts { get; }

        internal int Count { get; }

        internal Tree Times(double times) => new(this, times);

        // Node 0 is the reference, node 1 stands behind the battery's own resistance.
        internal Element[] Elements()
        {
            List<Element> all = [Element.Battery(1, 0, Volts, 0.005)];
            for (int k = 2; k < Count; k++)
            {
                all.Add(Element.Wire(parent[k], k, ohms[k], cubic[k]));
                all.Add(Element.Power(k, 0, watts[k], 0));
            }

            return [.. all];
        }

        // From no load down: each round takes the currents at the last voltages, so the voltages only fall, to the highest solution or past all of them.
        internal double[]? Sweep(out bool settled)
        {
            double[] u = [.. Enumerable.Repeat(Volts, Count)], i = new double[Count];
            u[0] = 0;
            settled = true;
            for (int round = 0; round < 5_000; round++)
            {
                Array.Clear(i);
                for (int k = Count - 1; k > 1; k--)
                {
                    i[k] += watts[k] / u[k];
                    i[parent[k]] += i[k];
                }

                double moved = Math.Abs(u[1] - (Volts - (0.005 * i[1])));
                u[1] = Volts - (0.005 * i[1]);
                for (int k = 2; k < Count; k++)
                {
                    double next = u[parent[k]] - (ohms[k] * i[k]) - (cubic[k] * i[k] * i[k] * i[k]);
                    moved = Math.Max(moved, Math.Abs(next - u[k]));
                    u[k] = next;
                    if (!(next > 0))
                    {
                        return null;
                    }
                }

                if (moved < 1e-14 * Volts)
                {
                    return u;
                }
            }

            settled = false;
            return null;
        }
    }
}

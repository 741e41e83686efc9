using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>Random harnesses: every one is solved, and every law and balance holds when it is worked out again.</summary>
public class RandomHarnessTests
{
    // A thousand of them; the seed moves on with each, so none is met twice.
    public static TheoryData<int> Lots => [.. Enumerable.Range(0, 10)];

    [Theory]
    [MemberData(nameof(Lots))]
    public void Solve_AHundredHarnesses_BalancesEveryNode(int lot)
    {
        int cut = 0, powers = 0;
        for (int n = 0; n < 100; n++)
        {
            RandomHarness harness = new((1000 * lot) + n, branches: 8 + (n * n / 12));
            NetworkSolver solver = harness.Solver();
            NetworkEnd end = solver.Solve();
            if (end == NetworkEnd.PowerOutOfReach)
            {
                Assert.InRange(solver.Share, 0, 1);
                Assert.Equal(ElementLaw.Power, solver.Elements[solver.Hardest].Law);
            }
            else
            {
                Assert.Equal(NetworkEnd.Solved, end);
            }

            Assert.InRange(Kirchhoff(harness, solver), 0, 1e-9);
            Laws(harness, solver);
            powers += harness.Elements.Count(e => e.Law == ElementLaw.Power);
            cut += solver.Powers.Count(p => p != PowerState.On);
        }

        Assert.InRange(cut, 1, powers / 2);
    }

    // The balance, added up apart from the solver's own.
    private static double Kirchhoff(RandomHarness harness, NetworkSolver solver)
    {
        double[] sums = new double[harness.Nodes];
        for (int k = 0; k < harness.Elements.Length; k++)
        {
            sums[harness.Elements[k].Positive] += solver.Amperes[k];
            sums[harness.Elements[k].Negative] -= solver.Amperes[k];
        }

        return sums.Max(Math.Abs);
    }

    private static void Laws(RandomHarness harness, NetworkSolver solver)
    {
        for (int k = 0; k < harness.Elements.Length; k++)
        {
            Element e = harness.Elements[k];
            double u = solver.Volts[e.Positive] - solver.Volts[e.Negative], i = solver.Amperes[k], fine = 1e-11 * harness.Volts;
            switch (e.Law)
            {
                case ElementLaw.Cubic:
                    Assert.Equal((e.A * i) + (e.B * i * i * i), u, fine);
                    break;
                case ElementLaw.Runaway:
                    Assert.Equal(e.A * i / (1 - (e.B * i * i)), u, fine);
                    break;
                case ElementLaw.Line:
                    Assert.Equal(e.A + (i / e.B), u, fine);
                    break;
                case ElementLaw.Supply when i < 0 && i > -e.B && e.C == 0:
                    Assert.Equal(e.A, u, 1e-9 * harness.Volts);
                    break;
                case ElementLaw.Supply:
                    Assert.InRange(i, -e.B, 0);
                    Assert.True(i < 0 || u >= e.A - fine, "a supply that gives nothing stands below its voltage");
                    break;
                case ElementLaw.Power when solver.Powers[k] == PowerState.On && solver.Share == 1:
                    Assert.Equal(e.A, u * i, 1e-9 * e.A);
                    Assert.True(u >= e.B - fine);
                    break;
                case ElementLaw.Power when solver.Powers[k] != PowerState.On:
                    Assert.Equal(0, i);
                    Assert.Equal(solver.Powers[k] == PowerState.Restartable, u >= e.B);
                    break;
            }
        }
    }
}

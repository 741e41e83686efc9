using LowVoltage.Calc.Networks;
using MathNet.Numerics.LinearAlgebra;

namespace LowVoltage.Calc.Tests.Networks;

public class NetworkSolverTests
{
    [Fact]
    public void Solve_RandomLinearMeshes_AgreeWithDenseNodalAnalysis()
    {
        Random random = new(31);
        for (int n = 0; n < 300; n++)
        {
            (int nodes, Element[] elements) = Mesh(random);
            Vector<double> dense = Dense(nodes, elements);
            NetworkSolver solver = Solved(nodes, elements);
            for (int k = 1; k < nodes; k++)
            {
                Assert.Equal(dense[k - 1], solver.Volts[k], 1e-10 * dense.AbsoluteMaximum());
            }

            int a = random.Next(nodes), b = random.Next(nodes);
            Assert.Equal(DenseOhms(nodes, elements, a, b), solver.Thevenin(a, b).Ohms, 1e-9 * DenseOhms(nodes, elements, a, b));
            Assert.Equal(solver.Volts[a] - solver.Volts[b], solver.Thevenin(a, b).Volts, 1e-12);
        }
    }

    [Fact]
    public void Solve_NodesAndElementsInAnotherOrder_GivesTheSame()
    {
        Random random = new(5);
        for (int n = 0; n < 200; n++)
        {
            RandomHarness harness = new(50_000 + n, 60);
            NetworkSolver solver = harness.Solver();
            NetworkEnd end = solver.Solve();
            int[] node = [0, .. Enumerable.Range(1, harness.Nodes - 1).OrderBy(_ => random.Next())];
            int[] order = [.. Enumerable.Range(0, harness.Elements.Length).OrderBy(_ => random.Next())];
            Element[] moved = [.. order.Select(k =>
            {
                Element e = harness.Elements[k];
                (e.Positive, e.Negative) = (node[e.Positive], node[e.Negative]);
                return e;
            })];
            NetworkSolver other = new(NetworkShape.Create(harness.Nodes, 0, moved, []), moved, []);
            Assert.Equal(end, other.Solve());
            if (end != NetworkEnd.Solved)
            {
                Assert.Equal(solver.Share, other.Share, 1e-5);
                continue;
            }

            for (int k = 0; k < harness.Nodes; k++)
            {
                Assert.Equal(solver.Volts[k], other.Volts[node[k]], 1e-9 * harness.Volts);
            }
        }
    }

    [Fact]
    public void Solve_WiresSplitInTwo_ChangesNothing()
    {
        for (int n = 0; n < 200; n++)
        {
            RandomHarness harness = new(70_000 + n, 40);
            NetworkSolver solver = harness.Solver();
            NetworkEnd end = solver.Solve();
            List<Element> split = [];
            int nodes = harness.Nodes;
            double part = 0.1 + (0.8 * n / 200);
            foreach (Element e in harness.Elements)
            {
                if (e.Law != ElementLaw.Cubic)
                {
                    split.Add(e);
                    continue;
                }

                split.Add(Element.Wire(e.Positive, nodes, e.A * part, e.B * part));
                split.Add(Element.Wire(nodes++, e.Negative, e.A * (1 - part), e.B * (1 - part)));
            }

            NetworkSolver other = new(NetworkShape.Create(nodes, 0, [.. split], []), [.. split], []);
            Assert.Equal(end, other.Solve());
            for (int k = 0; k < harness.Nodes && end == NetworkEnd.Solved; k++)
            {
                Assert.Equal(solver.Volts[k], other.Volts[k], 1e-9 * harness.Volts);
            }
        }
    }

    /// <summary>A ring of three equal wires, 10 A at each of two points, fed at the third: 10 A come from either side, none between, by symmetry.</summary>
    [Fact]
    public void Solve_RingFeed_DividesBySymmetry()
    {
        Element[] ring =
        [
            Element.Battery(1, 0, 12, 1e-3), Element.Wire(1, 2, 0.02, 1e-5), Element.Wire(2, 3, 0.02, 1e-5), Element.Wire(3, 1, 0.02, 1e-5),
            Element.Steady(2, 0, 10), Element.Steady(3, 0, 10),
        ];
        NetworkSolver solver = Solved(4, ring);
        Assert.Equal(12 - 0.02 - 0.2 - 0.01, solver.Volts[2], 1e-12);
        Assert.Equal(solver.Volts[2], solver.Volts[3], 1e-12);
        Assert.Equal([10.0, 0.0, -10.0], solver.Amperes[1..4].Select(i => Math.Round(i, 9)));
    }

    /// <summary>10 V behind 1 Ω, a load of 9 W that needs 6 V: with it on, 9 V·1 A. A second of 12 W pulls both to 10 − 21/U: U² − 10·U + 21 = 0, 7 V.</summary>
    [Fact]
    public void Solve_TwoLoadsThatTheSourceCanJustFeed_BothRun()
    {
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 10, 1), Element.Power(1, 0, 9, 6), Element.Power(1, 0, 12, 6)]);
        Assert.Equal(7, solver.Volts[1], 1e-9);
        Assert.Equal(0, solver.DroppedOut);
    }

    /// <summary>The second needs 16 W: U² − 10·U + 25 = 0 has its only answer at 5 V, below the 6 V of both: the one farther below its own cut-out goes, and could come back.</summary>
    [Fact]
    public void Solve_TwoLoadsThatTheSourceCannotFeed_OneDropsOutAndIsRestartable()
    {
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 10, 1), Element.Power(1, 0, 9, 6), Element.Power(1, 0, 16, 7)]);
        Assert.Equal(9, solver.Volts[1], 1e-9);
        Assert.Equal([PowerState.On, PowerState.On, PowerState.Restartable], solver.Powers);
        Assert.Equal(1, solver.DroppedOut);
    }

    [Fact]
    public void Solve_LoadBelowItsLeastVoltageWithAllOff_IsOffInEveryState()
    {
        // A heater of 1 Ω leaves 5 V of 10 V: the converter that needs 6 V never starts.
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 10, 1), Element.Resistance(1, 0, 1), Element.Power(1, 0, 1, 6)]);
        Assert.Equal(5, solver.Volts[1], 1e-9);
        Assert.Equal(PowerState.CutOut, solver.Powers[2]);
        Assert.Equal(0, solver.DroppedOut);
    }

    /// <summary>10 V behind 1 Ω give at most 25 W: of 40 W that is the share 0.625, and the load is named.</summary>
    [Fact]
    public void Solve_PowerBeyondTheLargest_NamesTheLoadAndTheShare()
    {
        Element[] elements = [Element.Battery(1, 0, 10, 0.4), Element.Resistance(1, 2, 0.6), Element.Power(2, 0, 40, 0)];
        NetworkSolver solver = new(NetworkShape.Create(3, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
        Assert.Equal(0.625, solver.Share, 1e-6);
        Assert.Equal(2, solver.Hardest);
        Assert.Equal(40, solver.Elements[2].A);

        // The numbers are those of the largest share: 25 W at half the voltage, where a part in a million of power is a part in a thousand of voltage.
        Assert.Equal(5, solver.Volts[2], 0.02);
        Assert.Equal(5, -solver.Amperes[0], 0.02);
    }

    [Fact]
    public void Solve_SourcePastItsLimit_DisconnectsTheWorstFirst()
    {
        Element pack = Element.Battery(1, 0, 12.8, 0.01), second = Element.Battery(1, 0, 12.6, 0.01);
        pack.Trips = 30;
        second.Trips = 100;
        NetworkSolver solver = Solved(2, [pack, second, Element.Steady(1, 0, 60)]);
        // The pack would give 40 A: it goes, and the other gives all.
        Assert.True(solver.IsDisconnected(0));
        Assert.False(solver.IsDisconnected(1));
        Assert.Equal(0, solver.Amperes[0]);
        Assert.Equal(12.6 - 0.6, solver.Volts[1], 1e-12);
    }

    [Fact]
    public void Solve_ChargerBesideABattery_HoldsItsVoltageThenItsLimitAndNeverAbsorbs()
    {
        // 14.4 V at most 20 A into 12.6 V behind 50 mΩ: (14.4 − 12.6)/0.05 = 36 A asked, so the limit holds and the terminals stand at 13.6 V.
        NetworkSolver limited = Solved(2, [Element.Battery(1, 0, 12.6, 0.05), Element.Supply(1, 0, 14.4, 20)]);
        Assert.Equal(13.6, limited.Volts[1], 1e-9);
        Assert.Equal(-20, limited.Amperes[1]);
        NetworkSolver holds = Solved(2, [Element.Battery(1, 0, 12.6, 0.05), Element.Supply(1, 0, 13.4, 20)]);
        Assert.Equal(13.4, holds.Volts[1], 1e-9);
        Assert.Equal(-16, holds.Amperes[1], 1e-7);
        NetworkSolver idle = Solved(2, [Element.Battery(1, 0, 12.6, 0.05), Element.Supply(1, 0, 12, 20)]);
        Assert.Equal(12.6, idle.Volts[1], 1e-9);
        Assert.Equal(0, idle.Amperes[1]);
        // A panel of 20 V open: below that it gives, above nothing.
        NetworkSolver panel = Solved(2, [Element.Battery(1, 0, 25, 0.05), Element.Solar(1, 0, 5, 5 / (Math.Exp(10) - 1), 2)]);
        Assert.Equal(0, panel.Amperes[1]);
    }

    [Fact]
    public void Solve_Again_AllocatesNothingAndForgetsTheLastSolution()
    {
        RandomHarness harness = new(12, 150);
        NetworkSolver solver = harness.Solver();
        _ = solver.Solve();
        double[] first = [.. solver.Volts];
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = solver.Solve();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(first, solver.Volts);
    }

    [Fact]
    public void Create_TiesInALoop_IsRefused()
    {
        Tie[] ties = [new(1, 0, 12), new(2, 1, 12), new(2, 0, 24)];
        Assert.Throws<ArgumentException>("ties", () => NetworkShape.Create(3, 0, [], ties));
    }

    private static NetworkSolver Solved(int nodes, Element[] elements)
    {
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        return solver;
    }

    // A tree, so that all hangs together, and as many chords again.
    private static (int Nodes, Element[] Elements) Mesh(Random random)
    {
        int nodes = 3 + random.Next(30);
        List<Element> elements = [];
        double ohms() => 0.001 * Math.Pow(1e4, random.NextDouble());
        for (int k = 1; k < nodes; k++)
        {
            elements.Add(Element.Resistance(k, random.Next(k), ohms()));
        }

        for (int n = 0; n < nodes; n++)
        {
            int a = random.Next(nodes), b = (a + 1 + random.Next(nodes - 1)) % nodes;
            elements.Add(random.Next(3) switch
            {
                0 => Element.Battery(a, b, 48 * random.NextDouble(), ohms()),
                1 => Element.Drawn(a, b, 10 * random.NextDouble()),
                _ => Element.Resistance(a, b, ohms()),
            });
        }

        return (nodes, [.. elements]);
    }

    private static Vector<double> Dense(int nodes, Element[] elements)
    {
        Vector<double> drawn = Vector<double>.Build.Dense(nodes);
        foreach (Element e in elements)
        {
            double pushed = e.Law == ElementLaw.Drawn ? -e.A : e.A * e.B;
            drawn[e.Positive] += pushed;
            drawn[e.Negative] -= pushed;
        }

        return Matrix(nodes, elements).Solve(drawn.SubVector(1, nodes - 1));
    }

    private static double DenseOhms(int nodes, Element[] elements, int a, int b)
    {
        Vector<double> unit = Vector<double>.Build.Dense(nodes);
        unit[a] += 1;
        unit[b] -= 1;
        Vector<double> volts = Matrix(nodes, elements).Solve(unit.SubVector(1, nodes - 1));
        return (a > 0 ? volts[a - 1] : 0) - (b > 0 ? volts[b - 1] : 0);
    }

    private static Matrix<double> Matrix(int nodes, Element[] elements)
    {
        Matrix<double> all = Matrix<double>.Build.Dense(nodes, nodes);
        foreach (Element e in elements.Where(e => e.Law == ElementLaw.Line))
        {
            all[e.Positive, e.Positive] += e.B;
            all[e.Negative, e.Negative] += e.B;
            all[e.Positive, e.Negative] -= e.B;
            all[e.Negative, e.Positive] -= e.B;
        }

        return all.SubMatrix(1, nodes - 1, 1, nodes - 1);
    }
}

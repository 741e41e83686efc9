using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Tests.Circuits;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>One loop is a network of one unknown: the two kernels give the same.</summary>
public class LoopAsNetworkTests
{
    public static TheoryData<int> Kinds => [.. Enumerable.Range(0, RandomLoop.Kinds)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Solve_RandomLoops_IsTheLoopInClosedForm(int kind)
    {
        Random random = new(815 + kind);
        int exist = 0, none = 0;
        for (int n = 0; n < 1000; n++)
        {
            RandomLoop loop = RandomLoop.Draw(random, kind);
            double factor = loop.Load.HeatFactor(LoadState.Running);
            if (double.IsNaN(factor) || !double.IsInfinity(loop.Limit) || loop.IsOnTheEdge)
            {
                // Parts of different duty have no single factor; a limit is another test's.
                continue;
            }

            LoopPoint point = loop.Closed();
            (NetworkSolver solver, NetworkEnd end) = Solve(loop, factor);
            bool starved = loop.Load.LawAt(LoadState.Running).Amperes > 0 && solver.Volts[1] < 1e-6 * loop.Volts;
            Assert.Equal(point.Exists, end == NetworkEnd.Solved && !starved);
            if (!point.Exists)
            {
                none++;
                if (kind is 2 or 8)
                {
                    // The share that can be supplied, against the largest power of the closed form.
                    Assert.Equal(point.LargestWatts / loop.Watts, solver.Share, 1e-6);
                    Assert.Equal(1, solver.Elements[solver.Hardest].Positive);
                }

                continue;
            }

            exist++;
            double allowed = 1e-12 * loop.Steepness(point);
            Assert.Equal(point.Volts, solver.Volts[1], allowed * loop.Volts);
            Assert.Equal(point.Amperes, solver.Amperes[0], allowed * (point.Amperes + (loop.Volts / loop.Ohms)));
            Assert.Equal(point.Amperes, -solver.TieAmperes[0], allowed * (point.Amperes + (loop.Volts / loop.Ohms)));
        }

        Assert.True(kind == 7 || exist > 300, $"{exist} exist");
        Assert.Equal(kind is not (0 or 3 or 7), none > 0);
    }

    [Fact]
    public void Solve_SupplyAtItsLimit_IsTheLoopAtItsLimit()
    {
        Random random = new(99);
        int held = 0;
        for (int n = 0; n < 2000; n++)
        {
            RandomLoop loop = RandomLoop.Draw(random, random.Next(2) == 0 ? 0 : 3);
            LoopPoint point = loop.Closed();
            List<Element> elements = [Element.Wire(0, 1, loop.Ohms, loop.Cubic)];
            elements.Add(Element.Supply(0, 2, loop.Volts, double.IsInfinity(loop.Limit) ? 1e6 : loop.Limit));
            LoadElements.Add(elements, 1, 2, loop.Load, LoadState.Running);
            NetworkSolver solver = new(NetworkShape.Create(3, 2, [.. elements], []), [.. elements], []);
            Assert.Equal(NetworkEnd.Solved, solver.Solve());
            held += point.Limited ? 1 : 0;
            Assert.Equal(point.Volts, solver.Volts[1], 1e-11 * loop.Volts);
            Assert.Equal(point.Amperes, solver.Amperes[0], 1e-11 * (loop.Volts / loop.Ohms));
            Assert.InRange(solver.Volts[0], 0, loop.Volts * (1 + 1e-12));
        }

        Assert.True(held > 100, $"{held} held");
    }

    private static (NetworkSolver Solver, NetworkEnd End) Solve(RandomLoop loop, double factor)
    {
        List<Element> elements = [Element.Wire(0, 1, loop.Ohms, loop.Cubic * factor * factor)];
        LoadElements.Add(elements, 1, 2, loop.Load, LoadState.Running, knee: 1e-8 * loop.Volts);
        Tie[] source = [new Tie(0, 2, loop.Volts)];
        NetworkSolver solver = new(NetworkShape.Create(3, 2, [.. elements], source), [.. elements], source);
        return (solver, solver.Solve());
    }
}

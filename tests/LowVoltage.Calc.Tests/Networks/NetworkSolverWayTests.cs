using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>How the method gets to its end: in as many steps as Newton's method needs, whatever the unit of voltage, and the same way the next time.</summary>
public class NetworkSolverWayTests
{
    /// <summary>Straight lines are solved by the first step; the second finds nothing left to move.</summary>
    [Fact]
    public void Solve_StraightLines_TakesTheLinearStepAndOneMore()
    {
        NetworkSolver solver = Solved(4, [Element.Battery(1, 0, 12, 0.01), Element.Resistance(1, 2, 0.05), Element.Resistance(2, 3, 0.2), Element.Resistance(3, 0, 4), Element.Resistance(2, 0, 6)]);
        Assert.Equal(2, solver.Steps);
    }

    /// <summary>An ideal source in the middle of straight lines changes none of that: 12 V behind 10 mΩ, 5 V more between nodes 2 and 3, wires before and behind it, a chord past it.</summary>
    [Fact]
    public void Solve_StraightLinesAboutATie_TakesTheLinearStepAndOneMore()
    {
        Element[] elements =
        [
            Element.Battery(1, 0, 12, 0.01), Element.Resistance(1, 2, 0.05), Element.Resistance(4, 3, 0.2), Element.Resistance(4, 0, 4), Element.Resistance(2, 0, 6),
            Element.Resistance(3, 1, 8), Element.Battery(4, 2, 3, 2),
        ];
        Tie[] ties = [new(3, 2, 5)];
        NetworkSolver solver = new(NetworkShape.Create(5, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal(2, solver.Steps);
        Assert.Equal(5, solver.Volts[3] - solver.Volts[2], 1e-12);
    }

    /// <summary>
    /// Newton's method of one unknown, written out here: (U − E)/R + P/U = 0 from the load as a resistance at E. The quadratic formula knows the answer, so the steps are counted
    /// that it takes to come within 1e-14·E of it; the solver may take one more, to see that nothing moves.
    /// </summary>
    [Theory]
    [InlineData(12, 0.02, 60)]
    [InlineData(12, 0.1, 200)]
    [InlineData(12, 0.1, 340)]
    [InlineData(0.012, 0.02, 6e-5)]
    [InlineData(48, 1e-4, 900)]
    [InlineData(12, 0.1, 359.9)]
    public void Solve_BatteryAndPower_TakesTheStepsOfNewtonsMethod(double volts, double ohms, double watts)
    {
        double exact = (volts + Math.Sqrt((volts * volts) - (4 * ohms * watts))) / 2, u = volts / (1 + (ohms * watts / (volts * volts)));
        int steps = 1;
        while (Math.Abs(u - exact) > 1e-14 * volts && steps < 60)
        {
            u -= (((u - volts) / ohms) + (watts / u)) / ((1 / ohms) - (watts / (u * u)));
            steps++;
        }

        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, volts, ohms), Element.Power(1, 0, watts, 0)]);
        Assert.InRange(solver.Steps, 2, steps + 1);
        Assert.Equal(exact, solver.Volts[1], 1e-13 * volts * volts / ((2 * exact) - volts));
    }

    /// <summary>All voltages and currents times a power of two: the same bits, the same steps. Nothing on the way is measured in volts.</summary>
    [Theory]
    [InlineData(12)]
    [InlineData(-12)]
    public void Solve_InAnotherUnitOfVoltage_TakesTheSameWay(int power)
    {
        double times = Math.Pow(2, power);
        for (int n = 0; n < 150; n++)
        {
            RandomHarness harness = new(90_000 + n, 10 + n);
            NetworkSolver solver = harness.Solver();
            Element[] scaled = [.. harness.Elements.Select(e => Scaled(e, times))];
            NetworkSolver other = new(NetworkShape.Create(harness.Nodes, 0, scaled, []), scaled, []);
            Assert.Equal(solver.Solve(), other.Solve());
            Assert.Equal(solver.Steps, other.Steps);
            Assert.Equal(solver.Powers, other.Powers);
            Assert.Equal(solver.Volts.Select(v => v * times), other.Volts);
            Assert.Equal(solver.Amperes.Select(a => a * times), other.Amperes);
        }
    }

    // Resistances as they are.
    private static Element Scaled(Element e, double times)
    {
        (e.A, e.B, e.C) = e.Law switch
        {
            ElementLaw.Line or ElementLaw.Drawn => (e.A * times, e.B, e.C),
            ElementLaw.Cubic or ElementLaw.Runaway => (e.A, e.B / (times * times), e.C),
            ElementLaw.Supply => (e.A * times, e.B * times, e.C),
            ElementLaw.Solar => (e.A * times, e.B * times, e.C * times),
            ElementLaw.Power => (e.A * times * times, e.B * times, e.C),
            _ => (e.A * times, e.B * times, e.C),
        };
        e.Trips *= times;
        return e;
    }

    /// <summary>A source that is off says nothing of what voltages there are: the load of 9 W runs at 9 V as without it.</summary>
    [Fact]
    public void Solve_SourceThatIsOff_IsNoMeasureOfVoltage()
    {
        Element off = Element.Battery(1, 0, 1e6, 1);
        off.Off = true;
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 10, 1), off, Element.Power(1, 0, 9, 0)]);
        Assert.Equal(9, solver.Volts[1], 1e-12);
    }

    /// <summary>12 V and 10 V behind 1 Ω each: 1 A round. Both are past their limit of 0.5 A by as much: the first is taken off, and then nothing flows through the second.</summary>
    [Fact]
    public void Solve_TwoSourcesAsFarPastTheirLimits_DisconnectsTheFirst()
    {
        Element high = Element.Battery(1, 0, 12, 1), low = Element.Battery(1, 0, 10, 1);
        (high.Trips, low.Trips) = (0.5, 0.5);
        NetworkSolver solver = Solved(2, [high, low]);
        Assert.Equal((true, false), (solver.IsDisconnected(0), solver.IsDisconnected(1)));
        Assert.Equal(10, solver.Volts[1], 1e-12);
    }

    /// <summary>At just the voltage that it needs a load works, though another beside it never starts.</summary>
    [Fact]
    public void Solve_LoadAtJustItsLeastVoltageBesideOneBelow_Works()
    {
        Element[] elements = [Element.Power(1, 0, 9, 9), Element.Power(1, 0, 9, 9.5)];
        Tie[] ties = [new(1, 0, 9)];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal([PowerState.On, PowerState.CutOut], solver.Powers);
        Assert.Equal([1.0, 0.0], solver.Amperes);
        Assert.Equal(0, solver.DroppedOut);
    }

    /// <summary>A law that no voltage balances, 1 A one way or the other, is told as such.</summary>
    [Fact]
    public void Solve_LawWithoutABalance_IsUnsettled()
    {
        Element[] elements = [Element.Battery(1, 0, 12, 1), Element.Of(1, 0, new Leap())];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.Unsettled, solver.Solve());
    }

    /// <summary>Asked twice, the same: 12 V over 1 Ω and 2 Ω is 8 V behind 2/3 Ω.</summary>
    [Fact]
    public void Thevenin_AskedAgain_IsTheSame()
    {
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 12, 1), Element.Resistance(1, 0, 2)]);
        for (int n = 0; n < 3; n++)
        {
            (double volts, double ohms) = solver.Thevenin(1, 0);
            Assert.Equal(8, volts, 1e-12);
            Assert.Equal(2.0 / 3, ohms, 1e-12);
        }
    }

    /// <summary>12 V behind 10 MΩ give 3.6 µW at most: of 40 W not even a ten-millionth. No share is found, and the load is named all the same.</summary>
    [Fact]
    public void Solve_PowerOfWhichNothingArrives_NamesTheLoad()
    {
        Element[] elements = [Element.Battery(1, 0, 12, 1e7), Element.Power(1, 0, 40, 0)];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
        Assert.InRange(solver.Share, 0, 3.6e-6 / 40);
        Assert.Equal(1, solver.Hardest);
    }

    /// <summary>What is told of powers out of reach are the numbers of the share that arrives: they balance, and each load takes its share. The next time all is asked again.</summary>
    [Fact]
    public void Solve_PowersOutOfReach_ToldAtTheShareThatArrives()
    {
        Element[] elements = [Element.Battery(1, 0, 10, 0.3), Element.Wire(1, 2, 0.2, 1e-4), Element.Power(2, 0, 30, 0), Element.Power(2, 0, 50, 0), Element.Resistance(1, 0, 9)];
        NetworkSolver solver = new(NetworkShape.Create(3, 0, elements, []), elements, []);
        for (int n = 0; n < 2; n++)
        {
            Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
            Assert.InRange(solver.Share, 0.4, 0.7);
            Assert.InRange(solver.Balance, 0, 1e-9);
            Assert.Equal(solver.Share * 30, solver.Volts[2] * solver.Amperes[2], 1e-9);
            Assert.Equal(solver.Share * 50, solver.Volts[2] * solver.Amperes[3], 1e-9);
            Assert.Equal([30.0, 50.0], solver.Elements[2..4].Select(e => e.A));
        }
    }

    private static NetworkSolver Solved(int nodes, Element[] elements)
    {
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        return solver;
    }

    // Draws 20 A below 8 V and drives as many back above.
    private sealed class Leap : ICurrentLaw
    {
        public double CurrentAt(double volts, out double slope)
        {
            slope = 0;
            return volts < 8 ? -20 : 20;
        }
    }
}

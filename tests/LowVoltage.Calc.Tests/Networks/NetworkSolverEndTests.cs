using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>Where a network has an end that is not the plain one: powers out of reach, small voltages, and what is seen from a pair of its nodes.</summary>
public class NetworkSolverEndTests
{
    /// <summary>9 W at 9 V beside 10 V behind 1 Ω: a small current more finds 1 S − 9 W/(9 V)², the load drawing less at more voltage: 1.125 Ω.</summary>
    [Fact]
    public void Thevenin_BesideAPower_IsTheResistanceOfASmallChange()
    {
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 10, 1), Element.Power(1, 0, 9, 6)]);
        (double volts, double ohms) = solver.Thevenin(1, 0);
        Assert.Equal(9, volts, 1e-9);
        Assert.Equal(1.125, ohms, 1e-9);
    }

    /// <summary>10 V behind 1 Ω give 25 W at most, at 5 A, more than the 3 A of the source's limit: the end is the power out of reach, and the numbers are of the share that could be supplied.</summary>
    [Fact]
    public void Solve_PowerOutOfReachOfASourcePastItsLimit_DisconnectsNothing()
    {
        Element source = Element.Battery(1, 0, 10, 1);
        source.Trips = 3;
        Element[] elements = [source, Element.Power(1, 0, 40, 0)];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
        Assert.False(solver.IsDisconnected(0));
        Assert.Equal(0.625, solver.Share, 1e-6);
        Assert.Equal(-5, solver.Amperes[0], 0.01);
    }

    /// <summary>1 mV behind 1 mΩ and 0.16 mW: U² − 1 mV·U + 0.16e-6 V² = 0, so 0.8 mV. What is small is measured by the network's own voltages.</summary>
    [Fact]
    public void Solve_Millivolts_AreNoFloor()
    {
        NetworkSolver solver = Solved(2, [Element.Battery(1, 0, 1e-3, 1e-3), Element.Power(1, 0, 1.6e-4, 0)]);
        Assert.Equal(8e-4, solver.Volts[1], 1e-12);
        Assert.Equal(0.2, solver.Amperes[1], 1e-9);
    }

    /// <summary>
    /// 72 W behind 1 Ω of 12 V can have 36 W, at 6 V: half of its voltage is lost. The other load, behind 10 mΩ and a tie that takes 5 V off, loses next to nothing of its 7 V,
    /// whichever end of the tie the island is counted from.
    /// </summary>
    [Theory]
    [InlineData(3, 4)]
    [InlineData(4, 3)]
    public void Solve_PowerOutOfReachBesideATie_NamesTheLoadThatLosesMost(int wire, int load)
    {
        Element[] elements = [Element.Battery(1, 0, 12, 0.001), Element.Resistance(1, 2, 1), Element.Power(2, 0, 72, 0), Element.Resistance(1, wire, 0.01), Element.Power(load, 0, 1, 0)];
        Tie[] ties = [new(wire, load, 5)];
        NetworkSolver solver = new(NetworkShape.Create(5, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
        Assert.Equal(2, solver.Hardest);
        Assert.Equal(0.5, solver.Share, 0.001);
    }

    private static NetworkSolver Solved(int nodes, Element[] elements)
    {
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        return solver;
    }
}

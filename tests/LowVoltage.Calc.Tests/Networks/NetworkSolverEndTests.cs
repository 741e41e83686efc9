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

    /// <summary>The same behind an ideal millivolt: 1 mV − 0.2 A·1 mΩ = 0.8 mV.</summary>
    [Fact]
    public void Solve_MillivoltsOfATie_AreNoFloor()
    {
        Element[] elements = [Element.Resistance(1, 2, 1e-3), Element.Power(2, 0, 1.6e-4, 0)];
        Tie[] ties = [new(1, 0, 1e-3)];
        NetworkSolver solver = new(NetworkShape.Create(3, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal(8e-4, solver.Volts[2], 1e-12);
        Assert.Equal(0.2, solver.Amperes[1], 1e-9);
    }

    /// <summary>5 A driven into 2 Ω beside 8 W, with no voltage about to measure by: U/2 + 8 W/U = 5 A, so 8 V, the higher of two.</summary>
    [Fact]
    public void Solve_CurrentsAlone_NeedNoVoltageToMeasureBy()
    {
        NetworkSolver solver = Solved(2, [Element.Drawn(0, 1, 5), Element.Resistance(1, 0, 2), Element.Power(1, 0, 8, 0)]);
        Assert.Equal(8, solver.Volts[1], 1e-12);
        Assert.Equal([5.0, 4.0, 1.0], solver.Amperes.Select(a => Math.Round(a, 12)));
    }

    /// <summary>A supply of 14.4 V behind 0.1 Ω into 1.34 Ω: 10 A, 13.4 V at the load; its resistance counts in full.</summary>
    [Fact]
    public void Solve_SupplyBehindAResistance_DropsInIt()
    {
        NetworkSolver solver = Solved(2, [Element.Supply(1, 0, 14.4, 20, 0.1), Element.Resistance(1, 0, 1.34)]);
        Assert.Equal(13.4, solver.Volts[1], 1e-12);
        Assert.Equal(-10, solver.Amperes[0], 1e-11);
    }

    /// <summary>At just its least voltage a load works; below it is off.</summary>
    [Theory]
    [InlineData(9, true, 1)]
    [InlineData(9.001, false, 0)]
    public void Solve_LoadAtJustItsLeastVoltage_Works(double least, bool works, double amperes)
    {
        Element[] elements = [Element.Power(1, 0, 9, least)];
        Tie[] ties = [new(1, 0, 9)];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal((works ? PowerState.On : PowerState.CutOut, amperes), (solver.Powers[0], solver.Amperes[0]));
        Assert.Equal(-amperes, solver.TieAmperes[0]);
    }

    /// <summary>Numbers may be changed between two solves: what disconnected once stays if it may give more now; and nothing is hardest off where all stand.</summary>
    [Fact]
    public void Solve_AgainWithAHigherLimit_ConnectsAgain()
    {
        Element pack = Element.Battery(1, 0, 12, 0.1);
        pack.Trips = 3;
        Element[] elements = [pack, Element.Resistance(1, 0, 1.1)];
        NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, []), elements, []);
        Assert.Equal((-1, 1.0), (solver.Hardest, solver.Share));
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal((true, 0.0), (solver.IsDisconnected(0), solver.Amperes[1]));
        solver.Elements[0].Trips = 10;
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        Assert.Equal((false, 10.0, -1), (solver.IsDisconnected(0), Math.Round(solver.Amperes[1], 12), solver.Hardest));
    }

    /// <summary>Supplies without resistance whose positive end is the reference: what each gives is just what its node is short of, so that nothing is left over there.</summary>
    [Theory]
    [InlineData(7.3, 0.37)]
    [InlineData(12.7, 0.013)]
    [InlineData(48.1, 3.33)]
    [InlineData(0.9, 0.0071)]
    public void Solve_SupplyOfAPositiveEarth_LeavesNothingOver(double volts, double ohms)
    {
        NetworkSolver solver = Solved(3, [Element.Supply(0, 1, volts, 1e6), Element.Resistance(0, 2, ohms / 3), Element.Resistance(2, 1, ohms / 1.5), Element.Resistance(0, 1, ohms * 7)]);
        double through = volts / ohms * (1 + (1.0 / 7));
        Assert.Equal(-volts, solver.Volts[1], 1e-12 * volts);
        Assert.Equal(-through, solver.Amperes[0], 1e-13 * through);
        Assert.Equal(-(solver.Amperes[2] + solver.Amperes[3]), solver.Amperes[0], 1e-15 * through);
    }

    /// <summary>
    /// Volts that differ in their last digits alone: 12 V behind 0.1 mΩ, twenty lengths of 0.05 mΩ, a load of 100 Ω and more behind each. From the far end in decimals of 28 digits.
    /// Two doubles of 12 V keep nine digits of such a current. Or 2.5 V and an ideal source of 14.25 V in line with the battery.
    /// </summary>
    [Theory]
    [InlineData(false, 12, 0)]
    [InlineData(true, 12, 0)]
    [InlineData(false, 2.5, 14.25)]
    [InlineData(true, 2.5, 14.25)]
    public void Solve_LadderOfThinDrops_KeepsTheDigitsOfItsCurrents(bool wires, double battery, double tie)
    {
        const int Loads = 20;
        decimal volts = 1, amperes = 0;
        decimal[] along = new decimal[Loads + 1];
        for (int k = Loads; k > 0; k--)
        {
            amperes += volts / (100 + k);
            along[k] = amperes;
            volts += amperes * 0.00005m;
        }

        volts += amperes * 0.0001m;
        Element[] elements =
        [
            Element.Battery(tie > 0 ? Loads + 2 : 1, 0, battery, 0.0001),
            .. Enumerable.Range(1, Loads).Select(k => wires ? Element.Wire(k, k + 1, 0.00005, 0) : Element.Resistance(k, k + 1, 0.00005)),
            .. Enumerable.Range(1, Loads).Select(k => Element.Resistance(k + 1, 0, 100 + k)),
        ];
        Tie[] ties = tie > 0 ? [new(1, Loads + 2, tie)] : [];
        int nodes = Loads + 2 + ties.Length;
        decimal whole = (decimal)(battery + tie);
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, ties), elements, ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        for (int k = 1; k <= Loads; k++)
        {
            double exact = (double)(whole * along[k] / volts);
            Assert.Equal(exact, solver.Amperes[k], 4e-15 * exact);
        }

        double given = (double)(whole * amperes / volts);
        Assert.Equal(-given, solver.Amperes[0], 4e-15 * given);
    }

    private static NetworkSolver Solved(int nodes, Element[] elements)
    {
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, []), elements, []);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        return solver;
    }
}

using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Networks;

public class ResistiveNetworkTests
{
    public static TheoryData<string> Problems => [.. NetworkProblem.All.Select(p => p.Id)];

    [Fact]
    public void Problems_AreFourteen() => Assert.Equal(14, NetworkProblem.All.Count);

    [Theory]
    [MemberData(nameof(Problems))]
    public void Solve_PublishedProblem_GivesThePrintedAnswers(string id)
    {
        NetworkProblem problem = NetworkProblem.All.Single(p => p.Id == id);
        ResistiveNetworkSolution solution = problem.Network().Solve();
        Assert.True(solution.Exists, solution.Explanation);
        Assert.NotEmpty(problem.Answers);
        foreach ((string kind, string of, double printed, double tolerance) in problem.Answers)
        {
            double found = kind switch
            {
                "I" => solution.CurrentOf(of).Amperes,
                "V" => solution.VoltageOf(of).Volts,
                "U" => solution.VoltageBetween(of.Split(" over ")[0], of.Split(" over ")[1]).Volts,
                _ => (double)solution.Heat.Watts,
            };
            Assert.Equal(printed, found, tolerance * (1 + 1e-9));
        }
    }

    [Theory]
    [MemberData(nameof(Problems))]
    public void Solve_PublishedProblem_BalancesCurrentsAndPowers(string id)
    {
        ResistiveNetworkSolution solution = NetworkProblem.All.Single(p => p.Id == id).Network().Solve();
        double given = (double)solution.Given.Watts;
        Assert.Equal(given, (double)solution.Heat.Watts + (double)solution.Drawn.Watts, 1e-9 * given);
        Assert.Equal(0, solution.Network.Elements.Sum(e => (double)solution.PowerOf(e.Id).Watts), 1e-9 * given);
        Assert.InRange(solution.LargestBalance.Amperes, 0, 1e-9);
    }

    /// <summary>A ring main A to D from 250 V with an interconnector A to C (Principles of Power System, direct-current distribution; the numbers from memory). The text prints
    /// 245.111 V at D, a misprint: at D 250 A would then not balance. Cramer's rule on its three nodes gives 245.01187 V.</summary>
    [Fact]
    public void Solve_RingWithInterconnector_IsTheNodalAnswerAndNotTheMisprint()
    {
        ResistiveNetworkSolution ring = ResistiveNetwork.Create(
            "0",
            V("supply", "A", "0", 250),
            R("AB", "A", "B", 0.02),
            R("BC", "B", "C", 0.018),
            R("CD", "C", "D", 0.025),
            R("DA", "D", "A", 0.02),
            R("AC", "A", "C", 0.02),
            I("b", "B", 150),
            I("c", "C", 300),
            I("d", "D", 250)).Solve();
        Assert.Equal(245.01186943620178, ring.VoltageOf("D").Volts, 1e-9);
        Assert.True(Math.Abs(ring.VoltageOf("D").Volts - 245.111) > 0.09);
        // What the print would leave over at D: 0.0991 V·(1/0.025 + 1/0.02) = 8.9 A.
        Assert.Equal(250, ring.CurrentOf("CD").Amperes - ring.CurrentOf("DA").Amperes, 1e-9);
    }

    [Fact]
    public void Solve_MorePowerThanCanArrive_SaysSoAndHowMuchCan()
    {
        // 12 V behind 0.1 Ω give at most 360 W; of 400 W that is 90 %.
        ResistiveNetworkSolution none = ResistiveNetwork.Create("0", V("S", "s", "0", 12), R("w", "s", "L", 0.1), P("pump", "L", 400)).Solve();
        Assert.False(none.Exists);
        Assert.Equal(0.9, none.SuppliableShare.DecimalFractions, 1e-6);
        Assert.Contains("pump at node L", none.Explanation, StringComparison.Ordinal);
        Assert.Equal(none.Explanation, none.ToString());
        Assert.Throws<InvalidOperationException>(() => none.VoltageOf("L"));
        Assert.Throws<InvalidOperationException>(() => none.CurrentOf("w"));
        Assert.Throws<InvalidOperationException>(() => none.Heat);
        Assert.Throws<InvalidOperationException>(() => none.EquivalentAt("L", "0"));
        Assert.Equal(none.Explanation, none.Explain().Answer);
    }

    [Fact]
    public void Solve_FloatingIsland_IsAnsweredAndNamed()
    {
        ResistiveNetworkSolution solution = ResistiveNetwork.Create(
            "0", V("S", "a", "0", 12), R("r", "a", "0", 3), V("B", "x", "y", 6), R("q", "x", "y", 2)).Solve();
        Assert.Equal([["x", "y"]], solution.FloatingIslands);
        Assert.Equal(3, solution.CurrentOf("B").Amperes, 1e-12);
        Assert.Equal(6, solution.VoltageBetween("x", "y").Volts, 1e-12);
        Assert.Equal((0.0, -6.0), (solution.VoltageOf("x").Volts, Math.Round(solution.VoltageOf("y").Volts, 12)));
        ArgumentException apart = Assert.Throws<ArgumentException>("over", () => solution.VoltageBetween("x", "0"));
        Assert.Contains("Nothing joins", apart.Message, StringComparison.Ordinal);
        Assert.Contains("x, y: counted from x", solution.Explain().ToText(), StringComparison.Ordinal);
        Assert.Empty(ResistiveNetwork.Create("0", V("S", "a", "0", 12), R("r", "a", "0", 3)).Solve().FloatingIslands);
    }

    [Fact]
    public void Create_BadInput_IsRefusedWithTheNames()
    {
        Refused("elements", "There is no source", () => ResistiveNetwork.Create("0", R("r", "a", "0", 1)));
        Refused("reference", "no element names the reference node g; the nodes are a, 0", () => ResistiveNetwork.Create("g", V("S", "a", "0", 1)));
        Refused("elements", "Two elements are named r", () => ResistiveNetwork.Create("0", V("S", "a", "0", 1), R("r", "a", "0", 1), R("r", "a", "0", 2)));
        Refused("elements", "close a loop, in which nothing bounds the current: joint, S1, S2", () => ResistiveNetwork.Create(
            "0", V("S1", "a", "0", 12), R("r", "a", "0", 1), R("joint", "a", "b", 0), V("S2", "b", "0", 12)));
        Refused("elements", "close a loop", () => ResistiveNetwork.Create("0", V("S1", "a", "0", 12), R("short", "a", "0", 0)));
        Refused("elements", "The currents drive cross", () => ResistiveNetwork.Create("0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("drive", "a", 2, "x"), R("q", "x", "y", 1)));
        Refused("second", "from node a to itself", () => R("r", "a", "a", 1));
        Refused("id", "must be a name", () => R("", "a", "b", 1));
        Refused("first", "must be a name", () => R("r", "", "b", 1));
        Assert.Throws<ArgumentNullException>("id", () => R(null!, "a", "b", 1));
        Assert.Throws<ArgumentNullException>("elements", () => ResistiveNetwork.Create("0", V("S", "a", "0", 1), null!));
        Assert.Throws<ArgumentNullException>("reference", () => ResistiveNetwork.Create(null!, V("S", "a", "0", 1)));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => R("r", "a", "b", 1e12));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => R("r", "a", "b", -1));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => R("r", "a", "b", 1e-13));
        Assert.Throws<ArgumentOutOfRangeException>("voltage", () => V("S", "a", "0", -1));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => I("i", "a", 0));
        Assert.Throws<ArgumentOutOfRangeException>("power", () => P("p", "a", -1));
        ResistiveNetworkSolution solution = ResistiveNetwork.Create("0", V("S", "a", "0", 1), R("r", "a", "0", 1)).Solve();
        Refused("node", "There is no node z; the nodes are a, 0", () => solution.VoltageOf("z"));
        Refused("element", "There is no element z; the elements are S, r", () => solution.CurrentOf("z"));
        static void Refused(string parameter, string words, Action action) =>
            Assert.Contains(words, Assert.Throws<ArgumentException>(parameter, action).Message, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>12 V over 4 Ω and 12 Ω: at the middle 9 V behind 3 Ω; a short there carries 3 A.</summary>
    [Fact]
    public void EquivalentAt_Divider_IsTheTextbooksOne()
    {
        ResistiveNetworkSolution divider = ResistiveNetwork.Create("0", V("S", "a", "0", 12), R("r1", "a", "m", 4), R("r2", "m", "0", 12)).Solve();
        TheveninEquivalent seen = divider.EquivalentAt("m", "0");
        Assert.Equal((9.0, 3.0, 3.0), (Math.Round(seen.Voltage.Volts, 9), Math.Round(seen.Resistance.Ohms, 9), Math.Round(seen.ShortCircuitCurrent!.Value.Amperes, 9)));
        Assert.Null(divider.EquivalentAt("a", "0").ShortCircuitCurrent);
    }

    [Fact]
    public void Solve_SourcesAlone_GiveTheirCurrentsByTheTies()
    {
        // Two voltages in a row as ideal sources, each with a load of its own and one across both.
        ResistiveNetworkSolution s = ResistiveNetwork.Create(
            "0", V("lower", "m", "0", 12), V("upper", "p", "m", 12), R("a", "p", "m", 4), R("b", "m", "0", 6), R("c", "p", "0", 12)).Solve();
        Assert.Equal(3 + 2, s.CurrentOf("upper").Amperes, 1e-12);
        Assert.Equal(2 + 2, s.CurrentOf("lower").Amperes, 1e-12);
        Assert.Equal(36 + 24 + 48, (double)s.Heat.Watts, 1e-9);
    }

    [Fact]
    public void Solve_LargeAndSmallNumbers_StillSettles()
    {
        ResistiveNetworkSolution currents = ResistiveNetwork.Create("0", I("drive", "0", 1e6, "a"), R("r", "a", "b", 1e8), R("q", "b", "0", 1e-3)).Solve();
        Assert.True(currents.Exists);
        Assert.Equal(1e14, currents.VoltageOf("a").Volts, 1e4);
        Assert.Equal(1e3, currents.VoltageOf("b").Volts, 1e-2);
        ResistiveNetworkSolution small = ResistiveNetwork.Create("0", V("S", "a", "0", 1e-6), R("r", "a", "b", 1e9), R("q", "b", "0", 1e9)).Solve();
        Assert.Equal(5e-7, small.VoltageOf("b").Volts, 1e-15);
    }

    /// <summary>0.1 A and 0.2 A go over and 0.3 A come back: in binary the sum is not nothing, but the rounding of it.</summary>
    [Fact]
    public void Create_CurrentsThatComeBack_AreNoOneWay()
    {
        ResistiveNetworkSolution both = ResistiveNetwork.Create(
            "0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("i1", "a", 0.1, "x"), I("i2", "a", 0.2, "x"), I("back", "x", 0.3, "a"), R("q", "x", "y", 1)).Solve();
        Assert.True(both.Exists);
        Assert.Equal(1, both.CurrentOf("S").Amperes, 1e-12);
        Assert.Equal(0, both.CurrentOf("q").Amperes, 1e-12);
        Assert.Equal([["x", "y"]], both.FloatingIslands);
    }

    /// <summary>Two currents into a part of the network that nothing leaves: both are named.</summary>
    [Fact]
    public void Create_SeveralCurrentsOfNoReturn_AreAllNamed()
    {
        ArgumentException oneWay = Assert.Throws<ArgumentException>("elements", () => ResistiveNetwork.Create(
            "0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("first", "a", 2, "x"), I("second", "a", 3, "x"), R("q", "x", "y", 1)));
        Assert.StartsWith("The currents first, second cross between parts of the network that nothing else joins", oneWay.Message, StringComparison.Ordinal);

        // What goes in by one and comes out by another must be the same.
        Assert.Throws<ArgumentException>("elements", () => ResistiveNetwork.Create(
            "0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("in", "a", 2, "x"), I("out", "x", 1.999999, "a"), R("q", "x", "y", 1)));
    }

    /// <summary>What rounding leaves of a sum grows with the currents: 10000.1 A and 20000.2 A are 30000.3 A.</summary>
    [Fact]
    public void Create_LargeCurrentsThatComeBack_AreNoOneWay()
    {
        Assert.NotEqual(30000.3, 10000.1 + 20000.2);
        ResistiveNetworkSolution large = ResistiveNetwork.Create(
            "0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("i1", "a", 10000.1, "x"), I("i2", "a", 20000.2, "x"), I("back", "x", 30000.3, "a"), R("q", "x", "y", 1)).Solve();
        Assert.True(large.Exists);
        Assert.Equal(1, large.CurrentOf("S").Amperes, 1e-6);
    }

    /// <summary>A loop of joints at the end of an ideal source and a joint: only what closes it is named, not the way to it.</summary>
    [Fact]
    public void Create_LoopAwayFromTheReference_NamesOnlyTheLoop()
    {
        string message = Assert.Throws<ArgumentException>("elements", () => ResistiveNetwork.Create(
            "0", V("S", "a", "0", 12), R("way", "a", "b", 0), R("ring1", "b", "c", 0), R("ring2", "c", "d", 0), R("ring3", "d", "b", 0), R("load", "d", "0", 5))).Message;
        string named = message.Split("bounds the current: ")[1].Split('.')[0];
        Assert.Equal(["ring1", "ring2", "ring3"], named.Split(", ").Order(StringComparer.Ordinal));
    }

    /// <summary>Who has to find a loop of joints follows it: the names stand in the order of the way round.</summary>
    [Fact]
    public void Create_LongLoop_IsNamedInTheOrderOfTheWayRound()
    {
        string message = Assert.Throws<ArgumentException>("elements", () => ResistiveNetwork.Create(
            "0", V("S", "a", "0", 12), R("ab", "a", "b", 0), R("bc", "b", "c", 0), R("cd", "c", "d", 0), R("de", "d", "e", 0), R("ef", "e", "f", 0), R("fa", "f", "a", 0), R("load", "d", "0", 5))).Message;
        string[] named = message.Split("bounds the current: ")[1].Split('.')[0].Split(", ");
        Assert.Equal(["ab", "bc", "cd", "de", "ef", "fa"], named.Order(StringComparer.Ordinal));
        Assert.All(named.Zip([.. named.Skip(1), named[0]]), pair => Assert.NotEmpty(pair.First.Intersect(pair.Second)));
    }

    /// <summary>Of the currents only those that cross are to blame.</summary>
    [Fact]
    public void Create_CurrentOfNoReturn_IsNamedWithoutThoseOfOnePart()
    {
        string message = Assert.Throws<ArgumentException>("elements", () => ResistiveNetwork.Create(
            "0", V("S", "a", "0", 1), R("r", "a", "0", 1), I("inside", "a", 7, "0"), I("out", "a", 2, "x"), I("there", "x", 1, "y"), R("q", "x", "y", 1))).Message;
        Assert.StartsWith("The currents out cross between parts", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WithoutAnAnswer_SaysWhyThereIsNone()
    {
        ResistiveNetworkSolution none = ResistiveNetwork.Create("0", V("S", "s", "0", 12), R("w", "s", "L", 0.1), P("pump", "L", 400)).Solve();
        string message = Assert.Throws<InvalidOperationException>(() => none.VoltageOf("L")).Message;
        Assert.Equal($"There is no answer to read: {none.Explanation} Ask Exists first.", message);
        Assert.StartsWith("The loads of constant power need more than can reach them: at most ", none.Explanation, StringComparison.Ordinal);
        Assert.EndsWith("% of each. pump at node L loses the most voltage.", none.Explanation, StringComparison.Ordinal);
    }

    /// <summary>A next to nothing of a resistance is refused with what would be accepted.</summary>
    [Fact]
    public void Resistance_NextToNothing_IsRefusedWithItsUnit()
    {
        Assert.Contains("0 Ω or at least ", Assert.Throws<ArgumentOutOfRangeException>("resistance", () => R("r", "a", "b", 1e-13)).Message, StringComparison.Ordinal);
        string source = Assert.Throws<ArgumentOutOfRangeException>(
            "resistance", () => NetworkElement.VoltageSource("S", "a", "b", ElectricPotential.FromVolts(1), ElectricResistance.FromOhms(1e-13))).Message;
        Assert.Contains("0.0000000000001 Ω", Digits(source), StringComparison.Ordinal);
        Assert.Contains("0.0000000000001 Ω", Digits(Assert.Throws<ArgumentOutOfRangeException>("resistance", () => R("r", "a", "b", 1e-13)).Message), StringComparison.Ordinal);

        static string Digits(string text) => text.Replace("1E-13", "0.0000000000001", StringComparison.Ordinal);
    }

    /// <summary>The working of a floating part, of currents by the letter of their element, and of what a balance leaves over.</summary>
    [Fact]
    public void Explain_FloatingPart_HasANoteAndLettersOfItsOwn()
    {
        WorkedSolution working = ResistiveNetwork.Create("0", V("S", "a", "0", 12), R("r", "a", "0", 3), V("B", "x", "y", 6), R("q", "x", "y", 2)).Solve().Explain();
        Assert.Contains("Parts without a way to the reference", working.ToText(), StringComparison.Ordinal);
        Assert.Equal(["I_1", "I_2", "I_3", "I_4"], working.Steps.Where(s => s.Section == "Currents").Select(s => s.Symbol!.Spec));
        Assert.Equal(["V_1", "V_2", "V_3", "V_4"], working.Steps.Where(s => s.Section == "Node voltages").Select(s => s.Symbol!.Spec));
        Assert.Equal(["ΣI_1", "ΣI_2", "ΣI_3", "ΣI_4"], working.Steps.Where(s => s.Section == "Balance at each node").Select(s => s.Symbol!.Spec));
        Assert.All(working.Steps.Where(s => s.Section == "Balance at each node"), s => Assert.Equal(0, s.Formula!.Evaluate(), 1e-12));
        Assert.Equal("Lessons in Electric Circuits, Volume I - DC", working.Steps[0].Source!.Title);
    }

    [Fact]
    public void Explain_Sections_AreVoltagesCurrentsBalances()
    {
        WorkedSolution working = ResistiveNetwork.Create("0", V("S", "a", "0", 12), R("r", "a", "m", 4), R("q", "m", "0", 12)).Solve().Explain();
        Assert.Equal(["Node voltages", "Currents", "Balance at each node"], working.Steps.Select(s => s.Section).Distinct());
        Assert.Equal(
            ["The voltages at which the currents at every node balance; found for all nodes together.", "", ""],
            working.Steps.Where(s => s.Section == "Node voltages").Select(s => s.Reason));
        Assert.Equal(["voltage of node a", "voltage of node 0", "voltage of node m"], working.Steps.Where(s => s.Section == "Node voltages").Select(s => s.Sought));
        Assert.Equal("The currents at every node balance: the voltages are right.", working.Answer);

        // What leaves a node counts as positive: the source brings its current to a and takes it from 0.
        Assert.Equal(["−I₁ + I₂", "I₁ − I₃", "−I₂ + I₃"], working.Steps.Where(s => s.Section == "Balance at each node").Select(s => s.Formula!.ToString().Replace('\u00A0', ' ')));
        Assert.Equal(["V", "V", "V", "A", "A", "A", "A", "A", "A"], working.Steps.Select(s => s.Unit));
        Assert.Equal("(V₁ − V₃)/4 Ω", working.Steps[4].Formula!.ToString().Replace('\u00A0', ' '));
    }

    /// <summary>A million amperes in currents of odd sizes: what rounding leaves of their sum is far below a billionth of the largest, and shown as the zero that it is.</summary>
    [Fact]
    public void Explain_LargeCurrents_BalanceToZero()
    {
        WorkedSolution working = ResistiveNetwork.Create(
            "0", I("drive", "0", 1e6, "a"), R("r1", "a", "0", 0.0013), R("r2", "a", "b", 0.0037), R("r3", "b", "0", 0.0071), R("r4", "a", "0", 0.0117), R("r5", "b", "0", 0.0193)).Solve().Explain();
        double[] sums = [.. working.Steps.Where(s => s.Section == "Balance at each node").Select(s => s.Result!.Value)];
        Assert.Equal([0.0, 0.0, 0.0], sums);
    }

    /// <summary>Each element by its own law: what the formula says in the numbers that are shown is what is shown.</summary>
    [Fact]
    public void Explain_EveryKindOfElement_FormulaGivesItsCurrent()
    {
        WorkedSolution working = ResistiveNetwork.Create(
            "0", NetworkElement.VoltageSource("B", "a", "0", ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(0.5)), R("r", "a", "m", 0.4), P("load", "m", 20), P("far", "n", 5), I("drawn", "m", 2), R("q", "m", "n", 1)).Solve().Explain();
        SolutionStep[] currents = [.. working.Steps.Where(s => s.Section == "Currents" && s.Formula is not null)];
        Assert.Equal(5, currents.Length);
        Assert.All(currents, s => Assert.Equal(s.Result!.Value, s.Formula!.Evaluate(), 1e-9));
        Assert.Equal("20 W/(V₃ − V₂)", currents[2].Formula!.ToString().Replace('\u00A0', ' '));
    }

    [Fact]
    public void Explain_Network_ShowsEveryBalance()
    {
        ResistiveNetwork network = NetworkProblem.All.Single(p => p.Id == "net-001").Network();
        WorkedSolution working = network.Solve().Explain();
        foreach (SolutionStep step in working.Steps.Where(s => s.Formula is not null))
        {
            Assert.Equal(step.Symbol!.Value, step.Formula!.Evaluate(), 1e-9);
        }

        string text = working.ToText();
        Assert.All(network.Nodes, node => Assert.Contains($"leave node {node}", text, StringComparison.Ordinal));
        Assert.Equal(network.Nodes.Count, working.Steps.Count(s => s.Symbol!.Name.StartsWith('Σ') && s.Symbol.Value == 0));
        Assert.Contains("B2: 7 V, 3 over 0", text, StringComparison.Ordinal);
        Assert.Equal("Network of sources and resistances", working.Title);
        SolutionStep[] voltages = [.. working.Steps.Where(s => s.Sought.StartsWith("voltage of node ", StringComparison.Ordinal))];
        Assert.Equal(network.Nodes.Count, voltages.Length);
        Assert.All(voltages, s => Assert.Equal("V", s.Symbol!.Unit));
    }

    private static NetworkElement R(string id, string a, string b, double ohms) => NetworkElement.Resistance(id, a, b, ElectricResistance.FromOhms(ohms));

    private static NetworkElement V(string id, string p, string n, double volts) => NetworkElement.VoltageSource(id, p, n, ElectricPotential.FromVolts(volts));

    private static NetworkElement I(string id, string from, double amperes, string to = "0") => NetworkElement.Current(id, from, to, ElectricCurrent.FromAmperes(amperes));

    private static NetworkElement P(string id, string at, double watts) => NetworkElement.ConstantPower(id, at, "0", Power.FromWatts(watts));
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Networks;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness in one load case as a network that can be solved at each supply level.</summary>
/// <remarks>
/// A wire is U = A·I + B·I³ with the warmth of its own r.m.s. current inside. Where loads have a duty cycle the r.m.s. current of each wire is found from the r.m.s. currents of the loads, added as if they
/// came together (never less than the true one), and the wires are warmed again until nothing changes. One owner: not thread-safe.
/// </remarks>
internal sealed partial class HarnessNetwork
{
    private const int Gone = -1;
    private const int MostRounds = 60;

    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly HarnessChange change;
    private readonly SegmentState[] wires;
    private readonly (int Element, int Tie)[] ofBranch;
    private readonly (int Element, int Tie)[] ofSource;
    private readonly (int First, int Count)[] ofLoad;
    private readonly HarnessGraph graph;
    private readonly NetworkSolver solver;
    private readonly double[] factors;
    private NetworkSolver? heat;

    /// <param name="rated">The wires of this load case where they are known already.</param>
    internal HarnessNetwork(Harness harness, LoadCase used, HarnessChange change, SegmentState[]? rated = null)
    {
        this.harness = harness;
        this.used = used;
        this.change = change;
        wires = rated ?? HarnessWires.StatesOf(harness, used);
        factors = [.. Enumerable.Repeat(1.0, wires.Length)];
        ofBranch = new (int, int)[harness.BranchArray.Length];
        ofSource = new (int, int)[harness.SourceArray.Length];
        ofLoad = new (int, int)[harness.LoadArray.Length];
        List<Element> elements = [];
        List<Tie> ties = [];
        int[] open = OpenBranches(harness, used, change);
        graph = open.Length == 0 ? harness.Graph : HarnessGraph.Of(harness, open);
        AddBranches(elements, ties, open);
        AddSources(elements, ties);
        AddLoads(elements);
        ShortElement = Gone;
        if (change.Short is { } fault)
        {
            (ShortElement, ShortTie) = fault.Ohms > 0 ? (elements.Count, Gone) : (Gone, ties.Count);
            if (fault.Ohms > 0)
            {
                elements.Add(Element.Resistance(fault.A, fault.B, fault.Ohms));
            }
            else
            {
                ties.Add(new Tie(fault.A, fault.B, 0));
            }
        }

        Element[] all = [.. elements];
        Tie[] tied = [.. ties];
        solver = new NetworkSolver(NetworkShape.Create(harness.Nodes.Count, harness.NodeIndex(harness.Reference), all, tied), all, tied);
    }

    internal static bool IsIdeal(in SourceNumbers numbers) =>
        (numbers.GreatestOhms == 0 || numbers.LeastOhms == 0) && double.IsInfinity(numbers.HeldAmperes);

    private int ShortElement { get; }

    private int ShortTie { get; } = Gone;

    /// <summary>Solves at a supply level.</summary>
    internal HarnessState Solve(SupplyLevel level)
    {
        SetSources(level);
        for (int k = 0; k < factors.Length; k++)
        {
            factors[k] = 1;
        }

        bool duty = change.Ohms is null && HasDuty();
        HarnessState state = SolveOnce(level);
        for (int round = 0; duty && state.Exists && round < MostRounds; round++)
        {
            double moved = FindHeat(state);
            if (moved <= 1e-14)
            {
                break;
            }

            SetWires();
            state = SolveOnce(level);
        }

        if (duty && state.Exists)
        {
            _ = FindHeat(state);
        }

        return state;
    }

    /// <summary>Changes the resistance of every branch that has one; only where wires do not follow their current.</summary>
    internal void SetOhms(double[] ohms)
    {
        for (int k = 0; k < ofBranch.Length; k++)
        {
            if (ofBranch[k].Element >= 0)
            {
                solver.Elements[ofBranch[k].Element].B = 1 / ohms[k];
            }
        }
    }

    /// <summary>The network seen from two nodes at a supply level: open voltage and the resistance behind it.</summary>
    internal (double Volts, double Ohms) Thevenin(SupplyLevel level, int a, int b)
    {
        _ = Solve(level);
        return solver.Thevenin(a, b);
    }

    private HarnessState SolveOnce(SupplyLevel level)
    {
        NetworkEnd end = solver.Solve();
        HarnessState state = new(harness, used, wires)
        {
            Level = level,
            End = end,
            Volts = [.. solver.Volts],
            Grounds = solver.Grounds,
            Amperes = [.. ofBranch.Select(Through)],
            SourceAmperes = [.. ofSource.Select(at => 0 - Through(at))],
            Disconnected = [.. ofSource.Select(at => at.Element >= 0 && solver.IsDisconnected(at.Element))],
            LoadAmperes = [.. ofLoad.Select(at => Sum(at))],
            LoadPowers = [.. ofLoad.Select(at => WorstPower(at))],
            ShortAmperes = Through((ShortElement, ShortTie)),
            Balance = solver.Balance,
            Share = solver.Share,
            DroppedOut = solver.DroppedOut,
            Hardest = Array.FindIndex(ofLoad, at => solver.Hardest >= at.First && solver.Hardest < at.First + at.Count),
            Steps = solver.Steps,
        };
        Balance(state);
        state.HeatAmperes = [.. state.Amperes.Select(Math.Abs)];
        return state;
    }

    // Where a branch is fed from one end its current is what leaves behind it: exact, while the small voltage across a stout wire is not.
    private void Balance(HarnessState state)
    {
        if (!state.Exists)
        {
            return;
        }

        double[] leaves = new double[harness.Nodes.Count];
        for (int k = 0; k < ofLoad.Length; k++)
        {
            leaves[harness.NodeIndex(harness.LoadArray[k].Positive)] += state.LoadAmperes[k];
            leaves[harness.NodeIndex(harness.LoadArray[k].Negative)] -= state.LoadAmperes[k];
        }

        if (change.Short is { } fault)
        {
            leaves[fault.A] += state.ShortAmperes;
            leaves[fault.B] -= state.ShortAmperes;
        }

        for (int k = 0; k < ofBranch.Length; k++)
        {
            if (!graph.IsFedFromOneEnd(k, out _))
            {
                // In a ring or between sources: what the solver found leaves its nodes like any other current.
                leaves[graph.From[k]] += state.Amperes[k];
                leaves[graph.To[k]] -= state.Amperes[k];
            }
        }

        for (int n = graph.Order.Length - 1; n >= 0; n--)
        {
            int node = graph.Order[n], branch = graph.FeedOf(node);
            if (branch >= 0)
            {
                state.Amperes[branch] = graph.To[branch] == node ? leaves[node] : 0 - leaves[node];
                leaves[graph.Other(branch, node)] += leaves[node];
            }
        }
    }

    private double Through((int Element, int Tie) at) =>
        at.Element >= 0 ? solver.Amperes[at.Element] : at.Tie >= 0 ? solver.TieAmperes[at.Tie] : 0;

    private double Sum((int First, int Count) at)
    {
        double sum = 0;
        for (int k = at.First; k < at.First + at.Count; k++)
        {
            sum += solver.Amperes[k];
        }

        return sum;
    }

    private PowerState WorstPower((int First, int Count) at)
    {
        PowerState worst = PowerState.On;
        for (int k = at.First; k < at.First + at.Count; k++)
        {
            worst = solver.Powers[k] > worst ? solver.Powers[k] : worst;
        }

        return worst;
    }

    private LoadState StateOf(HarnessLoad load) => used.UseOf(load.Id) switch
    {
        LoadUse.Starting => LoadState.Peak,
        LoadUse.Stalled => LoadState.LockedRotor,
        _ => LoadState.Running,
    };
}

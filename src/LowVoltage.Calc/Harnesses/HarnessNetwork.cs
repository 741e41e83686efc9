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
    private const int MostRounds = 60;

    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly HarnessChange change;
    private readonly HarnessElements plan;
    private readonly NetworkSolver solver;
    private readonly double[] factors;
    private NetworkSolver? heat;

    /// <param name="harness">The harness.</param>
    /// <param name="used">The load case.</param>
    /// <param name="change">What is different from the harness as stated.</param>
    /// <param name="rated">The wires of this load case where they are known already.</param>
    internal HarnessNetwork(Harness harness, LoadCase used, HarnessChange change, SegmentState[]? rated = null)
        : this(harness, new HarnessElements(harness, used, change, rated), change)
    {
    }

    /// <param name="harness">The harness.</param>
    /// <param name="plan">Its elements in a load case.</param>
    /// <param name="change">What is different from the harness as stated.</param>
    internal HarnessNetwork(Harness harness, HarnessElements plan, HarnessChange change)
    {
        this.harness = harness;
        this.change = change;
        this.plan = plan;
        used = plan.Case;
        factors = [.. Enumerable.Repeat(1.0, plan.Wires.Length)];
        solver = new NetworkSolver(plan.Shape, plan.All, plan.Ties);
    }

    internal static bool IsIdeal(in SourceNumbers numbers) =>
        (numbers.GreatestOhms == 0 || numbers.LeastOhms == 0) && double.IsInfinity(numbers.HeldAmperes);

    /// <summary>Solves at a supply level.</summary>
    internal HarnessState Solve(SupplyLevel level)
    {
        SetSources(level);
        bool duty = change.Ohms is null && HasDuty();
        if (duty)
        {
            SetFactors(1);
        }

        HarnessState state = SolveOnce(level);
        if (duty && (!state.Exists || Array.Exists(state.Disconnected, gone => gone)))
        {
            // Wires as warm as if the loads never paused may be too much for it; as cool as the air they are not warmer than they are.
            SetFactors(0);
            state = SolveOnce(level);
        }

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

    private void SetFactors(double factor)
    {
        for (int k = 0; k < factors.Length; k++)
        {
            factors[k] = factor;
        }

        SetWires();
    }

    /// <summary>Changes the resistance of every branch that has one; only where wires do not follow their current.</summary>
    internal void SetOhms(double[] ohms)
    {
        for (int k = 0; k < plan.OfBranch.Length; k++)
        {
            if (plan.OfBranch[k].Element >= 0)
            {
                solver.Elements[plan.OfBranch[k].Element].B = 1 / ohms[k];
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
        HarnessState state = new(harness, used, plan.Wires)
        {
            Level = level,
            End = end,
            Volts = [.. solver.Volts],
            Grounds = solver.Grounds,
            Amperes = [.. plan.OfBranch.Select(Through)],
            SourceAmperes = [.. plan.OfSource.Select(at => 0 - Through(at))],
            Disconnected = [.. plan.OfSource.Select(at => at.Element >= 0 && solver.IsDisconnected(at.Element))],
            LoadAmperes = [.. plan.OfLoad.Select(at => Sum(at))],
            LoadPowers = [.. plan.OfLoad.Select(at => WorstPower(at))],
            ShortAmperes = Through((plan.ShortElement, plan.ShortTie)),
            Balance = solver.Balance,
            Share = solver.Share,
            DroppedOut = solver.DroppedOut,
            Hardest = Array.FindIndex(plan.OfLoad, at => solver.Hardest >= at.First && solver.Hardest < at.First + at.Count),
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
        for (int k = 0; k < plan.OfLoad.Length; k++)
        {
            leaves[harness.NodeIndex(harness.LoadArray[k].Positive)] += state.LoadAmperes[k];
            leaves[harness.NodeIndex(harness.LoadArray[k].Negative)] -= state.LoadAmperes[k];
        }

        if (change.Short is { } fault)
        {
            leaves[fault.A] += state.ShortAmperes;
            leaves[fault.B] -= state.ShortAmperes;
        }

        for (int k = 0; k < plan.OfBranch.Length; k++)
        {
            if (!plan.Graph.IsFedFromOneEnd(k, out _))
            {
                // In a ring or between sources: what the solver found leaves its nodes like any other current.
                leaves[plan.Graph.From[k]] += state.Amperes[k];
                leaves[plan.Graph.To[k]] -= state.Amperes[k];
            }
        }

        for (int n = plan.Graph.Order.Length - 1; n >= 0; n--)
        {
            int node = plan.Graph.Order[n], branch = plan.Graph.FeedOf(node);
            if (branch >= 0)
            {
                state.Amperes[branch] = plan.Graph.To[branch] == node ? leaves[node] : 0 - leaves[node];
                leaves[plan.Graph.Other(branch, node)] += leaves[node];
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
}

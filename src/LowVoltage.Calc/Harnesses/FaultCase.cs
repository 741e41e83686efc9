using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One load case of a harness, ready to be broken: what hangs on what, how warm it is, what its loads draw, and how it is without a fault. A, V, Ω.</summary>
internal sealed class FaultCase
{
    private readonly double[] hot;
    private readonly double[] cool;
    private readonly double[] running;
    private int[]? tied;

    internal FaultCase(Harness harness, CaseGroup group)
    {
        Harness = harness;
        Duty = new CaseDuty(harness, group);
        Feeding = new FeedingSource(Duty);
        Wires = HarnessWires.StatesOf(harness, group.Steady);
        (hot, cool) = (Duty.HotOhms(), Duty.CoolOhms());
        running = [.. Enumerable.Range(0, harness.LoadArray.Length).Select(RunningAmperes)];
        Healthy = SolveOpen([]);
        Scenarios = harness.SourceArray.All(IsHeld) ? [FaultScenario.LeastOfAll]
            : harness.SourceArray.Any(IsHeld) ? [FaultScenario.Least, FaultScenario.LeastOfAll] : [FaultScenario.Least];
    }

    internal Harness Harness { get; }

    internal CaseDuty Duty { get; }

    internal HarnessGraph Graph => Duty.Graph;

    internal LoadCase Case => Duty.Group.Steady;

    internal FeedingSource Feeding { get; }

    internal SegmentState[] Wires { get; }

    /// <summary>The harness without a fault at its nominal level, or that of the load case.</summary>
    internal HarnessState Healthy { get; }

    /// <summary>The scenarios of the least currents.</summary>
    internal FaultScenario[] Scenarios { get; }

    /// <summary>What all loads draw together while they run.</summary>
    internal double RunningTotal => running.Sum();

    internal bool IsWire(int branch) => Harness.BranchArray[branch] is HarnessWire;

    internal double[] OhmsOf(FaultScenario scenario) => scenario.Hot ? hot : cool;

    /// <summary>Solves with branches interrupted, everything else as in <see cref="Harness.Solve"/>.</summary>
    internal HarnessState SolveOpen(int[] open) =>
        new HarnessNetwork(Harness, Case, new HarnessChange { Open = open }, Wires).Solve(Case.Level ?? SupplyLevel.Nominal);

    /// <summary>Solves with a short; null where nothing bounds the current.</summary>
    internal HarnessState? SolveShort(FaultScenario scenario, int node, int to) => NetworkOf(scenario, node, to, [])?.Solve(scenario.Level);

    /// <summary>The harness with a short and some fuses open; null where nothing bounds the current.</summary>
    internal HarnessNetwork? NetworkOf(FaultScenario scenario, int node, int to, IReadOnlyCollection<int> open)
    {
        HarnessChange change = new()
        {
            Open = open,
            Short = (node, to, 0),
            Ohms = OhmsOf(scenario),
            BatteriesOnly = scenario.BatteriesOnly,
            LoadsOff = !scenario.LoadsOn,
            LoadAmperes = running,
            SourcesStay = true,
        };
        return Joined(node, to, open) ? null : new HarnessNetwork(Harness, Case, change, Wires);
    }

    /// <summary>Whether zero resistances and ideal sources alone join two nodes.</summary>
    internal bool Joined(int a, int b, IReadOnlyCollection<int> open)
    {
        int[] roots = open.Count == 0 ? tied ??= Tied([]) : Tied(open);
        return roots[a] == roots[b];
    }

    /// <summary>How hot a fault may find a wire, °C; as the check of the short-circuit temperature has it.</summary>
    internal double StartCelsius(int branch)
    {
        ref readonly SegmentState s = ref Wires[branch];
        double start = s.Site.Insulation.ContinuousCelsius;
        if (!s.Site.Insulation.HasShortCircuitRoom && s.IsRated && Duty.Exists && s.TrySteadyCelsius(Duty.Heat[branch], out double service) && service < s.Conductor.Material.MeltingPointCelsius)
        {
            start = service;
        }

        return Math.Max(start, s.Site.AmbientCelsius);
    }

    internal double LimitCelsius(int branch) => Wires[branch].Site.Insulation.ShortCircuitCelsiusFor(Wires[branch].Conductor.AreaSquareMillimeters);

    /// <summary>How hot a Joule integral makes a wire from a temperature on when no heat leaves it, °C; at most its melting point.</summary>
    internal double HeatedCelsius(int branch, double joules, double start)
    {
        ref readonly SegmentState s = ref Wires[branch];
        Conductors.ConductorMaterial metal = s.Conductor.Material;
        return Math.Min(metal.MeltingPointCelsius, AdiabaticKernel.FinalCelsius(
            AdiabaticKernel.ConstantSquared(metal), s.Conductor.EffectiveAreaSquareMillimeters * s.Parallel, joules, start, -metal.InferredZeroCelsius));
    }

    /// <summary>How hot a current makes a wire in the end, °C; its melting point where it does not settle below that or is not rated.</summary>
    internal double SettledCelsius(int branch, double amperes)
    {
        ref readonly SegmentState s = ref Wires[branch];
        double melting = s.Conductor.Material.MeltingPointCelsius;
        return s.IsRated && s.TrySteadyCelsius(amperes, out double celsius) ? Math.Min(celsius, melting) : melting;
    }

    private int[] Tied(IReadOnlyCollection<int> open)
    {
        HashSet<int> gone = [.. open, .. Duty.Open];
        List<Tie> ties = [];
        for (int k = 0; k < Harness.BranchArray.Length; k++)
        {
            if (!IsWire(k) && Harness.BranchArray[k].FixedOhms == 0 && !gone.Contains(k))
            {
                ties.Add(new Tie(Graph.From[k], Graph.To[k], 0));
            }
        }

        foreach (HarnessSource source in Harness.SourceArray.Where(s => s.Source is { } given && HarnessNetwork.IsIdeal(given.Numbers)))
        {
            ties.Add(new Tie(Harness.NodeIndex(source.Positive), Harness.NodeIndex(source.Negative), 1));
        }

        return new TieForest(Harness.Nodes.Count, [.. ties], 0).Root;
    }

    private double RunningAmperes(int load)
    {
        double most = 0;
        foreach (HarnessState state in Duty.States.Where(s => s.Exists))
        {
            most = Math.Max(most, Math.Abs(state.LoadAmperes[load]));
        }

        HarnessLoad at = Harness.LoadArray[load];
        return Duty.Exists ? most : Math.Max(most, at.Load.AmperesAt(Harness.NominalVolts, LoadState.Running));
    }

    private static bool IsHeld(HarnessSource source) => source.Panel is not null || source.Source!.Numbers.Action == LimitAction.Holds;
}

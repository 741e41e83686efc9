using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness solved over the supply levels of one load case: what every wire, fuse and load sees at worst, and at which level. A, V, Ω.</summary>
/// <remarks>Loads of constant power stay on below their least voltage, as the checks of a single circuit count them: what they would then see is what is judged.</remarks>
internal sealed class CaseDuty
{
    private const int Unknown = -2;

    // Loads that want more power than can reach them, with the share that could and the level where that is least.
    private readonly Dictionary<int, (double Share, SupplyLevel Level)> starved = [];

    private readonly SegmentState[] wires;
    private StartStates? starts;
    private int[]? nearest;
    private int[]? nearestMinus;

    internal CaseDuty(Harness harness, CaseGroup group)
    {
        Harness = harness;
        Group = group;
        Open = OpenSwitches(harness, group.Steady);
        Graph = Open.Length == 0 ? harness.Graph : HarnessGraph.Of(harness, Open);
        Zones = HarnessZones.Of(harness, Graph);
        HarnessNetwork network = new(harness, group.Steady, new HarnessChange { LoadsStayOn = true });
        States = [.. group.Levels.Select(level => Solve(network, level))];
        wires = HarnessWires.StatesOf(harness, group.Steady);
        int count = harness.BranchArray.Length;
        (Heat, On, HeatLevel, OnLevel) = (new double[count], new double[count], new SupplyLevel[count], new SupplyLevel[count]);
        foreach (HarnessState state in States.Where(s => s.Exists))
        {
            for (int k = 0; k < count; k++)
            {
                Greatest(ref Heat[k], ref HeatLevel[k], state.HeatAmperes[k], state.Level);
                Greatest(ref On[k], ref OnLevel[k], Math.Abs(state.Amperes[k]), state.Level);
            }
        }

        if (Exists)
        {
            new DutyPauses(this).Raise();
        }
    }

    internal Harness Harness { get; }

    internal CaseGroup Group { get; }

    /// <summary>The steady case without the loads that want more power than can reach them.</summary>
    internal LoadCase Used => starved.Count == 0 ? Group.Steady : Group.Steady.WithOff([.. Group.Steady.Off, .. starved.Keys.Select(k => Harness.LoadArray[k].Id)]);

    internal int[] Open { get; }

    internal HarnessGraph Graph { get; }

    internal HarnessZones Zones { get; }

    internal HarnessState[] States { get; }

    internal bool Exists => Array.TrueForAll(States, s => s.Exists);

    /// <summary>The states while loads start.</summary>
    internal StartStates Starts => starts ??= new StartStates(this);

    /// <summary>Largest r.m.s. current of every branch and at which level.</summary>
    internal double[] Heat { get; }

    internal SupplyLevel[] HeatLevel { get; }

    /// <summary>Largest current of every branch while its loads are on.</summary>
    internal double[] On { get; }

    internal SupplyLevel[] OnLevel { get; }

    /// <summary>The network of the case without some of its loads.</summary>
    internal HarnessNetwork Without(IEnumerable<int> loads) =>
        new(Harness, Used.WithOff([.. Used.Off, .. loads.Select(k => Harness.LoadArray[k].Id)]), new HarnessChange { LoadsStayOn = true });

    /// <summary>Counts a branch with no less than this, A.</summary>
    internal void RaiseTo(int branch, SupplyLevel level, double on, double heat)
    {
        Greatest(ref On[branch], ref OnLevel[branch], on, level);
        Greatest(ref Heat[branch], ref HeatLevel[branch], heat, level);
    }

    /// <summary>A copy of a wire's state.</summary>
    internal SegmentState WireOf(int branch) => wires[branch];

    /// <summary>Ω of every branch, wires as warm as their largest r.m.s. current makes them.</summary>
    internal double[] WarmOhms() => Ohms((s, k) => s.OhmsAt(s.CelsiusAt(Heat[k])));

    /// <summary>Ω of a branch, a wire as warm as its largest r.m.s. current makes it.</summary>
    internal double OhmsNow(int k) => Harness.BranchArray[k].FixedOhms + (Harness.BranchArray[k] is HarnessWire ? wires[k].OhmsAt(wires[k].CelsiusAt(Heat[k])) : 0);

    /// <summary>Ω of every branch, wires as hot as their insulation allows.</summary>
    internal double[] HotOhms() => Ohms((s, _) => s.OhmsAt(s.UnratedCelsius));

    /// <summary>Ω of every branch, wires as cool as the air.</summary>
    internal double[] CoolOhms() => Ohms((s, _) => s.OhmsAt(s.CoolCelsius));

    /// <summary>Whether a load is on and fed in this case.</summary>
    internal bool IsOn(int load) => Group.Steady.UseOf(Harness.LoadArray[load].Id) != LoadUse.Off && IsFed(Harness.LoadArray[load]);

    /// <summary>Whether in this case current can reach a load from a source and go back.</summary>
    internal bool IsFed(HarnessLoad load) =>
        Graph.WayFrom(Harness.NodeIndex(load.Positive)).End != FeedEnd.Dead && Graph.WayFrom(Harness.NodeIndex(load.Negative)).End != FeedEnd.Dead;

    /// <summary>What a load sees over the levels.</summary>
    internal WireDuty DutyOf(int load)
    {
        WireDuty duty = new() { Exists = true, LeastLoadVolts = double.PositiveInfinity, Level = SupplyLevel.Nominal };
        foreach (HarnessState state in States)
        {
            if (!Delivers(state, load, ref duty))
            {
                return duty;
            }

            double volts = state.VoltsAcross(load), amperes = Math.Abs(state.LoadAmperes[load]);
            Greatest(ref duty.OnAmperes, ref duty.OnLevel, amperes, state.Level);
            Greatest(ref duty.HeatingAmperes, ref duty.Level, HeatingOf(Harness.LoadArray[load].Load, volts, amperes), state.Level);
            Greatest(ref duty.DropVolts, ref duty.DropLevel, SourceVolts(state, load) - volts, state.Level);
            if (volts < duty.LeastLoadVolts)
            {
                (duty.LeastLoadVolts, duty.LeastLoadLevel) = (volts, state.Level);
            }
        }

        return duty;
    }

    /// <summary>The r.m.s. current of a load. A source at its limit gives less than the load's law wants: its share of the heat stays.</summary>
    internal static double HeatingOf(Load load, double volts, double amperes) =>
        load.AmperesAt(volts, LoadState.Running) is > 0 and double wanted ? amperes * (load.HeatingAmperesAt(volts, LoadState.Running) / wanted) : amperes;

    /// <summary>What the branches of a fuse's own zone see: the fuse's current.</summary>
    internal WireDuty DutyOfBranch(int branch, in WireDuty load)
    {
        WireDuty duty = load;
        duty.Exists = Exists;
        (duty.OnAmperes, duty.OnLevel) = (On[branch], OnLevel[branch]);
        (duty.HeatingAmperes, duty.Level) = (Heat[branch], HeatLevel[branch]);
        return duty;
    }

    // At the terminals of the source that is nearest in resistance: of several at different voltages the others' distance is none of the load's drop. Where the load's way back ends at another
    // source, one under it, the voltage of both together.
    private double SourceVolts(HarnessState state, int load)
    {
        if (Nearest(load) is not (>= 0 and int k))
        {
            return state.VoltsAcross(load);
        }

        double own = state.VoltsOfSource(k);
        int plus = Harness.NodeIndex(Harness.SourceArray[k].Positive), minus = NearestMinus(load);
        return minus >= 0 && state.Grounds[minus] == state.Grounds[plus] ? Math.Max(own, state.Volts[plus] - state.Volts[minus]) : own;
    }

    // The negative terminal at which the way back of a load ends; −1 where there is none.
    private int NearestMinus(int load)
    {
        nearestMinus ??= [.. Enumerable.Repeat(Unknown, Harness.LoadArray.Length)];
        if (nearestMinus[load] == Unknown)
        {
            _ = NearestWay.From(this, Harness.NodeIndex(Harness.LoadArray[load].Negative), plus: false, out nearestMinus[load]);
        }

        return nearestMinus[load];
    }

    /// <summary>The source from whose terminals a load's drop is counted; −1 where none reaches it.</summary>
    internal int Nearest(int load)
    {
        nearest ??= [.. Enumerable.Repeat(Unknown, Harness.LoadArray.Length)];
        if (nearest[load] == Unknown)
        {
            int[] way = NearestWay.From(this, Harness.NodeIndex(Harness.LoadArray[load].Positive), plus: true, out int terminal);
            nearest[load] = terminal < 0 ? -1 : Array.FindIndex(Harness.SourceArray, s => Harness.NodeIndex(s.Positive) == terminal);
        }

        return nearest[load];
    }

    // A load that wants more power than can reach it is taken off, the hardest first, so that the others can be judged.
    private HarnessState Solve(HarnessNetwork network, SupplyLevel level)
    {
        HarnessState state = network.Solve(level);
        for (LoadCase used = Group.Steady; !state.Exists && state.Hardest >= 0; state = new HarnessNetwork(Harness, used, new HarnessChange { LoadsStayOn = true }).Solve(level))
        {
            int hardest = state.Hardest;
            if (!starved.TryGetValue(hardest, out (double Share, SupplyLevel Level) before) || state.Share < before.Share)
            {
                starved[hardest] = (state.Share, level);
            }

            used = used.WithOff([.. used.Off, Harness.LoadArray[hardest].Id]);
        }

        return state;
    }

    private bool Delivers(HarnessState state, int load, ref WireDuty duty)
    {
        HarnessLoad at = Harness.LoadArray[load];
        if (starved.TryGetValue(load, out (double Share, SupplyLevel Level) lack))
        {
            double top = GreatestVolts(lack.Level), watts = at.Load.LawAt(LoadState.Running).Watts;
            duty.Exists = false;
            duty.Level = lack.Level;
            duty.Reason = NoOperatingPoint.PowerOutOfReach;
            duty.WantedWatts = Math.Max(watts, at.Load.AmperesAt(top, LoadState.Running) * top);
            duty.LargestWatts = Math.Min(lack.Share * watts, duty.WantedWatts * (1 - 1e-9));
            return false;
        }

        LoadCondition condition = state.ConditionOf(load);
        if (condition == LoadCondition.Running && !Melts(state, load) && SupplyReach.Holds(this, state, load))
        {
            return true;
        }

        double volts = Math.Max(0, state.VoltsAcross(load)), full = GreatestVolts(state.Level);
        duty.Exists = false;
        duty.Level = state.Level;
        duty.WantedWatts = at.Load.AmperesAt(full, LoadState.Running) * full;
        if (!state.Exists)
        {
            duty.Reason = NoOperatingPoint.PowerOutOfReach;
            duty.WantedWatts = Math.Max(duty.WantedWatts, at.Load.LawAt(LoadState.Running).Watts);
            duty.LargestWatts = state.Share * at.Load.LawAt(LoadState.Running).Watts;
        }
        else
        {
            duty.Reason = Array.Exists(state.Disconnected, d => d) ? NoOperatingPoint.SourceDisconnects
                : state.IsAtLimit || !SupplyReach.Holds(this, state, load) ? NoOperatingPoint.SourceLimit
                : NoOperatingPoint.CurrentOutOfReach;
            duty.LargestWatts = Math.Min(volts * Math.Max(0, state.LoadAmperes[load]), duty.WantedWatts * (1 - 1e-9));
        }

        return false;
    }

    private double GreatestVolts(SupplyLevel level) => Harness.SourceArray.Max(s => s.Source?.Numbers.VoltsAt(level) ?? s.Panel!.OpenVolts);

    // A wire on the way that would melt gives no operating point.
    private bool Melts(HarnessState state, int load)
    {
        foreach (int k in Graph.WayFrom(Harness.NodeIndex(Harness.LoadArray[load].Positive)).Branches.Concat(Graph.WayFrom(Harness.NodeIndex(Harness.LoadArray[load].Negative)).Branches))
        {
            if (Harness.BranchArray[k] is HarnessWire && state.HeatAmperes[k] > wires[k].MeltingAmperes())
            {
                return true;
            }
        }

        return false;
    }

    private double[] Ohms(Func<SegmentState, int, double> ofWire)
    {
        double[] ohms = new double[Harness.BranchArray.Length];
        for (int k = 0; k < ohms.Length; k++)
        {
            ohms[k] = Harness.BranchArray[k].FixedOhms + (Harness.BranchArray[k] is HarnessWire ? ofWire(wires[k], k) : 0);
        }

        return ohms;
    }

    private static int[] OpenSwitches(Harness harness, LoadCase used) =>
        [.. Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessSwitch contact && !used.IsClosed(contact))];

    private static void Greatest(ref double most, ref SupplyLevel at, double value, SupplyLevel level)
    {
        if (value > most)
        {
            (most, at) = (value, level);
        }
    }
}

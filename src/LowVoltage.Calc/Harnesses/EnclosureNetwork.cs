using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness in one load case at one supply level as elements that are known between limits, about the state that its parts have as stated.</summary>
/// <remarks>Where loads have a duty cycle a second network of the same wires carries their r.m.s. currents; it warms the wires of both.</remarks>
internal sealed partial class EnclosureNetwork
{
    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly Tolerances tolerances;
    private readonly EnclosureWires wires;
    private readonly HarnessState state;
    private readonly List<EnclosureElement> elements = [];
    private readonly List<Tie> ties = [];
    private readonly List<double> tieRadius = [];
    private readonly bool hasDuty;

    internal EnclosureNetwork(Harness harness, LoadCase used, Tolerances tolerances, EnclosureWires wires, HarnessState state, int[] open, bool staysOn)
    {
        (this.harness, this.used, this.tolerances, this.wires, this.state) = (harness, used, tolerances, wires, state);
        OfBranch = [.. Enumerable.Repeat(-1, harness.BranchArray.Length)];
        TieOfBranch = [.. Enumerable.Repeat(-1, harness.BranchArray.Length)];
        OfSource = [.. Enumerable.Repeat(-1, harness.SourceArray.Length)];
        TieOfSource = [.. Enumerable.Repeat(-1, harness.SourceArray.Length)];
        OfLoad = [.. Enumerable.Repeat(-1, harness.LoadArray.Length)];
        hasDuty = Array.Exists(harness.LoadArray, l => used.UseOf(l.Id) != LoadUse.Off && !l.Load.HeatFactor(StateOf(l)).Equals(1.0));
        AddBranches(open);
        AddSources();
        AddLoads(staysOn);
        foreach (EnclosureElement e in elements)
        {
            e.Volts0 = state.Volts[e.Positive] - state.Volts[e.Negative];
        }

        Main = SystemOf([.. elements], state.Volts);
        Heat = hasDuty ? HeatNetwork() : null;
    }

    internal EnclosureSystem Main { get; }

    /// <summary>The r.m.s. currents; null where no load has a duty cycle.</summary>
    internal EnclosureSystem? Heat { get; }

    /// <summary>Element of each branch; −1 for none.</summary>
    internal int[] OfBranch { get; }

    internal int[] TieOfBranch { get; }

    internal int[] OfSource { get; }

    internal int[] TieOfSource { get; }

    internal int[] OfLoad { get; }

    internal IEnumerable<(int Load, EnclosureLoad Element)> Loads => Enumerable.Range(0, OfLoad.Length).Where(k => OfLoad[k] >= 0).Select(k => (k, (EnclosureLoad)elements[OfLoad[k]]));

    /// <summary>Slopes of the middle, and how everything follows from it; false where that is not to be found.</summary>
    /// <param name="limits">Whether a supply is taken as regulating where its interval has it so; else as a current from nothing to its limit, which always is within bounds.</param>
    internal bool Prepare(bool limits)
    {
        foreach (EnclosureSupply supply in Main.Elements.OfType<EnclosureSupply>().Concat(Heat?.Elements.OfType<EnclosureSupply>() ?? []))
        {
            supply.Siemens0 = limits && supply.Regulates ? supply.RegulatingSiemens : 0;
        }

        for (int k = 0; k < OfBranch.Length; k++)
        {
            if (OfBranch[k] >= 0)
            {
                (double ohms, double cubic) = Nominal(k);
                double heat = hasDuty ? state.HeatAmperes[k] : 0, amperes = hasDuty ? 0 : state.Amperes[k];
                elements[OfBranch[k]].Siemens0 = 1 / (ohms + (cubic * heat * heat) + (3 * cubic * amperes * amperes));
            }
        }

        foreach ((int _, EnclosureLoad load) in Loads)
        {
            load.Siemens0 = load.SlopeAt(load.Volts0);
        }

        if (Heat is not null)
        {
            for (int k = 0; k < elements.Count; k++)
            {
                Heat.Elements[k].Siemens0 = Heat.Elements[k] is EnclosureDraw ? 0 : Heat.Elements[k] is EnclosureSupply own ? own.Siemens0 : elements[k].Siemens0;
            }
        }

        return Main.Prepare() && Heat?.Prepare() != false;
    }

    /// <summary>Carries the warmth of the r.m.s. currents into the wires, and the loads' currents into the r.m.s. ones.</summary>
    internal void Couple()
    {
        if (Heat is null)
        {
            return;
        }

        for (int k = 0; k < OfBranch.Length; k++)
        {
            if (OfBranch[k] >= 0)
            {
                Interval ohms = wires.Ohms[k] + (wires.Cubic[k] * Heat.Elements[OfBranch[k]].Amperes.Squared());
                ((EnclosureLine)elements[OfBranch[k]]).Ohms = ohms;
                ((EnclosureLine)Heat.Elements[OfBranch[k]]).Ohms = ohms;
            }
        }

        foreach ((int load, EnclosureLoad at) in Loads)
        {
            ((EnclosureDraw)Heat.Elements[OfLoad[load]]).Drawn = at.Amperes * at.HeatShare;
        }
    }

    private (double Ohms, double Cubic) Nominal(int k)
    {
        (double ohms, double cubic) = harness.BranchArray[k] is HarnessWire ? state.Wires[k].Law() : (0, 0);
        return (harness.BranchArray[k].FixedOhms + ohms, cubic);
    }

    private void AddBranches(int[] open)
    {
        for (int k = 0; k < OfBranch.Length; k++)
        {
            int from = harness.Graph.From[k], to = harness.Graph.To[k];
            if (Array.IndexOf(open, k) >= 0)
            {
                continue;
            }

            if (harness.BranchArray[k] is HarnessWire || harness.BranchArray[k].FixedOhms > 0)
            {
                OfBranch[k] = elements.Count;
                elements.Add(new EnclosureLine(from, to) { Ohms = wires.Ohms[k], Cubic = hasDuty ? default : wires.Cubic[k], Amperes0 = state.Amperes[k] });
            }
            else
            {
                TieOfBranch[k] = AddTie(from, to, 0, 0);
            }
        }
    }

    private int AddTie(int plus, int minus, double volts, double radius)
    {
        ties.Add(new Tie(plus, minus, volts));
        tieRadius.Add(radius);
        return ties.Count - 1;
    }

    private void AddSources()
    {
        for (int k = 0; k < OfSource.Length; k++)
        {
            HarnessSource source = harness.SourceArray[k];
            int plus = harness.NodeIndex(source.Positive), minus = harness.NodeIndex(source.Negative);
            double amperes = -state.SourceAmperes[k], across = state.Volts[plus] - state.Volts[minus];
            if (source.Panel is { } panel)
            {
                EnclosurePanel element = new(plus, minus, panel) { Amperes0 = amperes };
                element.Siemens0 = element.SlopeAt(across);
                OfSource[k] = Add(element);
                continue;
            }

            SourceNumbers numbers = source.Source!.Numbers;
            double volts = numbers.VoltsAt(state.Level), ohms = numbers.OhmsAt(state.Level);
            Interval about = EnclosureWires.About(volts, tolerances.SupplyShare);
            if (HarnessNetwork.IsIdeal(numbers))
            {
                TieOfSource[k] = AddTie(plus, minus, volts, about.Radius);
            }
            else if (numbers.Action == LimitAction.Holds)
            {
                OfSource[k] = Add(new EnclosureSupply(plus, minus, numbers.LimitAmperes, ohms) { Source = about, Amperes0 = amperes, Amperes = Interval.At(amperes) });
            }
            else
            {
                OfSource[k] = Add(new EnclosureLine(plus, minus) { Source = about, Ohms = Interval.At(ohms), Amperes0 = amperes, Siemens0 = 1 / ohms });
            }
        }
    }

    private int Add(EnclosureElement element)
    {
        elements.Add(element);
        return elements.Count - 1;
    }

    private void AddLoads(bool staysOn)
    {
        for (int k = 0; k < OfLoad.Length; k++)
        {
            HarnessLoad load = harness.LoadArray[k];
            if (used.UseOf(load.Id) != LoadUse.Off)
            {
                OfLoad[k] = Add(new EnclosureLoad(
                    harness.NodeIndex(load.Positive), harness.NodeIndex(load.Negative), load.Load, StateOf(load), EnclosureWires.About(1, tolerances.LoadShare), staysOn) { Amperes0 = state.LoadAmperes[k] });
            }
        }
    }

    private EnclosureSystem SystemOf(EnclosureElement[] of, double[] volts) => new(harness.Nodes.Count, harness.NodeIndex(harness.Reference), of, [.. ties], [.. tieRadius], volts);

    private LoadState StateOf(HarnessLoad load) => used.UseOf(load.Id) switch
    {
        LoadUse.Starting => LoadState.Peak,
        LoadUse.Stalled => LoadState.LockedRotor,
        _ => LoadState.Running,
    };
}

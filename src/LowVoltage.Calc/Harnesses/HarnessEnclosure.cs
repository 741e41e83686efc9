using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Boxes of a harness in one load case over its supply levels: of the states that it has, and of what its checks judge, where converters stay on.</summary>
internal sealed class HarnessEnclosure
{
    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly HarnessGraph graph;
    private readonly Tolerances tolerances;
    private readonly EnclosureWires wires;
    private readonly int[] open;

    internal HarnessEnclosure(Harness harness, Tolerances tolerances, LoadCase used)
    {
        (this.harness, this.tolerances, this.used) = (harness, tolerances, used);
        open = [.. Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessSwitch contact && !used.IsClosed(contact))];
        graph = open.Length == 0 ? harness.Graph : HarnessGraph.Of(harness, open);
        Dead = [.. Enumerable.Range(0, harness.LoadArray.Length).Where(k => used.UseOf(harness.LoadArray[k].Id) != LoadUse.Off && (HangsLoose(harness.LoadArray[k].Positive) || HangsLoose(harness.LoadArray[k].Negative)))];
        Reason = Series();

        // A converter that nothing feeds draws nothing.
        this.used = Dead.Length == 0 ? used : used.WithOff([.. used.Off, .. Dead.Where(k => Watts(k) > 0).Select(k => harness.LoadArray[k].Id)]);
        wires = new EnclosureWires(harness, tolerances, used, HarnessWires.StatesOf(harness, used));
        Reason = Reason.Length > 0 ? Reason : wires.Gap is { } wire ? $"wire {wire} is rated in some of the air that it may meet and not in all" : "";
        (States, Served) = (new EnclosureRanges(harness), new EnclosureRanges(harness));
        if (Reason.Length == 0)
        {
            Find();
        }
    }

    /// <summary>Why there is no box; empty where there is one.</summary>
    internal string Reason { get; private set; }

    /// <summary>Why there is none for the checks, which leave converters on; empty where there is one.</summary>
    internal string ServedReason { get; private set; } = "";

    /// <summary>Loads that are on and that no source reaches.</summary>
    internal int[] Dead { get; }

    /// <summary>Every state that the harness has.</summary>
    internal EnclosureRanges States { get; }

    /// <summary>With converters on below their least voltage, as checks count them.</summary>
    internal EnclosureRanges Served { get; }

    /// <summary>Loads whose converters may cut out.</summary>
    internal HashSet<int> MayCutOut { get; } = [];

    internal EnclosureWires Wires => wires;

    private bool HangsLoose(string node) => graph.WayFrom(harness.NodeIndex(node)).End == FeedEnd.Dead;

    private double Watts(int load) => harness.LoadArray[load].Load.LawAt(StateOf(load)).Watts;

    private LoadState StateOf(int load) => used.UseOf(harness.LoadArray[load].Id) switch { LoadUse.Starting => LoadState.Peak, LoadUse.Stalled => LoadState.LockedRotor, _ => LoadState.Running };

    // Current into a part that nothing feeds could leave it through another load: then neither is dead.
    private string Series()
    {
        foreach (int k in Dead.Where(k => Watts(k) > 0))
        {
            HarnessLoad load = harness.LoadArray[k];
            LoadLaw law = load.Load.LawAt(StateOf(k));
            bool plus = HangsLoose(load.Positive);
            int part = graph.Part[harness.NodeIndex(plus ? load.Positive : load.Negative)];
            bool both = Array.Exists(harness.LoadArray, other => graph.Part[harness.NodeIndex(plus ? other.Negative : other.Positive)] == part);
            if (both || law.Siemens > 0 || law.Amperes > 0 || !law.Exact)
            {
                return $"load {load.Id} hangs on a part that no source feeds";
            }
        }

        return "";
    }

    private void Find()
    {
        SupplyLevel[] levels = used.Level is { } one ? [one] : [SupplyLevel.Minimum, SupplyLevel.Nominal, SupplyLevel.Maximum];
        List<EnclosureNetwork> judged = [];
        foreach (SupplyLevel level in levels)
        {
            string served = FindServed(level, out EnclosureNetwork? network);
            ServedReason = ServedReason.Length > 0 ? ServedReason : served;
            judged.AddRange(served.Length == 0 ? [network!] : []);
            bool allOn = served.Length == 0 && network!.Loads.All(l => !(harness.LoadArray[l.Load].Load.MinimumVolts is { } least && l.Element.Watts > 0 && l.Element.Volts.Low < least));
            if (allOn)
            {
                States.Add(network!);
            }
            else if (FindStates(level) is { Length: > 0 } reason)
            {
                Reason = reason;
                break;
            }
        }

        if (ServedReason.Length == 0)
        {
            Served.AddDrops(judged, wires);
        }
    }

    private string FindServed(SupplyLevel level, out EnclosureNetwork? network)
    {
        network = Network(level, staysOn: true, out string reason);
        if (network is null)
        {
            return reason;
        }

        EnclosureBox box = new(network, harness.GreatestVolts);
        if (!box.Find())
        {
            return Wide(level);
        }

        if (network.Loads.Any(l => l.Element.Watts > 0) && !box.IsOne())
        {
            return $"with these constant powers more than one state may exist at {Word(level)} supply";
        }

        if (!box.Narrow(anew: true))
        {
            return Wide(level);
        }

        Served.Add(network);
        return Trips(network);
    }

    private string FindStates(SupplyLevel level)
    {
        EnclosureNetwork? network = Network(level, staysOn: false, out string reason);
        if (network is null)
        {
            return reason;
        }

        List<(int Load, EnclosureLoad Element)> converters = [.. network.Loads.Where(l => l.Element.CutOut > 0)];
        converters.ForEach(l => l.Element.MayBeOut = true);
        EnclosureBox box = new(network, harness.GreatestVolts);
        if (!box.Find() || (network.Loads.Any(l => l.Element.Watts > 0 && l.Element.CutOut == 0) && !box.IsOne()) || !box.Narrow(anew: false))
        {
            return Wide(level);
        }

        // Who sees enough in every state of the box is on in every state: what it takes is known better now.
        while (converters.RemoveAll(l => l.Element.Volts.Low >= l.Element.CutOut && On(l.Element)) > 0)
        {
            if (!box.Narrow(anew: true))
            {
                return Wide(level);
            }
        }

        MayCutOut.UnionWith(converters.Select(l => l.Load));
        States.Add(network);
        return Trips(network);
    }

    private static bool On(EnclosureLoad load)
    {
        load.MayBeOut = false;
        return true;
    }

    private EnclosureNetwork? Network(SupplyLevel level, bool staysOn, out string reason)
    {
        HarnessState state = new HarnessNetwork(harness, used, new HarnessChange { LoadsStayOn = staysOn }).Solve(level);
        reason = !state.Exists ? $"there is no operating point at {Word(level)} supply, as stated"
            : Array.FindIndex(state.Disconnected, d => d) is >= 0 and int k ? $"source {harness.SourceArray[k].Id} disconnects at {Word(level)} supply, as stated"
            : "";
        return reason.Length > 0 ? null : new EnclosureNetwork(harness, used, tolerances, wires, state, open, staysOn);
    }

    // A source that opens leaves another network behind.
    private string Trips(EnclosureNetwork network)
    {
        for (int k = 0; k < harness.SourceArray.Length; k++)
        {
            if (network.OfSource[k] >= 0 && harness.SourceArray[k].Source is { } source && source.Numbers.Action == LimitAction.Disconnects
                && network.Main.NewAmperes[network.OfSource[k]].Greatest > source.Numbers.LimitAmperes * (1 - 1e-9))
            {
                return $"source {harness.SourceArray[k].Id} may pass {Accept.Text(source.Numbers.LimitAmperes)} A and disconnect";
            }
        }

        return "";
    }

    private static string Word(SupplyLevel level) => level switch { SupplyLevel.Minimum => "the lowest", SupplyLevel.Maximum => "the highest", _ => "nominal" };

    private static string Wide(SupplyLevel level) => $"the uncertainties feed each other too much at {Word(level)} supply: their intervals would not narrow";
}

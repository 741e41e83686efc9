using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Between which limits every voltage, current and drop of a harness lies, over the boxes that were added. V, A, by the indices of the harness.</summary>
internal sealed class EnclosureRanges(Harness harness)
{
    // Beyond what rounding can make of any number here.
    private const double Slack = 1e-9;

    internal bool Any { get; private set; }

    /// <summary>Voltage of every node over the reference.</summary>
    internal Interval[] Nodes { get; } = new Interval[harness.Nodes.Count];

    /// <summary>Current of every branch from its first node to its second.</summary>
    internal Interval[] Branches { get; } = new Interval[harness.BranchArray.Length];

    /// <summary>r.m.s. current of every branch, without sign.</summary>
    internal Interval[] Heat { get; } = new Interval[harness.BranchArray.Length];

    /// <summary>What every source gives.</summary>
    internal Interval[] Sources { get; } = new Interval[harness.SourceArray.Length];

    internal Interval?[] LoadVolts { get; } = new Interval?[harness.LoadArray.Length];

    internal Interval?[] LoadAmperes { get; } = new Interval?[harness.LoadArray.Length];

    /// <summary>Voltage lost between the terminals of the nearest source and a load.</summary>
    internal Interval?[] Drops { get; } = new Interval?[harness.LoadArray.Length];

    internal void Add(EnclosureNetwork network)
    {
        EnclosureSystem main = network.Main;
        Interval[] ties = main.TieAmperes();
        Interval[] warm = network.Heat?.TieAmperes() ?? ties;
        double volts = Slack * main.LargestVolts, amperes = Slack * main.LargestAmperes;
        int reference = harness.NodeIndex(harness.Reference);
        for (int node = 0; node < Nodes.Length; node++)
        {
            Put(ref Nodes[node], main.Between(node, reference).Wider(volts));
        }

        for (int k = 0; k < Branches.Length; k++)
        {
            Interval through = Of(network.OfBranch[k], network.TieOfBranch[k], main, ties), heat = Of(network.OfBranch[k], network.TieOfBranch[k], network.Heat ?? main, warm);
            Put(ref Branches[k], through.Wider(amperes));
            Put(ref Heat[k], new Interval(Math.Max(0, heat.Least - amperes), heat.Greatest + amperes));
        }

        for (int k = 0; k < Sources.Length; k++)
        {
            Put(ref Sources[k], -1 * Of(network.OfSource[k], network.TieOfSource[k], main, ties).Wider(amperes));
        }

        foreach ((int load, EnclosureLoad at) in network.Loads)
        {
            int k = network.OfLoad[load];
            LoadVolts[load] = Joined(LoadVolts[load], main.NewVolts[k].Meet(at.Volts).Wider(volts));
            LoadAmperes[load] = Joined(LoadAmperes[load], main.NewAmperes[k].Meet(at.Amperes).Wider(amperes));
        }

        Any = true;
    }

    /// <summary>Adds the drops, the wires as warm as any of the boxes has them.</summary>
    internal void AddDrops(IReadOnlyList<EnclosureNetwork> networks, EnclosureWires wires)
    {
        foreach ((int load, EnclosureLoad at) in networks[0].Loads)
        {
            foreach (int source in EnclosureNearest.Of(harness, networks[0], wires, Heat, load))
            {
                HarnessSource from = harness.SourceArray[source];
                foreach (EnclosureSystem main in networks.Select(n => n.Main))
                {
                    Interval drop = main.Between((harness.NodeIndex(from.Positive), 1), (harness.NodeIndex(from.Negative), -1), (at.Positive, -1), (at.Negative, 1));
                    Drops[load] = Joined(Drops[load], drop.Wider(Slack * main.LargestVolts));
                }
            }
        }
    }

    private static Interval Joined(Interval? before, Interval now) => before?.Hull(now) ?? now;

    private static Interval Of(int element, int tie, EnclosureSystem system, Interval[] ties) =>
        element >= 0 ? system.NewAmperes[element].Meet(system.Elements[element].Amperes) : tie >= 0 ? ties[tie] : default;

    private void Put(ref Interval at, Interval now) => at = Any ? at.Hull(now) : now;
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>Rules on every fuse, wire and load of a tree. Nothing of the library's networks, harnesses or checks is asked.</summary>
internal sealed partial class TreeReferee
{
    /// <summary>The place of what is said of the harness as a whole.</summary>
    public const string Anywhere = "anywhere";

    private static readonly SupplyLevel[] Levels = [SupplyLevel.Minimum, SupplyLevel.Nominal, SupplyLevel.Maximum];

    private readonly OwnTree tree;
    private readonly TreeGiven given;
    private readonly TreeFlow[] cool;
    private readonly TreeFlow[] warm;
    private readonly TreeZone[] zones;
    private readonly Dictionary<(string Kind, string Place), Ruling> rulings = [];

    private TreeReferee(OwnTree tree)
    {
        this.tree = tree;
        given = tree.Given;
        cool = [.. Levels.Select(level => TreeFlow.Of(tree, level, false))];
        warm = [.. Levels.Select(level => TreeFlow.Of(tree, level, true))];
        zones = TreeZone.Of(tree);
    }

    public static TreeRuling[] Rule(TreeGiven given)
    {
        TreeReferee referee = new(new OwnTree(given));
        referee.All();
        return [.. referee.rulings.Select(pair => new TreeRuling(pair.Key.Kind, pair.Key.Place, pair.Value)).OrderBy(r => r.Kind, StringComparer.Ordinal).ThenBy(r => r.Place, StringComparer.Ordinal)];
    }

    private bool Sure => Array.TrueForAll(warm, flow => flow.Exists);

    private void All()
    {
        if (!Delivers())
        {
            return;
        }

        OfLoads();
        OfWires();
        OfFuses();
        OfStarts();
        OfFaults();
    }

    private bool Delivers()
    {
        if (Array.TrueForAll(cool, flow => flow.Exists))
        {
            SupplyLevel? off = Levels.Cast<SupplyLevel?>().FirstOrDefault(level => tree.Source.Disconnects(level!.Value, cool[(int)level].Total));
            Keep("PowerDelivery", Anywhere, off is null ? new(Say.CannotSay, 0, 0) : new(Say.MustFail, cool[(int)off].Total, 0, $"A, the source disconnects, {off}"));
            return off is null;
        }

        // A tenth less is still too much: no nearness to the limit and no slow settling explains that.
        // Without a constant power or a held current there is always a point, if one of no use.
        bool clear = (tree.Source.Holds || Array.Exists(tree.Loads, load => load.HasPower)) && Levels.Any(level => !TreeFlow.Of(tree, level, false, (load, volts) => 0.9 * tree.Loads[load].Running(volts)).Exists);
        Keep("PowerDelivery", Anywhere, new(clear ? Say.MustNotPass : Say.CannotSay, 0, 0, "no operating point"));
        return false;
    }

    private void OfLoads()
    {
        for (int load = 0; load < tree.Loads.Length; load++)
        {
            TreeLoadGiven own = given.Loads[load];
            double nominal = tree.Source.NominalVolts, least = cool.Max(f => f.SourceVolts - f.Volts[load]), most = Sure ? warm.Max(f => f.SourceVolts - f.Volts[load]) : double.PositiveInfinity;
            double? limit = own.DropPercent * nominal / 100 ?? (given.Rules.Preset == 2 ? null : 0.03 * nominal);
            if (limit is { } volts)
            {
                Keep("VoltageDrop", own.Id, Ruling.AtMost(Math.Min(least, most), Math.Max(least, most), volts, 0.005));
            }

            if (tree.Loads[load].LeastVolts > 0)
            {
                double seen = cool.Min(f => f.Volts[load]), cautious = Sure ? warm.Min(f => f.Volts[load]) : 0;
                Keep("LoadVoltage", own.Id, Ruling.AtLeast(Math.Min(seen, cautious), Math.Max(seen, cautious), tree.Loads[load].LeastVolts, 0.002));
            }

            if (tree.Loads[load].Starts)
            {
                OfStartVolts(load);
            }
        }
    }

    // With the load at its peak and cool wires; the others run meanwhile and have to go on.
    private void OfStartVolts(int starting)
    {
        foreach (SupplyLevel level in Levels)
        {
            TreeFlow flow = TreeFlow.Of(tree, level, false, (load, volts) => load == starting ? tree.Loads[load].AtStart(volts) : tree.Loads[load].Running(volts));
            if (!flow.Exists || tree.Source.Disconnects(level, flow.Total))
            {
                return;
            }

            for (int load = 0; load < tree.Loads.Length; load++)
            {
                if (tree.Loads[load].LeastVolts > 0)
                {
                    Keep(load == starting ? "StartVoltage" : "LoadVoltage", given.Loads[load].Id, Ruling.AtLeast(0, flow.Volts[load], tree.Loads[load].LeastVolts, 0.002, $"while {given.Loads[starting].Id} starts"));
                }
            }
        }
    }

    private void OfWires()
    {
        for (int part = 0; part < tree.Wires.Length; part++)
        {
            if (tree.Wires[part] is not { } wire || tree.Behind[part].Length == 0)
            {
                continue;
            }

            string id = given.Parts[part].Id;
            (double least, double most) = Heating(part);
            (double low, double high, double continuous) = (least / wire.Parallel, most / wire.Parallel, wire.Wire.Continuous);
            Keep("ContinuousCurrent", id, wire.Rating.Known
                ? new(low > wire.Rating.High * 1.005 ? Say.MustFail : high < wire.Rating.Low * 0.95 ? Say.MustPass : Say.CannotSay, low, wire.Rating.High)
                : new(Say.MustNotPass, low, 0, "not rated"));
            Keep("ConductorTemperature", id, wire.Ambient > continuous + 0.5 ? new(Say.MustFail, wire.Ambient, continuous, "air")
                : low > wire.Physics ? new(Say.MustFail, low, wire.Physics, "A, by physics")
                : new(wire.Rating.Known && high < 0.95 * wire.Rating.Low && high < 0.7 * wire.Physics && wire.Ambient < continuous ? Say.MustPass : Say.CannotSay, low, wire.Physics, "A, by physics"));
        }
    }

    // r.m.s. of a part over the levels, within bounds.
    private (double Least, double Most) Heating(int part)
    {
        double least = cool.Max(f => f.Heating[part]), most = Sure ? Math.Max(warm.Max(f => f.MostHeating[part]), cool.Max(f => f.MostHeating[part])) : double.PositiveInfinity;
        return (Sure ? Math.Min(least, warm.Max(f => f.Heating[part])) : least, most);
    }

    private (double Least, double Most) On(int part)
    {
        double of = cool.Max(f => f.Parts[part]), hot = Sure ? warm.Max(f => f.Parts[part]) : double.PositiveInfinity;
        return (Math.Min(of, hot), Math.Max(of, hot));
    }

    private void Keep(string kind, string place, in Ruling ruling) =>
        rulings[(kind, place)] = rulings.TryGetValue((kind, place), out Ruling known) && Rank(known.Say) >= Rank(ruling.Say) ? known : ruling;

    private static int Rank(Say say) => say switch { Say.MustFail => 3, Say.MustNotPass => 2, Say.CannotSay => 1, _ => 0 };
}

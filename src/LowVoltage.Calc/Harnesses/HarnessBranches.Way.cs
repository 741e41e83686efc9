using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>The way to one end of a zone and back: what is in a row, what is shared, what feeds it.</content>
internal sealed partial class HarnessBranches
{
    private (SegmentState[] Stretches, int Own, double[] Heating) Stretches(ZoneEnd end, double[] behind)
    {
        List<SegmentState> own = [], shared = [];
        List<double> ownHeat = [], sharedHeat = [];
        foreach (int k in Enumerable.Reverse(end.Path).Concat(end.Back).Where(IsWire))
        {
            SegmentState wire = duty.WireOf(k);
            wire.OtherAmperes = Others(k, behind);
            (wire.OtherAmperes > 0 ? shared : own).Add(wire);
            (wire.OtherAmperes > 0 ? sharedHeat : ownHeat).Add(duty.Heat[k]);
        }

        foreach (int k in end.Leads)
        {
            // Its resistance counts with the source: here it is there to be heated.
            SegmentState lead = duty.WireOf(k);
            lead.OtherAmperes = Others(k, behind);
            lead.Meters = 0;
            own.Add(lead);
            ownHeat.Add(duty.Heat[k]);
        }

        return ([.. own, .. shared], own.Count, [.. ownHeat, .. sharedHeat]);
    }

    private double Others(int branch, double[] behind)
    {
        double others = sumHeat[branch] - behind[branch];
        return others > 1e-12 * sumHeat[branch] ? others : 0;
    }

    private (double Ohms, double Volts) Fixed(ZoneEnd end, double[] behind)
    {
        double ohms = end.Fuse >= 0 ? Harness.BranchArray[end.Fuse].FixedOhms : 0, volts = 0;
        foreach (int k in end.Path)
        {
            ohms += Harness.BranchArray[k].FixedOhms;
        }

        foreach (int k in end.Back)
        {
            ohms += Harness.BranchArray[k].FixedOhms;
            volts += Harness.BranchArray[k].FixedOhms * Others(k, behind);
        }

        return (ohms, volts);
    }

    private static (double Ohms, double Volts) Shared(SegmentState[] stretches, int own)
    {
        double ohms = 0, volts = 0;
        for (int i = own; i < stretches.Length; i++)
        {
            double its = stretches[i].OhmsAt(stretches[i].HotCelsius(stretches[i].OtherAmperes));
            ohms += its;
            volts += its * stretches[i].OtherAmperes;
        }

        return (ohms, volts);
    }

    // The source with what lies between it and the fuse in a row; others draw through that too.
    private SourceNumbers Before(in SourceNumbers source, bool isSingle, ZoneEnd end, double[] behind)
    {
        // The equivalent of several sources has the loads' draw in its voltage already.
        double hot = 0, cool = 0, taken = isSingle && !end.IsOfStart ? source.GreatestOhms * OthersOfSource(end) : 0;
        foreach (int k in end.Upstream)
        {
            hot += feeding.HotOhms(k);
            cool += feeding.CoolOhms(k);
            taken += feeding.HotOhms(k) * Others(k, behind);
        }

        return source with
        {
            MinimumVolts = Math.Max(LeastVolts, source.MinimumVolts - taken),
            LeastOhms = source.LeastOhms + cool,
            NominalOhms = source.NominalOhms + (0.5 * (hot + cool)),
            GreatestOhms = source.GreatestOhms + hot,
        };
    }

    // What loads that are not behind the fuse draw from the same source, r.m.s.
    private double OthersOfSource(ZoneEnd end)
    {
        double others = 0;
        for (int k = 0; k < loadHeat.Length; k++)
        {
            others += loadHeat[k] > 0 && !end.Behind.Contains(k) && duty.Graph.WayFrom(Harness.NodeIndex(Harness.LoadArray[k].Positive)).EndNode == end.Feed.EndNode ? loadHeat[k] : 0;
        }

        return others;
    }

    // Metres of conductor that no fuse protects on a way up to a source; null where they are not known.
    private double? Unprotected(int[] way, FeedEnd end)
    {
        double meters = 0;
        foreach (int k in way)
        {
            switch (Harness.BranchArray[k])
            {
                case HarnessFuse:
                    return 0;
                case HarnessWire wire:
                    meters += wire.Meters;
                    break;
                case HarnessResistance { Meters: { } length }:
                    meters += length;
                    break;
                case HarnessResistance:
                    return null;
            }
        }

        return end == FeedEnd.Source ? meters : null;
    }

    // Whether current can come from a source to a node without passing a fuse.
    private bool ReachesSource(int node) => duty.Graph
        .Reached(node, k => Harness.BranchArray[k] is not HarnessFuse)
        .Overlaps(Harness.SourceArray.Select(s => Harness.NodeIndex(s.Positive)));
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <content>Faults at the far ends and on the way there.</content>
internal sealed partial class TreeReferee
{
    /// <summary>Wires before a fuse in a fault behind it: no check of the library has this name; it must doubt one of those that protect them.</summary>
    public const string OnTheWay = "OnTheWay";

    private static readonly double[] Along = [0.1, 0.4, 1];

    private void OfFaults()
    {
        foreach (TreeZone zone in zones.Where(zone => zone.Fuse >= 0))
        {
            OwnStretch[] wires = [.. Stretches(zone)];
            OwnFuse fuse = tree.Fuses[zone.Fuse]!;
            string id = given.Parts[zone.Fuse].Id;

            // Where the wires carry all that the supply gives nothing has to open.
            if (wires.Length == 0 || Prospective(zone.Fuse) <= Weakest(wires, true) * 1.02)
            {
                continue;
            }

            if (!fuse.HasTimes)
            {
                Keep("FaultOpensFuse", id, new(Say.MustNotPass, 0, 0, "no times"));
                Keep("ShortCircuitTemperature", id, new(Say.MustNotPass, 0, 0, "no times"));
                continue;
            }

            OfEnd(zone, id);
        }
    }

    // Others may flow on or find no voltage: what is said holds either way.
    private void OfEnd(TreeZone zone, string id)
    {
        TreeFaultEnd alone = At(SupplyLevel.Minimum, zone.FaultAtEnd(), false), beside = At(SupplyLevel.Minimum, zone.FaultAtEnd(), true);
        double soonest = Math.Min(alone.Seconds, beside.Seconds), latest = alone.ByLast && beside.ByLast ? Math.Max(alone.Seconds, beside.Seconds) : double.PositiveInfinity;
        Ruling end = Ruling.AtMost(soonest, latest, given.Rules.FaultSeconds, 0.03, $"s, {alone.First:G4} A");
        double before = Math.Min(alone.Before, beside.Before);
        bool burns = before > 5;

        // Where a wire before it burns meanwhile, that is what must be said, not how late this fuse is.
        Keep("FaultOpensFuse", id, burns ? end with { Say = Say.CannotSay } : end);
        Keep(OnTheWay, id, new(burns ? Say.MustFail : Say.CannotSay, before, 0, "K beyond the limit of a wire before the fuse"));
        if (Math.Max(alone.Seconds, beside.Seconds) > given.Rules.FaultSeconds * 0.97)
        {
            return;
        }

        bool hasOthers = tree.Behind[zone.Fuse].Length < tree.Loads.Length;
        foreach (SupplyLevel level in new[] { SupplyLevel.Minimum, SupplyLevel.Maximum })
        {
            for (int k = zone.Feed.Length - zone.Own.Length; k < zone.Feed.Length; k++)
            {
                foreach (double share in tree.Wires[zone.Feed[k]] is null ? [] : Along)
                {
                    FaultPiece[] way = zone.FaultAt(tree, k, share);
                    TreeFaultEnd one = At(level, way, false), other = hasOthers ? At(level, way, true) : one;
                    bool sure = one.ByLast && other.ByLast && Math.Max(one.Before, other.Before) < 0;
                    double least = Math.Min(one.Excess, other.Excess), most = sure ? Math.Max(one.Excess, other.Excess) : double.PositiveInfinity;
                    Keep("ShortCircuitTemperature", id, new(least > 5 ? Say.MustFail : most < -10 ? Say.MustPass : Say.CannotSay, least, 0, $"K beyond the limit, {share:G2} of {given.Parts[zone.Feed[k]].Id}, {level}"));
                }
            }
        }

        TreeFaultEnd At(SupplyLevel level, FaultPiece[] way, bool othersFlow) => TreeFault.At(tree, level, zone.Fuse, way, cool[(int)level], othersFlow);
    }
}

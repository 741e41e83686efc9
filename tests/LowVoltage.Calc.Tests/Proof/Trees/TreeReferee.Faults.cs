using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <content>Faults at the far ends and on the way there.</content>
internal sealed partial class TreeReferee
{
    private static readonly double[] Along = [0.1, 0.3, 0.6, 1];

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
        FaultEnd alone = At(SupplyLevel.Minimum, zone.FaultAtEnd(), false), beside = At(SupplyLevel.Minimum, zone.FaultAtEnd(), true);
        Keep("FaultOpensFuse", id, Ruling.AtMost(Math.Min(alone.Seconds, beside.Seconds), Math.Max(alone.Seconds, beside.Seconds), given.Rules.FaultSeconds, 0.03, $"s, {alone.First:G4} A"));
        if (Math.Max(alone.Seconds, beside.Seconds) > given.Rules.FaultSeconds * 0.97)
        {
            return;
        }

        foreach (SupplyLevel level in new[] { SupplyLevel.Minimum, SupplyLevel.Maximum })
        {
            for (int k = zone.Feed.Length - zone.Own.Length; k < zone.Feed.Length; k++)
            {
                foreach (double share in tree.Wires[zone.Feed[k]] is null ? [] : Along)
                {
                    FaultPiece[] way = zone.FaultAt(tree, k, share);
                    double one = At(level, way, false).Excess, other = At(level, way, true).Excess, least = Math.Min(one, other), most = Math.Max(one, other);
                    Keep("ShortCircuitTemperature", id, new(least > 5 ? Say.MustFail : most < -10 ? Say.MustPass : Say.CannotSay, least, 0, $"K beyond the limit, {share:G2} of {given.Parts[zone.Feed[k]].Id}, {level}"));
                }
            }
        }

        FaultEnd At(SupplyLevel level, FaultPiece[] way, bool othersFlow) => TreeFault.At(tree, level, zone.Fuse, way, cool[(int)level], othersFlow);
    }
}

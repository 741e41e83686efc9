using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Design;

/// <content>Where nothing passes: what comes nearest.</content>
internal sealed partial class CircuitSearch
{
    // Where nothing passes: the fewest failures, then the least beyond its limit, then the smallest. Where no size is rated or delivers, the wire decides, and the fuse follows.
    private Choice Nearest()
    {
        int size = 0, least = int.MaxValue;
        double tightness = double.NegativeInfinity;
        for (int i = 0; i < sizes.Count; i++)
        {
            at.SetCandidate(sizes[i]);
            CheckRun run = default;
            if (!run.ComesNearer(at, ofFuse: false, least, DropIsLost && !double.IsPositiveInfinity(tightness) ? double.NegativeInfinity : tightness + Nearness))
            {
                continue;
            }

            int bad = Weight(run);
            double own = Reach(run);
            if (bad < least || (bad == least && own > tightness + Nearness))
            {
                (size, least, tightness) = (i, bad, own);
            }
        }

        return least >= NotRated ? new Choice { Size = size, Fuse = Ask(sizes[size]).Fuse, IsNearest = true } : NearestByFuse(size);
    }

    // From the size on that comes nearest as a wire: of some of them, to the largest, the one that comes nearest with its fuse.
    private Choice NearestByFuse(int smallest)
    {
        Choice best = default;
        (int Bad, double Tightness) rank = (int.MaxValue, double.NegativeInfinity);
        for (int i = smallest, step = 1; i < sizes.Count; i = i == sizes.Count - 1 ? sizes.Count : Math.Min(sizes.Count - 1, i + step), step++)
        {
            (int bad, double tightness, FuseRating? fuse) = Ask(sizes[i]);
            if (bad < rank.Bad || (bad == rank.Bad && tightness > rank.Tightness + Nearness))
            {
                rank = (bad, tightness);
                best = new Choice { Size = i, Fuse = fuse, IsNearest = true };
            }
        }

        return best;
    }

    /// <summary>Whether what was stated beside the wire loses more than is allowed, so that no size cures the drop.</summary>
    private bool DropIsLost => lost ??= at.FixedDropVolts > mostDropVolts;

    // How near, more being nearer. Of a drop that is lost only the wire's own part counts, as far as that is beyond the allowance by itself, and the worst of the other failures.
    private double Reach(in CheckRun run)
    {
        if (!DropIsLost || !at.Duty.Exists)
        {
            return run.Failed > 0 ? run.Worst.Tightness : 0;
        }

        double left = 1 - (at.Duty.OnAmperes * (at.HotPathOhms - at.FixedOhms) / mostDropVolts);
        return Math.Min(left < 0 ? left : double.PositiveInfinity, run.Failed > 1 ? run.WorstBesideDrop.Tightness : double.PositiveInfinity);
    }

    private (int Bad, double Tightness, FuseRating? Fuse) Ask(Conductor size)
    {
        at.SetCandidate(size);
        CheckRun run = default;
        run.AskWire(at);
        FuseRating? fuse = at.Duty.Exists ? NearestFuse(run, out run) : null;
        return (Weight(run), Reach(run), fuse);
    }

    // A load that gets nothing, or a wire that is not rated, is further away than any number of limits that are passed by a little.
    private int Weight(in CheckRun run) => run.Failed + (at.Duty.Exists ? 0 : 10 * NotRated) + (at.IsRated ? 0 : NotRated);

    // Of those that carry the load and protect the wire, or else the smallest that carries it. By value: the callers hand in the variable that comes back.
    private FuseRating? NearestFuse(CheckRun wire, out CheckRun best)
    {
        // A fuse made for less than the voltage is asked only where none of those that carry the load is made for it, and one that does not carry the load only where none does.
        FuseRating? nearest = null;
        best = wire;
        double least = Math.Min(at.LeastFuseAmperes * (1 - BranchState.Rounding), fuses[fuses.Length - 1].Amperes);
        bool forVolts = Array.Exists(fuses, fuse => fuse.Amperes >= least && !FuseVoltageCheck.IsBelow(at, fuse));
        double last = 0, most = at.MostFuseAmperes * (1 + BranchState.Rounding);
        foreach (FuseRating fuse in fuses)
        {
            // What stops a smaller fuse of known times stops a larger one of unknown times too, though nothing shows it.
            if (fuse.Amperes < least || (forVolts && FuseVoltageCheck.IsBelow(at, fuse)) || (fuse.FaultCurve is null && nearest?.FaultCurve is not null))
            {
                continue;
            }

            // A fuse too large for the wire, or on a wire of which nothing is known, is not nearer for breaking more.
            if (nearest is not null && (!at.IsRated || fuse.Amperes > most))
            {
                break;
            }

            // The same rating for a higher voltage answers nothing new where that of the supply is met.
            if (forVolts && fuse.Amperes.Equals(last))
            {
                continue;
            }

            // Nothing comes nearer than a fuse that adds no failure to those of the wire.
            if (nearest is not null && best.Failed == wire.Failed)
            {
                break;
            }

            last = fuse.Amperes;
            CheckRun run = wire;
            at.SetFuse(fuse);
            if (run.ComesNearer(at, ofFuse: true, nearest is null ? int.MaxValue : best.Failed, nearest is null ? double.NegativeInfinity : best.Worst.Tightness + Nearness))
            {
                nearest = fuse;
                best = run;
            }
        }

        return nearest;
    }
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>A stretch as a fuse must protect it.</content>
internal sealed partial class BranchState
{
    // Of the wires that stand in the stretches, whatever the fuse.
    private WireLimits[]? limits;

    /// <summary>A stretch cooled so that its continuous current brings it to the temperature that the current is rated for, in the air that it is rated for; at that temperature never better than free in air.</summary>
    /// <remarks>
    /// Of two bases the one that cools it least counts: the lower current is not always the worse cooling, for it may belong to warmer air. The cooling that the rating stands for is then counted in the air where the wire runs. In a shared return the others' current is taken from what the wire
    /// carries: at any current beyond the rest, that leaves the wire hotter than it is.
    /// </remarks>
    internal ref readonly WireLimits LimitsOf(int stretch, OverloadAllowance allowance)
    {
        if ((known & Known.Limits) == 0)
        {
            limits ??= new WireLimits[stretches.Length];
            for (int i = 0; i < limits.Length; i++)
            {
                limits[i] = FindLimits(i, allowance);
            }

            known |= Known.Limits;
        }

        return ref limits![stretch];
    }

    private WireLimits FindLimits(int stretch, OverloadAllowance allowance)
    {
        ref readonly SegmentState s = ref stretches[stretch];
        Wire wire = s.Site.WireOf(s.Conductor);
        HeatBalanceKernel free = HeatBalanceKernel.For(wire, s.Site.StillAir());
        (double left, PreparedRating basis) = s.Cooling();
        double ratedAmbient = basis.RatedAmbientFor(s.Conductor);
        HeatBalanceKernel rated = ratedAmbient.Equals(s.Site.AmbientCelsius) ? free : HeatBalanceKernel.For(wire, s.Site.StillAirAt(ratedAmbient));
        if (s.Parallel > 1)
        {
            free = free.Sharing(s.Parallel);
            rated = rated.Sharing(s.Parallel);
        }

        // Where others fill a shared wire nothing is left, which the rating check fails; the least current there is keeps the arithmetic alive.
        HeatBalanceKernel cooled = WireLimits.Cooled(free, rated, Math.Max(Accept.Least, left), basis.LimitCelsiusFor(s.Conductor));
        return WireLimits.Of(cooled, wire, allowance, FaultStartCelsius(stretch));
    }
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <content>What lets the search pass over most sizes and fuses with little work.</content>
internal sealed partial class CircuitEvaluator
{
    /// <summary>Whether the wire that stands in the links is out before it is rated: no size can be rated here, it is too thin, or it drops too much even as cool as the air.</summary>
    /// <remarks>
    /// A warmer conductor has more resistance, and every kind of load then leaves more of the voltage in the path: what is too much here is too much at any
    /// temperature that the rating could give. The answer "no" says nothing.
    /// </remarks>
    internal bool IsOutWhenCool()
    {
        if (rating.Gap.Length > 0)
        {
            return true;
        }

        double conductorOhms = 0;
        for (int i = 0; i < links.Length; i++)
        {
            if (links[i].Conductor.AreaSquareMillimeters < rules.MinimumSquareMillimeters * (1 - Rounding))
            {
                return true;
            }

            conductorOhms += links[i].OhmsAt(Ambient);
        }

        bool limited = dropLimit.TryVolts(source.NominalVolts, requirements.Intermittent, out double most);

        // A little less resistance than the coolest, so that rounding cannot decide.
        conductorOhms *= 1 - Rounding;
        return IsOutAt(SupplyLevel.Minimum, conductorOhms, limited ? most : double.PositiveInfinity)
            || IsOutAt(SupplyLevel.Maximum, conductorOhms, limited ? most : double.PositiveInfinity);
    }

    /// <summary>Looks for the smallest fuse that passes; its checks are left in the list. Each other fuse is dropped at its first failure.</summary>
    /// <remarks>
    /// A fuse whose operating times are not published leaves the fault open. It is taken only where no fuse with published times carries the load, and never
    /// after a smaller one has failed: what stops a smaller fuse stops a larger one too, unless somebody knows better. A breaking capacity that is too small is no
    /// such thing: it belongs to the series, and the next series may break more.
    /// </remarks>
    internal FuseRating? FirstFuse(ref CheckList list, in WireDuty duty)
    {
        double least = LeastFuseAmperes(duty) * (1 - Rounding), most = MostFuseAmperes() * (1 + Rounding);
        CheckList mark = list;
        FuseRating? untimed = null;
        bool stopped = false;
        foreach (FuseRating fuse in rules.Fuses.RatingsArray)
        {
            if (fuse.Amperes > most)
            {
                break;
            }

            if (fuse.Amperes < least || IsBelowVoltage(fuse))
            {
                continue;
            }

            list.Rewind(mark);
            CheckFuse(ref list, duty, fuse, decide: true);
            if (list.Failed == 0 && !list.LeavesFaultOpen)
            {
                return fuse;
            }

            untimed ??= list.Failed == 0 && !stopped ? fuse : null;
            stopped |= list.Failed > 0 && !BreaksTooLittleOnly(ref list, mark, duty, fuse);
        }

        list.Rewind(mark);
        if (untimed is not null)
        {
            CheckFuse(ref list, duty, untimed, decide: true);
        }

        return untimed;
    }

    private bool BreaksTooLittleOnly(ref CheckList list, in CheckList mark, in WireDuty duty, FuseRating fuse)
    {
        if (list.Failed > 1 || list.Worst.Kind != CheckKind.BreakingCapacity)
        {
            return false;
        }

        // The search stopped there: what else is to be said of this fuse?
        list.Rewind(mark);
        CheckFuse(ref list, duty, fuse);
        return list.Failed == 1;
    }

    private bool IsOutAt(SupplyLevel level, double conductorOhms, double mostDropVolts)
    {
        double sourceOhms = source.OhmsAt(level);
        KernelPoint point = OperatingPointKernel.Solve(
            source.VoltsAt(level) - sharedVolts,
            sourceOhms + fixedOhms,
            conductorOhms,
            new FixedConductorTemperature(Ambient, 1),
            load,
            LoadState.Running,
            source.HeldAmperes);
        return point.Exists
            ? (point.Amperes * (point.Ohms - sourceOhms)) + sharedVolts > mostDropVolts
            : point.Reason is NoOperatingPoint.PowerOutOfReach or NoOperatingPoint.CurrentOutOfReach;
    }
}

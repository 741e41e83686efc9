using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <content>The fault at the far end.</content>
internal sealed partial class BranchState
{
    private FarEndFault farEnd;
    private FaultLink[] faultLinks = [];

    /// <summary>What a fault at the far end does to the fuse; found once for wire and fuse.</summary>
    internal ref readonly FarEndFault FarEnd
    {
        get
        {
            if ((known & Known.FarEnd) == 0)
            {
                SourceNumbers weakest = Weakest;
                farEnd = new FarEndFault { FirstAmperes = ProspectiveCurrent.LeastAt(weakest, HotPathOhms) };
                if (Fuse?.Curve is { } curve)
                {
                    Clear(curve, weakest);
                }

                known |= Known.FarEnd;
            }

            return ref farEnd;
        }
    }

    /// <summary>The least current at which a fault may end: what the longest Joule integral is taken from.</summary>
    internal double LeastFaultAmperes => FarEnd.Ending == FarEndEnding.Opens ? FarEnd.LastAmperes : FarEnd.FirstAmperes;

    // The latest opening on a fault whose current falls as the conductors heat.
    private void Clear(TimeCurrentCurve curve, in SourceNumbers weakest)
    {
        double first = farEnd.FirstAmperes;
        if (!curve.TryLongestSeconds(first, out double seconds))
        {
            farEnd.Ending = FarEndEnding.NeverOpens;
            return;
        }

        if (seconds > Practice.FaultSeconds)
        {
            // Too late already if the current stayed.
            Opens(seconds, first, 0);
            return;
        }

        double conductorOhms = HeatedLinks(curve.FusingAmperes);
        double fixedPart = weakest.GreatestOhms + OwnFixedOhms;
        FaultKernel fault = new(Source.MinimumVolts, fixedPart, faultLinks, OtherAmperes);
        if (first < fault.AmperesAt(0) * (1 - Rounding))
        {
            // The source holds its limit. It still does when the fuse has had its share, or counts as a source of more resistance, which gives less.
            double constant = first * first * seconds;
            if (constant <= fault.MeltingJoules && fault.AmperesAt(constant) >= first)
            {
                Opens(seconds, first, 0);
                return;
            }

            fault = new FaultKernel(weakest.MinimumVolts, (weakest.MinimumVolts / first) - conductorOhms, faultLinks);
        }

        Latest(fault, curve);
    }

    private void Latest(in FaultKernel fault, TimeCurrentCurve curve)
    {
        switch (FaultClearing.Latest(fault, curve, out double joules))
        {
            case FaultOutcome.Opens:
                Opens(fault.SecondsTo(joules), fault.AmperesAt(joules), joules);
                break;
            case FaultOutcome.ConductorMelts:
                farEnd.Ending = FarEndEnding.Melts;
                break;
            default:
                farEnd.Ending = FarEndEnding.Falls;
                break;
        }
    }

    private void Opens(double seconds, double amperes, double joules)
    {
        farEnd.Ending = FarEndEnding.Opens;
        farEnd.Seconds = seconds;
        farEnd.LastAmperes = amperes;
        farEnd.Joules = joules;
    }
}

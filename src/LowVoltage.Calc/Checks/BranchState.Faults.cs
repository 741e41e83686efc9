using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <content>The fault at the far end.</content>
internal sealed partial class BranchState
{
    private FarEndFault farEnd;

    /// <summary>What a fault at the far end does to the fuse; found once for wire and fuse.</summary>
    internal ref readonly FarEndFault FarEnd
    {
        get
        {
            if ((known & Known.FarEnd) == 0)
            {
                SourceNumbers weakest = Weakest;
                farEnd = new FarEndFault { FirstAmperes = ProspectiveCurrent.LeastAt(weakest, HotPathOhms) };
                if (Fuse?.FaultCurve is { } curve)
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

        FaultLink[] links = HeatedLinks();
        FaultKernel fault = new(Source.MinimumVolts - FixedSharedVolts, weakest.GreatestOhms + OwnFixedOhms, links);
        if (Source.Beyond is null && first < fault.AmperesAt(0) * (1 - Rounding))
        {
            // The source holds its limit. It still does when the fuse has had its share, or counts as a source of more resistance, which gives less.
            double constant = first * first * seconds;
            if (!fault.HasOthers && constant <= fault.MeltingJoules && fault.AmperesAt(constant) >= first)
            {
                Opens(seconds, first, 0);
                return;
            }

            fault = new FaultKernel(Source.MinimumVolts - FixedSharedVolts, ReplacementOhms(links, first), links);
        }
        else if (Source.Beyond is not null)
        {
            // Batteries that push a current through a supply at its limit: with their voltage alone that current falls at once. If it is the limit that flows it stays for a while, and this is less.
            fault = new FaultKernel(EquivalentVolts(links, first, weakest.GreatestOhms + OwnFixedOhms), weakest.GreatestOhms + OwnFixedOhms, links);
        }

        Latest(fault, curve);
    }

    // The resistance that stands for a source at its limit and all that stays cool: it gives the same current at first.
    private double ReplacementOhms(FaultLink[] links, double first)
    {
        double volts = Source.MinimumVolts - FixedSharedVolts, ohms = 0;
        foreach (FaultLink link in links)
        {
            ohms += link.Ohms;
            volts -= link.Ohms * link.Others;
        }

        return (volts / first) - ohms;
    }

    // The voltage that drives the same current at first through the same resistance.
    private static double EquivalentVolts(FaultLink[] links, double first, double fixedOhms)
    {
        double volts = first * fixedOhms;
        foreach (FaultLink link in links)
        {
            volts += link.Ohms * (first + link.Others);
        }

        return volts;
    }

    // Every stretch heats: the circuit's own by the fault, a shared one by the others' current as well.
    private FaultLink[] HeatedLinks()
    {
        FaultLink[] links = new FaultLink[stretches.Length];
        for (int i = 0; i < links.Length; i++)
        {
            ref readonly SegmentState s = ref stretches[i];
            links[i] = new FaultLink(s.Conductor, s.Meters, s.HotCelsius(HeatingIn(i)), s.Parallel, s.OtherAmperes);
        }

        return links;
    }

    private void Latest(FaultKernel fault, TimeCurrentCurve curve)
    {
        switch (FaultClearing.Latest(ref fault, curve, out double joules))
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

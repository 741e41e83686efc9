using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Design;

/// <content>The checks of a fuse on the wire that stands in the links.</content>
internal sealed partial class CircuitEvaluator
{
    // A share of a limit that rounding may take.
    private const double Rounding = 1e-9;

    private static readonly Reference StartReference = Reference.CommonPractice("a fuse must not open while its load starts");
    private static readonly Reference VoltageReference = Reference.CommonPractice("a fuse is rated for at least the highest voltage of its circuit");
    private static readonly Reference InterruptReference = Reference.CommonPractice("a fuse breaks at least the greatest prospective current where it sits");

    private readonly List<Inrush> surges = [];
    private bool surged;

    /// <summary>Smallest rating that carries the load in continuous service, A.</summary>
    internal double LeastFuseAmperes(in WireDuty duty) => duty.OnAmperes / rules.FusePractice.Loading;

    /// <summary>The smallest fuse that carries the load and is made for the voltage; null when the series has none.</summary>
    internal FuseRating? NextFuse(in WireDuty duty)
    {
        double least = LeastFuseAmperes(duty) * (1 - Rounding);
        return Array.Find(rules.Fuses.RatingsArray, fuse => fuse.Amperes >= least && !IsBelowVoltage(fuse));
    }

    /// <summary>Largest rating that the wire allows, A.</summary>
    internal double MostFuseAmperes() => WeakestAmperes() * rules.FusePractice.ShareOfAmpacity;

    // The other half of the rule, IEC 60364-4-43 433.1: the conventional fusing current is at most 1.45 times the wire's. A caller whose law allows a fuse above
    // the wire's current has set that half aside too.
    private double MostByFusingCurrent(FuseRating fuse) => fuse.Curve is { } curve && rules.FusePractice.ShareOfAmpacity <= 1
        ? OverloadCoordination.FusingFactor * WeakestAmperes() * fuse.Amperes / curve.FusingAmperes
        : double.PositiveInfinity;

    /// <summary>Says why no fuse fits this wire: the failure of the one that came nearest, put into the list.</summary>
    /// <remarks>
    /// Fuses that the wire allows speak first: if there are any, the wire is not what is wrong. A fuse for a lower voltage speaks only where there is none for this voltage.
    /// </remarks>
    internal void AskFuses(ref CheckList list, in WireDuty duty)
    {
        double least = LeastFuseAmperes(duty) * (1 - Rounding), most = MostFuseAmperes() * (1 + Rounding);
        CheckList mark = list;
        DesignCheck? nearest = null;
        int rank = 0;
        foreach (FuseRating fuse in rules.Fuses.RatingsArray)
        {
            int own = (IsBelowVoltage(fuse) ? 0 : 2) + (fuse.Amperes <= most ? 1 : 0);
            if (fuse.Amperes < least || own < rank)
            {
                continue;
            }

            list.Rewind(mark);
            CheckFuse(ref list, duty, fuse);
            if (list.Failed > 0 && (nearest is null || own > rank || list.Worst.Margin > nearest.Value.Margin))
            {
                nearest = list.Worst;
                rank = own;
            }
        }

        list.Rewind(mark);
        FuseRating largest = rules.Fuses.RatingsArray[rules.Fuses.RatingsArray.Length - 1];
        list.Add(nearest ?? new DesignCheck(
            CheckKind.FuseCarriesLoad, largest.Amperes, LeastFuseAmperes(duty), rules.FusePractice.LoadingReference, "the series has no larger fuse"));
    }

    /// <summary>All checks of one fuse.</summary>
    /// <param name="decide">Stop at the first failure: nobody will read why.</param>
    internal void CheckFuse(ref CheckList list, in WireDuty duty, FuseRating fuse, bool decide = false)
    {
        FusePractice practice = rules.FusePractice;
        list.Add(new DesignCheck(CheckKind.FuseCarriesLoad, fuse.Amperes, LeastFuseAmperes(duty) * (1 - Rounding), practice.LoadingReference));
        double most = Math.Min(MostFuseAmperes(), MostByFusingCurrent(fuse));
        list.Add(IsRated
            ? new DesignCheck(CheckKind.FuseProtectsWire, fuse.Amperes, most * (1 + Rounding), practice.ShareReference)
            : DesignCheck.Open(CheckKind.FuseProtectsWire, fuse.Amperes, practice.ShareReference, "the wire is not rated here"));
        CheckVoltage(ref list, fuse);
        double atFuse = ProspectiveCurrent.GreatestAt(source, requirements.UpstreamOhms ?? 0);
        CheckBreaking(ref list, fuse, atFuse);
        if (decide && list.Failed > 0)
        {
            return;
        }

        CheckStart(ref list, fuse);
        if (decide && list.Failed > 0)
        {
            return;
        }

        CheckFault(ref list, fuse, atFuse);
        CheckDistance(ref list);
        if (!decide || list.Failed == 0)
        {
            CheckOverload(ref list, fuse, atFuse);
        }
    }

    private bool IsBelowVoltage(FuseRating fuse) => fuse.VoltageBasis == RatingBasis.DirectCurrent && fuse.Series.Volts < source.MaximumVolts;

    private void CheckVoltage(ref CheckList list, FuseRating fuse)
    {
        if (fuse.Series.Volts is double volts && fuse.VoltageBasis == RatingBasis.DirectCurrent)
        {
            list.Add(new DesignCheck(CheckKind.FuseVoltage, volts, source.MaximumVolts, VoltageReference));
        }
        else
        {
            list.Add(DesignCheck.Open(CheckKind.FuseVoltage, fuse.Series.Volts ?? 0, VoltageReference, new CheckNote(NoteKind.NoVoltageRating, fuse)));
        }
    }

    private void CheckBreaking(ref CheckList list, FuseRating fuse, double prospective)
    {
        Reference reference = fuse.Series.BreakingCapacityReference ?? InterruptReference;
        if (double.IsInfinity(prospective))
        {
            list.Add(DesignCheck.Open(CheckKind.BreakingCapacity, 0, reference, "the source is given without internal resistance, so its short-circuit current is not known"));
        }
        else if (fuse.BreakingAmperes is not double capacity || fuse.BreakingCapacityBasis != RatingBasis.DirectCurrent)
        {
            list.Add(DesignCheck.Open(CheckKind.BreakingCapacity, prospective, reference, new CheckNote(NoteKind.NoBreakingCapacity, fuse)));
        }
        else if (prospective > capacity && requirements.UpstreamOhms is null)
        {
            list.Add(DesignCheck.Open(
                CheckKind.BreakingCapacity,
                prospective,
                reference,
                new CheckNote(NoteKind.BreaksLess, null, capacity)));
        }
        else
        {
            list.Add(new DesignCheck(CheckKind.BreakingCapacity, prospective, capacity, reference));
        }
    }

    private void CheckStart(ref CheckList list, FuseRating fuse)
    {
        double ohms = Math.Max(Accept.Least, source.LeastOhms + PathOhmsAt(Ambient));
        if (!surged)
        {
            // The same for every fuse on this wire.
            surges.Clear();
            load.AddInrush(source.MaximumVolts, ohms, surges);
            surged = true;
        }

        DesignCheck? hardest = null;
        for (int i = 0; i < surges.Count; i++)
        {
            double peak = TogetherAmperes(i, source.MaximumVolts / ohms);
            if (Math.Min(peak, source.HeldAmperes) > fuse.Amperes)
            {
                DesignCheck check = StartCheck(fuse, surges[i], peak);
                hardest = hardest is { } known && !Harder(check, known) ? known : check;
            }
        }

        if (hardest is { } found)
        {
            list.Add(found);
        }
    }

    // Surges of the same shape come at the same time: four lamps switched together. The path bounds what they can draw.
    private double TogetherAmperes(int index, double mostAmperes)
    {
        double peak = 0;
        foreach (Inrush surge in surges)
        {
            bool alike = surge.Wave == surges[index].Wave && surge.Seconds.Equals(surges[index].Seconds);
            peak += alike ? surge.PeakAmperes : 0;
        }

        return Math.Min(peak, Math.Max(mostAmperes, surges[index].PeakAmperes));
    }

    private DesignCheck StartCheck(FuseRating fuse, Inrush surge, double peak)
    {
        // The time that the peak, held, would need to let the same Joule integral through. A source at its limit gives the same charge, later.
        double held = Math.Min(peak, source.HeldAmperes);
        double seconds = held < peak ? surge.Seconds * peak / held : surge.AmpereSquaredSeconds / (surge.PeakAmperes * surge.PeakAmperes);
        return fuse.TryLeastSeconds(held, out double least)
            ? new DesignCheck(CheckKind.InrushHeld, seconds, least, StartReference, new CheckNote(NoteKind.Surge, surge.Load, held))
            : DesignCheck.Open(CheckKind.InrushHeld, seconds, StartReference, new CheckNote(NoteKind.NoLeastTime, new FuseAndLoad(fuse, surge.Load), held));
    }

    // A failure before an open point before a pass; of two alike the one with less margin.
    private static bool Harder(in DesignCheck check, in DesignCheck than) =>
        Rank(check) != Rank(than) ? Rank(check) > Rank(than) : check.Margin < than.Margin;

    private static int Rank(in DesignCheck check) => check.Outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Open => 1, _ => 0 };

    private void CheckDistance(ref CheckList list)
    {
        if (rules.FusePractice.Distance is not { } rule)
        {
            return;
        }

        double most = rule.Most(requirements.SheathedToFuse, atBattery: false);
        if (double.IsInfinity(most))
        {
            // Any distance is allowed: nothing to be held to.
            return;
        }

        list.Add(requirements.FuseDistanceMeters is { } meters
            ? new DesignCheck(CheckKind.FuseDistance, meters, most * (1 + Rounding), rule.Reference, requirements.SheathedToFuse ? "sheathed" : "not sheathed")
            : DesignCheck.Open(CheckKind.FuseDistance, 0, rule.Reference, new CheckNote(NoteKind.StateDistance, null, most)));
    }
}

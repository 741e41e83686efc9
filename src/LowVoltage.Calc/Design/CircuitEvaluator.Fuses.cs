using LowVoltage.Calc.Checks;
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

    private static readonly Reference VoltageReference = Reference.CommonPractice("a fuse is rated for at least the highest voltage of its circuit");
    private static readonly Reference InterruptReference = Reference.CommonPractice("a fuse breaks at least the greatest prospective current where it sits");

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
    internal double MostByFusingCurrent(FuseRating fuse) => fuse.Curve is { } curve && rules.FusePractice.ShareOfAmpacity <= 1
        ? OverloadCoordination.FusingFactor * WeakestAmperes() * fuse.Amperes / curve.FusingAmperes
        : double.PositiveInfinity;

    /// <summary>Says why no fuse fits this wire: the failure of the one that came nearest, put into the list.</summary>
    /// <remarks>
    /// Fuses that the wire allows speak first: if there are any, the wire is not what is wrong. A fuse for a lower voltage speaks only where there is none for this voltage.
    /// </remarks>
    /// <returns>The fuse that came nearest; null when none is large enough.</returns>
    internal FuseRating? AskFuses(ref CheckList list, in WireDuty duty)
    {
        double least = LeastFuseAmperes(duty) * (1 - Rounding), most = MostFuseAmperes() * (1 + Rounding);
        CheckList mark = list;
        CheckResult? nearest = null;
        FuseRating? asked = null;
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
                asked = fuse;
                rank = own;
            }
        }

        list.Rewind(mark);
        FuseRating largest = rules.Fuses.RatingsArray[rules.Fuses.RatingsArray.Length - 1];
        list.Add(nearest ?? new CheckResult(
            CheckKind.FuseCarriesLoad, largest.Amperes, LeastFuseAmperes(duty), rules.FusePractice.LoadingReference, "the series has no larger fuse"));
        return asked;
    }

    /// <summary>All checks of one fuse.</summary>
    /// <param name="decide">Stop at the first failure: nobody will read why.</param>
    internal void CheckFuse(ref CheckList list, in WireDuty duty, FuseRating fuse, bool decide = false)
    {
        FusePractice practice = rules.FusePractice;
        list.Add(new CheckResult(CheckKind.FuseCarriesLoad, fuse.Amperes, LeastFuseAmperes(duty) * (1 - Rounding), practice.LoadingReference));
        double most = Math.Min(MostFuseAmperes(), MostByFusingCurrent(fuse));
        list.Add(IsRated
            ? new CheckResult(CheckKind.FuseProtectsWire, fuse.Amperes, most * (1 + Rounding), practice.ShareReference)
            : CheckResult.Undetermined(CheckKind.FuseProtectsWire, fuse.Amperes, practice.ShareReference, "the wire is not rated here"));
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
            list.Add(new CheckResult(CheckKind.FuseVoltage, volts, source.MaximumVolts, VoltageReference));
        }
        else
        {
            list.Add(CheckResult.Undetermined(CheckKind.FuseVoltage, fuse.Series.Volts ?? 0, VoltageReference, new CheckNote(NoteKind.NoVoltageRating, fuse)));
        }
    }

    private void CheckBreaking(ref CheckList list, FuseRating fuse, double prospective)
    {
        Reference reference = fuse.Series.BreakingCapacityReference ?? InterruptReference;
        if (double.IsInfinity(prospective))
        {
            list.Add(CheckResult.Undetermined(CheckKind.BreakingCapacity, 0, reference, "the source is given without internal resistance, so its short-circuit current is not known"));
        }
        else if (fuse.BreakingAmperes is not double capacity || fuse.BreakingCapacityBasis != RatingBasis.DirectCurrent)
        {
            list.Add(CheckResult.Undetermined(CheckKind.BreakingCapacity, prospective, reference, new CheckNote(NoteKind.NoBreakingCapacity, fuse)));
        }
        else if (prospective > capacity && requirements.UpstreamOhms is null)
        {
            list.Add(CheckResult.Undetermined(
                CheckKind.BreakingCapacity,
                prospective,
                reference,
                new CheckNote(NoteKind.BreaksLess, null, capacity)));
        }
        else
        {
            list.Add(new CheckResult(CheckKind.BreakingCapacity, prospective, capacity, reference));
        }
    }

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
            ? new CheckResult(CheckKind.FuseDistance, meters, most * (1 + Rounding), rule.Reference, requirements.SheathedToFuse ? "sheathed" : "not sheathed")
            : CheckResult.Undetermined(CheckKind.FuseDistance, 0, rule.Reference, new CheckNote(NoteKind.StateDistance, null, most)));
    }
}

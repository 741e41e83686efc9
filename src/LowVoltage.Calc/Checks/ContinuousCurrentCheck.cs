using LowVoltage.Calc.Ampacity;

namespace LowVoltage.Calc.Checks;

/// <content>The rating of the wire where it runs.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the r.m.s. current within the wire's rating where it runs? A, at most; the stretch with the least to spare.</summary>
    public static CheckKind ContinuousCurrent { get; } = Register(new ContinuousCurrentCheck());
}

internal sealed class ContinuousCurrentCheck()
    : Check(60, nameof(ContinuousCurrent), "continuous current", "A", limitIsLeast: false, SheetSection.Service, ("I_cv", "I_cl"))
{
    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        int tightest = at.Duty.Exists ? Tightest(at) : -1;

        // A stretch that is overloaded fails, whatever is unknown of another.
        if (!at.IsRated && (tightest < 0 || at.HeatingIn(tightest) <= at.Stretches[tightest].RatedAmperes))
        {
            result = Unrated(at);
            return true;
        }

        if (tightest < 0)
        {
            return false;
        }

        ref readonly SegmentState s = ref at.Stretches[tightest];
        if (at.HeatingIn(tightest) <= s.RatedAmperes && TooThin.Find(at) is { } thin)
        {
            result = Unknown(s.Site.Rating.ReferenceFor(s.Conductor), new CheckSubject { About = thin, Stretch = at.NameOf(thin.Stretch) });
            return true;
        }

        result = Judge(
            at.HeatingIn(tightest), s.RatedAmperes, s.Site.Rating.ReferenceFor(s.Conductor), new CheckSubject { Stretch = at.NameOf(tightest), Level = at.Duty.Level });
        return true;
    }

    // The first stretch that the rules do not rate, and why.
    private CheckResult Unrated(BranchState at)
    {
        int first = Array.FindIndex(at.Stretches, s => !s.IsRated);
        ref readonly SegmentState s = ref at.Stretches[first];
        PreparedRating rating = s.Site.Rating;
        return Unknown(rating.Reference, new CheckSubject
        {
            About = rating.Gap.Exists ? rating.Gap.ToString() : new NotCovered(at.Ampacity, s.Conductor),
            Stretch = at.NameOf(first),
        });
    }

    internal override string Note(in CheckResult result) => result.About?.ToString() ?? "";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? result.About is TooThin ? TooThin.Advice : Checks.Unrated.Advice
        : "The wire carries too much current where it runs: use a cooler place, fewer loaded conductors together, better insulation, or a larger wire.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (result.HasNumbers && sheet.Heating is { } heating && Tightest(sheet.At) is var tightest && sheet.IsRated(tightest))
        {
            sheet.Tell(tightest, "stretch where the least current is left");
            sheet.Value(this, sheet.Through(tightest, heating));
            sheet.Limit(this, sheet.Carried(tightest));
        }
    }

    // Of those that are rated; −1 where none is.
    private static int Tightest(BranchState at)
    {
        int tightest = -1;
        double least = double.PositiveInfinity;
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            if (!at.Stretches[i].IsRated)
            {
                continue;
            }

            double margin = (at.Stretches[i].RatedAmperes - at.HeatingIn(i)) / at.Stretches[i].RatedAmperes;
            if (margin < least || tightest < 0)
            {
                least = margin;
                tightest = i;
            }
        }

        return tightest;
    }

    private sealed class NotCovered(AmpacityBasis basis, Conductors.Conductor conductor)
    {
        public override string ToString() => $"{basis.Name} does not cover {conductor} under these conditions";
    }
}

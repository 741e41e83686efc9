using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>The fuse against the main fuse before it.</content>
public abstract partial class CheckKind
{
    /// <summary>Does a fault behind the circuit's fuse leave the main fuse closed, and of several in a row each one before the next? By published times, at every current up to the prospective one.</summary>
    public static CheckKind SelectivityOfFuses { get; } = Register(new SelectivityOfFusesCheck());
}

internal sealed class SelectivityOfFusesCheck()
    : Check(390, nameof(SelectivityOfFuses), "selectivity of the fuses", "A", limitIsLeast: true, SheetSection.Supply, ("I_sv", "I_sl"))
{
    internal override bool Governs => false;

    internal override string Where => "main fuse";

    internal override bool IsCuredBySize(BranchState at) => false;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        for (int i = 0; i < at.Supply.Length; i++)
        {
            bool last = i == at.Supply.Length - 1;
            BranchState behind = last ? at : at.Supply[i + 1].At;
            if (behind.Fuse is not { } fuse || (last && at.IsProtectedUpstream))
            {
                continue;
            }

            CheckResult own = Ask(at.Supply[i], fuse, behind.BoundedAtFuseAmperes, at.Supply.Length > 1 ? at.Supply[i].Name : null);
            result = result.Kind is null || Rank(own.Outcome) > Rank(result.Outcome) ? own : result;
        }

        return result.Kind is not null;
    }

    private CheckResult Ask(SupplyStage stage, FuseRating fuse, double prospective, StretchName? name)
    {
        FuseRating main = stage.Device;
        if (prospective <= (main.Curve?.NonFusingAmperes ?? main.Amperes))
        {
            return InWords(CheckOutcome.Pass, FuseAgainstFuse.TimesReference, CheckSubject.Of(0, $"the supply gives at most {Accept.Short(prospective)} A there, which the {main} carries").In(name));
        }

        // Beyond its last stated point a fuse lets through no more than there; a breaker has no such bound.
        double? total = fuse.Curve is { IsBreaker: false } curve ? curve.LongestJouleIntegral.AmpereSquaredSeconds : null;
        FuseSelectivity found = FuseAgainstFuse.Check(main, fuse, prospective, stage.LeastMelting, total);
        CheckSubject about = CheckSubject.Of(0, char.ToLowerInvariant(found.Reason[0]) + found.Reason.Substring(1).TrimEnd('.')).In(name);
        return found.Verdict == Selectivity.NotProven
            ? Unknown(FuseAgainstFuse.TimesReference, about)
            : InWords(found.Verdict == Selectivity.Proven ? CheckOutcome.Pass : CheckOutcome.Fail, FuseAgainstFuse.TimesReference, about);
    }

    internal override string Note(in CheckResult result) => (string)result.About!;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "Published times do not show that the main fuse stays closed while the fuse behind it clears a fault. Get the melting Joule integral of the main fuse from its maker (UpstreamProtection.WithLeastMelting), or take one with a slower curve."
        : "The main fuse opens before the fuse behind it: a larger or slower main fuse, or a smaller fuse behind it. Everything on the main fuse goes dark with this circuit.";

    private static int Rank(CheckOutcome outcome) => outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 };
}

using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The fuse against the wire's current.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the fuse small enough to protect the wire? Fuse rating, A, at most.</summary>
    public static CheckKind FuseProtectsWire { get; } = Register(new FuseProtectsWireCheck());
}

internal sealed class FuseProtectsWireCheck()
    : Check(110, nameof(FuseProtectsWire), "fuse protects the wire", "A", limitIsLeast: false, SheetSection.Fuse, ("I_wv", "I_wl"))
{
    internal override string Where => "wire";

    internal override bool IsQuick => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse)
        {
            return false;
        }

        if (!at.IsRated)
        {
            result = Unknown(at.Practice.ShareReference, default);
            return true;
        }

        int weakest = at.WeakestStretch(out double _);
        double most = Math.Min(at.MostFuseAmperes, MostByFusingCurrent(at, fuse));
        result = Judge(fuse.Amperes, most * (1 + BranchState.Rounding), at.Practice.ShareReference, CheckSubject.At(at.NameOf(weakest)));
        return true;
    }

    // The other half of the rule, IEC 60364-4-43 433.1: the conventional fusing current is at most 1.45 times the wire's. A caller whose law allows a fuse above
    // the wire's current has set that half aside too.
    private static double MostByFusingCurrent(BranchState at, FuseRating fuse) => fuse.Curve is { } curve && at.Practice.ShareOfAmpacity <= 1
        ? OverloadCoordination.FusingFactor * at.WeakestAmperes * fuse.Amperes / curve.FusingAmperes
        : double.PositiveInfinity;

    internal override string Note(in CheckResult result) => result.Outcome == CheckOutcome.Undetermined ? "the wire is not rated here" : "";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? Unrated.Advice
        : "The fuse is too large for the wire: use a smaller fuse if it still carries the load, a larger wire, a cooler place, fewer conductors together, or a fuse series with finer steps.";

    // The fuse against the currents of the stretch that carries the least.
    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        BranchState at = sheet.At;
        int weakest = at.WeakestStretch(out double amperes);
        if (!result.HasNumbers || !sheet.IsRated(weakest) || sheet.Board.Find("I_n") is not { } rating)
        {
            return;
        }

        FuseRating fuse = at.Fuse!;
        sheet.Tell(weakest, "stretch that the fuse is held against");
        Symbol carries = sheet.Left(weakest);
        Formula most = at.Practice.ShareOfAmpacity.Equals(1)
            ? carries
            : carries * sheet.Board.LookUp("largest fuse as a share of the wire's current", "k_z", at.Practice.ShareOfAmpacity, "", at.Practice.ShareReference);
        double byFusing = MostByFusingCurrent(at, fuse);
        string reason = "";
        if (!double.IsInfinity(byFusing))
        {
            most = Formula.Least(most, OverloadCoordination.FusingFactor * carries * rating / fuse.Curve!.Fusing(sheet.Board, fuse.Series.Reference));
            reason = "Both halves of the rule: the rating against the wire's current, and the conventional fusing current against 1.45 times that.";
        }

        sheet.Value(this, rating);
        sheet.Limit(this, sheet.Board.Step("largest fuse that the wire allows", "I_w", most, Math.Min(amperes * at.Practice.ShareOfAmpacity, byFusing), "A", at.Practice.ShareReference, reason));
    }
}

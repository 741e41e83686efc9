using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>The unprotected conductor before the fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the fuse near enough to the source? Length of unprotected conductor, m, at most.</summary>
    public static CheckKind FuseDistance { get; } = Register(new FuseDistanceCheck());
}

internal sealed class FuseDistanceCheck()
    : Check(190, nameof(FuseDistance), "distance of the fuse from the source", "m", limitIsLeast: false, SheetSection.Fuse, ("l_v", "l_max"))
{
    internal override bool IsCuredBySize(BranchState at) => false;

    internal override bool IsQuick => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is null || at.Practice.Distance is not { } rule)
        {
            return false;
        }

        // Behind a main fuse the conductor is protected: the one before that is not.
        SupplyStage? main = at.Supply.Length > 0 ? at.Supply[0] : null;
        bool sheathed = main?.Sheathed ?? at.SheathedToFuse;
        double most = rule.Most(sheathed, atBattery: false);
        if (double.IsInfinity(most))
        {
            // Any distance is allowed: nothing to be held to.
            return false;
        }

        result = (main is null ? at.FuseDistanceMeters : main.DistanceMeters) is { } meters
            ? Judge(meters, most * (1 + BranchState.Rounding), rule.Reference, CheckSubject.Of(0, (main is null ? "" : "main fuse, ") + (sheathed ? "sheathed" : "not sheathed")))
            : Unknown(rule.Reference, CheckSubject.Of(0, null, most));
        return true;
    }

    internal override string Note(in CheckResult result) => result.Outcome == CheckOutcome.Undetermined
        ? $"state how much conductor lies between the source and the fuse; at most {Accept.Short(result.Number)} m is allowed"
        : (string)result.About!;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "State how much conductor lies between the source and the fuse, and whether it is sheathed."
        : "Move the fuse nearer to the source, or sheathe the conductor up to it.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (sheet.At.Supply.Length == 0 && sheet.Board.Find("l_f") is { } distance)
        {
            sheet.Value(this, distance);
        }
    }
}

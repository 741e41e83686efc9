namespace LowVoltage.Calc.Checks;

/// <content>The main fuse while the load starts.</content>
public abstract partial class CheckKind
{
    /// <summary>
    /// Does each main fuse hold while this circuit's load starts, with nothing else on it? Share of what the fuse withstands, at most 1. Asked where the current exceeds
    /// its rating.
    /// </summary>
    public static CheckKind MainFuseHoldsStart { get; } = Register(new MainFuseHoldsStartCheck());
}

internal sealed class MainFuseHoldsStartCheck()
    : SupplyCheck(315, nameof(MainFuseHoldsStart), "main fuse holds at start, share of what it withstands", "", limitIsLeast: false, ("s_mf", "s_ml"))
{
    private protected override CheckKind Asked => InrushHeld;

    private protected override bool NeedsLead => false;

    private protected override bool TryAsk(BranchState at, SupplyStage stage, out CheckResult result)
    {
        result = default;
        if (!((InrushHeldCheck)InrushHeld).TryAsk(at, stage.Device, out CheckResult own))
        {
            return false;
        }

        result = own.As(this, NameOf(at, stage));
        return true;
    }

    internal override string Note(in CheckResult result) => base.Note(result) + "; this circuit alone, what other circuits take of the main fuse comes on top";

    internal override string Advice(in CheckResult result, BranchState at) => result.About is InrushHeldCheck.TooSoon ? InrushHeldCheck.TooSoonAdvice : result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "The main fuse may open when the load starts: a slower type, a larger one and a supply lead that it protects, or a smaller starting current.";
}

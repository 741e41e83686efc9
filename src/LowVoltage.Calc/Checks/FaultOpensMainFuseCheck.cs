namespace LowVoltage.Calc.Checks;

/// <content>The short circuit at the end of the supply lead.</content>
public abstract partial class CheckKind
{
    /// <summary>Does a short at the end of the supply lead open the main fuse before it soon enough? Longest time to open, s, at most.</summary>
    public static CheckKind FaultOpensMainFuse { get; } = Register(new FaultOpensMainFuseCheck());
}

internal sealed class FaultOpensMainFuseCheck() : SupplyCheck(350, nameof(FaultOpensMainFuse), "fault on the supply lead opens the main fuse", "s", limitIsLeast: false, ("t_m", "t_ml"))
{
    private protected override CheckKind Asked => FaultOpensFuse;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "A short at the end of the supply lead opens the main fuse too late or not at all: a larger lead, a shorter one, or a smaller main fuse.";
}

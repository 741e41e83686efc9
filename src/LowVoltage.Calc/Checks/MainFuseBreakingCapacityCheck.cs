namespace LowVoltage.Calc.Checks;

/// <content>The short circuit at the main fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Can each main fuse interrupt the greatest prospective current where it sits? A, at most.</summary>
    public static CheckKind MainFuseBreakingCapacity { get; } = Register(new MainFuseBreakingCapacityCheck());
}

internal sealed class MainFuseBreakingCapacityCheck() : SupplyCheck(335, nameof(MainFuseBreakingCapacity), "main fuse breaking capacity", "A", limitIsLeast: false, ("I_mk", "I_mc"))
{
    private protected override CheckKind Asked => BreakingCapacity;

    private protected override bool NeedsLead => false;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "Get the d.c. breaking capacity of the main fuse from its maker, and state the resistance of the lead between the source and it."
        : "Choose a main fuse that breaks what the source can drive where it sits. No wire size changes this.";
}

namespace LowVoltage.Calc.Checks;

/// <content>The voltage on the main fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Is each main fuse rated for the highest supply voltage? V, at least.</summary>
    public static CheckKind MainFuseVoltage { get; } = Register(new MainFuseVoltageCheck());
}

internal sealed class MainFuseVoltageCheck() : SupplyCheck(330, nameof(MainFuseVoltage), "main fuse voltage rating", "V", limitIsLeast: true, ("V_m", "V_ml"))
{
    private protected override CheckKind Asked => FuseVoltage;

    private protected override bool NeedsLead => false;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "Choose a main fuse rated for the highest voltage of the supply: for 16 lithium iron phosphate cells more than 58 V.";
}

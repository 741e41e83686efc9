namespace LowVoltage.Calc.Checks;

/// <content>The main fuse against the supply lead over every current.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the main fuse open before an overload takes the supply lead too far? °C, at most.</summary>
    public static CheckKind LeadOverloadTemperature { get; } = Register(new LeadOverloadTemperatureCheck());
}

internal sealed class LeadOverloadTemperatureCheck() : SupplyCheck(380, nameof(LeadOverloadTemperature), "supply lead overload temperature", "°C", limitIsLeast: false, ("θ_mo", "θ_mol"))
{
    private protected override CheckKind Asked => OverloadTemperature;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "An overload that the main fuse lets pass heats the supply lead too far: a smaller main fuse, a larger lead, a cooler place, or better insulation.";
}

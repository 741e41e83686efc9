namespace LowVoltage.Calc.Checks;

/// <content>The temperature of the supply lead in service.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the supply lead stay below the continuous limit of its insulation with the most that the main fuse may carry continuously? °C, at most.</summary>
    public static CheckKind LeadTemperature { get; } = Register(new LeadTemperatureCheck());
}

internal sealed class LeadTemperatureCheck() : SupplyCheck(340, nameof(LeadTemperature), "supply lead temperature", "°C", limitIsLeast: false, ("θ_mv", "θ_ml"))
{
    private protected override CheckKind Asked => ConductorTemperature;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? Unrated.Advice
        : "The supply lead gets too hot when its main fuse carries what it may: a smaller main fuse, a larger lead, a cooler place, or better insulation.";
}

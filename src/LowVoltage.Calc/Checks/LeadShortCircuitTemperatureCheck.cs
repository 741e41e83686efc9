namespace LowVoltage.Calc.Checks;

/// <content>The supply lead in a short circuit.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the supply lead survive a short until the main fuse opens? °C, at most; the stretch nearest to its limit.</summary>
    public static CheckKind LeadShortCircuitTemperature { get; } = Register(new LeadShortCircuitTemperatureCheck());
}

internal sealed class LeadShortCircuitTemperatureCheck() : SupplyCheck(360, nameof(LeadShortCircuitTemperature), "supply lead short-circuit temperature", "°C", limitIsLeast: false, ("θ_mf", "θ_mfl"))
{
    private protected override CheckKind Asked => ShortCircuitTemperature;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "The supply lead overheats before the main fuse opens: a larger lead, a faster main fuse, or insulation with a higher short-circuit limit.";
}

namespace LowVoltage.Calc.Checks;

/// <content>A fault in one of several parallel wires of the supply lead.</content>
public abstract partial class CheckKind
{
    /// <summary>Does one of several parallel wires of the supply lead survive a fault anywhere along it? °C, at most.</summary>
    public static CheckKind FaultInOneParallelLeadWire { get; } = Register(new FaultInOneParallelLeadWireCheck());
}

internal sealed class FaultInOneParallelLeadWireCheck() : SupplyCheck(370, nameof(FaultInOneParallelLeadWire), "fault in one parallel wire of the supply lead", "°C", limitIsLeast: false, ("θ_mp", "θ_mpl"))
{
    private protected override CheckKind Asked => FaultInOneParallelWire;

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "One wire of the supply lead does not survive a fault in it: larger wires, one thick wire, or a main fuse for each at both ends.";
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <content>Whether there is an operating point.</content>
public abstract partial class CheckKind
{
    /// <summary>Can the load get its power through this wire at all? Power that can be delivered, W, at least what the load wants. Asked only where it cannot.</summary>
    public static CheckKind PowerDelivery { get; } = Register(new PowerDeliveryCheck());
}

internal sealed class PowerDeliveryCheck()
    : Check(20, nameof(PowerDelivery), "power delivery", "W", limitIsLeast: true, SheetSection.Delivery, ("P_del", "P_want"))
{
    private static readonly Reference OhmsLawReference = Reference.CommonPractice("Ohm's law; the worst of minimum, nominal and maximum supply voltage");

    internal override string Where => "load";

    internal override CheckScope Scope => CheckScope.Load;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        ref readonly WireDuty duty = ref at.Duty;
        result = duty.Exists ? default : Judge(
            duty.LargestWatts, duty.WantedWatts, OhmsLawReference,
            new CheckSubject { Note = (byte)duty.Reason, Number = at.Source.LimitAmperes, Level = duty.Level });
        return !duty.Exists;
    }

    internal override string Note(in CheckResult result) => (NoOperatingPoint)result.NoteKind switch
    {
        NoOperatingPoint.SourceDisconnects => $"the source disconnects above {Accept.Text(result.Number)} A",
        NoOperatingPoint.SourceLimit => $"the load takes more than the source's limit of {Accept.Text(result.Number)} A",
        NoOperatingPoint.CurrentOutOfReach => "the current would drop more than the whole voltage in this wire, or melt it",
        _ => "more power than can come through this wire",
    };

    // What a source refuses no wire brings.
    internal override string Advice(in CheckResult result, BranchState at) => (NoOperatingPoint)result.NoteKind is NoOperatingPoint.SourceLimit or NoOperatingPoint.SourceDisconnects
        ? "The source does not give the current that the load takes: use a stronger source, or a smaller load."
        : "The load cannot get the power it needs: use a shorter run, a larger wire, a higher supply voltage, fewer or better joints, a stronger source, or a smaller load.";
}

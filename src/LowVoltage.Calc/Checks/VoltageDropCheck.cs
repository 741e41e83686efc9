using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <content>The voltage lost on the way.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the voltage lost on the way out and back within the allowance? V, at most.</summary>
    public static CheckKind VoltageDrop { get; } = Register(new VoltageDropCheck());
}

internal sealed class VoltageDropCheck()
    : Check(30, nameof(VoltageDrop), "voltage drop", "V", limitIsLeast: false, SheetSection.Delivery, ("ΔV_v", "ΔV_lim"))
{
    internal override string Where => "way out and back";

    internal override CheckScope Scope => CheckScope.Load;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        ref readonly WireDuty duty = ref at.Duty;
        if (!duty.Exists)
        {
            result = default;
            return false;
        }

        result = at.DropLimit.TryVolts(at.Source.NominalVolts, at.Intermittent, out double most)
            ? Judge(duty.DropVolts, most, at.DropLimit.Reference, CheckSubject.At(duty.DropLevel))
            : Unknown(at.DropLimit.Reference, new CheckSubject { Number = at.Source.NominalVolts, Level = duty.DropLevel }, duty.DropVolts);
        return true;
    }

    internal override string Note(in CheckResult result) => result.Outcome == CheckOutcome.Undetermined
        ? $"the allowance does not cover a nominal {Accept.Short(result.Number)} V; state one"
        : "";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "State the drop that this circuit may have."
        : at.FixedDropVolts > result.Limit
        ? "No wire is thick enough: what was stated beside it (supply lead, joints, return) loses more than is allowed. Use a better supply lead and better joints, a higher supply voltage, or allow more drop."
        : "Shorten the run, use a larger wire, better joints and a better supply lead, a higher supply voltage, or allow more drop.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!sheet.HasPoints)
        {
            return;
        }

        SolutionBuilder board = sheet.Board;
        Symbol drop = sheet.Extreme("largest drop of the path", "ΔV_b", "V", steps => steps.Drop, most: true), nominal = sheet.Source.Volts(SupplyLevel.Nominal);
        board.Step("largest drop as a share of the nominal voltage", "p_b", Formula.FromNumber(100, "%") * drop / nominal, 100 * drop.Value / nominal.Value, "%", null);
        sheet.Value(this, drop);
        if (result.Limit is { } most)
        {
            sheet.Limit(this, board.Find("p_max") is { } share
                ? board.Step("allowed drop", "ΔV_max", share * nominal / Formula.FromNumber(100, "%"), most, "V", result.Reference)
                : board.LookUp("allowed drop", "ΔV_max", most, "V", result.Reference));
        }
    }
}

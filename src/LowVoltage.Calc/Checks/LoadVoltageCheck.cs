using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <content>What the load gets.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the load see its own minimum voltage? V, at least.</summary>
    public static CheckKind LoadVoltage { get; } = Register(new LoadVoltageCheck());
}

internal sealed class LoadVoltageCheck()
    : Check(40, nameof(LoadVoltage), "voltage at the load", "V", limitIsLeast: true, SheetSection.Delivery, ("U_v", "U_lim"))
{
    internal static Reference Stated { get; } = Reference.CommonPractice("least voltage stated for the load");

    internal override string Where => "load";

    internal override CheckScope Scope => CheckScope.Load;

    internal override bool IsCuredBySize(BranchState at) => LoadVoltageCheck.SourceIsTooLow(at) is null;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        ref readonly WireDuty duty = ref at.Duty;
        result = default;
        if (!duty.Exists || at.Load.MinimumVolts is not { } least)
        {
            return false;
        }

        result = Judge(duty.LeastLoadVolts, least, Stated, CheckSubject.At(duty.LeastLoadLevel));
        return true;
    }

    internal override string Advice(in CheckResult result, BranchState at) => SourceIsTooLow(at)
        ?? "The load gets too little voltage when the supply is at its lowest: use a larger wire, a shorter run, better joints, or a load that works at a lower voltage.";

    /// <summary>What to say where no wire helps, because the source itself falls below what the load needs; else null.</summary>
    internal static string? SourceIsTooLow(BranchState at) => at.Load.MinimumVolts >= at.Source.MinimumVolts
        ? $"The source itself falls to {Accept.Short(at.Source.MinimumVolts)} V, so no wire can help: use another source, or a load that works at a lower voltage."
        : null;

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (sheet.HasPoints)
        {
            sheet.Value(this, sheet.Extreme("lowest voltage at the load", "U_b", "V", steps => steps.LoadVolts, most: false));
        }

        if (sheet.Board.Find("U_min") is { } least)
        {
            sheet.Limit(this, least);
        }
    }
}

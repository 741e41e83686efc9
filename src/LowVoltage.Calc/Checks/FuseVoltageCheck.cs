using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <content>The voltage on the fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the fuse rated for the highest supply voltage? V, at least.</summary>
    public static CheckKind FuseVoltage { get; } = Register(new FuseVoltageCheck());
}

internal sealed class FuseVoltageCheck()
    : Check(120, nameof(FuseVoltage), "fuse voltage rating", "V", limitIsLeast: true, SheetSection.Fuse, ("V_f", "V_fl"))
{
    private static readonly Reference VoltageReference = Reference.CommonPractice("a fuse is rated for at least the highest voltage of its circuit");

    internal override bool IsCuredBySize(BranchState at) => false;

    /// <summary>Whether a fuse is known to be made for less than the highest voltage.</summary>
    internal static bool IsBelow(BranchState at, FuseRating fuse) => fuse.VoltageBasis == RatingBasis.DirectCurrent && fuse.Series.Volts < at.Source.MaximumVolts;

    internal override bool IsQuick => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse)
        {
            return false;
        }

        result = fuse.Series.Volts is double volts && fuse.VoltageBasis == RatingBasis.DirectCurrent
            ? Judge(volts, at.Source.MaximumVolts, VoltageReference, CheckSubject.At(SupplyLevel.Maximum))
            : Unknown(VoltageReference, CheckSubject.Of(0, fuse));
        return true;
    }

    internal override string Note(in CheckResult result) =>
        result.Outcome == CheckOutcome.Undetermined ? $"no d.c. voltage rating is published for the {result.About}" : "";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "Choose fuses rated for the highest voltage of the supply, not its nominal one: a pack of 16 lithium iron phosphate cells reaches 58.4 V on charge, more than a 58 V fuse.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (result.Value is { } volts)
        {
            sheet.Value(this, sheet.Board.LookUp("voltage that the fuse is rated for", "V_f", volts, "V", sheet.At.Fuse!.Series.Reference));
            sheet.Limit(this, sheet.Source.Volts(SupplyLevel.Maximum));
        }
    }
}

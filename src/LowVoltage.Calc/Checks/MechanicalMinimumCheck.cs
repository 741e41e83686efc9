using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The section on mechanical grounds.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the conductor thick enough to be handled and mounted? Section, mm², at least.</summary>
    public static CheckKind MechanicalMinimum { get; } = Register(new MechanicalMinimumCheck());
}

internal sealed class MechanicalMinimumCheck()
    : Check(10, nameof(MechanicalMinimum), "mechanical minimum", "mm²", limitIsLeast: true, SheetSection.Wire, ("A_v", "A_lim"))
{
    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        int thinnest = Thinnest(at);
        result = Judge(
            at.Stretches[thinnest].Conductor.AreaSquareMillimeters, at.MinimumSquareMillimeters * (1 - BranchState.Rounding), at.MinimumReference, CheckSubject.At(at.NameOf(thinnest)));
        return true;
    }

    internal override string Advice(in CheckResult result, BranchState at) => "Use a larger size, or state why the mechanical minimum does not apply.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        int thinnest = Thinnest(sheet.At);
        Conductors.Conductor wire = sheet.At.Stretches[thinnest].Conductor;
        sheet.Value(this, sheet.Board.LookUp(sheet.At.Several ? "section of the thinnest conductor" : $"section of {wire}", "A_w", wire.AreaSquareMillimeters, "mm²", wire.Reference));
        sheet.Limit(this, sheet.Board.LookUp("thinnest that is strong enough", "A_min", sheet.At.MinimumSquareMillimeters, "mm²", sheet.At.MinimumReference));
    }

    private static int Thinnest(BranchState at)
    {
        int thinnest = 0;
        for (int i = 1; i < at.OwnCount; i++)
        {
            thinnest = at.Stretches[i].Conductor.AreaSquareMillimeters < at.Stretches[thinnest].Conductor.AreaSquareMillimeters ? i : thinnest;
        }

        return thinnest;
    }
}

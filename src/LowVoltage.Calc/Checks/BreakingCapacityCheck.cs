using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The short circuit at the fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Can the fuse interrupt the greatest prospective current? A, at most.</summary>
    public static CheckKind BreakingCapacity { get; } = Register(new BreakingCapacityCheck());
}

internal sealed class BreakingCapacityCheck()
    : Check(130, nameof(BreakingCapacity), "breaking capacity", "A", limitIsLeast: false, SheetSection.FuseShort, ("I_k", "I_c"))
{
    private static readonly Reference InterruptReference = Reference.CommonPractice("a fuse breaks at least the greatest prospective current where it sits");

    private enum Word : byte
    {
        None,
        IdealSource,
        NoCapacity,
        BreaksLess,
        BackedUp,
    }

    internal override bool IsCuredBySize(BranchState at) => false;

    internal override bool IsQuick => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse)
        {
            return false;
        }

        Reference reference = fuse.Series.BreakingCapacityReference ?? InterruptReference;
        double prospective = at.AtFuseAmperes;
        if (double.IsInfinity(prospective))
        {
            result = Unknown(reference, CheckSubject.Of((byte)Word.IdealSource));
        }
        else if (fuse.BreakingAmperes is not double capacity || fuse.BreakingCapacityBasis != RatingBasis.DirectCurrent)
        {
            result = Unknown(reference, CheckSubject.Of((byte)Word.NoCapacity, fuse), prospective);
        }
        else if (prospective > capacity * (1 + BranchState.Rounding) && at.StagesBefore > 0)
        {
            result = Backed(at, fuse, capacity, prospective);
        }
        else if (prospective > capacity * (1 + BranchState.Rounding) && at.UpstreamOhms is null)
        {
            result = Unknown(reference, CheckSubject.Of((byte)Word.BreaksLess, null, capacity), prospective);
        }
        else
        {
            result = Judge(prospective, capacity * (1 + BranchState.Rounding), reference, CheckSubject.At(SupplyLevel.Maximum));
        }

        return true;
    }

    // It breaks less than that: one before it may do it.
    private CheckResult Backed(BranchState at, FuseRating fuse, double capacity, double prospective)
    {
        BackUp found = BackUp.Of(at, fuse, capacity, prospective);
        CheckSubject about = new() { Note = (byte)Word.BackedUp, About = found, Level = SupplyLevel.Maximum };
        return found.Outcome == CheckOutcome.Undetermined || (found.Outcome == CheckOutcome.Fail && at.UpstreamOhms is null)
            ? Unknown(BackUp.Reference, about, prospective)
            : Judged(found.Outcome == CheckOutcome.Pass, prospective, found.Amperes ?? capacity, BackUp.Reference, about);
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.BackedUp => ((BackUp)result.About!).Words,
        Word.IdealSource => "the source is given without internal resistance, so its short-circuit current is not known",
        Word.NoCapacity => $"no d.c. breaking capacity is published for the {result.About}",
        Word.BreaksLess => $"up to {Accept.Short(result.Value!.Value)} A at the source's terminals, the fuse breaks {Accept.Short(result.Number)} A: state the resistance of the supply lead to the fuse, "
            + "or protect the lead by a main fuse at the source that can break that current",
        _ => "",
    };

    internal override string Advice(in CheckResult result, BranchState at) =>
        (Word)result.NoteKind == Word.BackedUp ? "Choose a fuse that breaks the current by itself, or get from the makers what the device before it lets through and what this fuse withstands behind that; a longer supply lead lowers the current."
        : at.Fuse is { } fuse && (fuse.BreakingAmperes is null || fuse.BreakingCapacityBasis != RatingBasis.DirectCurrent) ? FuseData.Missing
        : at.UpstreamOhms is null ? "Choose a fuse with a higher breaking capacity, fit a main fuse that has one at the source, or state the resistance of the supply lead."
        : "Choose a fuse with a higher breaking capacity, or fit a main fuse that has one at the source. No wire size changes this.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        BranchState at = sheet.At;
        if (double.IsInfinity(at.AtFuseAmperes))
        {
            return;
        }

        double upstream = at.UpstreamOhms ?? 0;
        Symbol lead = sheet.Board.LookUp(
            "supply lead to the fuse, out and back", "R_u", upstream, "Ω", null, at.UpstreamOhms is null ? "Not stated, counted as nothing: on the safe side here." : "As stated.");
        sheet.Value(this, sheet.ShortCurrent(
            "greatest short-circuit current at the fuse", "I_k", sheet.Source.Volts(SupplyLevel.Maximum), sheet.Source.Ohms(SupplyLevel.Maximum), lead, at.AtFuseAmperes, sheet.Source.Strongest));
        if (result.About is BackUp { Amperes: { } before })
        {
            sheet.Limit(this, sheet.Board.LookUp("breaking capacity of the device before it", "I_mb", before, "A", BackUp.Reference));
        }
        else if (at.Fuse?.BreakingAmperes is { } capacity)
        {
            sheet.Limit(this, sheet.Board.LookUp("breaking capacity of the fuse", "I_c", capacity, "A", at.Fuse.Series.BreakingCapacityReference));
        }
    }
}

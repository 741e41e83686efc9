using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The load on the fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Is the fuse large enough for the load in continuous service, in the air around it? Fuse rating, A, at least.</summary>
    public static CheckKind FuseCarriesLoad { get; } = Register(new FuseCarriesLoadCheck());
}

internal sealed class FuseCarriesLoadCheck()
    : Check(100, nameof(FuseCarriesLoad), "fuse carries the load", "A", limitIsLeast: true, SheetSection.Fuse, ("I_fv", "I_fl"))
{
    private enum Word : byte
    {
        None,
        Rerated,
        TooHot,
        Starts,
    }

    internal override bool IsQuick => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse || !at.Duty.Exists)
        {
            return false;
        }

        if (!at.TryRerating(fuse, out double factor))
        {
            result = Unknown(fuse.Series.Rerating!.Reference, CheckSubject.Of((byte)Word.TooHot, fuse, at.FuseAmbientCelsius));
            return true;
        }

        double least = at.LeastFuseAmperes / factor;
        result = Judge(fuse.Amperes, least * (1 - BranchState.Rounding), at.Practice.LoadingReference, factor < 1
            ? CheckSubject.Of((byte)Word.Rerated, fuse.Series.Rerating, factor)
            : at.StartsHeatMore ? new CheckSubject { Note = (byte)Word.Starts, Level = at.Duty.Level }
            : new CheckSubject { Level = at.Duty.OnLevel });
        return true;
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.Rerated => $"in the air around it the fuse carries {Accept.Short(100 * result.Number)} % of its rating ({result.About})",
        Word.Starts => "by the r.m.s. current, which the starts in each period make larger than the current in running",
        Word.TooHot => $"the re-rating of the {result.About} does not cover {Accept.Short(result.Number)} °C",
        _ => "",
    };

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? "Put the fuse in a cooler place, or get its re-rating with temperature from its manufacturer."
        : "The fuse is too small for the load: use a larger rating, another series, or two circuits.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        BranchState at = sheet.At;
        FuseRating fuse = at.Fuse!;
        if ((at.StartsHeatMore ? sheet.Heating : sheet.Largest) is { } largest && at.TryRerating(fuse, out double factor))
        {
            Symbol share = sheet.Board.LookUp("share of its rating that a fuse may carry continuously", "k_f", at.Practice.Loading, "", at.Practice.LoadingReference);
            Formula least = largest / share;
            if (factor < 1)
            {
                least = largest / (share * sheet.Board.LookUp(
                    $"share of its rating that the fuse carries in air of {Accept.Short(at.FuseAmbientCelsius)} °C", "f_θ", factor, "", fuse.Series.Rerating!.Reference, fuse.Series.Rerating.Name));
            }

            sheet.Limit(this, sheet.Board.Step("least rating of the fuse", "I_min", least, largest.Value / at.Practice.Loading / factor, "A", at.Practice.LoadingReference));
        }

        sheet.Value(this, sheet.Board.LookUp(sheet.FuseWords.Label, "I_n", fuse.Amperes, "A", fuse.Series.Reference, $"{fuse}: {sheet.FuseWords.Why}."));
    }
}

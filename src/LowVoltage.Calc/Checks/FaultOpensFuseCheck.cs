using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The short circuit at the far end.</content>
public abstract partial class CheckKind
{
    /// <summary>Does a short at the far end open the fuse soon enough? Longest time to open, s, at most.</summary>
    public static CheckKind FaultOpensFuse { get; } = Register(new FaultOpensFuseCheck());
}

internal sealed class FaultOpensFuseCheck()
    : Check(150, nameof(FaultOpensFuse), "fault at the far end opens the fuse", "s", limitIsLeast: false, SheetSection.FarEnd, ("t_c", "t_lim"))
{
    // Beside the endings of a fault.
    private const byte SupplyIsWeak = 100;
    private const byte NoTimes = 101;

    internal override string Where => "far end";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse)
        {
            return false;
        }

        if (at.SupplyIsWeak)
        {
            // The supply cannot push more than the wire carries continuously: nothing has to open.
            result = InWords(CheckOutcome.Pass, at.Practice.FaultReference, CheckSubject.Of(SupplyIsWeak, null, at.AtFuseAmperes));
            return true;
        }

        if (fuse.FaultCurve is null)
        {
            result = Unknown(at.Practice.FaultReference, CheckSubject.Of(NoTimes, fuse.Untimed));
            return true;
        }

        ref readonly FarEndFault fault = ref at.FarEnd;
        CheckSubject about = new() { Note = (byte)fault.Ending, Number = fault.FirstAmperes, Level = SupplyLevel.Minimum };
        result = fault.Ending == FarEndEnding.Opens
            ? Judge(fault.Seconds, at.Practice.FaultSeconds, at.Practice.FaultReference, about)
            : InWords(CheckOutcome.Fail, at.Practice.FaultReference, about);
        return true;
    }

    internal override string Note(in CheckResult result)
    {
        string least = $"least prospective current at the far end {Accept.Short(result.Number)} A";
        return result.NoteKind switch
        {
            SupplyIsWeak => $"nothing has to open, the supply gives at most {Accept.Short(result.Number)} A, which the wire carries continuously",
            NoTimes => $"no operating times are published for the {result.About}",
            (byte)FarEndEnding.NeverOpens => $"{least}: the fuse need not open",
            (byte)FarEndEnding.Falls => $"{least}, which falls as the wire heats: the fuse need not open",
            (byte)FarEndEnding.Melts => $"{least}: the wire melts before the fuse has opened",
            _ => least,
        };
    }

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "A short at the far end opens the fuse too late or not at all: use a larger wire, a shorter run, or a smaller fuse.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        BranchState at = sheet.At;
        Symbol volts = at.SharedVolts > 0
            ? sheet.Board.LookUp("voltage that is left for the fault", "V_left", at.Weakest.MinimumVolts, "V", null, "The other circuits keep feeding their current into the shared return: what they drop there is taken off.")
            : sheet.Source.Volts(SupplyLevel.Minimum);
        (PathSteps steps, Symbol wires) = sheet.HotPath();
        Symbol first = sheet.ShortCurrent(
            "least short-circuit current at the far end", "I_f", volts, sheet.Source.Ohms(SupplyLevel.Minimum), wires, at.FarEnd.FirstAmperes, $"{sheet.Source.Weakest} The path is as hot as its insulation allows.");
        if (result.Outcome == CheckOutcome.Undetermined || at.Fuse!.FaultCurve is not { } curve || at.SupplyIsWeak)
        {
            return;
        }

        sheet.Limit(this, sheet.Board.LookUp("longest that a fault may last", "t_lim", at.Practice.FaultSeconds, "s", at.Practice.FaultReference));
        Ending(sheet, result, curve, volts, first, steps);
    }

    private void Ending(Sheet sheet, in CheckResult result, TimeCurrentCurve curve, Symbol volts, Symbol first, PathSteps steps)
    {
        FarEndFault fault = sheet.At.FarEnd;
        References.Reference source = sheet.At.Fuse!.Series.Reference;
        if (fault.Ending != FarEndEnding.Opens)
        {
            sheet.Board.Compare(
                "must the fuse open", first, Relation.AtLeast, curve.Fusing(sheet.Board, source), source, SolutionText.Sentence(result.Note) + ".", fault.FirstAmperes >= curve.FusingAmperes);
        }
        else if (fault.Joules == 0)
        {
            sheet.Value(this, curve.WriteLongest(sheet.Board, first, source, "t_c", "f"));
        }
        else if (sheet.At.SharedVolts > 0 || sheet.At.Source.Beyond is not null)
        {
            sheet.Value(this, FallingFault.WriteInWords(sheet, fault, curve));
        }
        else
        {
            sheet.Value(this, FallingFault.Write(sheet, fault, curve, volts, first, steps));
        }
    }
}

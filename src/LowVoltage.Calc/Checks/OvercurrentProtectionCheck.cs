using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>A circuit without a fuse.</content>
public abstract partial class CheckKind
{
    /// <summary>Where there is no fuse: can the supply overload the wire? Greatest prospective current, A, at most what the wire carries.</summary>
    public static CheckKind OvercurrentProtection { get; } = Register(new OvercurrentProtectionCheck());
}

internal sealed class OvercurrentProtectionCheck()
    : Check(210, nameof(OvercurrentProtection), "protection against overcurrent", "A", limitIsLeast: false, SheetSection.Fuse, ("I_pv", "I_pl"))
{
    private const byte OneOfSeveral = 4;

    internal override string Where => "wire";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not null)
        {
            return false;
        }

        if (!at.IsRated)
        {
            result = Unknown(at.Practice.ShareReference, CheckSubject.Of(1));
            return true;
        }

        int weakest = at.WeakestStretch(out double amperes);
        if (at.FedFromSeveralSides && !(at.AtFuseAmperes <= amperes))
        {
            result = Unknown(at.Practice.ShareReference, CheckSubject.Of(2).In(at.NameOf(weakest)));
            return true;
        }

        // A fault in one of several wires in parallel draws all of it through that one (IEC 60364-4-43, 434.4, from memory).
        double one = FaultInOneParallelWireCheck.LeastOfOneWire(at, out int parallel);
        if (at.AtFuseAmperes <= amperes && at.AtFuseAmperes > one)
        {
            CheckSubject about = CheckSubject.Of(OneOfSeveral).In(at.NameOf(parallel));
            result = at.LetThroughAmperes is null ? Judge(at.AtFuseAmperes, one, ParallelWireFault.Reference, about) : Unknown(ParallelWireFault.Reference, about, at.AtFuseAmperes);
            return true;
        }

        result = double.IsInfinity(at.AtFuseAmperes)
            ? InWords(CheckOutcome.Fail, at.Practice.ShareReference, CheckSubject.Of(0).In(at.NameOf(weakest)))
            : Judge(at.AtFuseAmperes, amperes, at.Practice.ShareReference, CheckSubject.Of((byte)(at.LetThroughAmperes is null ? 0 : 3)).In(at.NameOf(weakest)));
        return true;
    }

    internal override string Note(in CheckResult result) => result.NoteKind == 3
        ? "the fuses and limited supplies at its ends let no more through"
        : result.NoteKind == 2
        ? "current reaches this wire from several sides, through fuses of which none protects it alone"
        : result.NoteKind == OneOfSeveral
        ? "a fault in one of the parallel wires draws all of it through that one"
        : result.NoteKind == 1
        ? "the wire is not rated here, and no fuse protects it"
        : result.Outcome == CheckOutcome.Pass ? "no fuse is needed: the supply cannot overload the wire" : "no fuse or breaker protects this wire, and the supply can overload it";

    internal override string Advice(in CheckResult result, BranchState at) => result.NoteKind == 2
        ? "Read the fault audit of the harness for this wire, or give it a fuse at each end that feeds it."
        : result.NoteKind == OneOfSeveral
        ? "Use one thicker wire, a fuse for each of the parallel wires at both ends, or a supply that cannot give more than one of them carries."
        : "Fit a fuse or breaker at the source that the wire's current allows, or a supply that cannot give more than the wire carries.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        bool several = result.NoteKind == OneOfSeveral;
        int weakest = sheet.At.WeakestStretch(out double _);
        if (several || sheet.IsRated(weakest))
        {
            sheet.Value(this, sheet.Board.LookUp("greatest current that the supply can drive", "I_k", result.Value!.Value, "A", sheet.Supply.Reference, $"Supply lead {Accept.Text(1000 * (sheet.At.UpstreamOhms ?? 0))} mΩ."));
            sheet.Limit(this, several
                ? sheet.Board.LookUp("continuous current of one of the parallel wires", "I_z1", result.Limit!.Value, "A", ParallelWireFault.Reference)
                : sheet.Left(weakest));
        }
    }
}

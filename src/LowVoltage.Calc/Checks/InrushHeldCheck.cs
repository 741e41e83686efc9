using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The fuse while the load starts.</content>
public abstract partial class CheckKind
{
    /// <summary>
    /// Does the fuse hold while the load starts, with all that runs beside it, as often as it is started? Share of what the fuse withstands, at most 1. Asked where the
    /// current exceeds the fuse's rating.
    /// </summary>
    public static CheckKind InrushHeld { get; } = Register(new InrushHeldCheck());
}

internal sealed class InrushHeldCheck()
    : Check(140, nameof(InrushHeld), "fuse holds at start, share of what it withstands", "", limitIsLeast: false, SheetSection.Start, ("s_i", "s_l"))
{
    private static readonly Reference StartReference = Reference.CommonPractice("a fuse must not open while its load starts");

    internal const string TooSoonAdvice = "A fuse whose rating is not below the starting current, with a wire for it, or at least 10 s from one start to the next.";

    internal override bool IsOfStart => true;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        return at.Fuse is { } fuse && TryAsk(at, fuse, out result);
    }

    /// <summary>The same of any fuse that the start flows through.</summary>
    internal bool TryAsk(BranchState at, FuseRating fuse, out CheckResult result)
    {
        result = default;
        if (!at.Duty.Exists || !at.Load.HasSurge)
        {
            return false;
        }

        (StartWaveform start, StartFinding found) = Worst(at, fuse);
        if (found.Basis == StartBasis.WithinRating)
        {
            return false;
        }

        CheckSubject about = CheckSubject.Of((byte)found.Basis, new Subject(fuse, start, at.Starts, at.StartDivides), found.Seconds);
        bool partMayHold = at.StartDivides && found.Verdict != RatingVerdict.Within;
        result = found.Verdict == RatingVerdict.Within && at.Load.StartPeriodSeconds < StartAgainstFuse.LeastSecondsApart
            ? Unknown(StartReference, CheckSubject.Of((byte)found.Basis, new TooSoon(at.Load.StartPeriodSeconds)))
            : found.Verdict == RatingVerdict.NotProven || partMayHold ? Unknown(StartReference, about)
            : double.IsInfinity(found.Share) ? InWords(CheckOutcome.Fail, StartReference, about)
            : Judged(found.Verdict == RatingVerdict.Within, found.Share, 1, StartReference, about);
        return true;
    }

    // At the highest voltage surges are largest, at the lowest a constant power draws most: the harder of the two on the fuse.
    private static (StartWaveform Start, StartFinding Found) Worst(BranchState at, FuseRating fuse)
    {
        bool verdictOnly = at.AskedFor == AskedFor.Verdict;
        double share = PulseWithstand.ShareFor(at.Starts);
        (StartWaveform Start, StartFinding Found) worst = (at.Start, StartAgainstFuse.Find(fuse, at.Start, share, verdictOnly));
        if (at.StartAtLeast is { } low && StartAgainstFuse.Find(fuse, low, share, verdictOnly) is var found && Rank(found) > Rank(worst.Found))
        {
            worst = (low, found);
        }

        return worst;
    }

    // What is not proven is worse than what holds, and better than what does not.
    private static double Rank(in StartFinding found) => found.Basis == StartBasis.WithinRating ? -1 : found.Verdict == RatingVerdict.NotProven ? 1 : found.Share;

    internal override string Note(in CheckResult result) => result.About?.ToString() ?? "";

    internal override string Advice(in CheckResult result, BranchState at) => result.About is TooSoon ? TooSoonAdvice : result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "The fuse may open at start: use a slower type, use a larger rating with a larger wire, limit the starting current, or allow for fewer starts.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        BranchState at = sheet.At;
        FuseRating fuse = at.Fuse!;
        (StartWaveform start, StartFinding found) = Worst(at, fuse);
        SolutionBuilder board = sheet.Board;
        Symbol cool = sheet.PathInAir();
        Symbol inner = sheet.Source.Ohms(Circuits.SupplyLevel.Maximum);
        _ = inner.Value > 0
            ? board.Step("least resistance that the start meets", "R_st", inner + cool, inner.Value + cool.Value, "Ω", null, $"{sheet.Source.Strongest} The wire is as cool as the air.")
            : cool;
        foreach (StartSurge surge in start.Surges)
        {
            board.State($"surge of the {surge.Name}", surge + " above its running current.");
        }

        board.LookUp("highest current of the start, all loads switched on together", "I_s", found.Peak, "A", null, "What runs and every surge, at most what source and path give.");
        board.LookUp("time above the rating of the fuse", "t_s", found.Seconds, "s", null, "From the sum of running current and surges over time.");
        Symbol once = board.LookUp("share of melting that one start takes", "s_1", found.Once, "", fuse.Series.Reference, "∫ dt/t_least(i) over that time.");
        Symbol joules = board.LookUp("Joule integral above the rating", "J_s", found.Joules, "A²·s", null, "∫ i²·dt over that time.");
        Symbol allowed = board.LookUp($"Joule integral that the fuse stands {Accept.Text(at.Starts)} times", "J_al", found.Allowed, "A²·s", PulseWithstand.Reference, "The share for that number of starts, of the least I²·t of its least times.");
        Symbol often = board.Step("share of what it stands that often", "s_n", joules / allowed, found.Often, "", PulseWithstand.Reference);
        sheet.Value(this, board.Step("the larger of the two shares", "s_i", Formula.Greatest(once, often), found.Share, "", null));
    }

    /// <summary>Starts so close together that the fuse is still warm from the one before.</summary>
    internal sealed record TooSoon(double Seconds)
    {
        public override string ToString() =>
            $"it starts every {Accept.Text(Seconds)} s above the rating of the fuse; what a fuse withstands is known for starts at least {Accept.Text(StartAgainstFuse.LeastSecondsApart)} s apart";
    }

    private sealed record Subject(FuseRating Fuse, StartWaveform Start, int Starts, bool Divides)
    {
        // A sentence of its own elsewhere, here it follows a comma.
        public override string ToString()
        {
            string reason = StartAgainstFuse.Check(Fuse, Start, Starts).Reason.TrimEnd('.');
            return char.ToLowerInvariant(reason[0]) + reason.Substring(1) + (Divides ? "; that is all of the start: what of it passes this fuse and what passes others is not worked out" : "");
        }
    }
}

namespace LowVoltage.Calc.Checks;

/// <summary>Asks the checks of one candidate and counts what they say. What is kept can be read; what only decides is not kept.</summary>
internal struct CheckRun
{
    // Checks of a plain circuit: enough for most, and grown for the rest.
    private const int UsualCount = 13;

    private CheckResult[]? kept;

    internal int Count { get; private set; }

    internal int Failed { get; private set; }

    internal int Undetermined { get; private set; }

    /// <summary>Failures that neither more copper nor another rating of fuse cures.</summary>
    internal int Incurable { get; private set; }

    /// <summary>The failed check with the least margin; meaningful when there is one.</summary>
    internal CheckResult Worst { get; private set; }

    /// <summary>The failed check with the least margin of those that another size or rating could cure; meaningful when there is one.</summary>
    internal CheckResult WorstCurable { get; private set; }

    /// <summary>The failed check with the least margin of all but the voltage drop; meaningful when there is one.</summary>
    internal CheckResult WorstBesideDrop { get; private set; }

    /// <summary>The first that is undetermined; meaningful when there is one.</summary>
    internal CheckResult FirstUndetermined { get; private set; }

    /// <summary>Failures that a larger wire or another fuse could cure.</summary>
    internal readonly int Curable => Failed - Incurable;

    internal readonly ArraySegment<CheckResult> Results => new(kept ?? [], 0, Count);

    /// <summary>A run whose results can be read.</summary>
    internal static CheckRun Keeping() => new() { kept = new CheckResult[UsualCount] };

    /// <summary>Asks every check of the wire.</summary>
    internal void AskWire(BranchState at) => Ask(at, CheckKind.OfWire);

    /// <summary>Asks every check of the fuse, or of having none.</summary>
    internal void AskFuse(BranchState at) => Ask(at, CheckKind.OfFuse);

    /// <summary>Asks every check of the supply lead and of what protects it.</summary>
    internal void AskSupply(BranchState at)
    {
        if (at.Supply.Length > 0)
        {
            Ask(at, CheckKind.OfSupply);
        }
    }

    /// <summary>Asks every check of the wire, or of the fuse, as long as the candidate can still come nearer than the best so far: fewer failures, or as many and the worst of them nearer to its limit.</summary>
    /// <param name="at">The candidate.</param>
    /// <param name="ofFuse">Whether the fuse is asked about.</param>
    /// <param name="failed">Failures of the best so far; the largest number where there is none.</param>
    /// <param name="tightness">What the worst of this candidate must exceed where it fails as often.</param>
    /// <returns>False where it cannot come nearer: then not all was asked.</returns>
    /// <remarks>A further failure makes more of them, or a worst one further away: what is out stays out.</remarks>
    internal bool ComesNearer(BranchState at, bool ofFuse, int failed, double tightness)
    {
        at.AskedFor = AskedFor.Failures;
        Check[] checks = ofFuse ? CheckKind.OfFuse : CheckKind.OfWire;
        bool nearer = !IsNoNearerThan(failed, tightness);
        for (int i = 0; i < checks.Length && nearer; i++)
        {
            if (checks[i].TryAsk(at, out CheckResult result))
            {
                Take(checks[i], at, result);
                nearer = result.Outcome != CheckOutcome.Fail || !IsNoNearerThan(failed, tightness);
            }
        }

        at.AskedFor = AskedFor.Everything;
        return nearer;
    }

    private readonly bool IsNoNearerThan(int failed, double tightness) => Failed > failed || (Failed == failed && (Failed == 0 || Worst.Tightness <= tightness));

    private void Ask(BranchState at, Check[] checks)
    {
        foreach (Check check in checks)
        {
            if (check.TryAsk(at, out CheckResult result))
            {
                Take(check, at, result);
            }
        }
    }

    private void Take(Check check, BranchState at, in CheckResult result)
    {
        if (kept is not null)
        {
            if (Count == kept.Length)
            {
                Array.Resize(ref kept, CheckKind.Catalogue.Length);
            }

            kept[Count] = result;
        }

        Count++;
        if (result.Outcome == CheckOutcome.Fail)
        {
            Worst = Failed == 0 || result.IsTighterThan(Worst) ? result : Worst;
            Failed++;
            if (!ReferenceEquals(check, CheckKind.VoltageDrop))
            {
                WorstBesideDrop = WorstBesideDrop.Outcome != CheckOutcome.Fail || result.IsTighterThan(WorstBesideDrop) ? result : WorstBesideDrop;
            }

            if (check.IsCuredBySize(at))
            {
                WorstCurable = Curable == 1 || result.IsTighterThan(WorstCurable) ? result : WorstCurable;
            }
            else
            {
                Incurable++;
            }
        }
        else if (result.Outcome == CheckOutcome.Undetermined)
        {
            FirstUndetermined = Undetermined == 0 ? result : FirstUndetermined;
            Undetermined++;
        }
    }
}

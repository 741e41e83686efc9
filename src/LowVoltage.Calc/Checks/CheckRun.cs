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

    /// <summary>The first that is undetermined; meaningful when there is one.</summary>
    internal CheckResult FirstUndetermined { get; private set; }

    /// <summary>Failures that a larger wire or another fuse could cure.</summary>
    internal readonly int Curable => Failed - Incurable;

    internal readonly ArraySegment<CheckResult> Results => new(kept ?? [], 0, Count);

    /// <summary>A run whose results can be read.</summary>
    internal static CheckRun Keeping() => new() { kept = new CheckResult[UsualCount] };

    /// <summary>Asks every check of the wire.</summary>
    internal void AskWire(BranchState at) => Ask(at, CheckGroup.Wire, stop: false);

    /// <summary>Asks every check of the fuse, or of having none.</summary>
    internal void AskFuse(BranchState at) => Ask(at, CheckGroup.Fuse, stop: false);

    /// <summary>Asks every check of the supply lead and of what protects it.</summary>
    internal void AskSupply(BranchState at)
    {
        if (at.Supply.Length > 0)
        {
            Ask(at, CheckGroup.Supply, stop: false);
        }
    }

    /// <summary>Asks the checks of the wire until one fails that more copper could cure.</summary>
    internal bool WirePasses(BranchState at)
    {
        Ask(at, CheckGroup.Wire, stop: true);
        return Curable == 0;
    }

    /// <summary>Asks the checks of the fuse until one fails that another size or rating could cure.</summary>
    internal bool FusePasses(BranchState at)
    {
        Ask(at, CheckGroup.Fuse, stop: true);
        return Curable == 0;
    }

    private void Ask(BranchState at, CheckGroup group, bool stop)
    {
        Check[] checks = CheckKind.Catalogue;
        for (int i = 0; i < checks.Length; i++)
        {
            Check check = checks[i];
            if (check.Group == group && check.TryAsk(at, out CheckResult result))
            {
                Take(check, at, result);
                if (stop && Curable > 0)
                {
                    return;
                }
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

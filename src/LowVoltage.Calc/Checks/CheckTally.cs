namespace LowVoltage.Calc.Checks;

/// <summary>Asks the checks of one candidate for their verdicts alone and counts them: all that the search needs on its way.</summary>
internal struct CheckTally
{
    internal int Failed { get; private set; }

    internal int Undetermined { get; private set; }

    /// <summary>Failures that neither more copper nor another rating of fuse cures.</summary>
    internal int Incurable { get; private set; }

    /// <summary>Asks the checks of the wire until one fails that more copper could cure.</summary>
    internal bool WirePasses(BranchState at) => Passes(CheckKind.OfWire, at);

    /// <summary>Asks the checks of the fuse that cost next to nothing, until one fails that another size or rating could cure.</summary>
    internal bool QuickFusePasses(BranchState at) => Passes(CheckKind.QuickOfFuse, at);

    /// <summary>Asks the other checks of the fuse, until one fails that another size or rating could cure.</summary>
    internal bool RestOfFusePasses(BranchState at) => Passes(CheckKind.RestOfFuse, at);

    private bool Passes(Check[] checks, BranchState at)
    {
        at.AskedFor = AskedFor.Verdict;
        bool passes = true;
        for (int i = 0; i < checks.Length && passes; i++)
        {
            Check check = checks[i];
            if (check.TryAsk(at, out CheckResult result) && result.Outcome != CheckOutcome.Pass)
            {
                passes = Take(check, at, result.Outcome);
            }
        }

        at.AskedFor = AskedFor.Everything;
        return passes;
    }

    private bool Take(Check check, BranchState at, CheckOutcome outcome)
    {
        if (outcome == CheckOutcome.Undetermined)
        {
            Undetermined++;
            return true;
        }

        Failed++;
        bool cured = check.IsCuredBySize(at);
        Incurable += cured ? 0 : 1;
        return !cured;
    }
}

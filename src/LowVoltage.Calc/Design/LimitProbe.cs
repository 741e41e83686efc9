using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Design;

/// <summary>Whether a circuit with its wire and fuse fails nothing, and what fails first.</summary>
/// <remarks>
/// A check that was answered at the start and is undetermined here has left the range of its source: that ends a search too. Without a rating nothing holds.
/// </remarks>
internal readonly struct LimitProbe
{
    private LimitProbe(bool holds, int undetermined, Check? failing, double margin)
    {
        Holds = holds;
        Undetermined = undetermined;
        Failing = failing;
        Margin = margin;
    }

    internal bool Holds { get; }

    internal int Undetermined { get; }

    /// <summary>The first check that fails; null where something undetermined ends the search, or nothing does.</summary>
    internal Check? Failing { get; }

    /// <summary>What that check has left of its limit, below zero; NaN without numbers.</summary>
    internal double Margin { get; }

    internal static LimitProbe Ask(BranchState at, int mostUndetermined)
    {
        int undetermined = 0;
        bool rated = false;
        at.AskedFor = AskedFor.Failures;
        Check? failing = First(at, CheckKind.OfWire, ref undetermined, ref rated, out CheckResult result);
        if (failing is null && at.Duty.Exists)
        {
            failing = First(at, CheckKind.OfFuse, ref undetermined, ref rated, out result);
        }

        // What protects the supply carries more, and its lead runs in the same air where no other is stated.
        if (failing is null && at.Supply.Length > 0)
        {
            failing = First(at, CheckKind.OfSupply, ref undetermined, ref rated, out result);
        }

        at.AskedFor = AskedFor.Everything;
        return new LimitProbe(failing is null && rated && undetermined <= mostUndetermined, undetermined, failing, failing is null ? double.NaN : result.Margin ?? double.NaN);
    }

    /// <summary>What a check has left of its limit; NaN where it has no numbers.</summary>
    internal static double MarginOf(BranchState at, Check? check) =>
        check is not null && check.TryAsk(at, out CheckResult result) ? result.Margin ?? double.NaN : double.NaN;

    private static Check? First(BranchState at, Check[] checks, ref int undetermined, ref bool rated, out CheckResult failed)
    {
        foreach (Check check in checks)
        {
            if (!check.TryAsk(at, out failed))
            {
                continue;
            }

            if (failed.Outcome == CheckOutcome.Fail)
            {
                return check;
            }

            undetermined += failed.Outcome == CheckOutcome.Undetermined ? 1 : 0;
            rated = ReferenceEquals(check, CheckKind.ContinuousCurrent) ? failed.Outcome == CheckOutcome.Pass : rated;
        }

        failed = default;
        return null;
    }
}

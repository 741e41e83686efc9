using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The sizes that one wire may have: from the smallest that its own checks allow, with cost and drop.</summary>
internal sealed class WireOptions
{
    private WireOptions(int branch, Conductor[] conductors, int least, CheckKind? held)
    {
        Branch = branch;
        Conductors = conductors;
        Least = least;
        HeldBy = held;
    }

    internal int Branch { get; }

    /// <summary>The whole series, small to large.</summary>
    internal Conductor[] Conductors { get; }

    /// <summary>Index of the smallest allowed size; the count of the series where none is.</summary>
    internal int Least { get; }

    /// <summary>The check that the next smaller size fails; null where the smallest of the series will do.</summary>
    internal CheckKind? HeldBy { get; }

    /// <summary>Finds the smallest size that carries its current, is strong enough and is protected by its fuse.</summary>
    internal static WireOptions Of(HarnessBranches branches, int branch, Conductor[] series, HarnessFuse? fuse, int least)
    {
        CheckKind? held = null;
        bool tied = branches.IsTie(branch) && Carries(branches, branch, series[series.Length - 1]);
        int at = least;
        for (; at < series.Length; at++)
        {
            CheckKind? wrong = FirstFailure(branches, branch, series[at], fuse) ?? (tied && !Carries(branches, branch, series[at]) ? CheckKind.OvercurrentProtection : null);
            if (wrong is null)
            {
                break;
            }

            held = wrong;
        }

        return new WireOptions(branch, series, at, held);
    }

    // Between sources: what the fuses and supplies at its ends let through. Where not even the largest size carries that, no size is asked to.
    private static bool Carries(HarnessBranches branches, int branch, Conductor conductor) =>
        !((Check)CheckKind.OvercurrentProtection).TryAsk(branches.OfTie(branch, conductor), out CheckResult result) || result.Outcome == CheckOutcome.Pass;

    // Only what one wire decides: what hangs on the whole way to a fault is verified afterwards.
    private static Check? FirstFailure(HarnessBranches branches, int branch, Conductor conductor, HarnessFuse? fuse)
    {
        BranchState at = branches.OfCandidate(branch, conductor, fuse);
        foreach (Check check in CheckKind.Catalogue)
        {
            bool asked = check.Scope == CheckScope.Wire || (fuse?.Rating is not null && (ReferenceEquals(check, CheckKind.FuseProtectsWire) || ReferenceEquals(check, CheckKind.OverloadTemperature)));
            if (asked && check.TryAsk(at, out CheckResult result) && (result.Outcome == CheckOutcome.Fail || (check.Scope == CheckScope.Wire && result.Outcome == CheckOutcome.Undetermined)))
            {
                return check;
            }
        }

        return null;
    }
}

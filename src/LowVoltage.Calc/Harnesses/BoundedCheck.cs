using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A check judged by a bound: whether it passes everywhere within the tolerances.</summary>
/// <remarks>Immutable. Limits that follow the tolerances are taken at their least: the rating of a wire in its warmest air, an allowance in per cent of the lowest voltage.</remarks>
public sealed class BoundedCheck
{
    internal BoundedCheck(string place, CheckKind kind, BoundKind bound, double? worst, double? limit, string reason)
    {
        bool known = bound != BoundKind.None && worst is not null && limit is not null;
        (Place, Kind, Bound) = (place, kind, known ? bound : BoundKind.None);
        (Worst, Limit) = (known ? worst : null, limit);
        Reason = known ? "" : reason;
        Verdict = !known ? BoxVerdict.Undetermined : (kind.LimitIsLeast ? worst >= limit : worst <= limit) ? BoxVerdict.PassesEverywhere : BoxVerdict.MayFail;
    }

    /// <summary>Name of the load or wire.</summary>
    public string Place { get; }

    /// <summary>The check.</summary>
    public CheckKind Kind { get; }

    /// <summary>What the bound is worth that it was judged by.</summary>
    public BoundKind Bound { get; }

    /// <summary>The worst that the bound allows, in the check's unit; <c>null</c> where there is none.</summary>
    public double? Worst { get; }

    /// <summary>What it was held against, in the check's unit; <c>null</c> where there is none.</summary>
    public double? Limit { get; }

    /// <summary>Whether it passes everywhere within the tolerances.</summary>
    public BoxVerdict Verdict { get; }

    /// <summary>Why it is undetermined; empty where it is not.</summary>
    public string Reason { get; }

    /// <summary>The check in one line.</summary>
    public override string ToString() => $"{Place}: {Kind.Name} " + Verdict switch
    {
        BoxVerdict.PassesEverywhere => $"passes everywhere within the tolerances ({Numbers()})",
        BoxVerdict.MayFail => $"may fail ({Numbers()})",
        _ => $"is undetermined: {Reason}",
    };

    private string Numbers() =>
        $"{(Bound == BoundKind.Guaranteed ? "guaranteed" : "enclosed")} {Accept.Short(Worst!.Value)} {Kind.Unit}, {(Kind.LimitIsLeast ? "at least" : "at most")} {Accept.Short(Limit!.Value)} {Kind.Unit}";
}

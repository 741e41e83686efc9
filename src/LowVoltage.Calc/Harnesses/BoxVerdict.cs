namespace LowVoltage.Calc.Harnesses;

/// <summary>What the bounds say of a check over everything within the tolerances.</summary>
public enum BoxVerdict
{
    /// <summary>There is no bound to judge by.</summary>
    Undetermined,

    /// <summary>It passes for every harness within the tolerances.</summary>
    PassesEverywhere,

    /// <summary>The bound lies beyond the limit: a harness within the tolerances may fail, or the bound is wider than need be.</summary>
    MayFail,
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a bound is worth.</summary>
public enum BoundKind
{
    /// <summary>There is none: nothing is known.</summary>
    None,

    /// <summary>Nothing within the tolerances lies beyond it; it may be wider than need be.</summary>
    Enclosure,

    /// <summary>Nothing within the tolerances lies beyond it, and it is what a corner of them gives: every resistance and current on the way at its greatest.</summary>
    Guaranteed,
}

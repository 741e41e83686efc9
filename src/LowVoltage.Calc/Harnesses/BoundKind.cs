namespace LowVoltage.Calc.Harnesses;

/// <summary>What a bound is worth.</summary>
public enum BoundKind
{
    /// <summary>There is none: nothing is known.</summary>
    None,

    /// <summary>Nothing within the tolerances lies beyond it, by intervals alone; it may be wider than need be.</summary>
    Enclosure,

    /// <summary>Nothing within the tolerances lies beyond it, by two proofs: a corner of them, every resistance and current on the way at its greatest, and the enclosure where that is narrower.</summary>
    Guaranteed,
}

namespace LowVoltage.Calc.Protection;

/// <summary>Whether an upstream fuse stays shut when a downstream one opens.</summary>
public enum Selectivity
{
    /// <summary>The published values do not decide. Never a pass.</summary>
    NotProven,

    /// <summary>Over the whole range the downstream fuse has opened before the upstream one can.</summary>
    Proven,

    /// <summary>There is a current at which the upstream fuse opens before the downstream one can.</summary>
    Disproven,
}

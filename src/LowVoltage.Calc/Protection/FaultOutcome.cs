namespace LowVoltage.Calc.Protection;

/// <summary>How a short circuit ends.</summary>
public enum FaultOutcome
{
    /// <summary>No operating times are known. Never a pass.</summary>
    NotEvaluated,

    /// <summary>The fuse opens.</summary>
    Opens,

    /// <summary>The current is below the conventional fusing current: the fuse need not open.</summary>
    NeedNotOpen,

    /// <summary>A conductor reaches its melting point before.</summary>
    ConductorMelts,
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>How bad what follows from a fault is, the worst first.</summary>
public enum FaultRank
{
    /// <summary>The fault current keeps flowing and takes a wire beyond what its insulation stands: danger of fire.</summary>
    BurnsOn,

    /// <summary>The fault current keeps flowing; no rated wire gets hotter than it may stay.</summary>
    NotCleared,

    /// <summary>A fuse ends the fault, but a wire is hotter by then than its insulation stands in a short circuit.</summary>
    WireTooHot,

    /// <summary>What the fault does could not be told from what is known. Never a pass.</summary>
    Undetermined,

    /// <summary>A fuse nearer to the source opens, or may open, before the nearest one: circuits are lost that have no part in the fault.</summary>
    WrongFuseFirst,

    /// <summary>A load is fed backwards, or from where it should not be.</summary>
    FedBack,

    /// <summary>A load gets no voltage any more, or cuts out.</summary>
    LoadDead,

    /// <summary>A load gets noticeably less voltage, or more, than before.</summary>
    LoadDim,

    /// <summary>Nothing to act on.</summary>
    Harmless,
}

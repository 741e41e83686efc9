namespace LowVoltage.Calc.Harnesses;

/// <summary>How a short circuit in a harness ends.</summary>
public enum FaultEnding
{
    /// <summary>It could not be told.</summary>
    Undetermined,

    /// <summary>Fuses open, and no current flows in the fault any more.</summary>
    Cleared,

    /// <summary>Current keeps flowing in the fault: no fuse that carries it need open.</summary>
    NotCleared,

    /// <summary>No current flows in it, or it is no short circuit.</summary>
    NoCurrent,
}

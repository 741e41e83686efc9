namespace LowVoltage.Calc.Harnesses;

/// <summary>What an interruption does to a load.</summary>
public enum LoadEffect
{
    /// <summary>Current flows through it the wrong way.</summary>
    Reversed,

    /// <summary>It gets voltage by another way than its own, or gets voltage where it should get none.</summary>
    FedBack,

    /// <summary>It gets no voltage any more.</summary>
    Dead,

    /// <summary>It cuts out, or is starved of its current.</summary>
    DropsOut,

    /// <summary>It gets noticeably more voltage.</summary>
    Rises,

    /// <summary>It gets noticeably less voltage.</summary>
    Dims,
}

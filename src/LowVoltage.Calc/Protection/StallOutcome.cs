namespace LowVoltage.Calc.Protection;

/// <summary>What a stalled motor means for its circuit.</summary>
public enum StallOutcome
{
    /// <summary>No operating times are known, and the wire does not carry the current continuously. Never a pass.</summary>
    NotEvaluated,

    /// <summary>The device opens, and the wire keeps within its limits until then.</summary>
    DeviceOpens,

    /// <summary>The device need not open, and the wire carries the current continuously: only a thermal cut-out of the motor's own ends the stall.</summary>
    WireBears,

    /// <summary>The wire passes a limit before the device opens, or without it.</summary>
    WireTooHot,
}

namespace LowVoltage.Calc.Working;

/// <summary>Which way the shown number is rounded. A limit is never shown on the unsafe side of what it is.</summary>
public enum RoundingDirection
{
    /// <summary>To the nearest.</summary>
    Nearest,

    /// <summary>Down: what is allowed.</summary>
    Down,

    /// <summary>Up: what is needed.</summary>
    Up,
}

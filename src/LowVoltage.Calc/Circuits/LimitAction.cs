namespace LowVoltage.Calc.Circuits;

/// <summary>What a source does at its current limit.</summary>
public enum LimitAction
{
    /// <summary>It has no limit of its own.</summary>
    None,

    /// <summary>It holds the current at the limit and lets the voltage fall: a regulated supply, an alternator.</summary>
    Holds,

    /// <summary>It disconnects, some time after the current passes the limit: the protection of a lithium pack. Not a substitute for a fuse.</summary>
    Disconnects,
}

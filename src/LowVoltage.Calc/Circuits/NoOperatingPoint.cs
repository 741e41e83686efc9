namespace LowVoltage.Calc.Circuits;

/// <summary>Why a circuit has no operating point.</summary>
public enum NoOperatingPoint
{
    /// <summary>It has one.</summary>
    None,

    /// <summary>The load needs more power than can come through that resistance (V² &lt; 4RP for a constant-power load).</summary>
    PowerOutOfReach,

    /// <summary>The load's current would drop more than the whole voltage of the source.</summary>
    CurrentOutOfReach,

    /// <summary>The load needs more than the current limit of the source.</summary>
    SourceLimit,

    /// <summary>The current is above the protection limit of the source, which disconnects.</summary>
    SourceDisconnects,

    /// <summary>The conductor would pass the melting point of its metal.</summary>
    ConductorMelts,
}

namespace LowVoltage.Calc.Circuits;

/// <summary>What a part of the path is.</summary>
public enum PathElementKind
{
    /// <summary>A conductor on the way out.</summary>
    FeedSegment,

    /// <summary>A joint on the way out.</summary>
    FeedJoint,

    /// <summary>A conductor on the way back.</summary>
    ReturnSegment,

    /// <summary>A joint on the way back.</summary>
    ReturnJoint,

    /// <summary>A chassis or a stated resistance on the way back.</summary>
    ReturnResistance,
}

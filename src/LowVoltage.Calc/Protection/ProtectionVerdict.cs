namespace LowVoltage.Calc.Protection;

/// <summary>Whether a fuse protects a wire.</summary>
public enum ProtectionVerdict
{
    /// <summary>No operating times are known, so nothing is proven. Never a pass.</summary>
    NotEvaluated,

    /// <summary>Over the whole range of currents the fuse opens before the wire reaches its limit.</summary>
    Protected,

    /// <summary>There is a current at which the wire passes its limit.</summary>
    NotProtected,
}

namespace LowVoltage.Calc.Protection;

/// <summary>Which limit of the wire a current is held against.</summary>
public enum ProtectionRegime
{
    /// <summary>Below the conventional fusing current: the fuse need not open, and the wire must carry the current indefinitely.</summary>
    Sustained,

    /// <summary>The fuse takes more than 5 s: continuous limit and ageing allowance.</summary>
    Overload,

    /// <summary>The fuse takes at most 5 s: short-circuit limit.</summary>
    ShortCircuit,
}

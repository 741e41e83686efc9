namespace LowVoltage.Calc.Checks;

/// <summary>How a fault at the far end ends.</summary>
internal enum FarEndEnding : byte
{
    /// <summary>It was not asked, or the fuse's times are not known.</summary>
    Unknown,

    /// <summary>The fuse opens.</summary>
    Opens,

    /// <summary>The current is too small for the fuse.</summary>
    NeverOpens,

    /// <summary>The current becomes too small as the conductors heat.</summary>
    Falls,

    /// <summary>A conductor melts first.</summary>
    Melts,
}

namespace LowVoltage.Calc.Protection;

/// <summary>What a verdict on a start rests on.</summary>
public enum StartBasis
{
    /// <summary>Nothing was evaluated.</summary>
    None,

    /// <summary>The current never exceeds the fuse's rating: no operating time is needed.</summary>
    WithinRating,

    /// <summary>The least times of the stated points alone, which nothing between them can undercut.</summary>
    StatedPoints,

    /// <summary>
    /// The customary line between the stated points, or its extension at constant Joule integral beyond the last: an assumption. The maker's melting Joule
    /// integral would settle it.
    /// </summary>
    CustomaryLine,
}

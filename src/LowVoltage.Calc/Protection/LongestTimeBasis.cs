namespace LowVoltage.Calc.Protection;

/// <summary>What the longest operating times of a verdict rest on.</summary>
public enum LongestTimeBasis
{
    /// <summary>
    /// The customary line, straight in log-log coordinates between two stated points: an assumption, safe as long as the real curve is hollow there, as those of
    /// makers are. The stated points alone would not have protected.
    /// </summary>
    CustomaryLine,

    /// <summary>The stated points alone: between two of them the time of the smaller current, since more current never opens a device later.</summary>
    StatedPoints,
}

namespace LowVoltage.Calc.Design;

/// <summary>The verdict on a whole circuit.</summary>
public enum DesignVerdict
{
    /// <summary>Every check was evaluated and passes.</summary>
    Pass,

    /// <summary>No check fails, but at least one could not be evaluated and is left to the reader.</summary>
    OpenPoints,

    /// <summary>At least one check fails, or no wire and fuse of the series fit.</summary>
    Fail,
}

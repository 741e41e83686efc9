namespace LowVoltage.Calc.Checks;

/// <summary>The verdict on a whole circuit. The zero value is no answer, never a pass.</summary>
public enum Verdict
{
    /// <summary>No check fails, but at least one could not be evaluated from what is known; each says what is missing.</summary>
    Undetermined,

    /// <summary>Every check was evaluated and passes.</summary>
    Pass,

    /// <summary>At least one check fails, or no wire and fuse of the series fit.</summary>
    Fail,
}

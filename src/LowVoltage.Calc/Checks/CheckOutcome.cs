namespace LowVoltage.Calc.Checks;

/// <summary>The outcome of one check. The zero value is no answer, never a pass.</summary>
public enum CheckOutcome
{
    /// <summary>It could not be evaluated from what is known; the note says what is missing. Never counted as a pass.</summary>
    Undetermined,

    /// <summary>The value is within the limit.</summary>
    Pass,

    /// <summary>The value is outside the limit.</summary>
    Fail,
}

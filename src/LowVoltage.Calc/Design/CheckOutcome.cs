namespace LowVoltage.Calc.Design;

/// <summary>The outcome of one check.</summary>
public enum CheckOutcome
{
    /// <summary>The value is within the limit.</summary>
    Pass,

    /// <summary>The value is outside the limit.</summary>
    Fail,

    /// <summary>It could not be evaluated from what is known; the note says what is missing. Never counted as a pass.</summary>
    Open,
}

namespace LowVoltage.Calc.Ampacity;

/// <summary>How binding a voltage-drop allowance is.</summary>
public enum AllowanceStatus
{
    /// <summary>A requirement of a law. No allowance that is carried here has it: none of the laws read sets one.</summary>
    Law,

    /// <summary>A requirement of a standard.</summary>
    Standard,

    /// <summary>Advice: a handbook, an advisory circular, an informative note or annex.</summary>
    Guidance,
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>How much a finding weighs.</summary>
public enum FindingSeverity
{
    /// <summary>It leaves a question undetermined.</summary>
    Undetermined,

    /// <summary>Worth knowing; the verdict stands.</summary>
    Note,

    /// <summary>Something that should not be; the verdict is decided by the checks.</summary>
    Warning,

    /// <summary>The harness fails.</summary>
    Fail,
}

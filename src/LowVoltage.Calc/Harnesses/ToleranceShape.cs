namespace LowVoltage.Calc.Harnesses;

/// <summary>How a quantity lies within its tolerance.</summary>
public enum ToleranceShape
{
    /// <summary>Anywhere alike.</summary>
    Uniform,

    /// <summary>Normal, the tolerance three standard deviations from the middle, and nothing beyond it.</summary>
    Normal,
}

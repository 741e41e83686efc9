namespace LowVoltage.Calc.Teaching;

/// <summary>How a problem is to be answered.</summary>
public enum ProblemForm
{
    /// <summary>By a number with its unit.</summary>
    Numeric,

    /// <summary>By one of four answers.</summary>
    MultipleChoice,

    /// <summary>A wrong answer is shown; the mistake behind it is to be named.</summary>
    FindTheMistake,
}

namespace LowVoltage.Calc.Working;

/// <summary>What a step of a worked solution does.</summary>
public enum StepKind
{
    /// <summary>A formula gives a number.</summary>
    Calculation,

    /// <summary>A number is read from a table, a standard or the data of a material.</summary>
    LookUp,

    /// <summary>A number is held against another.</summary>
    Comparison,

    /// <summary>Words: something that no formula says.</summary>
    Statement,
}

namespace LowVoltage.Calc.Teaching;

/// <summary>How much a problem asks for.</summary>
public enum Difficulty
{
    /// <summary>One formula.</summary>
    OneStep,

    /// <summary>Several formulas, one after the other.</summary>
    SeveralSteps,

    /// <summary>A whole circuit: wire and fuse are to be chosen and the choice defended.</summary>
    Design,
}

namespace LowVoltage.Calc.Teaching;

/// <summary>Which part of a sheet is written.</summary>
public enum SheetPart
{
    /// <summary>The problems, to hand out.</summary>
    Problems,

    /// <summary>The key: answers, usual mistakes and worked solutions.</summary>
    Key,

    /// <summary>The problems, and the key on pages of its own after them.</summary>
    Both,
}

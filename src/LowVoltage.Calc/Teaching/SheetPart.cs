namespace LowVoltage.Calc.Teaching;

/// <summary>Which part of a sheet is written; each is a document of its own, and the problems hold nothing of the key.</summary>
public enum SheetPart
{
    /// <summary>The problems, to hand out.</summary>
    Problems,

    /// <summary>The key: answers, usual mistakes and worked solutions.</summary>
    Key,
}

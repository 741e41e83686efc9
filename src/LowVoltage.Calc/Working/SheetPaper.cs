namespace LowVoltage.Calc.Working;

/// <summary>The paper that a sheet is printed on.</summary>
public enum SheetPaper
{
    /// <summary>Whatever the printer has; the margins suit A4 and Letter.</summary>
    Any,

    /// <summary>A4, 210 mm by 297 mm.</summary>
    A4,

    /// <summary>Letter, 8.5 in by 11 in.</summary>
    Letter,
}

namespace LowVoltage.Calc.Teaching;

/// <summary>The edition of the open quiz standard (1EdTech Question and Test Interoperability) that a package is written in.</summary>
public enum QtiVersion
{
    /// <summary>QTI 2.1.</summary>
    Qti21,

    /// <summary>QTI 3.0.</summary>
    Qti30,
}

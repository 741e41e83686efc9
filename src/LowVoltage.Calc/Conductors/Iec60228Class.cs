namespace LowVoltage.Calc.Conductors;

/// <summary>A conductor class of IEC 60228.</summary>
public enum Iec60228Class
{
    /// <summary>Class 1: solid.</summary>
    Solid = 1,

    /// <summary>Class 2: stranded, for fixed installation.</summary>
    Stranded = 2,

    /// <summary>Class 5: flexible.</summary>
    Flexible = 5,

    /// <summary>Class 6: more flexible than class 5, with the same resistance limits.</summary>
    ExtraFlexible = 6,
}

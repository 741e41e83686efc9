namespace LowVoltage.Calc.Ampacity;

/// <summary>Over which part of the path a voltage-drop allowance counts.</summary>
public enum AllowancePath
{
    /// <summary>The way out and the way back, from source or bus to the load.</summary>
    OutAndBack,

    /// <summary>The plus line only; the way back has no share in it.</summary>
    PlusLineOnly,

    /// <summary>From the generator or battery to the bus.</summary>
    SourceToBus,

    /// <summary>From the origin of a building installation to the load.</summary>
    OriginToLoad,
}

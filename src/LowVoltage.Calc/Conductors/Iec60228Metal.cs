namespace LowVoltage.Calc.Conductors;

/// <summary>The metals that IEC 60228 gives resistance limits for.</summary>
public enum Iec60228Metal
{
    /// <summary>Plain annealed copper.</summary>
    PlainCopper,

    /// <summary>Metal-coated annealed copper: tinned, for instance.</summary>
    CoatedCopper,

    /// <summary>Aluminium or aluminium alloy; classes 1 and 2 only, from 10 mm².</summary>
    Aluminium,
}

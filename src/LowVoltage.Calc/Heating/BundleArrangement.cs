namespace LowVoltage.Calc.Heating;

/// <summary>How wires lie together.</summary>
public enum BundleArrangement
{
    /// <summary>One wire, free on all sides.</summary>
    Alone,

    /// <summary>Two wires that touch along their length.</summary>
    Pair,

    /// <summary>Three wires that touch each other, in a triangle.</summary>
    Trefoil,

    /// <summary>Three wires side by side, touching: rated as a trefoil, which carries less.</summary>
    ThreeFlat,

    /// <summary>Four wires or more, laid by hand and tied.</summary>
    Bundle,

    /// <summary>Two cores in a round common sheath that fills the space between them.</summary>
    TwinCable,
}

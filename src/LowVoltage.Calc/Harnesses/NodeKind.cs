namespace LowVoltage.Calc.Harnesses;

/// <summary>What a node of a harness is. It says what to call it; the arithmetic is the same for each.</summary>
public enum NodeKind
{
    /// <summary>A terminal of a device, or a contact of a connector.</summary>
    Terminal,

    /// <summary>Wires joined to each other.</summary>
    Splice,

    /// <summary>A bar or block from which several branches leave.</summary>
    Busbar,

    /// <summary>A point on the way back that several circuits share: a ground stud, a place on the chassis.</summary>
    Ground,
}

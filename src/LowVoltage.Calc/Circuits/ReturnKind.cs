namespace LowVoltage.Calc.Circuits;

/// <summary>How the current comes back.</summary>
public enum ReturnKind
{
    /// <summary>Through a wire of the same conductor as the feed.</summary>
    SameConductor,

    /// <summary>Through segments of its own.</summary>
    Segments,

    /// <summary>Through a chassis or hull with a stated resistance.</summary>
    Chassis,

    /// <summary>Through segments that carry other circuits' current as well.</summary>
    SharedSegments,

    /// <summary>Through a stated resistance that carries other circuits' current as well.</summary>
    SharedResistance,

    /// <summary>Nowhere apart: the resistance of the way out and back was stated whole.</summary>
    Stated,
}

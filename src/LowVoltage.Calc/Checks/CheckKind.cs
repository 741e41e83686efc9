namespace LowVoltage.Calc.Checks;

/// <summary>What a design check asks. Each has one unit, and a limit that is either the most or the least allowed.</summary>
public enum CheckKind
{
    /// <summary>Can the load get its power through this wire at all? Power that can be delivered, W, at least what the load wants.</summary>
    PowerDelivery,

    /// <summary>Is the conductor thick enough to be handled and mounted? Section, mm², at least.</summary>
    MechanicalMinimum,

    /// <summary>Is the voltage lost on the way out and back within the allowance? V, at most.</summary>
    VoltageDrop,

    /// <summary>Does the load see its own minimum voltage? V, at least.</summary>
    LoadVoltage,

    /// <summary>Does the load see its own minimum voltage while it starts, and does the source stay on? V, at least.</summary>
    StartVoltage,

    /// <summary>Is the r.m.s. current within the wire's rating where it runs? A, at most.</summary>
    ContinuousCurrent,

    /// <summary>Does the conductor stay below the insulation's continuous limit? °C, at most.</summary>
    ConductorTemperature,

    /// <summary>Is the fuse large enough for the load in continuous service? Fuse rating, A, at least.</summary>
    FuseCarriesLoad,

    /// <summary>Is the fuse small enough to protect the wire? Fuse rating, A, at most.</summary>
    FuseProtectsWire,

    /// <summary>Is the fuse rated for the highest supply voltage? V, at least.</summary>
    FuseVoltage,

    /// <summary>Can the fuse interrupt the greatest prospective current? A, at most.</summary>
    BreakingCapacity,

    /// <summary>Does the fuse hold while the load starts? Time the inrush may last, s, at most.</summary>
    InrushHeld,

    /// <summary>Does the fuse open before an overload, at any current up to the prospective one, takes the conductor too far? °C, at most: settled at the largest current that the fuse need not open, or reached where time is shortest, whichever is nearer to its limit.</summary>
    OverloadTemperature,

    /// <summary>Does a short at the far end open the fuse soon enough? Longest time to open, s, at most.</summary>
    FaultOpensFuse,

    /// <summary>Does the conductor survive a short until the fuse opens? °C, at most.</summary>
    ShortCircuitTemperature,

    /// <summary>Is the fuse near enough to the source? Length of unprotected conductor, m, at most.</summary>
    FuseDistance,
}

namespace LowVoltage.Calc.Heating;

/// <summary>How much of the insulation's heat capacity is counted with the conductor while it heats.</summary>
public enum InsulationHeat
{
    /// <summary>None of it: the safe choice, exact as the time gets short, and never slower than the wire.</summary>
    None,

    /// <summary>
    /// The share p = 1/(2·ln(D/d)) − 1/((D/d)² − 1) that IEC 60853-2 counts with the conductor for transients longer than a
    /// third of the insulation's own time constant (from memory). For overloads of many seconds.
    /// </summary>
    LongDuration,

    /// <summary>All of it, as if the insulation were as hot as the conductor: too slow for protection, the slow bound of the two.</summary>
    All,
}

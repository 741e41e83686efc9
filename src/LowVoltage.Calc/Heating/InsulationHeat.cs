namespace LowVoltage.Calc.Heating;

/// <summary>How the heat that the insulation takes up is counted while the conductor heats.</summary>
public enum InsulationHeat
{
    /// <summary>Not at all: the safe choice, exact as the time gets short, and never slower than the wire. A thin wire looks up to four times as fast as it is.</summary>
    None,

    /// <summary>
    /// In three layers behind their own thermal resistance, the heat capacity of each at its outer face: on the safe side too, and close. Against conduction
    /// along the radius, for solid wires from 26 AWG to 2/0, up to four times as thick with insulation as without, and from 1.05 to 10 times the rated current: never later, and at most
    /// 1.5 times earlier.
    /// </summary>
    Layers,

    /// <summary>All of it, as if the insulation were as hot as the conductor: too slow for protection, the slow bound.</summary>
    All,
}

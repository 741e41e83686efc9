namespace LowVoltage.Calc.Networks;

/// <summary>What an element of a <see cref="ResistiveNetwork"/> is.</summary>
public enum NetworkElementKind
{
    /// <summary>A resistance; with 0 Ω its two nodes are one.</summary>
    Resistance,

    /// <summary>A voltage, alone or behind a resistance of its own.</summary>
    VoltageSource,

    /// <summary>A stated current, whatever the voltage: a load that draws it, or a source that drives it.</summary>
    Current,

    /// <summary>A load that draws the same power at any voltage.</summary>
    ConstantPower,
}

namespace LowVoltage.Calc.Teaching;

/// <summary>What a problem is about.</summary>
public enum ProblemTopic
{
    /// <summary>Voltage, current and resistance.</summary>
    OhmsLaw,

    /// <summary>Power from voltage and current, and the power lost in a lead.</summary>
    Power,

    /// <summary>Resistances one after the other.</summary>
    SeriesResistance,

    /// <summary>Resistances side by side.</summary>
    ParallelResistance,

    /// <summary>The resistance of a wire from its length and size.</summary>
    WireResistance,

    /// <summary>Resistance at another temperature.</summary>
    TemperatureCorrection,

    /// <summary>The voltage lost along a pair of wires.</summary>
    VoltageDrop,

    /// <summary>The volts that reach a load, also one that draws constant power.</summary>
    VoltageAtLoad,

    /// <summary>The smallest wire that keeps a drop within its limit.</summary>
    SmallestSize,

    /// <summary>What a wire may carry in a hot place and beside others.</summary>
    AmpacityDerating,

    /// <summary>A fuse for a load and its wire.</summary>
    FuseChoice,

    /// <summary>How hot a short circuit makes a wire, and how long the wire withstands it.</summary>
    AdiabaticHeating,

    /// <summary>The current that a battery drives into a short circuit.</summary>
    ProspectiveCurrent,

    /// <summary>The internal resistance of a battery, from a test or its cold-cranking current.</summary>
    BatteryResistance,

    /// <summary>How long a fuse takes to open.</summary>
    FuseOpeningTime,

    /// <summary>Diameter, section, circular mils and gauge numbers.</summary>
    WireGeometry,

    /// <summary>Ampere-hours, watt-hours and how long a battery lasts.</summary>
    BatteryEnergy,

    /// <summary>Drop and heat in joints.</summary>
    JointDrop,

    /// <summary>A return through a chassis.</summary>
    ChassisReturn,

    /// <summary>A filament lamp at another voltage than its rated one.</summary>
    LampVoltage,
}

namespace LowVoltage.Calc.Working;

/// <summary>What a part of a circuit diagram is drawn as; the shapes are those of IEC 60617 (from memory).</summary>
public enum DiagramSymbol
{
    /// <summary>A plain line: a wire.</summary>
    Wire,

    /// <summary>A wire that other circuits use too.</summary>
    SharedWire,

    /// <summary>A connection: crimp, plug or terminal.</summary>
    Joint,

    /// <summary>A battery of several cells.</summary>
    Battery,

    /// <summary>A single cell.</summary>
    Cell,

    /// <summary>The two terminals of a supply.</summary>
    Supply,

    /// <summary>A fuse.</summary>
    Fuse,

    /// <summary>A switch, open.</summary>
    Switch,

    /// <summary>A resistance.</summary>
    Resistor,

    /// <summary>A heating element.</summary>
    Heater,

    /// <summary>A lamp.</summary>
    Lamp,

    /// <summary>A motor.</summary>
    Motor,

    /// <summary>Any other device.</summary>
    Device,

    /// <summary>A short circuit.</summary>
    Fault,

    /// <summary>A frame or chassis that leads the current back.</summary>
    Chassis,

    /// <summary>Earth.</summary>
    Earth,
}

namespace LowVoltage.Calc.Ampacity;

/// <summary>Kinds of circuit for which road-vehicle handbooks print an allowed voltage drop on the plus line.</summary>
public enum RoadVehicleCircuit
{
    /// <summary>From the light switch to lamps below 15 W.</summary>
    SmallLamps,

    /// <summary>From the light switch to lamps above 15 W.</summary>
    LargeLamps,

    /// <summary>From the light switch to the headlamps.</summary>
    Headlamps,

    /// <summary>From the generator to the battery.</summary>
    Charging,

    /// <summary>Control line between generator and regulator.</summary>
    RegulatorControl,

    /// <summary>Main line of the starter.</summary>
    StarterMain,

    /// <summary>From the start switch to a solenoid with one winding.</summary>
    StarterControlOneWinding,

    /// <summary>From the start switch to a solenoid with a pull-in and a hold-in winding.</summary>
    StarterControlTwoWindings,

    /// <summary>Other control lines: switch to relay, horn and the like.</summary>
    OtherControl,
}

namespace LowVoltage.Calc.Teaching;

/// <summary>Topics in words.</summary>
internal static class TopicWords
{
    internal static string Of(ProblemTopic topic) => topic switch
    {
        ProblemTopic.OhmsLaw => "Ohm's law",
        ProblemTopic.Power => "Power",
        ProblemTopic.SeriesResistance => "Resistances in series",
        ProblemTopic.ParallelResistance => "Resistances in parallel",
        ProblemTopic.WireResistance => "Resistance of a wire",
        ProblemTopic.TemperatureCorrection => "Resistance at another temperature",
        ProblemTopic.VoltageDrop => "Voltage drop",
        ProblemTopic.VoltageAtLoad => "Volts at the load",
        ProblemTopic.SmallestSize => "Smallest size for a drop",
        ProblemTopic.AmpacityDerating => "Ampacity and derating",
        ProblemTopic.FuseChoice => "Choice of a fuse",
        ProblemTopic.AdiabaticHeating => "Heating in a short circuit",
        ProblemTopic.ProspectiveCurrent => "Prospective short-circuit current",
        ProblemTopic.BatteryResistance => "Internal resistance of a battery",
        ProblemTopic.FuseOpeningTime => "Opening time of a fuse",
        ProblemTopic.WireGeometry => "Diameter, section and gauge",
        ProblemTopic.BatteryEnergy => "Charge and energy of a battery",
        ProblemTopic.JointDrop => "Joints",
        ProblemTopic.ChassisReturn => "Return through a chassis",
        _ => "Lamp at another voltage",
    };
}

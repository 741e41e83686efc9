namespace LowVoltage.Calc.Circuits;

/// <summary>What <see cref="LoopKernel"/> returns: SI doubles. Amperes and the rest are 0 when there is no point.</summary>
internal readonly struct LoopPoint
{
    internal LoopPoint(double amperes, double heatingAmperes, double volts, bool limited)
    {
        Amperes = amperes;
        HeatingAmperes = heatingAmperes;
        Volts = volts;
        Limited = limited;
    }

    internal LoopPoint(NoOperatingPoint reason, double largestWatts)
    {
        Reason = reason;
        LargestWatts = largestWatts;
    }

    internal bool Exists => Reason == NoOperatingPoint.None;

    internal NoOperatingPoint Reason { get; }

    /// <summary>Current I, A.</summary>
    internal double Amperes { get; }

    /// <summary>r.m.s. current that heats the conductor, A.</summary>
    internal double HeatingAmperes { get; }

    /// <summary>Voltage at the load U, V.</summary>
    internal double Volts { get; }

    /// <summary>The source is at its current limit, so it gives less than its open-circuit voltage.</summary>
    internal bool Limited { get; }

    /// <summary>When there is no point: the largest power that could be delivered, W.</summary>
    internal double LargestWatts { get; }
}

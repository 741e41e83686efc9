using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Design;

/// <summary>What a circuit asks of its wire over the supply range, on doubles: the worst of minimum, nominal and maximum voltage.</summary>
internal struct WireDuty
{
    /// <summary>Whether the load has an operating point at all three voltages.</summary>
    internal bool Exists;

    /// <summary>Why there is none.</summary>
    internal NoOperatingPoint Reason;

    /// <summary>Largest current while the load is on, A.</summary>
    internal double OnAmperes;

    /// <summary>Largest r.m.s. current, A.</summary>
    internal double HeatingAmperes;

    /// <summary>Largest drop in the path, V.</summary>
    internal double DropVolts;

    /// <summary>Lowest voltage at the load, V.</summary>
    internal double LeastLoadVolts;

    /// <summary>Where there is no point: the largest power that can be delivered and the power wanted, W.</summary>
    internal double LargestWatts;
    internal double WantedWatts;
}

using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <summary>What a circuit asks of its wire over the supply range, on doubles: the worst of minimum, nominal and maximum voltage, and at which of them.</summary>
internal struct WireDuty
{
    /// <summary>Whether the load has an operating point at all three voltages.</summary>
    internal bool Exists;

    /// <summary>Why there is none.</summary>
    internal NoOperatingPoint Reason;

    /// <summary>Where there is none, at which level; else where the largest r.m.s. current flows.</summary>
    internal SupplyLevel Level;

    /// <summary>Largest current while the load is on, A.</summary>
    internal double OnAmperes;
    internal SupplyLevel OnLevel;

    /// <summary>Largest r.m.s. current, A.</summary>
    internal double HeatingAmperes;

    /// <summary>Largest drop in the path, V.</summary>
    internal double DropVolts;
    internal SupplyLevel DropLevel;

    /// <summary>Lowest voltage at the load, V.</summary>
    internal double LeastLoadVolts;
    internal SupplyLevel LeastLoadLevel;

    /// <summary>Where there is no point: the largest power that can be delivered and the power wanted, W.</summary>
    internal double LargestWatts;
    internal double WantedWatts;
}

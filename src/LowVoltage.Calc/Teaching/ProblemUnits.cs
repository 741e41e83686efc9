namespace LowVoltage.Calc.Teaching;

/// <summary>The units of a problem.</summary>
public enum ProblemUnits
{
    /// <summary>mm², metres, °C.</summary>
    Metric,

    /// <summary>AWG and circular mils, feet, °F.</summary>
    UsCustomary,

    /// <summary>A mixture, as real papers have it: sizes, lengths and temperatures each from one system or the other.</summary>
    Mixed,
}

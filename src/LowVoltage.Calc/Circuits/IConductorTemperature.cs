namespace LowVoltage.Calc.Circuits;

/// <summary>How hot a conductor is at a current, as a struct so that the solver calls it without an allocation.</summary>
/// <remarks>
/// RatioAt is a straight line of the squared current and never falls as that rises. Past the melting point it may return +∞; it never returns NaN.
/// </remarks>
internal interface IConductorTemperature
{
    /// <summary>False when the temperature is the same at every current.</summary>
    bool DependsOnCurrent { get; }

    /// <summary>Conductor temperature in °C at the r.m.s. current in A.</summary>
    double CelsiusAt(double heatingAmperes);

    /// <summary>Resistance at that temperature over the resistance at 20 °C.</summary>
    double RatioAt(double heatingAmperes);

    /// <summary>By how much RatioAt rises with each square ampere, 1/A².</summary>
    double RatioPerSquareAmpere { get; }

    /// <summary>r.m.s. current in A past which a conductor melts and RatioAt is not asked; +∞ where that is not counted here.</summary>
    double MeltingAmperes { get; }
}

namespace LowVoltage.Calc.Circuits;

/// <summary>How hot a conductor is at a current, as a struct so that the solver calls it without an allocation.</summary>
/// <remarks>
/// RatioAt never falls as the current rises, and I²·RatioAt(I) is convex. Past a thermal runaway RatioAt may return +∞;
/// it never returns NaN.
/// </remarks>
internal interface IConductorTemperature
{
    /// <summary>False when the temperature is the same at every current.</summary>
    bool DependsOnCurrent { get; }

    /// <summary>Conductor temperature in °C at the r.m.s. current in A.</summary>
    double CelsiusAt(double heatingAmperes);

    /// <summary>Resistance at that temperature over the resistance at 20 °C.</summary>
    double RatioAt(double heatingAmperes);
}

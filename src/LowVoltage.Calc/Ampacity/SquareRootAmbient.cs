namespace LowVoltage.Calc.Ampacity;

/// <summary>The square-root law of ambient correction, which holds where a conductor loses heat in proportion to its rise over the air.</summary>
internal static class SquareRootAmbient
{
    /// <summary>√((θc − θa′)/(θc − θa)); temperatures in °C, θa′ and θa below θc.</summary>
    internal static double Factor(double conductor, double ambient, double baseAmbient) =>
        Math.Sqrt((conductor - ambient) / (conductor - baseAmbient));
}

namespace LowVoltage.Calc.Protection;

/// <summary>The shape of a surge over time.</summary>
public enum StartSurgeShape
{
    /// <summary>Stays at its peak, then ends.</summary>
    Constant,

    /// <summary>Falls from its peak as exp(−t/τ).</summary>
    Fading,

    /// <summary>A capacitor that takes what the rest leaves of the path until it has its charge, peak times time constant.</summary>
    Charging,
}

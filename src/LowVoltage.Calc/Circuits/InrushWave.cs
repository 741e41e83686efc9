namespace LowVoltage.Calc.Circuits;

/// <summary>The shape of an inrush current over time.</summary>
public enum InrushWave
{
    /// <summary>Falls from the peak as exp(−t/τ); the Joule integral of the fall is ½·Ip²·τ.</summary>
    Exponential,

    /// <summary>Stays at the peak for the whole duration; the Joule integral is Ip²·t. On the safe side for a motor, whose current falls while it runs up.</summary>
    Rectangular,
}

namespace LowVoltage.Calc.Conductors;

/// <summary>Where a conductor's resistance comes from.</summary>
public enum ResistanceBasis
{
    /// <summary>ρ/A of one round solid wire.</summary>
    SolidGeometry,

    /// <summary>ρ/A of the strands, times a lay factor.</summary>
    StrandedGeometry,

    /// <summary>The largest resistance that a standard allows for the size; real wire measures 2 % to 15 % less than that.</summary>
    StandardMaximum,

    /// <summary>A resistance per length given by the caller.</summary>
    Stated,
}

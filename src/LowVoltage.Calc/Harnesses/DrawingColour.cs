namespace LowVoltage.Calc.Harnesses;

/// <summary>What the colour of a wire in a drawing stands for.</summary>
public enum DrawingColour
{
    /// <summary>Nothing: each wire alike.</summary>
    None,

    /// <summary>Its temperature: how much of the room between the air and what its insulation stands is used.</summary>
    Temperature,

    /// <summary>Its drop, as a share of the nominal voltage.</summary>
    Drop,
}

namespace LowVoltage.Calc.Circuits;

/// <summary>One of the four numbers of Ohm's law and the power relations.</summary>
public enum OhmsLawQuantity
{
    /// <summary>Voltage V.</summary>
    Voltage,

    /// <summary>Current I.</summary>
    Current,

    /// <summary>Resistance R.</summary>
    Resistance,

    /// <summary>Power P.</summary>
    Power,
}

namespace LowVoltage.Calc.Conductors;

/// <summary>A temperature class of road-vehicle cable (ISO 6722, ISO 19642): the temperature of its 3000 h ageing.</summary>
public enum RoadVehicleTemperatureClass
{
    /// <summary>Class A: 85 °C.</summary>
    A,

    /// <summary>Class B: 100 °C.</summary>
    B,

    /// <summary>Class C: 125 °C.</summary>
    C,

    /// <summary>Class D: 150 °C.</summary>
    D,

    /// <summary>Class E: 175 °C.</summary>
    E,

    /// <summary>Class F: 200 °C.</summary>
    F,

    /// <summary>Class G: 225 °C.</summary>
    G,

    /// <summary>Class H: 250 °C.</summary>
    H,
}

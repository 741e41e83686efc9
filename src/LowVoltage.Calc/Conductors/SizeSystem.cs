namespace LowVoltage.Calc.Conductors;

/// <summary>The system a conductor size belongs to. Equal-looking numbers of two systems are different amounts of metal.</summary>
public enum SizeSystem
{
    /// <summary>No system: the geometry was given by the caller.</summary>
    Geometry,

    /// <summary>American Wire Gauge, ASTM B258: 4/0 to 40.</summary>
    AmericanWireGauge,

    /// <summary>Thousands of circular mils, for sizes above 4/0.</summary>
    Kcmil,

    /// <summary>IEC 60228 nominal square millimetres; the standard fixes the largest resistance, not the area.</summary>
    Iec60228,

    /// <summary>Road-vehicle cable by nominal square millimetres (ISO 6722, ISO 19642).</summary>
    RoadVehicle,

    /// <summary>Vehicle gauge (SAE J1127, J1128): numbered like AWG but holding less copper.</summary>
    VehicleGauge,

    /// <summary>Aircraft wire size (FAA AC 43.13-1B Table 11-9): numbered like AWG, area and largest resistance of its own.</summary>
    AircraftWire,

    /// <summary>Nominal square millimetres of whichever standard: what a designation such as <c>2.5 mm²</c> says by itself.</summary>
    Metric,
}

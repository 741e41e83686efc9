namespace LowVoltage.Calc.Ampacity;

/// <summary>Where a wire runs, as the rating tables ask for it. Temperatures in °C, altitude in m.</summary>
internal readonly struct TablePlace(
    double ambientCelsius, double insulationCelsius, int loadedConductors, double loadingShare = 1, double altitudeMeters = 0, bool engineSpace = false, double circuitVolts = 12)
{
    internal double AmbientCelsius => ambientCelsius;

    internal double InsulationCelsius => insulationCelsius;

    /// <summary>Loaded conductors together, those of the circuit itself included: 1 for a wire alone, 2 for out and back.</summary>
    internal int LoadedConductors => loadedConductors;

    /// <summary>Circuits together: two conductors each, an odd one counts as a circuit.</summary>
    internal int Circuits => (loadedConductors + 1) / 2;

    /// <summary>Share of the bundle's joint capacity that is in use, 0 to 1.</summary>
    internal double LoadingShare => loadingShare;

    internal double AltitudeMeters => altitudeMeters;

    internal bool EngineSpace => engineSpace;

    internal double CircuitVolts => circuitVolts;
}

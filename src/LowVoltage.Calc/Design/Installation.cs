using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Design;

/// <summary>Where a wire runs, on doubles: what an ampacity basis needs to know. Temperatures in °C, altitude in m.</summary>
internal readonly struct Installation
{
    internal Installation(CircuitRequirements requirements)
    {
        AmbientCelsius = requirements.AmbientCelsius;
        AltitudeMeters = requirements.AltitudeMeters;
        LoadedConductors = requirements.LoadedConductors;
        LoadingShare = requirements.BundleLoading;
        EngineSpace = requirements.EngineSpace;
        Insulation = requirements.Insulation;
        WallMillimeters = requirements.WallMillimeters;
        CircuitVolts = requirements.Source.Numbers.NominalVolts;
    }

    private Installation(in Installation other, double ambientCelsius, int loadedConductors)
    {
        this = other;
        AmbientCelsius = ambientCelsius;
        LoadedConductors = loadedConductors;
    }

    internal double AmbientCelsius { get; }

    internal double AltitudeMeters { get; }

    internal int LoadedConductors { get; }

    internal double LoadingShare { get; }

    internal bool EngineSpace { get; }

    internal InsulationMaterial Insulation { get; }

    internal double? WallMillimeters { get; }

    internal double CircuitVolts { get; }

    /// <summary>Circuits in the bundle: two conductors each, an odd one counts as a circuit.</summary>
    internal int Circuits => (LoadedConductors + 1) / 2;

    internal Installation With(double ambientCelsius, int loadedConductors) => new(this, ambientCelsius, loadedConductors);
}

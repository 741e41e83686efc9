using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>Where a wire runs, on doubles: what an ampacity basis needs to know. Temperatures in °C, altitude in m.</summary>
internal readonly struct Installation
{
    internal Installation(CircuitRequirements requirements)
        : this(requirements, requirements.Return.IsOfWire ? 2 : 1)
    {
    }

    /// <summary>For wiring that exists: wires laid in parallel are loaded conductors of the bundle too.</summary>
    internal Installation(CircuitRequirements requirements, CircuitPath path)
        : this(requirements, Most(path.FeedArray) + Most(path.BackArray))
    {
    }

    private Installation(CircuitRequirements requirements, int ownConductors)
    {
        OwnConductors = ownConductors;
        AmbientCelsius = requirements.AmbientCelsius;
        AltitudeMeters = requirements.AltitudeMeters;
        LoadedConductors = Math.Max(requirements.LoadedConductors, ownConductors);
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
        LoadedConductors = Math.Max(loadedConductors, other.OwnConductors);
    }

    internal double AmbientCelsius { get; }

    internal double AltitudeMeters { get; }

    /// <summary>Never less than the circuit's own.</summary>
    internal int LoadedConductors { get; }

    /// <summary>Conductors of this circuit itself: out and back, and those in parallel.</summary>
    internal int OwnConductors { get; }

    internal double LoadingShare { get; }

    internal bool EngineSpace { get; }

    internal InsulationMaterial Insulation { get; }

    internal double? WallMillimeters { get; }

    internal double CircuitVolts { get; }

    /// <summary>Circuits in the bundle: two conductors each, an odd one counts as a circuit.</summary>
    internal int Circuits => (LoadedConductors + 1) / 2;

    /// <summary>A conductor in its insulation, with the usual wall where none is stated.</summary>
    internal Wire WireOf(Conductor conductor) => Wire.Create(conductor, Insulation, Length.FromMillimeters(WallOf(conductor)));

    internal double WallOf(Conductor conductor) => WallMillimeters ?? InsulationWall.UsualMillimeters(conductor.AreaSquareMillimeters);

    internal Surroundings StillAir() => new()
    {
        Ambient = Temperature.FromDegreesCelsius(AmbientCelsius),
        Altitude = Length.FromMeters(AltitudeMeters),
        Emissivity = Insulation.Emissivity,
    };

    internal Installation With(double ambientCelsius, int loadedConductors) => new(this, ambientCelsius, loadedConductors);

    private static int Most(Segment[] segments)
    {
        int most = 0;
        foreach (Segment segment in segments)
        {
            most = Math.Max(most, segment.Parallel);
        }

        return most;
    }
}

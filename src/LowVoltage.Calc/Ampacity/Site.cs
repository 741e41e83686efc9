using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Where a stretch of a circuit runs and in which insulation, with the circuit's own conductors counted: what a rating needs to know. °C, m.</summary>
internal sealed class Site
{
    private Surroundings? still;
    private PreparedRating? rating;

    /// <summary>A place for a circuit.</summary>
    /// <param name="place">Air, bundle, altitude.</param>
    /// <param name="insulation">The insulation of the wire.</param>
    /// <param name="wallMillimeters">Its wall; null for the usual one.</param>
    /// <param name="ownConductors">Conductors of the circuit itself: out and back, and those in parallel.</param>
    /// <param name="circuitVolts">Nominal voltage of the circuit.</param>
    internal Site(Place place, InsulationMaterial insulation, double? wallMillimeters, int ownConductors, double circuitVolts)
    {
        Place = place;
        Insulation = insulation;
        WallMillimeters = wallMillimeters;
        OwnConductors = ownConductors;
        CircuitVolts = circuitVolts;
        LoadedConductors = Math.Max(place.LoadedConductors ?? ownConductors, ownConductors);
    }

    internal Place Place { get; }

    internal InsulationMaterial Insulation { get; }

    internal double? WallMillimeters { get; }

    internal int OwnConductors { get; }

    internal double CircuitVolts { get; }

    /// <summary>Never less than the circuit's own.</summary>
    internal int LoadedConductors { get; }

    internal double AmbientCelsius => Place.AmbientCelsius;

    internal double AltitudeMeters => Place.AltitudeMeters;

    internal double LoadingShare => Place.BundleLoading;

    internal bool EngineSpace => Place.EngineSpace;

    /// <summary>Circuits in the bundle: two conductors each, an odd one counts as a circuit.</summary>
    internal int Circuits => (LoadedConductors + 1) / 2;

    /// <summary>What the rules rate a wire for here; set once, when the circuit is laid out.</summary>
    internal PreparedRating Rating => rating ?? throw new InvalidOperationException("The site is not rated yet.");

    internal Site RatedBy(AmpacityBasis basis)
    {
        rating = basis.Prepare(this);
        return this;
    }

    /// <summary>A conductor in its insulation, with the usual wall where none is stated.</summary>
    internal Wire WireOf(Conductor conductor) => Wire.Create(conductor, Insulation, Length.FromMillimeters(WallOf(conductor)));

    internal double WallOf(Conductor conductor) => WallMillimeters ?? InsulationWall.UsualMillimeters(conductor.AreaSquareMillimeters);

    internal Surroundings StillAir() => still ??= StillAirAt(AmbientCelsius);

    internal Surroundings StillAirAt(double celsius) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(celsius),
        Altitude = Length.FromMeters(AltitudeMeters),
        Emissivity = Insulation.Emissivity,
    };
}

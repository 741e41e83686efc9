using System.Text.Json;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A place in a document.</summary>
internal static class PlacePart
{
    private static readonly Member<double> Ambient = Member.Needed<double>("ambient_C", Ranges.Ambient, "Air around the wire where it is hottest, °C.");
    private static readonly Member<int> Loaded = Member.Optional<int>("loaded_conductors", new CountForm(1, 1000), "Current-carrying conductors together, the circuit's own included; left out: the circuit's own alone.");
    private static readonly Member<double> Bundle = Member.Optional<double>("bundle_loading", new NumberForm(0.01, 1, ""), "Share of the bundle's capacity in use; left out: 1.");
    private static readonly Member<double> Altitude = Member.Optional<double>("altitude_m", new NumberForm(0, 20_000, "m"), "Altitude above sea level, m; left out: 0.");
    private static readonly Member<bool> Engine = Member.Optional<bool>("engine_space", FlagForm.Any, "Whether it is an engine space; left out: false.");

    internal static ObjectForm Form { get; } = new("place", "Where a stretch of wire runs.", Make, [Ambient, Loaded, Bundle, Altitude, Engine]);

    internal static void Write(Utf8JsonWriter json, Place place)
    {
        json.WriteStartObject();
        json.Put(Ambient, place.AmbientCelsius);
        json.PutIf(Loaded, place.LoadedConductors);
        json.PutUnless(Bundle, place.BundleLoading, 1);
        json.PutUnless(Altitude, place.AltitudeMeters, 0);
        json.PutIf(Engine, place.EngineSpace);
        json.WriteEndObject();
    }

    private static Place Make(Values at) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(at.Get(Ambient)),
        LoadedConductors = at.Maybe(Loaded),
        BundleLoading = at.Or(Bundle, 1),
        Altitude = Length.FromMeters(at.Or(Altitude, 0)),
        EngineSpace = at.Or(Engine, false),
    };
}

using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A stretch of wire in a document.</summary>
internal static class SegmentPart
{
    private static readonly Member<Conductor> Metal = Member.Needed<Conductor>("conductor", ConductorPart.Form, "The conductor.");
    private static readonly Member<double> Meters = Member.Needed<double>("length_m", Ranges.Meters, "Length of this way alone, m.");
    private static readonly Member<int> Parallel = Member.Optional<int>("parallel", new CountForm(1, 1000), "Equal wires side by side; left out: 1.");
    private static readonly Member<InsulationMaterial> Insulation = Member.Optional<InsulationMaterial>("insulation", InsulationPart.Form, "Its insulation; left out: the circuit's.");
    private static readonly Member<double> Wall = Member.Optional<double>("wall_mm", new NumberForm(0, 1e10, "mm"), "Wall of its insulation, mm; left out: the usual one for the size.");
    private static readonly Member<Place> Place = Member.Optional<Place>("place", PlacePart.Form, "Where it runs, where that differs from the rest of the circuit.");
    private static readonly Member<ConductorTemperature> Warmth = Member.Optional<ConductorTemperature>("temperature", TemperaturePart.Form, "How warm it is, where that is stated.");

    internal static ObjectForm Form { get; } = new(
        "segment",
        "A length of one conductor, or of several equal ones side by side, on the way out or on the way back.",
        Make,
        [Metal, Meters, Parallel, Insulation, Wall, Place, Warmth],
        MemberRule.Needs(Wall, Insulation));

    internal static ListForm<Segment> List { get; } = new(Form, 1);

    internal static void Write(Utf8JsonWriter json, Segment segment)
    {
        json.WriteStartObject();
        json.Put(Metal, segment.Conductor, ConductorPart.Write);
        json.Put(Meters, segment.Meters);
        json.PutUnless(Parallel, segment.Parallel, 1);
        if (segment.Wire is { } wire)
        {
            json.Put(Insulation, wire.Insulation, InsulationPart.Write);
            json.PutUnless(Wall, wire.WallMillimeters, InsulationWall.UsualMillimeters(wire.Conductor.AreaSquareMillimeters));
        }

        if (segment.Place is { } place)
        {
            json.Put(Place, place, PlacePart.Write);
        }

        if (segment.Temperature is { } warmth)
        {
            json.Put(Warmth, warmth, TemperaturePart.Write);
        }

        json.WriteEndObject();
    }

    private static Segment Make(Values at)
    {
        Length length = Length.FromMeters(at.Get(Meters));
        Segment segment = at.OrNull(Insulation) is { } insulation
            ? Segment.Create(WireOf(at, insulation), length, at.Or(Parallel, 1))
            : Segment.Create(at.Get(Metal), length, at.Or(Parallel, 1));
        segment = at.OrNull(Place) is { } place ? segment.WithPlace(place) : segment;
        return at.OrNull(Warmth) is { } warmth ? segment.WithTemperature(warmth) : segment;
    }

    private static Wire WireOf(Values at, InsulationMaterial insulation) =>
        at.Maybe(Wall) is { } wall ? Wire.OfMillimeters(at.Get(Metal), insulation, wall) : Wire.Create(at.Get(Metal), insulation);
}

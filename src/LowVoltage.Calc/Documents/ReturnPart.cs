using System.Text.Json;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A way back in a document.</summary>
internal static class ReturnPart
{
    private const string Wire = "wire";
    private const string Segments = "segments";
    private const string Chassis = "chassis";
    private const string SharedSegments = "shared segments";
    private const string SharedResistance = "shared resistance";

    private static readonly Member<double> Meters = Member.Needed<double>("length_m", Ranges.Meters, "Length of the way back alone, m.");
    private static readonly Member<double> Ohms = Member.Needed<double>("resistance_ohm", Ranges.OhmsOrZero, "Its resistance, Ω.");
    private static readonly Member<double> Others = Member.Needed<double>("other_current_A", Ranges.AmperesOrZero, "Current of the other circuits in it, A.");
    private static readonly Member<Segment[]> Stretches = Member.Needed<Segment[]>("segments", SegmentPart.List, "The stretches of wire.");

    internal static KindForm Form { get; } = new(
        "return",
        "The way back from the load to the source.",
        (Wire, new("return_wire", "A wire of the same conductor as the feed.", at => ReturnPath.Wire(Length.FromMeters(at.Get(Meters))), [KindForm.Of(Wire), Meters])),
        (Segments, new("return_segments", "Stretches of wire of its own.", at => ReturnPath.Wire(at.Get(Stretches)), [KindForm.Of(Segments), Stretches])),
        (Chassis, new("return_chassis", "A chassis, hull or frame between two ground points.", at => ReturnPath.Chassis(ElectricResistance.FromOhms(at.Get(Ohms))), [KindForm.Of(Chassis), Ohms])),
        (SharedSegments, new("return_shared_segments", "Stretches of wire that other circuits use too.", at => ReturnPath.Shared(at.Get(Stretches), Other(at)), [KindForm.Of(SharedSegments), Stretches, Others])),
        (SharedResistance, new("return_shared_resistance", "A resistance that other circuits use too.", at => ReturnPath.Shared(ElectricResistance.FromOhms(at.Get(Ohms)), Other(at)), [KindForm.Of(SharedResistance), Ohms, Others])));

    internal static void Write(Utf8JsonWriter json, ReturnPath path)
    {
        json.WriteStartObject();
        switch (path.Kind)
        {
            case ReturnKind.SameConductor:
                json.PutKind(Wire);
                json.Put(Meters, path.Meters);
                break;
            case ReturnKind.Segments:
                json.PutKind(Segments);
                json.PutAll(Stretches, path.Segments, SegmentPart.Write);
                break;
            case ReturnKind.Chassis:
                json.PutKind(Chassis);
                json.Put(Ohms, path.Ohms);
                break;
            case ReturnKind.SharedSegments:
                json.PutKind(SharedSegments);
                json.PutAll(Stretches, path.Segments, SegmentPart.Write);
                json.Put(Others, path.OtherAmperes);
                break;
            default:
                json.PutKind(SharedResistance);
                json.Put(Ohms, path.Ohms);
                json.Put(Others, path.OtherAmperes);
                break;
        }

        json.WriteEndObject();
    }

    private static ElectricCurrent Other(Values at) => ElectricCurrent.FromAmperes(at.Get(Others));
}

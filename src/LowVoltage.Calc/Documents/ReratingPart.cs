using System.Text.Json;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>How fuses carry less in hotter air, in a document.</summary>
internal static class ReratingPart
{
    private static readonly WordForm<AmbientRerating> Words = new([.. new[] { AmbientRerating.UlSmallFuse, AmbientRerating.IndustrialGg, AmbientRerating.SpaceHardware }.Select(own => (own.Name, own))]);

    private static readonly Member<double[]> Ambients = Member.Needed<double[]>("ambients_C", new ListForm<double>(new NumberForm(-273, 1e4, "°C"), 2), "Ambient temperatures, °C, rising.");
    private static readonly Member<double[]> Factors = Member.Needed<double[]>("factors", new ListForm<double>(new NumberForm(1e-12, 1.5, ""), 2), "Factor on the rating at each, never rising.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Any, "What the points are for.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where they come from.");

    internal static EitherForm Form { get; } = new(
        "rerating",
        "How a fuse's rating falls with the temperature around it.",
        Words,
        new ObjectForm("rerating_stated", "Points, straight between them.", at => AmbientRerating.Create(at.Get(Name), at.Get(Source), [.. at.Get(Ambients).Select(celsius => Temperature.FromDegreesCelsius(celsius))], at.Get(Factors)), [Ambients, Factors, Name, Source]));

    internal static void Write(Utf8JsonWriter json, AmbientRerating rerating)
    {
        if (Words.WordOf(rerating) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.PutAll(Ambients, rerating.CelsiusPoints);
        json.PutAll(Factors, rerating.Factors);
        json.Put(Name, rerating.Name);
        json.Put(Source, rerating.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }
}

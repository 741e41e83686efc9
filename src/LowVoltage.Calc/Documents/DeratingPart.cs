using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A caller's derating factors in a document: for warmer air, and for more wires together.</summary>
internal static class DeratingPart
{
    private const string Circuits = "circuits";
    private const string Conductors = "loaded conductors";

    private static readonly WordForm<string> Counted = new((Conductors, Conductors), (Circuits, Circuits));

    private static readonly Member<double[]> Ambients = Member.Needed<double[]>("ambients_C", new ListForm<double>(new NumberForm(-60, 400, "°C"), 1), "Air temperatures, °C, rising; the first is that of the table.");
    private static readonly Member<string> Counts = Member.Needed<string>("counts", Counted, "What the numbers count: a circuit is two loaded conductors.");
    private static readonly Member<int[]> Together = Member.Needed<int[]>("together", new ListForm<int>(new CountForm(1, 1000), 1), "Numbers together, rising; the first is that of the table.");
    private static readonly Member<double[]> Factors = Member.Needed<double[]>("factors", new ListForm<double>(new NumberForm(1e-12, 1, ""), 1), "Factor on the table's current at each; the first is 1, none rises.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What they are called.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where they come from.");

    internal static ObjectForm Ambient { get; } = new(
        "ambient_derating",
        "Factors of the caller's for warmer air; between two rows the warmer one counts.",
        at => AmbientDerating.Create(at.Get(Name), at.Get(Source), [.. at.Get(Ambients).Select(celsius => Temperature.FromDegreesCelsius(celsius))], at.Get(Factors)),
        [Ambients, Factors, Name, Source]);

    internal static ObjectForm Grouping { get; } = new("grouping_derating", "Factors of the caller's for more wires together; between two rows the larger one counts.", Group, [Counts, Together, Factors, Name, Source]);

    internal static void Write(Utf8JsonWriter json, AmbientDerating own)
    {
        json.WriteStartObject();
        json.PutAll(Ambients, own.Celsius.ToArray());
        json.PutAll(Factors, own.Factors.ToArray());
        json.Put(Name, own.Name);
        json.Put(Source, own.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter json, GroupingDerating own)
    {
        json.WriteStartObject();
        json.Put(Counts, own.CountsCircuits ? Circuits : Conductors);
        json.PutAll(Together, own.Counts.ToArray().Select(count => (int)count), (to, count) => to.WriteNumberValue(count));
        json.PutAll(Factors, own.Factors.ToArray());
        json.Put(Name, own.Name);
        json.Put(Source, own.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static GroupingDerating Group(Values at) => at.Get(Counts) == Circuits
        ? GroupingDerating.ByCircuits(at.Get(Name), at.Get(Source), at.Get(Together), at.Get(Factors))
        : GroupingDerating.ByConductors(at.Get(Name), at.Get(Source), at.Get(Together), at.Get(Factors));
}

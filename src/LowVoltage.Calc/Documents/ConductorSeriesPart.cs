using System.Text.Json;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>A series of conductors in a document: the name of a carried one, some of its sizes, or the conductors.</summary>
internal static class ConductorSeriesPart
{
    private static readonly ConductorSeries[] Carried =
    [
        ConductorSeries.RoadVehicle, ConductorSeries.Iec60228Class5, ConductorSeries.Iec60228Class2, ConductorSeries.Iec60228Class5Tinned, ConductorSeries.AwgStranded, ConductorSeries.AwgSolid,
        ConductorSeries.AwgTrade, ConductorSeries.AwgTinned, ConductorSeries.KcmilStranded, ConductorSeries.AwgAndKcmil, ConductorSeries.VehicleGauge, ConductorSeries.AircraftWire, DesignRules.SmallCraft.Conductors,
    ];

    private static readonly WordForm<ConductorSeries> Words = new([.. Carried.Select(series => (series.Name, series))]);

    private static readonly Member<ConductorSeries> Of = Member.Needed<ConductorSeries>("of", new LaterForm(() => Form!), "The series that these are sizes of.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What it is called.");
    private static readonly Member<string> AnyName = Member.Needed<string>("name", TextForm.Any, "What the selection is called.");
    private static readonly Member<ConductorSize[]> Sizes = Member.Needed<ConductorSize[]>("sizes", new ListForm<ConductorSize>(SizeForm.Any, 1), "The sizes to keep.");
    private static readonly Member<Conductor[]> Conductors = Member.Needed<Conductor[]>("conductors", new ListForm<Conductor>(ConductorPart.Form, 1), "The conductors, smallest first.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where they come from.");

    internal static EitherForm Form { get; } = new(
        "conductor_series",
        "The wires to choose from: the name of a series that the library carries, some of its sizes, or the conductors.",
        Words,
        new ObjectForm("conductor_series_some", "Some sizes of a series.", at => at.Get(Of).Only(at.Get(AnyName), at.Get(Sizes)), [Of, AnyName, Sizes]),
        new ObjectForm("conductor_series_stated", "A series of the caller's.", at => ConductorSeries.Create(at.Get(Name), at.Get(Conductors), at.Get(Source)), [Conductors, Name, Source]));

    /// <summary>The first carried series that holds a conductor; null where none does.</summary>
    internal static string? CarriedWith(Conductor conductor) => conductor.Size is { } size
        ? Array.Find(Carried, series => series.TryGet(size, out Conductor? own) && own.Equals(conductor))?.Name
        : null;

    internal static void Write(Utf8JsonWriter json, ConductorSeries series)
    {
        if (Words.WordOf(series) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        if (Array.Find(Carried, own => own.Reference.Equals(series.Reference) && series.Conductors.All(conductor => own.Conductors.Contains(conductor))) is { } basis)
        {
            json.WriteString(Of.Encoded, basis.Name);
            json.Put(Name, series.Name);
            json.PutAll(Sizes, series.Conductors.Select(conductor => conductor.Size!.Value), (to, size) => to.WriteStringValue(size.Designation));
        }
        else
        {
            json.PutAll(Conductors, series.Conductors, ConductorPart.Write);
            json.Put(Name, series.Name);
            json.Put(Source, series.Reference, ReferencePart.Write);
        }

        json.WriteEndObject();
    }
}

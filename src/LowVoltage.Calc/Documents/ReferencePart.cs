using System.Text.Json;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>A published source in a document.</summary>
internal static class ReferencePart
{
    private static readonly WordForm<ReferenceKind> Kinds = new(
        ("law", ReferenceKind.Law), ("standard", ReferenceKind.Standard), ("handbook", ReferenceKind.Handbook), ("paper", ReferenceKind.Paper),
        ("common practice", ReferenceKind.CommonPractice), ("from memory", ReferenceKind.FromMemory), ("from memory, compared", ReferenceKind.FromMemoryCompared));

    private static readonly Member<string> Title = Member.Needed<string>("title", TextForm.Any, "The document, or the practice in a few words.");
    private static readonly Member<ReferenceKind> Kind = Member.Needed<ReferenceKind>("kind", Kinds, "What sort of authority it is.");
    private static readonly Member<string> Edition = Member.Optional<string>("edition", TextForm.Any, "Edition or year.");
    private static readonly Member<string> Locator = Member.Optional<string>("locator", TextForm.Any, "A clause, table, page or equation.");
    private static readonly Member<string> Note = Member.Optional<string>("note", TextForm.Any, "What a careful user must know.");

    internal static ObjectForm Form { get; } = new(
        "reference",
        "A published source, or a practice that none states.",
        at => new Reference { Title = at.Get(Title), Kind = at.Get(Kind), Edition = at.Or(Edition, ""), Locator = at.Or(Locator, ""), Note = at.Or(Note, "") },
        [Title, Kind, Edition, Locator, Note]);

    internal static Member<Reference> Optional(string name, string says) => Member.Optional<Reference>(name, Form, says);

    internal static Member<Reference> Needed(string name, string says) => Member.Needed<Reference>(name, Form, says);

    internal static void Write(Utf8JsonWriter json, Reference reference)
    {
        json.WriteStartObject();
        json.Put(Title, reference.Title);
        json.WriteString(Kind.Encoded, Kinds.WordOf(reference.Kind));
        json.PutIf(Edition, reference.Edition);
        json.PutIf(Locator, reference.Locator);
        json.PutIf(Note, reference.Note);
        json.WriteEndObject();
    }
}

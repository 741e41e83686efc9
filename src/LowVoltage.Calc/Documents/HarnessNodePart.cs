using System.Text.Json;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A node of a harness in a document.</summary>
internal static class HarnessNodePart
{
    private static readonly WordForm<NodeKind> Kinds = new(("terminal", NodeKind.Terminal), ("splice", NodeKind.Splice), ("busbar", NodeKind.Busbar), ("ground", NodeKind.Ground));

    private static readonly Member<NodeKind> Kind = Member.Optional<NodeKind>("kind", Kinds, "What it is; left out: a terminal.");

    internal static Member<string> Id { get; } = Member.Needed<string>("id", TextForm.Name, "Its name, of its own among the nodes.");

    internal static ObjectForm Form { get; } = new("node", "A point where branches, sources or loads meet.", at => HarnessNode.Create(at.Get(Id), at.Or(Kind, NodeKind.Terminal)), [Id, Kind]);

    internal static void Write(Utf8JsonWriter json, HarnessNode node)
    {
        json.WriteStartObject();
        json.Put(Id, node.Id);
        if (node.Kind != NodeKind.Terminal)
        {
            json.WriteString(Kind.Encoded, Kinds.WordOf(node.Kind));
        }

        json.WriteEndObject();
    }
}

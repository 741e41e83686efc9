using System.Text.Json.Nodes;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>A document spoilt in every place: a member taken away, one too many, another type, a number beyond its range, a word that is none, a list cut or lengthened.</summary>
internal static class Mutations
{
    private static readonly string[] Replacements = ["null", "true", "\"\"", "\"no such word\"", "-1e300", "1e300", "-1", "0", "0.5", "1", "1000.5", "100001", "[]", "{}"];

    /// <summary>The spoilt documents; with the name of a member, spoilt in that member alone.</summary>
    internal static IEnumerable<string> Of(string json, string member)
    {
        JsonNode root = JsonNode.Parse(json)!;
        JsonNode part = member.Length == 0 ? root : root[member]!;
        foreach (string _ in At(part, root))
        {
            yield return _;
        }
    }

    private static IEnumerable<string> At(JsonNode node, JsonNode root)
    {
        if (node is JsonObject item)
        {
            item["not_known"] = 1;
            yield return root.ToJsonString();
            item.Remove("not_known");
            foreach ((string name, JsonNode? value) in item.ToArray())
            {
                string kept = value?.ToJsonString() ?? "null";
                item.Remove(name);
                yield return root.ToJsonString();
                foreach (string other in Replacements)
                {
                    item[name] = JsonNode.Parse(other);
                    yield return root.ToJsonString();
                }

                item[name] = JsonNode.Parse(kept);
                foreach (string deeper in item[name] is { } inner ? At(inner, root) : [])
                {
                    yield return deeper;
                }
            }
        }
        else if (node is JsonArray list)
        {
            list.Add(null);
            yield return root.ToJsonString();
            list.RemoveAt(list.Count - 1);
            for (int i = 0; i < list.Count; i++)
            {
                string kept = list[i]?.ToJsonString() ?? "null";
                list.RemoveAt(i);
                yield return root.ToJsonString();
                list.Insert(i, null);
                foreach (string other in Replacements)
                {
                    list[i] = JsonNode.Parse(other);
                    yield return root.ToJsonString();
                }

                list[i] = JsonNode.Parse(kept);
                foreach (string deeper in i < 3 && list[i] is { } inner ? At(inner, root) : [])
                {
                    yield return deeper;
                }
            }
        }
    }
}

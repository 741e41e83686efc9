using System.Text.Json.Nodes;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Which members of which objects the forms know, and which of them a document has.</summary>
internal static class Coverage
{
    /// <summary>All of them: <c>load_lamp.rated_V</c>.</summary>
    internal static IEnumerable<string> Members(Form root)
    {
        HashSet<Form> seen = [];
        Stack<Form> open = new([root]);
        while (open.TryPop(out Form? form))
        {
            if (seen.Add(form))
            {
                foreach (Form inner in form.Inner)
                {
                    open.Push(inner);
                }
            }
        }

        return seen.OfType<ObjectForm>().SelectMany(form => form.Members.Select(member => $"{form.Name}.{member.Name}"));
    }

    internal static void Walk(Form form, JsonNode? node, HashSet<string> seen)
    {
        switch (form)
        {
            case ObjectForm own when node is JsonObject item:
                foreach (Member member in own.Members.Where(member => item.ContainsKey(member.Name)))
                {
                    seen.Add($"{own.Name}.{member.Name}");
                    Walk(member.Form, item[member.Name], seen);
                }

                break;
            case KindForm own when node is JsonObject item:
                Walk(own.FormOf((string)item[KindForm.Kind]!), node, seen);
                break;
            case EitherForm own when node is JsonObject item:
                Walk(own.Forms.First(inner => item.ContainsKey(inner.Members[0].Name) || own.Forms.Count == 1), node, seen);
                break;
            case LaterForm own:
                Walk(own.Inner.Single(), node, seen);
                break;
            default:
                if (node is JsonArray list)
                {
                    foreach (JsonNode? entry in list)
                    {
                        Walk(form.Inner.Single(), entry, seen);
                    }
                }

                break;
        }
    }
}

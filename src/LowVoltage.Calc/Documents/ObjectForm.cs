namespace LowVoltage.Calc.Documents;

/// <summary>An object: its members, what must be there, and what is made of it: null where that is refused.</summary>
internal sealed class ObjectForm(string name, string says, Func<Values, object?> make, Member[] members, params MemberRule[] rules) : NamedForm(name, says)
{
    internal Member[] Members => members;

    internal override IEnumerable<Form> Inner => members.Select(member => member.Form);

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.Object)
        {
            return Refuse(node, reading, $"must be an object; it was {node.Said}.");
        }

        object?[] values = new object?[members.Length];
        bool whole = true;
        foreach (NodeMember given in node.Members)
        {
            int index = IndexOf(given.Name);
            if (index < 0)
            {
                reading.Refuse(given.Offset, given.Value.Path, $"\"{DocumentNode.Short(given.Name)}\" is not known here; known are {Known()}.");
            }
            else if (values[index] is not null)
            {
                reading.Judge(given.Offset, given.Value.Path, $"\"{given.Name}\" is given twice.");
            }
            else
            {
                values[index] = members[index].Form.Read(given.Value, reading);
                whole &= !ReferenceEquals(values[index], Failed);
            }
        }

        for (int i = 0; i < members.Length; i++)
        {
            if (values[i] is null && members[i].IsNeeded)
            {
                reading.Refuse(node, $"\"{members[i].Name}\" is missing.");
                whole = false;
            }
        }

        int before = reading.Count;
        foreach (MemberRule rule in rules)
        {
            rule.Check(node, reading);
        }

        return whole && before == reading.Count ? Made(new Values(members, values, node, reading)) : Failed;
    }

    internal override void Define(SchemaWriter schema)
    {
        schema.Text("description", Says);
        schema.Text("type", "object");
        schema.Members(members);
        if (members.Any(member => member.IsNeeded))
        {
            schema.Texts("required", members.Where(member => member.IsNeeded).Select(member => member.Name));
        }

        schema.Flag("additionalProperties", false);
        if (Array.Exists(rules, rule => rule.IsOfShape))
        {
            schema.All(rules.Where(rule => rule.IsOfShape));
        }
    }

    // What the members say together is judged by the library itself, in its own words.
    private object Made(Values values)
    {
        try
        {
            return make(values) ?? Failed;
        }
        catch (Exception e) when (e is ArgumentException or FormatException or InvalidOperationException)
        {
            values.Reading.Judge(PlaceOf((e as ArgumentException)?.ParamName, values.Node), Sentence(e.Message));
            return Failed;
        }
    }

    // The member that the library's parameter is named after, else the object.
    private static DocumentNode PlaceOf(string? parameter, DocumentNode node)
    {
        DocumentNode place = node;
        int longest = int.MaxValue;
        foreach (NodeMember member in node.Members)
        {
            // The unit stands behind the name: locked_rotor_A is lockedRotor.
            string bare = member.Name.Replace("_", "", StringComparison.Ordinal);
            if (parameter is not null && bare.StartsWith(parameter, StringComparison.OrdinalIgnoreCase) && bare.Length < longest)
            {
                place = member.Value;
                longest = bare.Length;
            }
        }

        return place;
    }

    private static string Sentence(string message)
    {
        int end = message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        return end < 0 ? message : message[..end];
    }

    private string Known() => string.Join(", ", members.Select(member => member.Name));

    private int IndexOf(string member)
    {
        for (int i = 0; i < members.Length; i++)
        {
            if (members[i].Name == member)
            {
                return i;
            }
        }

        return -1;
    }
}

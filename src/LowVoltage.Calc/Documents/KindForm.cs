namespace LowVoltage.Calc.Documents;

/// <summary>An object whose member <c>kind</c> says which one it is.</summary>
internal sealed class KindForm(string name, string says, params (string Word, ObjectForm Form)[] kinds) : NamedForm(name, says)
{
    internal const string Kind = "kind";

    internal override IEnumerable<Form> Inner => kinds.Select(kind => kind.Form);

    /// <summary>The form of a kind.</summary>
    internal ObjectForm FormOf(string word) => Array.Find(kinds, kind => kind.Word == word).Form;

    /// <summary>The member that says which one it is.</summary>
    internal static Member<string> Of(string word) => Member.Needed<string>(Kind, new WordForm<string>((word, word)), "Which kind it is.");

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.Object)
        {
            return Refuse(node, reading, $"must be an object with \"{Kind}\"; it was {node.Said}.");
        }

        if (node.Find(Kind) is not { } given)
        {
            return Refuse(node, reading, $"\"{Kind}\" is missing; it is one of {Words()}.");
        }

        foreach ((string word, ObjectForm form) in kinds)
        {
            if (given.Kind == ValueKind.Text && word == given.Text)
            {
                return form.Read(node, reading);
            }
        }

        return Refuse(given, reading, $"must be one of {Words()}; it was {given.Said}.");
    }

    internal override void Define(SchemaWriter schema)
    {
        schema.Text("description", Says);
        schema.OneOf(kinds.Select(kind => (Form)kind.Form));
    }

    private string Words() => string.Join(", ", kinds.Select(kind => $"\"{kind.Word}\""));
}

/// <summary>A word for something that the library carries, or an object that says it; objects are told apart by their first member.</summary>
internal sealed class EitherForm(string name, string says, Form? word, params ObjectForm[] objects) : NamedForm(name, says)
{
    internal IReadOnlyList<ObjectForm> Forms => objects;

    internal override IEnumerable<Form> Inner => objects;

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind == ValueKind.Text && word is not null)
        {
            return word.Read(node, reading);
        }

        if (node.Kind != ValueKind.Object)
        {
            return Refuse(node, reading, $"must be {(word is null ? "" : "a word or ")}an object; it was {node.Said}.");
        }

        foreach (ObjectForm form in objects)
        {
            if (node.Find(form.Members[0].Name) is not null)
            {
                return form.Read(node, reading);
            }
        }

        return objects.Length == 1
            ? objects[0].Read(node, reading)
            : Refuse(node, reading, $"must have {string.Join(" or ", objects.Select(form => $"\"{form.Members[0].Name}\""))}.");
    }

    internal override void Define(SchemaWriter schema)
    {
        schema.Text("description", Says);
        schema.OneOf(word is null ? objects : [word, .. objects]);
    }
}

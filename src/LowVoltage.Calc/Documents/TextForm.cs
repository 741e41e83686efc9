namespace LowVoltage.Calc.Documents;

/// <summary>A text, any or not empty.</summary>
internal sealed class TextForm : Form
{
    private readonly bool needed;

    private TextForm(bool needed) => this.needed = needed;

    internal static TextForm Any { get; } = new(false);

    /// <summary>A name: something but blanks.</summary>
    internal static TextForm Name { get; } = new(true);

    internal override object Read(DocumentNode node, Reading reading) =>
        node.Kind != ValueKind.Text ? Refuse(node, reading, $"must be a text; it was {node.Said}.")
        : needed && string.IsNullOrWhiteSpace(node.Text) ? Refuse(node, reading, "must not be empty.")
        : node.Text;

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "string");
        if (needed)
        {
            schema.Text("pattern", "\\S");
        }
    }
}

/// <summary>True or false.</summary>
internal sealed class FlagForm : Form
{
    internal static FlagForm Any { get; } = new();

    internal override object Read(DocumentNode node, Reading reading) =>
        node.Kind == ValueKind.Flag ? node.Flag : Refuse(node, reading, $"must be true or false; it was {node.Said}.");

    internal override void Describe(SchemaWriter schema) => schema.Text("type", "boolean");
}

/// <summary>One of some words, each of which stands for something.</summary>
internal sealed class WordForm<T>(params (string Word, T Meaning)[] words) : Form
    where T : notnull
{
    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind == ValueKind.Text)
        {
            foreach ((string word, T meaning) in words)
            {
                if (word == node.Text)
                {
                    return meaning;
                }
            }
        }

        string accepted = words.Length == 1 ? $"\"{words[0].Word}\"" : "one of " + string.Join(", ", words.Select(word => $"\"{word.Word}\""));
        return Refuse(node, reading, $"must be {accepted}; it was {node.Said}.");
    }

    internal override void Describe(SchemaWriter schema) => schema.Texts("enum", words.Select(word => word.Word));

    /// <summary>The word for something; null where it has none.</summary>
    internal string? WordOf(T meaning)
    {
        foreach ((string word, T own) in words)
        {
            if (own.Equals(meaning))
            {
                return word;
            }
        }

        return null;
    }
}

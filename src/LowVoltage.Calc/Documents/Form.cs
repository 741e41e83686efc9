namespace LowVoltage.Calc.Documents;

/// <summary>What a value of a document may be. One description serves two masters: it reads a value, or refuses it, and it writes the schema that says the same.</summary>
internal abstract class Form
{
    /// <summary>What a reading answers that was refused; the mistakes are in the reading.</summary>
    internal static readonly object Failed = new();

    /// <summary>The value; <see cref="Failed"/> where it is refused.</summary>
    internal abstract object Read(DocumentNode node, Reading reading);

    /// <summary>The forms inside this one.</summary>
    internal virtual IEnumerable<Form> Inner => [];

    /// <summary>Writes what stands between the braces of the value's schema.</summary>
    internal abstract void Describe(SchemaWriter schema);

    private protected static object Refuse(DocumentNode node, Reading reading, string message)
    {
        reading.Refuse(node, message);
        return Failed;
    }
}

/// <summary>A form that has a definition of its own in the schema.</summary>
internal abstract class NamedForm(string name, string says) : Form
{
    internal string Name => name;

    internal string Says => says;

    internal sealed override void Describe(SchemaWriter schema) => schema.Refer(this);

    /// <summary>Writes what stands between the braces of its definition.</summary>
    internal abstract void Define(SchemaWriter schema);
}

/// <summary>A form that is made later: a load may hold loads.</summary>
internal sealed class LaterForm(Func<Form> form) : Form
{
    internal override IEnumerable<Form> Inner => [form()];

    internal override object Read(DocumentNode node, Reading reading) => form().Read(node, reading);

    internal override void Describe(SchemaWriter schema) => form().Describe(schema);
}

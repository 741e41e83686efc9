using System.Text.Json;

namespace LowVoltage.Calc.Documents;

/// <summary>Writes the JSON Schema (draft 2020-12) of a form, and of every named form that it refers to.</summary>
internal sealed class SchemaWriter(Utf8JsonWriter json)
{
    private readonly List<NamedForm> named = [];

    /// <summary>The schema of a document.</summary>
    internal static string Of(NamedForm document, string title) => Output.Text(json =>
    {
        SchemaWriter schema = new(json);
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", title);
        schema.Refer(document);
        json.WriteStartObject("$defs");
        for (int i = 0; i < schema.named.Count; i++)
        {
            json.WriteStartObject(schema.named[i].Name);
            schema.named[i].Define(schema);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
    });

    internal void Refer(NamedForm form)
    {
        int index = named.FindIndex(own => own.Name == form.Name);
        if (index < 0)
        {
            named.Add(form);
        }
        else if (!ReferenceEquals(named[index], form))
        {
            throw new InvalidOperationException($"Two forms are named {form.Name}.");
        }

        json.WriteString("$ref", "#/$defs/" + form.Name);
    }

    internal void Text(string name, string value) => json.WriteString(name, value);

    internal void Number(string name, double value) => json.WriteNumber(name, value);

    internal void Flag(string name, bool value) => json.WriteBoolean(name, value);

    internal void Texts(string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    internal void Inside(string name, Form form)
    {
        json.WriteStartObject(name);
        form.Describe(this);
        json.WriteEndObject();
    }

    internal void OneOf(IEnumerable<Form> forms)
    {
        json.WriteStartArray("oneOf");
        foreach (Form form in forms)
        {
            json.WriteStartObject();
            form.Describe(this);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal void Members(IEnumerable<Member> members)
    {
        json.WriteStartObject("properties");
        foreach (Member member in members)
        {
            json.WriteStartObject(member.Name);
            json.WriteString("description", member.Says);
            member.Form.Describe(this);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    internal void All(IEnumerable<MemberRule> rules)
    {
        json.WriteStartArray("allOf");
        foreach (MemberRule rule in rules)
        {
            json.WriteStartObject();
            rule.Describe(this);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal void Dependent(string member, IEnumerable<string> others)
    {
        json.WriteStartObject("dependentRequired");
        Texts(member, others);
        json.WriteEndObject();
    }

    internal void NotBoth(string one, string other)
    {
        json.WriteStartObject("not");
        Texts("required", [one, other]);
        json.WriteEndObject();
    }

    internal void EitherRequired(IEnumerable<string> one, IEnumerable<string> other)
    {
        json.WriteStartArray("anyOf");
        foreach (IEnumerable<string> names in new[] { one, other })
        {
            json.WriteStartObject();
            Texts("required", names);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}

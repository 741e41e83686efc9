using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;

namespace LowVoltage.Calc.Documents;

/// <summary>Documents as text: read whole or refused with every mistake, written with their version.</summary>
internal static class DocumentText
{
    /// <summary>The version that is written, and the only one that is read.</summary>
    internal const int Version = 1;

    private static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>The member that says what a document is and of which version.</summary>
    internal static Member<int> VersionOf(string name) => Member.Needed<int>(name, new CountForm(Version, Version), "The version of the document.");

    /// <summary>Where an editor finds the schema; not read.</summary>
    internal static Member<string> Schema { get; } = Member.Optional<string>("$schema", TextForm.Any, "Where an editor finds this schema.");

    internal static T Read<T>(ReadOnlySpan<byte> utf8, Form form)
        where T : class => TryRead(utf8, form, out T? document, out DocumentFault[] faults) ? document : throw new DocumentException(faults);

    internal static bool TryRead<T>(ReadOnlySpan<byte> utf8, Form form, [NotNullWhen(true)] out T? document, out DocumentFault[] faults)
        where T : class
    {
        Reading reading = new();
        ReadOnlySpan<byte> text = utf8.StartsWith(Mark) ? utf8[Mark.Length..] : utf8;
        document = DocumentParser.Parse(text, reading) is { } root ? form.Read(root, reading) as T : null;
        faults = reading.Faults(text);
        document = faults.Length == 0 ? document : null;
        return document is not null;
    }

    internal static byte[] Bytes(string json) => Encoding.UTF8.GetBytes(json ?? throw new ArgumentNullException(nameof(json)));

    internal static string Write<T>(Member<int> version, T document, Action<Utf8JsonWriter, T> members) => Output.Text(json =>
    {
        json.WriteStartObject();
        json.Put(version, Version);
        members(json, document);
        json.WriteEndObject();
    });
}

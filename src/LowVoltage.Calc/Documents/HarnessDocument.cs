using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A whole harness as a JSON document: nodes, the branches between them, sources, loads, load cases, and the rules.</summary>
/// <remarks>
/// <para>Names are those of the harness. A wire without a <c>conductor</c> is to be sized, a fuse without a rating to be chosen; a <c>place</c> and an <c>insulation</c> of the harness hold for the
/// wires that state none. What is written states each wire's own.</para>
/// <para>Refused, each at its place: unknown members, nodes, loads and switches; names that are used twice; a branch from a node to itself; zero resistances that close a loop.</para>
/// Written and refused as <see cref="CircuitDocument"/>. Immutable and thread-safe.
/// </remarks>
public sealed class HarnessDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_harness");

    private static readonly ObjectForm Form = new("harness_document", "A harness of LowVoltage.Calc.", HarnessPart.Make, [Version, DocumentText.Schema, .. HarnessPart.Members], new HarnessNamesRule());

    internal HarnessDocument(Harness harness) => Harness = harness;

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    /// <remarks>It says the form and the range of every value. Names that must be there, and what values say together, are judged when the document is read.</remarks>
    public static string Schema { get; } = SchemaWriter.Of(Form, "A harness of LowVoltage.Calc, version 1");

    /// <summary>The harness.</summary>
    public Harness Harness { get; }

    internal static Form Root => Form;

    /// <summary>The document of a harness.</summary>
    /// <param name="harness">The harness.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The harness is null.</exception>
    public static HarnessDocument Create(Harness harness) => new(harness ?? throw new ArgumentNullException(nameof(harness)));

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<HarnessDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out HarnessDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back to the same harness.</returns>
    public string Write() => DocumentText.Write(Version, Harness, HarnessPart.WriteMembers);

    /// <summary>The harness's name.</summary>
    public override string ToString() => Harness.Name;
}

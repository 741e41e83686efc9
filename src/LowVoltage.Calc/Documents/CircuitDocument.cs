using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Documents;

/// <summary>One circuit as a JSON document: what it must do, by which rules, and the existing wiring, if any.</summary>
/// <remarks>
/// <para>Member names end in their unit: <c>feed_m</c>, <c>cold_cranking_A</c>. What the library carries is named, what the caller brings is stated in full. A battery stays what it was
/// stated by, not the numbers that follow. Every number comes back to the last bit. <see cref="Schema"/> says the form; docs/models/documents.md explains it.</para>
/// <para>A document is read whole or refused: with every mistake, its way (<c>$.load.power_W</c>), line and column. Unknown members and members given twice are mistakes.</para>
/// Immutable and thread-safe; culture and machine do not matter.
/// </remarks>
public sealed class CircuitDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_circuit");

    private static readonly ObjectForm Form = new("circuit_document", "A circuit of LowVoltage.Calc.", CircuitPart.Make, [Version, DocumentText.Schema, .. CircuitPart.Members]);

    internal CircuitDocument(CircuitRequirements requirements, DesignRules rules, LaidWiring? laid)
    {
        Requirements = requirements;
        Rules = rules;
        Laid = laid;
    }

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    /// <remarks>It says the form and the range of every value. What two values say together (a peak above the locked-rotor current) is judged when the document is read.</remarks>
    public static string Schema { get; } = SchemaWriter.Of(Form, "A circuit of LowVoltage.Calc, version 1");

    /// <summary>What the circuit must do and where it runs.</summary>
    public CircuitRequirements Requirements { get; }

    /// <summary>The rules to follow.</summary>
    public DesignRules Rules { get; }

    /// <summary>The stretches of wire that are there; <c>null</c> where none are stated.</summary>
    public CircuitPath? Path => Laid?.Path;

    /// <summary>The one size that is there; <c>null</c> where none is stated.</summary>
    public Conductor? Wire => Laid?.Wire;

    /// <summary>The fuse that is there; <c>null</c> where wiring is stated without one, and where none is.</summary>
    public FuseRating? Fuse => Laid?.Fuse;

    /// <summary>Whether existing wiring is to be checked; otherwise the circuit is to be designed.</summary>
    public bool IsVerification => Laid is not null;

    internal static Form Root => Form;

    internal LaidWiring? Laid { get; }

    /// <summary>A circuit to be designed.</summary>
    /// <param name="requirements">What it must do and where it runs.</param>
    /// <param name="rules">The rules to follow.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static CircuitDocument Create(CircuitRequirements requirements, DesignRules rules) =>
        new(requirements ?? throw new ArgumentNullException(nameof(requirements)), rules ?? throw new ArgumentNullException(nameof(rules)), null);

    /// <summary>A circuit whose wire and fuse are there and are to be checked.</summary>
    /// <param name="requirements">What it must do and where it runs.</param>
    /// <param name="wire">The conductor of the feed, and of the return where that is a wire like it.</param>
    /// <param name="fuse">The fuse; <c>null</c> where there is none.</param>
    /// <param name="rules">The rules to follow.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The requirements, the wire or the rules are null.</exception>
    public static CircuitDocument Create(CircuitRequirements requirements, Conductor wire, FuseRating? fuse, DesignRules rules) => new(
        requirements ?? throw new ArgumentNullException(nameof(requirements)),
        rules ?? throw new ArgumentNullException(nameof(rules)),
        new LaidWiring(wire ?? throw new ArgumentNullException(nameof(wire)), null, fuse));

    /// <summary>A circuit whose wiring is there, in stretches, and is to be checked.</summary>
    /// <param name="requirements">What it must do and where it runs.</param>
    /// <param name="path">The way out and back as it is, joints included.</param>
    /// <param name="fuse">The fuse; <c>null</c> where there is none.</param>
    /// <param name="rules">The rules to follow.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The requirements, the path or the rules are null.</exception>
    public static CircuitDocument Create(CircuitRequirements requirements, CircuitPath path, FuseRating? fuse, DesignRules rules) => new(
        requirements ?? throw new ArgumentNullException(nameof(requirements)),
        rules ?? throw new ArgumentNullException(nameof(rules)),
        new LaidWiring(null, path ?? throw new ArgumentNullException(nameof(path)), fuse));

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static CircuitDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static CircuitDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<CircuitDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out CircuitDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back to the same circuit.</returns>
    public string Write() => DocumentText.Write(Version, this, CircuitPart.WriteMembers);

    /// <summary>The library's answer: the design, or where wiring is there its verification.</summary>
    /// <returns>The answer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public CircuitDesign Answer() => Laid switch
    {
        null => CircuitDesigner.Design(Requirements, Rules),
        { Path: { } path } => CircuitDesigner.Verify(Requirements, path, Fuse, Rules),
        _ => CircuitDesigner.Verify(Requirements, Laid.Wire!, Fuse, Rules),
    };

    /// <summary>The circuit's name.</summary>
    public override string ToString() => Requirements.Name;
}

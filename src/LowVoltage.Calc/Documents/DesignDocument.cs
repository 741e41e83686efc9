using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Documents;

/// <summary>A design or a verification as a JSON document: the circuit, the answer, every check with its source, the assumptions and the cautions.</summary>
/// <remarks>
/// What comes back from a file is a claim: <see cref="Verify"/> asks the library again about the same wire and fuse, <c>Circuit.Answer()</c> the whole question.
/// Written and refused as <see cref="CircuitDocument"/>. Immutable and thread-safe.
/// </remarks>
public sealed class DesignDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_design");
    private static readonly Member<CircuitDocument> CircuitMember = Member.Needed<CircuitDocument>("circuit", CircuitPart.Form, "The circuit that was asked.");
    private static readonly Member<Verdict> VerdictMember = Member.Needed<Verdict>("verdict", CheckPart.Verdicts, "Pass, undetermined or fail.");
    private static readonly Member<bool> NearestMember = Member.Optional<bool>("is_nearest", FlagForm.Any, "Whether no wire and fuse of the rules serve, and these come nearest; left out: false.");
    private static readonly Member<Conductor> WireMember = Member.Needed<Conductor>("wire", ConductorPart.Form, "The wire of the feed.");
    private static readonly Member<FuseRating> FuseMember = Member.Optional<FuseRating>("fuse", FusePart.Form, "The fuse; left out: none.");
    private static readonly Member<DocumentedCheck> GoverningMember = Member.Needed<DocumentedCheck>("governing", CheckPart.Form, "The check that decides.");
    private static readonly Member<DocumentedCheck[]> ChecksMember = Member.Needed<DocumentedCheck[]>("checks", CheckPart.List, "Every check.");
    private static readonly Member<string> RejectedSizeMember = Member.Needed<string>("conductor", TextForm.Name, "The conductor that was tried.");
    private static readonly Member<DocumentedCheck> RejectedCheckMember = Member.Needed<DocumentedCheck>("stopped_by", CheckPart.Form, "The first check that it failed.");
    private static readonly ObjectForm RejectedForm = new("rejected_size", "A smaller size that was tried and not taken.", at => new DocumentedRejection(at.Get(RejectedSizeMember), at.Get(RejectedCheckMember)), [RejectedSizeMember, RejectedCheckMember]);
    private static readonly Member<DocumentedRejection[]> RejectedMember = Member.Optional<DocumentedRejection[]>("rejected", new ListForm<DocumentedRejection>(RejectedForm), "The sizes below, small to large.");
    private static readonly Member<string[]> AssumptionsMember = Texts("assumptions", "What was assumed, to be confirmed.");
    private static readonly Member<string[]> CautionsMember = Texts("cautions", "Part of the result: whoever shows it shows them.");
    private static readonly Member<string[]> AdviceMember = Texts("advice", "What would help where something fails or is undetermined.");

    private static readonly ObjectForm Form = new(
        "design_document",
        "A design or verification of LowVoltage.Calc.",
        Make,
        [Version, DocumentText.Schema, CircuitMember, VerdictMember, NearestMember, WireMember, FuseMember, GoverningMember, ChecksMember, RejectedMember, AssumptionsMember, CautionsMember, AdviceMember]);

    internal static Form Root => Form;

    private DesignDocument()
    {
    }

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    public static string Schema { get; } = SchemaWriter.Of(Form, "A design of LowVoltage.Calc, version 1");

    /// <summary>The circuit that was asked, with the existing wiring where it was a verification.</summary>
    public CircuitDocument Circuit { get; private init; } = null!;

    /// <summary>Pass, fail, or undetermined, as the document states it.</summary>
    public Verdict Verdict { get; private init; }

    /// <summary>Whether no wire and fuse of the rules serve, and these come nearest.</summary>
    public bool IsNearest { get; private init; }

    /// <summary>The wire of the feed.</summary>
    public Conductor Wire { get; private init; } = null!;

    /// <summary>The fuse; <c>null</c> where there is none.</summary>
    public FuseRating? Fuse { get; private init; }

    /// <summary>The check that decides.</summary>
    public DocumentedCheck Governing { get; private init; } = null!;

    /// <summary>Every check.</summary>
    public IReadOnlyList<DocumentedCheck> Checks { get; private init; } = [];

    /// <summary>The sizes below the one chosen, small to large, each with the check that stopped it.</summary>
    public IReadOnlyList<DocumentedRejection> Rejected { get; private init; } = [];

    /// <summary>What was assumed, to be confirmed by whoever installs the circuit.</summary>
    public IReadOnlyList<string> Assumptions { get; private init; } = [];

    /// <summary>The cautions that go with the circuit: show them.</summary>
    public IReadOnlyList<string> Cautions { get; private init; } = [];

    /// <summary>What would help where something fails or is undetermined.</summary>
    public IReadOnlyList<string> Advice { get; private init; } = [];

    /// <summary>The document of an answer.</summary>
    /// <param name="design">A design or a verification.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The design is null.</exception>
    public static DesignDocument Create(CircuitDesign design)
    {
        _ = design ?? throw new ArgumentNullException(nameof(design));
        LaidWiring? laid = !design.IsVerified ? null : design.Existing is { } path ? new LaidWiring(null, path, design.Fuse) : new LaidWiring(design.Wire, null, design.Fuse);
        return new DesignDocument
        {
            Circuit = new CircuitDocument(design.Requirements, design.Rules, laid),
            Verdict = design.Verdict,
            IsNearest = design.IsNearest,
            Wire = design.Wire,
            Fuse = design.Fuse,
            Governing = DocumentedCheck.From(design.Governing),
            Checks = Array.AsReadOnly([.. design.Checks.Select(DocumentedCheck.From)]),
            Rejected = Array.AsReadOnly([.. design.Rejected.Select(size => new DocumentedRejection(size.Conductor.Name, DocumentedCheck.From(size.Check)))]),
            Assumptions = design.Assumptions,
            Cautions = design.Cautions,
            Advice = design.Advice,
        };
    }

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static DesignDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static DesignDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<DesignDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out DesignDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back.</returns>
    public string Write() => DocumentText.Write(Version, this, WriteMembers);

    /// <summary>What the document says, asked again: the same wire and fuse, every check made anew.</summary>
    /// <returns>The verification.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The source can exceed 60 V.</exception>
    public CircuitDesign Verify() => Circuit.IsVerification ? Circuit.Answer() : CircuitDesigner.Verify(Circuit.Requirements, Wire, Fuse, Circuit.Rules);

    private static void WriteMembers(Utf8JsonWriter json, DesignDocument design)
    {
        json.Put(CircuitMember, design.Circuit, CircuitPart.Write);
        json.WriteString(VerdictMember.Encoded, CheckPart.Verdicts.WordOf(design.Verdict));
        json.PutIf(NearestMember, design.IsNearest);
        json.Put(WireMember, design.Wire, ConductorPart.Write);
        if (design.Fuse is { } fuse)
        {
            json.Put(FuseMember, fuse, FusePart.Write);
        }

        json.Put(GoverningMember, design.Governing, CheckPart.Write);
        json.PutAll(ChecksMember, design.Checks, CheckPart.Write);
        json.PutAll(RejectedMember, design.Rejected, WriteRejected);
        json.PutAll(AssumptionsMember, design.Assumptions);
        json.PutAll(CautionsMember, design.Cautions);
        json.PutAll(AdviceMember, design.Advice);
    }

    private static void WriteRejected(Utf8JsonWriter json, DocumentedRejection size)
    {
        json.WriteStartObject();
        json.Put(RejectedSizeMember, size.Conductor);
        json.Put(RejectedCheckMember, size.StoppedBy, CheckPart.Write);
        json.WriteEndObject();
    }

    private static Member<string[]> Texts(string name, string says) => Member.Needed<string[]>(name, new ListForm<string>(TextForm.Any), says);

    private static DesignDocument Make(Values at) => new()
    {
        Circuit = at.Get(CircuitMember),
        Verdict = at.Get(VerdictMember),
        IsNearest = at.Or(NearestMember, false),
        Wire = at.Get(WireMember),
        Fuse = at.OrNull(FuseMember),
        Governing = at.Get(GoverningMember),
        Checks = Array.AsReadOnly(at.Get(ChecksMember)),
        Rejected = Array.AsReadOnly(at.Or(RejectedMember, [])),
        Assumptions = Array.AsReadOnly(at.Get(AssumptionsMember)),
        Cautions = Array.AsReadOnly(at.Get(CautionsMember)),
        Advice = Array.AsReadOnly(at.Get(AdviceMember)),
    };
}

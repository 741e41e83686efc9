using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>What happens when something of a harness breaks, as a JSON document: the harness, every fault and what follows from it, the assumptions and the cautions.</summary>
/// <remarks>
/// What comes back from a file is a claim: <see cref="Run"/> breaks the same harness again.
/// Written and refused as <see cref="CircuitDocument"/>. Immutable and thread-safe.
/// </remarks>
public sealed class FaultAuditDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_fault_audit");
    private static readonly Member<HarnessDocument> HarnessMember = Member.Needed<HarnessDocument>("harness", HarnessPart.Form, "The harness that was broken.");
    private static readonly Member<LoadCase[]> CasesMember = Member.Needed<LoadCase[]>("load_cases", new ListForm<LoadCase>(LoadCasePart.Form, 1), "The load cases that were looked at; what starts counts as running.");
    private static readonly Member<HarnessFault[]> FaultsMember = Member.Needed<HarnessFault[]>("faults", new ListForm<HarnessFault>(HarnessFaultPart.Form), "Every fault, the worst first.");
    private static readonly Member<string[]> AssumptionsMember = Texts("assumptions", "What was assumed, to be confirmed.");
    private static readonly Member<string[]> CautionsMember = Texts("cautions", "Part of the result: whoever shows it shows them.");

    private static readonly ObjectForm Form = new(
        "fault_audit_document",
        "What happens when something of a harness breaks, by LowVoltage.Calc.",
        Make,
        [Version, DocumentText.Schema, HarnessMember, CasesMember, FaultsMember, AssumptionsMember, CautionsMember]);

    private FaultAuditDocument(HarnessDocument harness) => Harness = harness;

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    public static string Schema { get; } = SchemaWriter.Of(Form, "What happens when something of a harness breaks, by LowVoltage.Calc, version 1");

    /// <summary>The harness that was broken.</summary>
    public HarnessDocument Harness { get; }

    /// <summary>The load cases that were looked at; what starts counts as running.</summary>
    public IReadOnlyList<LoadCase> LoadCases { get; private init; } = [];

    /// <summary>Every fault, the worst first.</summary>
    public IReadOnlyList<HarnessFault> Faults { get; private init; } = [];

    /// <summary>What was assumed, to be confirmed by whoever installs the harness.</summary>
    public IReadOnlyList<string> Assumptions { get; private init; } = [];

    /// <summary>The cautions that go with the audit: show them.</summary>
    public IReadOnlyList<string> Cautions { get; private init; } = [];

    internal static Form Root => Form;

    /// <summary>The document of an audit.</summary>
    /// <param name="audit">The audit.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The audit is null.</exception>
    public static FaultAuditDocument Create(FaultAudit audit)
    {
        _ = audit ?? throw new ArgumentNullException(nameof(audit));
        return new FaultAuditDocument(HarnessDocument.Create(audit.Harness))
        {
            LoadCases = audit.LoadCases,
            Faults = audit.Faults,
            Assumptions = audit.Assumptions,
            Cautions = audit.Cautions,
        };
    }

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static FaultAuditDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static FaultAuditDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<FaultAuditDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out FaultAuditDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back.</returns>
    public string Write() => DocumentText.Write(Version, this, WriteMembers);

    /// <summary>What the document says, asked again: the same harness broken in every place in the same load cases.</summary>
    /// <param name="progress">Is told the share that is done, 0 to 1.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>The audit.</returns>
    /// <exception cref="ArgumentException">The harness cannot be audited: see <see cref="FaultAudit.Run"/>.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor, or a fuse no rating.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public FaultAudit Run(IProgress<double>? progress = null, CancellationToken cancellation = default) => FaultAudit.Run(Harness.Harness, LoadCases, progress, cancellation);

    private static void WriteMembers(Utf8JsonWriter json, FaultAuditDocument audit)
    {
        json.Put(HarnessMember, audit.Harness, HarnessPart.Write);
        json.PutAll(CasesMember, audit.LoadCases, LoadCasePart.Write);
        json.PutAll(FaultsMember, audit.Faults, HarnessFaultPart.Write);
        json.PutAll(AssumptionsMember, audit.Assumptions);
        json.PutAll(CautionsMember, audit.Cautions);
    }

    private static Member<string[]> Texts(string name, string says) => Member.Needed<string[]>(name, new ListForm<string>(TextForm.Any), says);

    private static FaultAuditDocument Make(Values at)
    {
        HarnessDocument harness = at.Get(HarnessMember);
        LoadCase[] cases = at.Get(CasesMember);
        foreach (LoadCase used in cases)
        {
            HarnessMistakes.RefuseUnknown(harness.Harness, used, "loadCases");
        }

        return new FaultAuditDocument(harness)
        {
            LoadCases = Array.AsReadOnly(cases),
            Faults = Array.AsReadOnly(at.Get(FaultsMember)),
            Assumptions = Array.AsReadOnly(at.Get(AssumptionsMember)),
            Cautions = Array.AsReadOnly(at.Get(CautionsMember)),
        };
    }
}

using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>The verification of a harness as a JSON document: the harness, every check and finding, solutions, the assumptions and the cautions.</summary>
/// <remarks>
/// What comes back from a file is a claim: <see cref="Verify"/> asks the library again about the same harness.
/// Written and refused as <see cref="CircuitDocument"/>. Immutable and thread-safe.
/// </remarks>
public sealed class HarnessResultDocument
{
    private static readonly Member<int> Version = DocumentText.VersionOf("lowvoltage_harness_result");
    private static readonly Member<HarnessDocument> HarnessMember = Member.Needed<HarnessDocument>("harness", HarnessPart.Form, "The harness that was asked about.");
    private static readonly Member<Verdict> VerdictMember = Member.Needed<Verdict>("verdict", CheckPart.Verdicts, "Pass, undetermined or fail.");
    private static readonly Member<DocumentedHarnessCheck[]> ChecksMember = Member.Needed<DocumentedHarnessCheck[]>("checks", new ListForm<DocumentedHarnessCheck>(HarnessCheckPart.Form), "Every check.");
    private static readonly Member<DocumentedFinding[]> FindingsMember = Member.Needed<DocumentedFinding[]>("findings", new ListForm<DocumentedFinding>(HarnessCheckPart.FindingForm), "What was found beside the checks.");
    private static readonly Member<DocumentedSolution[]> SolutionsMember = Member.Needed<DocumentedSolution[]>("solutions", new ListForm<DocumentedSolution>(SolutionPart.Form), "Solved load cases, as many as were asked for.");
    private static readonly Member<string[]> AssumptionsMember = Texts("assumptions", "What was assumed, to be confirmed.");
    private static readonly Member<string[]> CautionsMember = Texts("cautions", "Part of the result: whoever shows it shows them.");
    private static readonly Member<string[]> AdviceMember = Texts("advice", "What would help where something fails or is undetermined.");

    private static readonly Member[] Members = [HarnessMember, VerdictMember, ChecksMember, FindingsMember, SolutionsMember, AssumptionsMember, CautionsMember, AdviceMember];

    private static readonly ObjectForm Form = new("harness_result_document", "The verification of a harness by LowVoltage.Calc.", Make, [Version, DocumentText.Schema, .. Members]);

    private HarnessResultDocument(HarnessDocument harness) => Harness = harness;

    /// <summary>The JSON Schema (draft 2020-12) of such a document.</summary>
    public static string Schema { get; } = SchemaWriter.Of(Form, "The verification of a harness by LowVoltage.Calc, version 1");

    /// <summary>The harness that was asked about.</summary>
    public HarnessDocument Harness { get; }

    /// <summary>Pass, fail, or undetermined, as the document states it.</summary>
    public Verdict Verdict { get; private init; }

    /// <summary>Every check.</summary>
    public IReadOnlyList<DocumentedHarnessCheck> Checks { get; private init; } = [];

    /// <summary>What was found beside the checks.</summary>
    public IReadOnlyList<DocumentedFinding> Findings { get; private init; } = [];

    /// <summary>Solved load cases, as many as were asked for.</summary>
    public IReadOnlyList<DocumentedSolution> Solutions { get; private init; } = [];

    /// <summary>What was assumed, to be confirmed by whoever installs the harness.</summary>
    public IReadOnlyList<string> Assumptions { get; private init; } = [];

    /// <summary>The cautions that go with the harness: show them.</summary>
    public IReadOnlyList<string> Cautions { get; private init; } = [];

    /// <summary>What would help where something fails or is undetermined.</summary>
    public IReadOnlyList<string> Advice { get; private init; } = [];

    internal static Form Root => Form;

    /// <summary>A verification within another document.</summary>
    internal static ObjectForm Inner { get; } = new("harness_result", "The verification of a harness.", Make, Members);

    /// <summary>The document of a verification.</summary>
    /// <param name="verification">The verification.</param>
    /// <param name="solutions">Solutions of its harness to go with it; none if none are wanted.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The verification, the solutions or one of them is null.</exception>
    /// <exception cref="ArgumentException">A solution is of another harness.</exception>
    public static HarnessResultDocument Create(HarnessVerification verification, params HarnessSolution[] solutions)
    {
        _ = verification ?? throw new ArgumentNullException(nameof(verification));
        foreach (HarnessSolution solution in solutions ?? throw new ArgumentNullException(nameof(solutions)))
        {
            _ = ReferenceEquals((solution ?? throw new ArgumentNullException(nameof(solutions))).Harness, verification.Harness)
                ? solution : throw new ArgumentException("A solution must be of the harness that was verified.", nameof(solutions));
        }

        return new HarnessResultDocument(HarnessDocument.Create(verification.Harness))
        {
            Verdict = verification.Verdict,
            Checks = Array.AsReadOnly([.. verification.Checks.Select(Documented)]),
            Findings = Array.AsReadOnly([.. verification.Findings.Select(finding => new DocumentedFinding(finding.Severity, finding.Text, finding.Places))]),
            Solutions = Array.AsReadOnly([.. solutions.Select(DocumentedSolution.From)]),
            Assumptions = verification.Assumptions,
            Cautions = verification.Cautions,
            Advice = verification.Advice,
        };
    }

    /// <summary>Reads a document.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessResultDocument Read(string json) => Read(DocumentText.Bytes(json));

    /// <summary>Reads a document from the bytes of a file.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte-order mark.</param>
    /// <returns>The document.</returns>
    /// <exception cref="DocumentException">The text is no such document; the exception has every mistake with its place.</exception>
    public static HarnessResultDocument Read(ReadOnlySpan<byte> utf8) => DocumentText.Read<HarnessResultDocument>(utf8, Form);

    /// <summary>Reads a document, or says what is wrong with it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="document">The document, or null.</param>
    /// <param name="faults">Every mistake with its place; none where the document was read.</param>
    /// <returns>Whether it was read.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static bool TryRead(string json, [NotNullWhen(true)] out HarnessResultDocument? document, out IReadOnlyList<DocumentFault> faults)
    {
        bool read = DocumentText.TryRead(DocumentText.Bytes(json), Form, out document, out DocumentFault[] found);
        faults = Array.AsReadOnly(found);
        return read;
    }

    /// <summary>The document as text, indented, with line feeds.</summary>
    /// <returns>JSON that <see cref="Read(string)"/> reads back.</returns>
    public string Write() => DocumentText.Write(Version, this, WriteMembers);

    /// <summary>What the document says, asked again: every check of the same harness made anew.</summary>
    /// <returns>The verification.</returns>
    /// <exception cref="ArgumentException">The harness cannot be verified: see <see cref="HarnessDesigner.Verify"/>.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor yet.</exception>
    public HarnessVerification Verify() => HarnessDesigner.Verify(Harness.Harness);

    internal static void WriteInner(Utf8JsonWriter json, HarnessResultDocument result)
    {
        json.WriteStartObject();
        WriteMembers(json, result);
        json.WriteEndObject();
    }

    private static DocumentedHarnessCheck Documented(HarnessCheck check) =>
        new(DocumentedCheck.From(check.Result)) { Place = check.Place, Wire = check.Wire, Toward = check.Toward, LoadCase = check.LoadCase };

    private static void WriteMembers(Utf8JsonWriter json, HarnessResultDocument result)
    {
        json.Put(HarnessMember, result.Harness, HarnessPart.Write);
        json.WriteString(VerdictMember.Encoded, CheckPart.Verdicts.WordOf(result.Verdict));
        json.PutAll(ChecksMember, result.Checks, HarnessCheckPart.Write);
        json.PutAll(FindingsMember, result.Findings, HarnessCheckPart.Write);
        json.PutAll(SolutionsMember, result.Solutions, SolutionPart.Write);
        json.PutAll(AssumptionsMember, result.Assumptions);
        json.PutAll(CautionsMember, result.Cautions);
        json.PutAll(AdviceMember, result.Advice);
    }

    private static Member<string[]> Texts(string name, string says) => Member.Needed<string[]>(name, new ListForm<string>(TextForm.Any), says);

    private static HarnessResultDocument Make(Values at) => new(at.Get(HarnessMember))
    {
        Verdict = at.Get(VerdictMember),
        Checks = Array.AsReadOnly(at.Get(ChecksMember)),
        Findings = Array.AsReadOnly(at.Get(FindingsMember)),
        Solutions = Array.AsReadOnly(at.Get(SolutionsMember)),
        Assumptions = Array.AsReadOnly(at.Get(AssumptionsMember)),
        Cautions = Array.AsReadOnly(at.Get(CautionsMember)),
        Advice = Array.AsReadOnly(at.Get(AdviceMember)),
    };
}

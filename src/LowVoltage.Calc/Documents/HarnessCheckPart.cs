using System.Text.Json;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>Checks and findings of a harness in a document.</summary>
internal static class HarnessCheckPart
{
    private static readonly WordForm<FindingSeverity> Severities = new(
        ("undetermined", FindingSeverity.Undetermined), ("note", FindingSeverity.Note), ("warning", FindingSeverity.Warning), ("fail", FindingSeverity.Fail));

    private static readonly Member<string> Place = Member.Needed<string>("place", TextForm.Any, "The part that it is about.");
    private static readonly Member<string> Wire = Member.Optional<string>("wire", TextForm.Any, "The wire that decides.");
    private static readonly Member<string> Toward = Member.Optional<string>("toward", TextForm.Any, "The node that the fault or the current is towards.");
    private static readonly Member<string> Case = Member.Optional<string>("load_case", TextForm.Any, "The load case.");
    private static readonly Member<DocumentedCheck> Result = Member.Needed<DocumentedCheck>("result", CheckPart.Form, "The check.");

    private static readonly Member<FindingSeverity> Severity = Member.Needed<FindingSeverity>("severity", Severities, "How grave it is.");
    private static readonly Member<string> Text = Member.Needed<string>("text", TextForm.Any, "What was found.");
    private static readonly Member<string[]> Places = Member.Needed<string[]>("places", new ListForm<string>(TextForm.Any), "The parts that it is about.");

    internal static ObjectForm Form { get; } = new(
        "harness_check",
        "One check of a part of a harness.",
        at => new DocumentedHarnessCheck(at.Get(Result)) { Place = at.Get(Place), Wire = at.OrNull(Wire), Toward = at.OrNull(Toward), LoadCase = at.Or(Case, "") },
        [Place, Wire, Toward, Case, Result]);

    internal static ObjectForm FindingForm { get; } = new(
        "finding", "What was found about a harness beside the checks.", at => new DocumentedFinding(at.Get(Severity), at.Get(Text), Array.AsReadOnly(at.Get(Places))), [Severity, Text, Places]);

    internal static void Write(Utf8JsonWriter json, DocumentedHarnessCheck check)
    {
        json.WriteStartObject();
        json.Put(Place, check.Place);
        if (check.Wire is { } wire)
        {
            json.Put(Wire, wire);
        }

        if (check.Toward is { } toward)
        {
            json.Put(Toward, toward);
        }

        json.PutIf(Case, check.LoadCase);
        json.Put(Result, check.Check, CheckPart.Write);
        json.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter json, DocumentedFinding finding)
    {
        json.WriteStartObject();
        json.WriteString(Severity.Encoded, Severities.WordOf(finding.Severity));
        json.Put(Text, finding.Text);
        json.PutAll(Places, finding.Places);
        json.WriteEndObject();
    }
}

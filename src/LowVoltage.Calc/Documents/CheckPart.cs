using System.Text.Json;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>A check in a document.</summary>
internal static class CheckPart
{
    internal static readonly WordForm<Verdict> Verdicts = new(("pass", Verdict.Pass), ("undetermined", Verdict.Undetermined), ("fail", Verdict.Fail));

    private static readonly WordForm<CheckKind> Kinds = new([.. CheckKind.All.Select(kind => (kind.Id, kind))]);
    private static readonly WordForm<string> Units = new([.. CheckKind.All.Select(kind => kind.Unit).Distinct(StringComparer.Ordinal).Select(unit => (unit, unit))]);
    internal static readonly WordForm<CheckOutcome> Outcomes = new(("pass", CheckOutcome.Pass), ("undetermined", CheckOutcome.Undetermined), ("fail", CheckOutcome.Fail));
    private static readonly WordForm<SupplyLevel> Levels = new(("minimum", SupplyLevel.Minimum), ("nominal", SupplyLevel.Nominal), ("maximum", SupplyLevel.Maximum));

    private static readonly Member<CheckKind> Kind = Member.Needed<CheckKind>("check", Kinds, "What was asked.");
    private static readonly Member<CheckOutcome> Outcome = Member.Needed<CheckOutcome>("outcome", Outcomes, "Pass, undetermined or fail.");
    private static readonly Member<double> Value = Member.Optional<double>("value", Ranges.Any, "What the circuit has, in the unit; left out: there is no number.");
    private static readonly Member<double> Limit = Member.Optional<double>("limit", Ranges.Any, "What is allowed, in the unit; left out: there is no number.");
    private static readonly Member<string> Unit = Member.Needed<string>("unit", Units, "The unit of value and limit: that of the check.");
    private static readonly Member<string> Sense = Member.Needed<string>("limit_is", new WordForm<string>(("least", "least"), ("most", "most")), "Whether the limit is the least or the most allowed: that of the check.");
    private static readonly Member<string> Where = Member.Optional<string>("where", TextForm.Any, "Where it stands.");
    private static readonly Member<SupplyLevel> Level = Member.Optional<SupplyLevel>("level", Levels, "At which supply voltage; left out: none in particular.");
    private static readonly Member<string> Note = Member.Optional<string>("note", TextForm.Any, "How it came about, or what is missing.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Whose rule the limit is.");

    internal static ObjectForm Form { get; } = new("check", "One check of a circuit.", Make, [Kind, Outcome, Value, Limit, Unit, Sense, Where, Level, Note, Source]);

    internal static ListForm<DocumentedCheck> List { get; } = new(Form);

    internal static void Write(Utf8JsonWriter json, DocumentedCheck check)
    {
        json.WriteStartObject();
        json.Put(Kind, check.Kind, (to, kind) => to.WriteStringValue(kind.Id));
        json.WriteString(Outcome.Encoded, Outcomes.WordOf(check.Outcome));
        json.PutIf(Value, check.Value);
        json.PutIf(Limit, check.Limit);
        json.Put(Unit, check.Kind.Unit);
        json.Put(Sense, SenseOf(check.Kind));
        json.PutIf(Where, check.Where);
        if (check.Level is { } level)
        {
            json.WriteString(Level.Encoded, Levels.WordOf(level));
        }

        json.PutIf(Note, check.Note);
        json.Put(Source, check.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static string SenseOf(CheckKind kind) => kind.LimitIsLeast ? "least" : "most";

    private static DocumentedCheck? Make(Values at)
    {
        CheckKind kind = at.Get(Kind);
        int before = at.Reading.Count;
        Agrees(at, Unit, kind.Unit);
        Agrees(at, Sense, SenseOf(kind));
        return before < at.Reading.Count ? null : new DocumentedCheck
        {
            Kind = kind,
            Outcome = at.Get(Outcome),
            Value = at.Maybe(Value),
            Limit = at.Maybe(Limit),
            Where = at.Or(Where, ""),
            Level = at.Maybe(Level),
            Note = at.Or(Note, ""),
            Reference = at.Get(Source),
        };
    }

    private static void Agrees(Values at, Member<string> member, string own)
    {
        if (at.Get(member) != own)
        {
            at.Reading.Judge(at.At(member), $"must be \"{own}\", that of the check {at.Get(Kind).Id}; it was \"{at.Get(member)}\".");
        }
    }
}

using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A solved harness in a document.</summary>
internal static class SolutionPart
{
    private static readonly WordForm<SupplyLevel> Levels = new(("minimum", SupplyLevel.Minimum), ("nominal", SupplyLevel.Nominal), ("maximum", SupplyLevel.Maximum));

    private static readonly WordForm<LoadCondition> Conditions = new(
        ("undetermined", LoadCondition.Undetermined), ("running", LoadCondition.Running), ("off", LoadCondition.Off), ("cut out", LoadCondition.CutOut), ("restartable", LoadCondition.Restartable),
        ("starved", LoadCondition.Starved), ("reversed", LoadCondition.Reversed), ("dead", LoadCondition.Dead));

    private static readonly Member<string> Id = Member.Needed<string>("id", TextForm.Name, "Its name.");
    private static readonly Member<double> Volts = Member.Needed<double>("voltage_V", Ranges.Any, "Of a node over the reference node, of a source or load across its terminals, V.");
    private static readonly Member<double> Amperes = Member.Needed<double>("current_A", Ranges.Any, "Of a branch from its first node to its second, of a source what it gives, of a load what it draws, A.");
    private static readonly Member<double> Watts = Member.Needed<double>("loss_W", Ranges.Any, "Power lost in it, W.");
    private static readonly Member<double> Celsius = Member.Optional<double>("temperature_C", Ranges.Any, "Of a wire, °C.");
    private static readonly Member<LoadCondition> Condition = Member.Needed<LoadCondition>("condition", Conditions, "What the load does.");

    private static readonly ObjectForm Node = new("solved_node", "A node.", at => new DocumentedPart(at.Get(Id)) { Volts = at.Get(Volts) }, [Id, Volts]);
    private static readonly ObjectForm Branch = new("solved_branch", "A branch.", at => new DocumentedPart(at.Get(Id)) { Amperes = at.Get(Amperes), Watts = at.Get(Watts), Celsius = at.Maybe(Celsius) }, [Id, Amperes, Watts, Celsius]);
    private static readonly ObjectForm Source = new("solved_source", "A source.", at => new DocumentedPart(at.Get(Id)) { Volts = at.Get(Volts), Amperes = at.Get(Amperes) }, [Id, Volts, Amperes]);
    private static readonly ObjectForm Load = new("solved_load", "A load.", at => new DocumentedPart(at.Get(Id)) { Volts = at.Get(Volts), Amperes = at.Get(Amperes), Condition = at.Get(Condition) }, [Id, Volts, Amperes, Condition]);

    private static readonly Member<string> Case = Member.Needed<string>("load_case", TextForm.Name, "The load case.");
    private static readonly Member<SupplyLevel> Level = Member.Needed<SupplyLevel>("level", Levels, "Where in its range every source is.");
    private static readonly Member<string> Why = Member.Optional<string>("no_solution_because", TextForm.Name, "Why there is no solution; left out: there is one.");
    private static readonly Member<DocumentedPart[]> Nodes = Parts("nodes", Node);
    private static readonly Member<DocumentedPart[]> Branches = Parts("branches", Branch);
    private static readonly Member<DocumentedPart[]> Sources = Parts("sources", Source);
    private static readonly Member<DocumentedPart[]> Loads = Parts("loads", Load);
    private static readonly Member<string[]> Remarks = Member.Needed<string[]>("remarks", new ListForm<string>(TextForm.Any), "What a careful reader must know.");

    internal static ObjectForm Form { get; } = new("solution", "The harness in one load case at one supply level.", Make, [Case, Level, Why, Nodes, Branches, Sources, Loads, Remarks]);

    internal static void Write(Utf8JsonWriter json, DocumentedSolution solution)
    {
        json.WriteStartObject();
        json.Put(Case, solution.LoadCase);
        json.WriteString(Level.Encoded, Levels.WordOf(solution.Level));
        if (!solution.Exists)
        {
            json.Put(Why, solution.Explanation);
        }

        json.PutAll(Nodes, solution.Nodes, WritePart);
        json.PutAll(Branches, solution.Branches, WritePart);
        json.PutAll(Sources, solution.Sources, WritePart);
        json.PutAll(Loads, solution.Loads, WritePart);
        json.PutAll(Remarks, solution.Remarks);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, DocumentedPart part)
    {
        json.WriteStartObject();
        json.Put(Id, part.Id);
        json.PutIf(Volts, part.Volts);
        json.PutIf(Amperes, part.Amperes);
        json.PutIf(Watts, part.Watts);
        json.PutIf(Celsius, part.Celsius);
        if (part.Condition is { } condition)
        {
            json.WriteString(Condition.Encoded, Conditions.WordOf(condition));
        }

        json.WriteEndObject();
    }

    private static Member<DocumentedPart[]> Parts(string name, ObjectForm form) => Member.Needed<DocumentedPart[]>(name, new ListForm<DocumentedPart>(form), "All of them; none where there is no solution.");

    private static DocumentedSolution Make(Values at) => new(at.Get(Case), at.Get(Level))
    {
        Exists = !at.Has(Why),
        Explanation = at.Or(Why, ""),
        Nodes = Array.AsReadOnly(at.Get(Nodes)),
        Branches = Array.AsReadOnly(at.Get(Branches)),
        Sources = Array.AsReadOnly(at.Get(Sources)),
        Loads = Array.AsReadOnly(at.Get(Loads)),
        Remarks = Array.AsReadOnly(at.Get(Remarks)),
    };
}

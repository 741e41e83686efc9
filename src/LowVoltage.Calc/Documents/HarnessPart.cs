using System.Text.Json;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A harness in a document.</summary>
internal static class HarnessPart
{
    private static readonly Member<string> Name = Member.Optional<string>("name", TextForm.Any, "What the harness is called.");
    private static readonly Member<DesignRules> Rules = Member.Needed<DesignRules>("rules", RulesPart.Form, "The practice that it is checked and sized by.");
    private static readonly Member<Place> Place = Member.Optional<Place>("place", PlacePart.Form, "Where the wires run that state no place.");
    private static readonly Member<InsulationMaterial> Insulation = Member.Optional<InsulationMaterial>("insulation", InsulationPart.Form, "The insulation of the wires that state none.");

    internal static Member<HarnessNode[]> Nodes { get; } = Member.Needed<HarnessNode[]>("nodes", new ListForm<HarnessNode>(HarnessNodePart.Form, 2), "The nodes.");

    internal static Member<string> Reference { get; } = Member.Optional<string>("reference_node", TextForm.Name, "The node that voltages are counted from; left out: the negative terminal of the first source.");

    internal static Member<HarnessSource[]> Sources { get; } = Member.Needed<HarnessSource[]>("sources", new ListForm<HarnessSource>(HarnessSourcePart.Form, 1), "The sources.");

    internal static Member<RawBranch[]> Branches { get; } = Member.Needed<RawBranch[]>("branches", new ListForm<RawBranch>(HarnessBranchPart.Form), "Wires, fuses, switches, chassis and stated resistances.");

    internal static Member<HarnessLoad[]> Loads { get; } = Member.Needed<HarnessLoad[]>("loads", new ListForm<HarnessLoad>(HarnessLoadPart.Form), "The loads.");

    internal static Member<LoadCase[]> Cases { get; } = Member.Optional<LoadCase[]>("load_cases", new ListForm<LoadCase>(LoadCasePart.Form), "The load cases; left out: everything on, and each load that has a start starting while all others run.");

    internal static Member[] Members { get; } = [Name, Rules, Place, Insulation, Nodes, Reference, Sources, Branches, Loads, Cases];

    internal static ObjectForm Form { get; } = new("harness", "A harness.", Make, Members, new HarnessNamesRule());

    internal static void Write(Utf8JsonWriter json, HarnessDocument harness)
    {
        json.WriteStartObject();
        WriteMembers(json, harness.Harness);
        json.WriteEndObject();
    }

    internal static void WriteMembers(Utf8JsonWriter json, Harness harness)
    {
        json.PutIf(Name, harness.Name);
        json.Put(Rules, harness.Rules, RulesPart.Write);
        json.PutAll(Nodes, harness.Nodes, HarnessNodePart.Write);
        if (harness.Parts.Reference is { } reference)
        {
            json.Put(Reference, reference);
        }

        json.PutAll(Sources, harness.Sources, HarnessSourcePart.Write);
        json.WriteStartArray(Branches.Encoded);
        foreach (HarnessBranch branch in harness.Branches)
        {
            HarnessBranchPart.Write(json, branch, harness.Rules);
        }

        json.WriteEndArray();
        json.PutAll(Loads, harness.Loads, HarnessLoadPart.Write);
        if (!harness.HasUsualCases)
        {
            json.PutAll(Cases, harness.LoadCases, LoadCasePart.Write);
        }
    }

    internal static HarnessDocument? Make(Values at)
    {
        HarnessUsual usual = new(at.Get(Rules), at.OrNull(Place), at.OrNull(Insulation));
        RawBranch[] raw = at.Get(Branches);
        HarnessBranch[] branches = [.. raw.Select(branch => branch.Settle(usual)).OfType<HarnessBranch>()];
        if (branches.Length < raw.Length)
        {
            return null;
        }

        HarnessParts parts = new(at.Or(Name, ""), usual.Rules)
        {
            Reference = at.OrNull(Reference),
            Nodes = at.Get(Nodes),
            Branches = branches,
            Sources = at.Get(Sources),
            Loads = at.Get(Loads),
            Cases = at.Or(Cases, []),
        };
        List<(string Part, string Text)> mistakes = HarnessMistakes.In(parts);
        foreach ((string part, string text) in mistakes)
        {
            at.Reading.Judge(PlaceOf(at, part), text);
        }

        return mistakes.Count == 0 ? new HarnessDocument(new Harness(parts)) : null;
    }

    // Names were asked before: what is left is about a branch or a source.
    private static DocumentNode PlaceOf(Values at, string part)
    {
        foreach (DocumentNode entry in (IEnumerable<DocumentNode>)[.. at.At(Branches).Items, .. at.At(Sources).Items])
        {
            if (entry.Find(HarnessBranchPart.Id.Name)?.Text == part)
            {
                return entry;
            }
        }

        return at.Node;
    }
}

using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>Names of a harness: each of its own, and none that names what is not there. Asked of the text, so that a mistake elsewhere hides none of these.</summary>
internal sealed class HarnessNamesRule : MemberRule
{
    // A schema compares no names.
    internal override bool IsOfShape => false;

    internal override void Check(DocumentNode node, Reading reading)
    {
        HashSet<string> nodes = Own(reading, "node", Entries(node, HarnessPart.Nodes, HarnessNodePart.Id));
        _ = Own(reading, "branch, source or load",
            [.. Entries(node, HarnessPart.Branches, HarnessBranchPart.Id), .. Entries(node, HarnessPart.Sources, HarnessBranchPart.Id), .. Entries(node, HarnessPart.Loads, HarnessBranchPart.Id)]);
        _ = Own(reading, "load case", Entries(node, HarnessPart.Cases, LoadCasePart.Name));
        foreach (DocumentNode end in (IEnumerable<DocumentNode>)
            [.. Entries(node, HarnessPart.Branches, HarnessBranchPart.From), .. Entries(node, HarnessPart.Branches, HarnessBranchPart.To), .. Ends(node, HarnessPart.Sources), .. Ends(node, HarnessPart.Loads)])
        {
            Known(reading, end, nodes, "node");
        }

        if (node.Find(HarnessPart.Reference.Name) is { Kind: ValueKind.Text } reference)
        {
            Known(reading, reference, nodes, "node");
        }

        foreach (DocumentNode used in List(node, HarnessPart.Cases))
        {
            CheckCase(node, used, reading);
        }
    }

    internal override void Describe(SchemaWriter schema)
    {
    }

    private static void CheckCase(DocumentNode node, DocumentNode used, Reading reading)
    {
        HashSet<string> loads = Texts(Entries(node, HarnessPart.Loads, HarnessBranchPart.Id));
        HashSet<string> switches = Texts(Entries(node, HarnessPart.Branches, HarnessBranchPart.Id, branch => branch.Find(KindForm.Kind) is { Text: HarnessBranchPart.Switch }));
        DocumentNode[] namedLoads = [.. Named(used, LoadCasePart.Off), .. Named(used, LoadCasePart.Starting), .. Named(used, LoadCasePart.Stalled)];
        DocumentNode[] namedSwitches = [.. Named(used, LoadCasePart.Closed), .. Named(used, LoadCasePart.Open)];
        foreach (DocumentNode load in namedLoads)
        {
            Known(reading, load, loads, "load");
        }

        foreach (DocumentNode contact in namedSwitches)
        {
            Known(reading, contact, switches, "switch");
        }

        _ = Own(reading, "load of this load case", namedLoads);
        _ = Own(reading, "switch of this load case", namedSwitches);
    }

    private static HashSet<string> Own(Reading reading, string what, IEnumerable<DocumentNode> ids)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (DocumentNode id in ids)
        {
            if (!seen.Add(id.Text))
            {
                reading.Judge(id, $"\"{DocumentNode.Short(id.Text)}\" is the name of another {what} before it; each needs a name of its own.");
            }
        }

        return seen;
    }

    private static void Known(Reading reading, DocumentNode id, HashSet<string> known, string what)
    {
        if (!known.Contains(id.Text))
        {
            reading.Judge(id, $"there is no {what} \"{DocumentNode.Short(id.Text)}\"; there {(known.Count == 0 ? "is none" : "are " + HarnessName.List(known))}.");
        }
    }

    private static HashSet<string> Texts(IEnumerable<DocumentNode> nodes) => new(nodes.Select(own => own.Text), StringComparer.Ordinal);

    private static IEnumerable<DocumentNode> Ends(DocumentNode node, Member list) => [.. Entries(node, list, HarnessSourcePart.Positive), .. Entries(node, list, HarnessSourcePart.Negative)];

    private static IEnumerable<DocumentNode> Named(DocumentNode used, Member list) => List(used, list).Where(own => own.Kind == ValueKind.Text);

    private static IEnumerable<DocumentNode> Entries(DocumentNode node, Member list, Member name, Func<DocumentNode, bool>? only = null) =>
        List(node, list).Where(own => only is null || only(own)).Select(own => own.Find(name.Name)).OfType<DocumentNode>().Where(own => own.Kind == ValueKind.Text);

    private static List<DocumentNode> List(DocumentNode node, Member list) => node.Find(list.Name) is { Kind: ValueKind.List } found ? found.Items : [];
}

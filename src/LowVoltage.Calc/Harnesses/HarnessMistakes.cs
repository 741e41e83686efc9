using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What is wrong with the parts of a harness, each mistake with the part that it is about.</summary>
internal static class HarnessMistakes
{
    /// <summary>Every mistake; empty when the parts make a harness.</summary>
    internal static List<(string Part, string Text)> In(HarnessParts parts)
    {
        List<(string Part, string Text)> found = [];
        HashSet<string> nodes = Repeated(parts.Nodes.Select(n => n.Id), "nodes", found);
        _ = Repeated([.. parts.Branches.Select(b => b.Id), .. parts.Sources.Select(s => s.Id), .. parts.Loads.Select(l => l.Id)], "branches, sources or loads", found);
        _ = Repeated(parts.Cases.Select(c => c.Name), "load cases", found);
        if (parts.Sources.Length == 0)
        {
            found.Add(("sources", "There is no source: a harness needs at least one."));
        }

        string there = $"the nodes are {HarnessName.List(nodes)}";
        foreach ((string id, string node) in Ends(parts))
        {
            if (!nodes.Contains(node))
            {
                found.Add((id, $"{id} names node {node}, which there is not; {there}."));
            }
        }

        if (parts.Reference is { } reference && !nodes.Contains(reference))
        {
            found.Add(("reference", $"The reference names node {reference}, which there is not; {there}."));
        }

        foreach (LoadCase used in parts.Cases)
        {
            found.AddRange(Unknown(parts, used).Select(text => (used.Name, text)));
        }

        if (found.Count == 0 && Loop(parts) is { } loop)
        {
            found.Add(loop);
        }

        return found;
    }

    /// <summary>Refuses a load case that names what the harness does not have.</summary>
    internal static void RefuseUnknown(Harness harness, LoadCase used, string parameter)
    {
        if (Unknown(harness.Parts, used).FirstOrDefault() is { } text)
        {
            throw new ArgumentException(text, parameter);
        }
    }

    private static HashSet<string> Repeated(IEnumerable<string> ids, string what, List<(string, string)> found)
    {
        HashSet<string> seen = new(StringComparer.Ordinal), said = new(StringComparer.Ordinal);
        foreach (string id in ids)
        {
            if (!seen.Add(id) && said.Add(id))
            {
                found.Add((id, $"Several {what} are named {id}; each needs a name of its own."));
            }
        }

        return seen;
    }

    private static IEnumerable<(string Id, string Node)> Ends(HarnessParts parts) =>
    [
        .. parts.Branches.SelectMany(b => new[] { (b.Id, b.From), (b.Id, b.To) }),
        .. parts.Sources.SelectMany(s => new[] { (s.Id, s.Positive), (s.Id, s.Negative) }),
        .. parts.Loads.SelectMany(l => new[] { (l.Id, l.Positive), (l.Id, l.Negative) }),
    ];

    private static IEnumerable<string> Unknown(HarnessParts parts, LoadCase used)
    {
        foreach (string load in used.NamedLoads.Where(id => !Array.Exists(parts.Loads, l => l.Id == id)))
        {
            yield return $"Load case {used.Name} names load {load}, which there is not; the loads are {HarnessName.List(parts.Loads.Select(l => l.Id))}.";
        }

        foreach (string contact in used.Switches.Keys.Where(id => !Array.Exists(parts.Branches, b => b is HarnessSwitch && b.Id == id)))
        {
            yield return $"Load case {used.Name} names switch {contact}, which there is not; the switches are {HarnessName.List(parts.Branches.OfType<HarnessSwitch>().Select(s => s.Id))}.";
        }
    }

    // With every switch closed: one that is open now may be closed by a load case.
    private static (string, string)? Loop(HarnessParts parts)
    {
        Dictionary<string, int> index = new(StringComparer.Ordinal);
        foreach (HarnessNode node in parts.Nodes)
        {
            index.Add(node.Id, index.Count);
        }

        List<Tie> ties = [];
        List<string> ids = [];
        foreach (HarnessBranch branch in parts.Branches.Where(b => b is not HarnessWire && b.FixedOhms == 0))
        {
            ties.Add(new Tie(index[branch.From], index[branch.To], 0));
            ids.Add(branch.Id);
        }

        foreach (HarnessSource source in parts.Sources.Where(s => s.Source is { } given && HarnessNetwork.IsIdeal(given.Numbers)))
        {
            ties.Add(new Tie(index[source.Positive], index[source.Negative], source.Source!.Numbers.NominalVolts));
            ids.Add(source.Id);
        }

        TieForest forest = new(index.Count, [.. ties], 0);
        return forest.Loop.Count == 0 ? null : (ids[forest.Loop[0]],
            $"Zero resistances or ideal voltages close a loop, in which nothing bounds the current: {HarnessName.List(forest.Loop.Select(k => ids[k]))}. Give one of them a resistance.");
    }
}

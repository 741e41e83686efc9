using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Looks at how a harness is connected.</summary>
internal static class HarnessFindings
{
    internal static IReadOnlyList<HarnessFinding> Of(Harness harness, HarnessVerifier verifier)
    {
        List<HarnessFinding> found = [];
        found.AddRange(verifier.NeverFed.Select(id => new HarnessFinding(
            FindingSeverity.Undetermined, $"Load {id} is fed in no load case: nothing of it was checked.", id)));
        found.AddRange(Islands(harness));
        found.AddRange(Unfused(harness));
        found.AddRange(GroundFuses(harness));
        found.AddRange(SharedFuses(harness));
        found.AddRange(Reversed(harness));
        return found.AsReadOnly();
    }

    private static IEnumerable<HarnessFinding> Islands(Harness harness)
    {
        HarnessGraph graph = harness.Graph;
        foreach (IGrouping<int, int> part in Enumerable.Range(0, harness.Nodes.Count).Where(n => graph.WayFrom(n).End == FeedEnd.Dead).GroupBy(n => graph.Part[n]))
        {
            string[] nodes = [.. part.Select(n => harness.Nodes[n].Id)];
            yield return new HarnessFinding(FindingSeverity.Warning, $"No source reaches {HarnessName.List(nodes)}.", nodes);
        }
    }

    // Wires between a source's positive terminal and the first fuse.
    private static IEnumerable<HarnessFinding> Unfused(Harness harness)
    {
        HarnessGraph graph = harness.Graph;
        HashSet<int> seen = [.. harness.SourceArray.Select(s => harness.NodeIndex(s.Positive))];
        Queue<int> waiting = new(seen);
        SortedSet<int> bare = [];
        while (waiting.Count > 0)
        {
            int node = waiting.Dequeue();
            for (int k = 0; k < harness.BranchArray.Length; k++)
            {
                if ((graph.From[k] != node && graph.To[k] != node) || harness.BranchArray[k] is HarnessFuse)
                {
                    continue;
                }

                _ = harness.BranchArray[k] is HarnessWire && bare.Add(k);
                if (seen.Add(graph.Other(k, node)))
                {
                    waiting.Enqueue(graph.Other(k, node));
                }
            }
        }

        foreach (int k in bare.Where(k => Bare(harness, k)))
        {
            yield return new HarnessFinding(
                FindingSeverity.Warning, $"Wire {harness.BranchArray[k].Id} is behind no fuse: nothing protects it in a short circuit. Keep it short and sheathed, or fuse it at the source.", harness.BranchArray[k].Id);
        }
    }

    // A supply that limits itself, or a panel, cannot overload a wire that carries its limit.
    private static bool Bare(Harness harness, int branch)
    {
        CaseDuty duty = new(harness, CaseGroup.Of(harness)[0]);
        LetThrough one = LetThrough.At(duty, branch, duty.Graph.From[branch]), other = LetThrough.At(duty, branch, duty.Graph.To[branch]);
        return Math.Max(one.Amperes, other.Amperes) > duty.WireOf(branch).RatedAmperes;
    }

    private static IEnumerable<HarnessFinding> GroundFuses(Harness harness)
    {
        HashSet<int> back = [];
        foreach (HarnessLoad load in harness.LoadArray)
        {
            back.UnionWith(harness.Graph.WayFrom(harness.NodeIndex(load.Negative)).Branches);
        }

        return back.Where(k => harness.BranchArray[k] is HarnessFuse).OrderBy(k => k).Select(k => new HarnessFinding(
            FindingSeverity.Warning,
            $"Fuse {harness.BranchArray[k].Id} is in the way back: when it opens, the loads stay at full voltage, and a fault to the chassis passes it by.",
            harness.BranchArray[k].Id));
    }

    // A fuse that is on no single way: beside another, in a ring, or between sources.
    private static IEnumerable<HarnessFinding> SharedFuses(Harness harness)
    {
        HarnessGraph graph = harness.Graph;
        foreach (int k in Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessFuse && !graph.IsFedFromOneEnd(k, out _)))
        {
            bool twin = Enumerable.Range(0, harness.BranchArray.Length).Any(j => j != k && harness.BranchArray[j] is HarnessFuse
                && ((graph.From[j] == graph.From[k] && graph.To[j] == graph.To[k]) || (graph.From[j] == graph.To[k] && graph.To[j] == graph.From[k])));
            FeedEnd end = graph.WayFrom(graph.To[k]).End;
            yield return twin
                ? new HarnessFinding(FindingSeverity.Warning, $"Fuse {harness.BranchArray[k].Id} has another beside it: each carries a share, and neither protects alone.", harness.BranchArray[k].Id)
                : end == FeedEnd.Ring
                ? new HarnessFinding(FindingSeverity.Warning, $"Fuse {harness.BranchArray[k].Id} is part of a ring: when it opens, what it protects is still fed from the other side.", harness.BranchArray[k].Id)
                : new HarnessFinding(FindingSeverity.Note, $"Fuse {harness.BranchArray[k].Id} lies between sources: when it is pulled, both its sides stay fed.", harness.BranchArray[k].Id);
        }
    }

    // With every load off a source stands at its own voltage, unless others push current through it backwards.
    private static IEnumerable<HarnessFinding> Reversed(Harness harness)
    {
        HarnessState state = new HarnessNetwork(harness, LoadCase.AllOn, new HarnessChange { LoadsOff = true }).Solve(SupplyLevel.Nominal);
        if (!state.Exists)
        {
            yield break;
        }

        for (int k = 0; k < harness.SourceArray.Length; k++)
        {
            HarnessSource source = harness.SourceArray[k];
            double volts = state.VoltsOfSource(k), amperes = Math.Abs(state.SourceAmperes[k]);
            if (source.Source is { } its && volts < 0.5 * its.Numbers.NominalVolts && amperes > 0 && !state.Disconnected[k])
            {
                yield return new HarnessFinding(
                    FindingSeverity.Fail,
                    $"With every load off source {source.Id} has {Accept.Short(volts)} V at its terminals and {Accept.Short(amperes)} A flow through it: it, or another source beside it, is connected the wrong way round or shorted.",
                    source.Id);
            }
        }
    }
}

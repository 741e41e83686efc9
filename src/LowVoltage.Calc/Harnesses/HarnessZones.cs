namespace LowVoltage.Calc.Harnesses;

/// <summary>Which fuse is the nearest towards the source, and which wires belong to one circuit.</summary>
internal sealed class HarnessZones
{
    private readonly Harness harness;
    private readonly HarnessGraph graph;
    private readonly int[] loadsBehind;

    private HarnessZones(Harness harness, HarnessGraph graph)
    {
        this.harness = harness;
        this.graph = graph;
        loadsBehind = new int[harness.BranchArray.Length];
        foreach (HarnessLoad load in harness.LoadArray)
        {
            foreach (int k in graph.WayFrom(harness.NodeIndex(load.Positive)).Branches.Concat(graph.WayFrom(harness.NodeIndex(load.Negative)).Branches))
            {
                loadsBehind[k]++;
            }
        }
    }

    internal static HarnessZones Of(Harness harness, HarnessGraph graph) => new(harness, graph);

    /// <summary>How many loads a branch that is fed from one end feeds or brings back.</summary>
    internal int LoadsBehind(int branch) => loadsBehind[branch];

    /// <summary>The wires on the way from a load's terminal to the nearest fuse, or to where other circuits join.</summary>
    internal int[] OwnWires(int terminal)
    {
        List<int> own = [];
        foreach (int k in graph.WayFrom(terminal).Branches)
        {
            if (harness.BranchArray[k] is HarnessFuse || loadsBehind[k] > 1)
            {
                break;
            }

            if (harness.BranchArray[k] is HarnessWire)
            {
                own.Add(k);
            }
        }

        return [.. own];
    }
}

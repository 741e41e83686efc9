using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Harnesses;

/// <content>The working.</content>
public sealed partial class HarnessSolution
{
    /// <summary>The working for one node, branch, source or load: the balance of currents at a node, the resistance, drop and loss of a wire, the drops on the way to a load and back.</summary>
    /// <param name="id">Its name. Where a node has the same name as something else, the node is meant.</param>
    /// <returns>The steps, each with its numbers.</returns>
    /// <remarks>The voltages of all nodes are found together and stand in the steps as found; what is worked out from them proves them.</remarks>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is nothing of that name.</exception>
    public WorkedSolution Explain(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        HarnessWorking working = new(state);
        return Array.FindIndex(Harness.Parts.Nodes, n => n.Id == id) is >= 0 and int node ? working.Node(node)
            : Array.FindIndex(Harness.BranchArray, b => b.Id == id) is >= 0 and int branch ? working.Branch(branch)
            : Array.FindIndex(Harness.LoadArray, l => l.Id == id) is >= 0 and int load ? working.Load(load)
            : Array.FindIndex(Harness.SourceArray, s => s.Id == id) is >= 0 and int source ? working.Source(source)
            : throw new ArgumentException($"The harness has nothing of the name {id}.", nameof(id));
    }
}

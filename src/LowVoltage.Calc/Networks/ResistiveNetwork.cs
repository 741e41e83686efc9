using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Networks;

/// <summary>Resistances, voltages, currents and powers between named nodes, solved in one call: every node's voltage and every element's current.</summary>
/// <remarks>
/// <code>at every node Σ I = 0    I = (V1 − V2)/R    I = (V1 − V2 − E)/R    I = P/(V1 − V2)</code>
/// <para>Any number of sources, ideal ones included, any mesh, rings and feeds from both ends: no equivalent has to be worked out by hand. A part that nothing joins to the reference
/// is answered too, its voltages counted from its own first node, and named.</para>
/// <para><b>Source.</b> Kirchhoff's laws; Lessons in Electric Circuits, Volume I - DC, chapter 10.</para>
/// <para><b>Accuracy.</b> Currents balance at every node to about 1e-15 of what the smallest resistance there could carry. Resistances do not warm up here.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed class ResistiveNetwork
{
    private readonly Dictionary<string, int> indices;

    private ResistiveNetwork(string reference, NetworkElement[] elements, string[] nodes, Dictionary<string, int> indices)
    {
        Reference = reference;
        ElementArray = elements;
        NodeArray = nodes;
        this.indices = indices;
    }

    /// <summary>Name of the node whose voltage is zero.</summary>
    public string Reference { get; }

    /// <summary>The elements, as they were given.</summary>
    public IReadOnlyList<NetworkElement> Elements => ElementArray;

    /// <summary>The nodes, in the order in which the elements first name them.</summary>
    public IReadOnlyList<string> Nodes => NodeArray;

    internal NetworkElement[] ElementArray { get; }

    internal string[] NodeArray { get; }

    internal static Reference Kirchhoff { get; } = new()
    {
        Title = "Lessons in Electric Circuits, Volume I - DC", Locator = "chapter 10", Kind = ReferenceKind.Handbook, Note = "Kirchhoff's laws, node voltages.",
    };

    /// <summary>A network.</summary>
    /// <param name="reference">Name of the node whose voltage is zero; an element must name it too.</param>
    /// <param name="elements">The elements, each with a name of its own, at least one of them a source.</param>
    /// <returns>The network.</returns>
    /// <exception cref="ArgumentNullException">An argument or an element is null.</exception>
    /// <exception cref="ArgumentException">Two elements have one name, no element names the reference, there is no source, ideal voltages and zero resistances close a loop, or a
    /// current has no way back. The message names them.</exception>
    public static ResistiveNetwork Create(string reference, params NetworkElement[] elements)
    {
        _ = reference ?? throw new ArgumentNullException(nameof(reference));
        _ = elements ?? throw new ArgumentNullException(nameof(elements));
        NetworkElement[] own = [.. elements];
        Dictionary<string, int> indices = new(StringComparer.Ordinal);
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (NetworkElement element in own)
        {
            _ = element ?? throw new ArgumentNullException(nameof(elements));
            if (!ids.Add(element.Id))
            {
                throw new ArgumentException($"Two elements are named {element.Id}; each needs a name of its own.", nameof(elements));
            }

            _ = Index(indices, element.First);
            _ = Index(indices, element.Second);
        }

        if (!Array.Exists(own, e => e.Kind is NetworkElementKind.VoltageSource or NetworkElementKind.Current))
        {
            throw new ArgumentException("There is no source: at least one element must be a voltage or a current.", nameof(elements));
        }

        if (!indices.ContainsKey(reference))
        {
            throw new ArgumentException($"No element names the reference node {reference}; the nodes are {string.Join(", ", indices.Keys)}.", nameof(reference));
        }

        string[] nodes = new string[indices.Count];
        foreach (KeyValuePair<string, int> node in indices)
        {
            nodes[node.Value] = node.Key;
        }

        ResistiveNetwork network = new(reference, own, nodes, indices);
        return (LoopText(network) ?? OneWayText(network)) is { } wrong ? throw new ArgumentException(wrong, nameof(elements)) : network;
    }

    /// <summary>Solves the network.</summary>
    /// <returns>Voltages, currents and powers, or the reason why there are none.</returns>
    public ResistiveNetworkSolution Solve() => ResistiveNetworkSolution.Of(this);

    /// <summary>The place of a node that an element names.</summary>
    internal int IndexOf(string node) => indices[node];

    internal int IndexOf(string node, string parameter) =>
        indices.TryGetValue(node ?? throw new ArgumentNullException(parameter), out int index)
            ? index
            : throw new ArgumentException($"There is no node {node}; the nodes are {string.Join(", ", NodeArray)}.", parameter);

    internal NetworkSolver ToSolver()
    {
        (Element[] elements, Tie[] ties) = Parts();
        return new NetworkSolver(NetworkShape.Create(NodeArray.Length, indices[Reference], elements, ties), elements, ties);
    }

    private (Element[] Elements, Tie[] Ties) Parts() =>
    (
        [.. ElementArray.Where(e => !e.IsTie).Select(e => e.ToElement(indices[e.First], indices[e.Second]))],
        [.. ElementArray.Where(e => e.IsTie).Select(e => e.ToTie(indices[e.First], indices[e.Second]))]
    );

    private static int Index(Dictionary<string, int> indices, string node)
    {
        if (!indices.TryGetValue(node, out int index))
        {
            index = indices.Count;
            indices.Add(node, index);
        }

        return index;
    }

    private static string? LoopText(ResistiveNetwork network)
    {
        NetworkElement[] ties = Array.FindAll(network.ElementArray, e => e.IsTie);
        TieForest forest = new(network.NodeArray.Length, network.Parts().Ties, network.indices[network.Reference]);
        return forest.Loop.Count > 0
            ? $"Ideal voltages or zero resistances close a loop, in which nothing bounds the current: {string.Join(", ", forest.Loop.Select(k => ties[k].Id))}. Give one of them a resistance."
            : null;
    }

    // A current into a part that nothing else leaves must come out of it again as a stated current.
    private static string? OneWayText(ResistiveNetwork network)
    {
        (Element[] elements, Tie[] ties) = network.Parts();
        int[] grounds = NetworkShape.Create(network.NodeArray.Length, network.indices[network.Reference], elements, ties).Grounds;
        double[] balance = new double[grounds.Length], through = new double[grounds.Length];
        NetworkElement[] across = Array.FindAll(
            network.ElementArray, e => e.Kind == NetworkElementKind.Current && grounds[network.indices[e.First]] != grounds[network.indices[e.Second]]);
        foreach (NetworkElement current in across)
        {
            int from = grounds[network.indices[current.First]], to = grounds[network.indices[current.Second]];
            balance[from] -= current.Value;
            balance[to] += current.Value;
            through[from] += current.Value;
            through[to] += current.Value;
        }

        return Enumerable.Range(0, balance.Length).Any(k => Math.Abs(balance[k]) > 1e-12 * through[k])
            ? $"The currents {string.Join(", ", across.Select(e => e.Id))} cross between parts of the network that nothing else joins, and do not come back: join them with a resistance."
            : null;
    }
}

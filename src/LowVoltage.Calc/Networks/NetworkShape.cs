using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Networks;

/// <summary>What hangs on what, and in which order the unknown voltages are eliminated. Found once for a network; its numbers may change. Immutable.</summary>
/// <remarks>
/// The unknowns are the voltages of the groups of tied nodes over the reference. An island (a part that no element but a <see cref="ElementLaw.Drawn"/> current joins
/// to the reference) is counted from its own first node.
/// </remarks>
internal sealed class NetworkShape
{
    private NetworkShape(int nodes, TieForest forest, int[] grounds, int[] slots, SymmetricPattern pattern, int[] entries)
    {
        Entries = entries;
        Nodes = nodes;
        Forest = forest;
        Grounds = grounds;
        Slots = slots;
        Pattern = pattern;
    }

    internal int Nodes { get; }

    internal TieForest Forest { get; }

    /// <summary>The node that the island of each node is counted from.</summary>
    internal int[] Grounds { get; }

    /// <summary>The place of each node's voltage among the unknowns; the count of unknowns for a node that needs none.</summary>
    internal int[] Slots { get; }

    internal SymmetricPattern Pattern { get; }

    /// <summary>The place in the matrix of what each element couples; one beyond the last where it couples nothing.</summary>
    internal int[] Entries { get; }

    /// <param name="nodes">Number of nodes.</param>
    /// <param name="reference">The node whose voltage is zero.</param>
    /// <param name="elements">The elements; each between two different nodes.</param>
    /// <param name="ties">The ties; they close no loop.</param>
    internal static NetworkShape Create(int nodes, int reference, Element[] elements, Tie[] ties)
    {
        TieForest forest = new(nodes, ties, reference);
        if (forest.Loop.Count > 0)
        {
            throw new ArgumentException("Ties close a loop.", nameof(ties));
        }

        int[] grounds = Islands(nodes, reference, elements, forest);
        int[] slots = new int[nodes];
        int count = 0;
        for (int node = 0; node < nodes; node++)
        {
            slots[node] = forest.Root[node] == node && forest.Root[grounds[node]] != node ? count++ : -1;
        }

        SymmetricPattern pattern = SymmetricPattern.Create(count, Meetings(elements, forest, slots));
        int[] placed = new int[nodes];
        for (int node = 0; node < nodes; node++)
        {
            int own = slots[forest.Root[node]];
            placed[node] = own < 0 ? count : pattern.Position[own];
        }

        int[] entries = new int[elements.Length];
        for (int k = 0; k < entries.Length; k++)
        {
            int a = placed[elements[k].Positive], b = placed[elements[k].Negative];
            entries[k] = a == b || a == count || b == count ? pattern.Rows.Length : pattern.EntryOf(a, b);
        }

        return new NetworkShape(nodes, forest, grounds, placed, pattern, entries);
    }

    private static List<(int A, int B)> Meetings(Element[] elements, TieForest forest, int[] slots)
    {
        List<(int A, int B)> ends = [];
        foreach (ref readonly Element element in elements.AsSpan())
        {
            int a = slots[forest.Root[element.Positive]], b = slots[forest.Root[element.Negative]];
            if (a >= 0 && b >= 0 && a != b)
            {
                ends.Add((a, b));
            }
        }

        return ends;
    }

    private static int[] Islands(int nodes, int reference, Element[] elements, TieForest forest)
    {
        int[] lead = [.. forest.Root];
        foreach (ref readonly Element element in elements.AsSpan())
        {
            if (element.Law != ElementLaw.Drawn)
            {
                lead[Leader(lead, element.Positive)] = Leader(lead, element.Negative);
            }
        }

        // Counted from the reference where it is in the island, else from the island's first node.
        int[] ground = [.. Enumerable.Repeat(-1, nodes)];
        ground[Leader(lead, reference)] = reference;
        int[] result = new int[nodes];
        for (int node = 0; node < nodes; node++)
        {
            int island = Leader(lead, node);
            ground[island] = ground[island] < 0 ? node : ground[island];
            result[node] = ground[island];
        }

        return result;
    }

    private static int Leader(int[] lead, int node)
    {
        while (lead[node] != node)
        {
            lead[node] = lead[lead[node]];
            node = lead[node];
        }

        return node;
    }
}

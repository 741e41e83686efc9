namespace LowVoltage.Calc.Harnesses;

/// <summary>Names of what a harness is made of.</summary>
internal static class HarnessName
{
    internal static string Check(string id, string parameter)
    {
        _ = id ?? throw new ArgumentNullException(parameter);
        if (id.Trim().Length == 0)
        {
            throw new ArgumentException("A name must not be empty.", parameter);
        }

        // What no drawing and no document can hold.
        for (int at = 0; at < id.Length; at++)
        {
            if (!IsText(id, at))
            {
                throw new ArgumentException($"A name must be text without control characters; it had U+{(int)id[at]:X4} as character {Quantities.Accept.Text(at + 1)}.", parameter);
            }
        }

        return id;
    }

    private static bool IsText(string id, int at) =>
        !char.IsControl(id[at]) && id[at] is not ('\uFFFE' or '\uFFFF') && (!char.IsSurrogate(id[at]) || char.IsSurrogatePair(id, char.IsHighSurrogate(id[at]) ? at : Math.Max(0, at - 1)));

    /// <summary>The two nodes that something lies between.</summary>
    internal static void CheckEnds(string id, string from, string to, string parameter)
    {
        if (string.Equals(from, to, StringComparison.Ordinal))
        {
            throw new ArgumentException($"{id} runs from node {from} to itself; it needs two different nodes.", parameter);
        }
    }

    /// <summary>A few names for a message, the rest counted.</summary>
    internal static string List(IEnumerable<string> ids)
    {
        const int most = 12;
        string[] all = [.. ids];
        return all.Length <= most ? string.Join(", ", all) : $"{string.Join(", ", all.Take(most))} and {Quantities.Accept.Text(all.Length - most)} more";
    }
}

namespace LowVoltage.Calc.Harnesses;

/// <summary>The way of least resistance from a node to the terminal of a source.</summary>
internal static class NearestWay
{
    private const int None = -1;

    /// <summary>The branches of the way, from the node on.</summary>
    /// <param name="duty">The harness and its wires as warm as they are.</param>
    /// <param name="node">Where the way begins.</param>
    /// <param name="plus">Whether a positive terminal is sought, or a negative one.</param>
    /// <param name="terminal">The node of the terminal; −1 where there is none.</param>
    internal static int[] From(CaseDuty duty, int node, bool plus, out int terminal) =>
        To(duty, node, [.. duty.Harness.SourceArray.Select(s => duty.Harness.NodeIndex(plus ? s.Positive : s.Negative))], out terminal);

    /// <summary>The same to one of several nodes.</summary>
    internal static int[] To(CaseDuty duty, int node, HashSet<int> ends, out int terminal)
    {
        Harness harness = duty.Harness;
        HashSet<int> gone = [.. duty.Open];
        double[] far = [.. Enumerable.Repeat(double.PositiveInfinity, harness.Nodes.Count)];
        int[] by = [.. Enumerable.Repeat(None, harness.Nodes.Count)];
        bool[] done = new bool[harness.Nodes.Count];
        far[node] = 0;
        while (true)
        {
            int at = None;
            for (int k = 0; k < far.Length; k++)
            {
                at = !done[k] && !double.IsInfinity(far[k]) && (at < 0 || far[k] < far[at]) ? k : at;
            }

            if (at < 0 || ends.Contains(at))
            {
                terminal = at;
                return at < 0 ? [] : Back(harness, by, at);
            }

            done[at] = true;
            foreach (int k in harness.Graph.At(at))
            {
                int other = harness.Graph.Other(k, at);
                double distance = far[at] + duty.OhmsNow(k);
                if (!gone.Contains(k) && distance < far[other])
                {
                    (far[other], by[other]) = (distance, k);
                }
            }
        }
    }

    private static int[] Back(Harness harness, int[] by, int at)
    {
        List<int> way = [];
        for (int k = at; by[k] >= 0; k = harness.Graph.Other(by[k], k))
        {
            way.Add(by[k]);
        }

        way.Reverse();
        return [.. way];
    }
}

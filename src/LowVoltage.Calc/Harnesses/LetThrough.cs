using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What can reach one end of a wire that lies between sources or in a ring: the fuses nearest to it, and supplies that limit themselves.</summary>
/// <param name="Amperes">The sum of their ratings and limits; +∞ where a battery reaches it through no fuse.</param>
/// <param name="Fuses">Branches of those fuses.</param>
/// <param name="IsReturn">Whether the end lies on the way back.</param>
/// <param name="Nodes">The nodes that are joined to the end through no fuse.</param>
internal sealed record LetThrough(double Amperes, int[] Fuses, bool IsReturn, HashSet<int> Nodes)
{
    internal static LetThrough At(CaseDuty duty, int wire, int node) => Walk(duty, wire, node, new HashSet<int>());

    private static LetThrough Walk(CaseDuty duty, int wire, int node, HashSet<int> sources)
    {
        Harness harness = duty.Harness;
        HashSet<int> seen = [node], fuses = [];
        Queue<int> waiting = new([node]);
        while (waiting.Count > 0)
        {
            int at = waiting.Dequeue();
            foreach (int k in duty.Graph.At(at).Where(k => k != wire))
            {
                if (harness.BranchArray[k] is HarnessFuse)
                {
                    _ = fuses.Add(k);
                }
                else if (seen.Add(duty.Graph.Other(k, at)))
                {
                    waiting.Enqueue(duty.Graph.Other(k, at));
                }
            }
        }

        double sum = fuses.Sum(k => ((HarnessFuse)harness.BranchArray[k]).Rating!.Amperes);
        bool back = false;
        for (int s = 0; s < harness.SourceArray.Length; s++)
        {
            HarnessSource source = harness.SourceArray[s];
            if (seen.Contains(harness.NodeIndex(source.Positive)))
            {
                sum += Most(source);
            }
            else if (seen.Contains(harness.NodeIndex(source.Negative)) && sources.Add(s))
            {
                // What comes back to a source has left it through the fuses at its other terminal.
                back = true;
                sum += Math.Min(Most(source), Walk(duty, -1, harness.NodeIndex(source.Positive), sources).Fused(harness));
            }
        }

        return new LetThrough(sum, [.. fuses], back, seen);
    }

    // What the fuses there let out, not counting the source itself.
    private double Fused(Harness harness) => Fuses.Length == 0 ? double.PositiveInfinity : Fuses.Sum(k => ((HarnessFuse)harness.BranchArray[k]).Rating!.Amperes);

    private static double Most(HarnessSource source) => source.Panel?.ShortAmperes ?? source.Source!.Numbers.HeldAmperes;
}

using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Which sources may be the nearest to a load, in resistance, anywhere within the tolerances.</summary>
internal static class EnclosureNearest
{
    internal static IEnumerable<int> Of(Harness harness, EnclosureNetwork network, EnclosureWires wires, Interval[] heat, int load)
    {
        int from = harness.NodeIndex(harness.LoadArray[load].Positive);
        double[] least = Distances(harness, network, wires, heat, from, greatest: false), most = Distances(harness, network, wires, heat, from, greatest: true);
        int[] nodes = [.. harness.SourceArray.Select(s => harness.NodeIndex(s.Positive))];
        double nearest = nodes.Min(n => most[n]);
        return Enumerable.Range(0, nodes.Length).Where(k => least[nodes[k]] <= nearest && !double.IsInfinity(least[nodes[k]]));
    }

    private static double[] Distances(Harness harness, EnclosureNetwork network, EnclosureWires wires, Interval[] heat, int from, bool greatest)
    {
        double[] far = [.. Enumerable.Repeat(double.PositiveInfinity, harness.Nodes.Count)];
        bool[] done = new bool[far.Length];
        far[from] = 0;
        while (true)
        {
            int at = -1;
            for (int k = 0; k < far.Length; k++)
            {
                at = !done[k] && !double.IsInfinity(far[k]) && (at < 0 || far[k] < far[at]) ? k : at;
            }

            if (at < 0)
            {
                return far;
            }

            done[at] = true;
            foreach (int k in harness.Graph.At(at))
            {
                if (network.OfBranch[k] >= 0 || network.TieOfBranch[k] >= 0)
                {
                    int other = harness.Graph.Other(k, at);
                    far[other] = Math.Min(far[other], far[at] + Ohms(network, wires, heat, k, greatest));
                }
            }
        }
    }

    private static double Ohms(EnclosureNetwork network, EnclosureWires wires, Interval[] heat, int k, bool greatest)
    {
        if (network.OfBranch[k] < 0)
        {
            return 0;
        }

        return greatest ? wires.Ohms[k].High + (wires.Cubic[k].High * heat[k].Greatest * heat[k].Greatest) : wires.Ohms[k].Low;
    }
}

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The question behind the sizing of a harness on plain numbers: of every wire one of its options, the drops on the way of each load within its allowance, the least cost in all.</summary>
/// <remarks>A wire's drop counts for every load whose current it carries or brings back. Currents are taken as they are: whoever asks works them out again with the sizes found.</remarks>
/// <param name="Cost">For every wire the cost of each of its options, smallest first.</param>
/// <param name="Drop">For every wire the drop of each of its options, V; never rising with the option.</param>
/// <param name="Loads">For every wire the loads that its drop counts for, ascending.</param>
/// <param name="Allowance">What each load may lose in these wires, V.</param>
internal sealed record SizingProblem(double[][] Cost, double[][] Drop, int[][] Loads, double[] Allowance)
{
    private int[][]? beside;

    internal int Wires => Cost.Length;

    /// <summary>Of each wire those others that share a load with it, in rising order.</summary>
    internal int[][] Beside => beside ??= FindBeside();

    /// <summary>Whether any two wires serve loads of which the one's are among the other's, or none in common: then the wires form a tree.</summary>
    internal bool IsTree => SizingTree.TryCreate(this) is not null;

    internal double CostOf(int[] options)
    {
        double sum = 0;
        for (int w = 0; w < options.Length; w++)
        {
            sum += Cost[w][options[w]];
        }

        return sum;
    }

    /// <summary>What the drops leave of each load's allowance, V; less than nothing where it is passed.</summary>
    internal double[] Left(int[] options)
    {
        double[] left = [.. Allowance];
        for (int w = 0; w < options.Length; w++)
        {
            foreach (int load in Loads[w])
            {
                left[load] -= Drop[w][options[w]];
            }
        }

        return left;
    }

    internal bool Fits(int[] options) => Array.TrueForAll(Left(options), left => left >= 0);

    private int[][] FindBeside()
    {
        List<int>[] ofLoad = [.. Allowance.Select(_ => new List<int>())];
        for (int w = 0; w < Wires; w++)
        {
            foreach (int load in Loads[w])
            {
                ofLoad[load].Add(w);
            }
        }

        return [.. Enumerable.Range(0, Wires).Select(w => Loads[w].SelectMany(load => ofLoad[load]).Where(other => other != w).Distinct().OrderBy(other => other).ToArray())];
    }
}

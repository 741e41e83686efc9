using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The sizing of a harness at given currents: options of each wire, what its drop counts for, what each load may lose.</summary>
/// <remarks>Each wire is counted at the greatest current that it carries in any load case and at any supply level, as warm as its greatest r.m.s. current makes it.</remarks>
internal sealed class SizingModel
{
    private readonly SizingProblem problem;
    private readonly WireOptions[] options;
    private readonly double[] meters;
    private readonly string[] loads;
    private TreeSizer? tree;

    private SizingModel(SizingProblem problem, WireOptions[] options, double[] meters, string[] loads)
    {
        this.problem = problem;
        this.options = options;
        this.meters = meters;
        this.loads = loads;
    }

    internal bool IsTree => problem.IsTree;

    internal IReadOnlyList<(double Room, double Cost)> Front => tree?.Front ?? [];

    /// <summary>The largest size of every wire.</summary>
    internal int[] Largest => [.. options.Select(o => o.Conductors.Length - 1)];

    internal static SizingModel Of(
        Harness asked, Harness now, CaseDuty[] duties, HarnessBranches[] branches, int[] wires, Conductor[] series, int[] least, double[] tightened, Func<Conductor, double> costPerMeter)
    {
        int count = now.BranchArray.Length;
        double[] on = new double[count];
        int[] hottest = new int[count];
        for (int k = 0; k < count; k++)
        {
            for (int c = 0; c < duties.Length; c++)
            {
                on[k] = Math.Max(on[k], duties[c].On[k]);
                hottest[k] = duties[c].Heat[k] > duties[hottest[k]].Heat[k] ? c : hottest[k];
            }
        }

        HarnessWays ways = new(now, duties[0]);
        WireOptions[] options = new WireOptions[wires.Length];
        double[][] cost = new double[wires.Length][], drop = new double[wires.Length][];
        double[] lengths = new double[wires.Length];
        for (int w = 0; w < wires.Length; w++)
        {
            int k = wires[w];
            HarnessWire wire = (HarnessWire)now.BranchArray[k];
            options[w] = WireOptions.Of(branches[hottest[k]], k, series, ways.FuseOf(k) ?? TieFuse(now, duties[0], k), least[w]);
            int first = Math.Min(options[w].Least, series.Length - 1);
            lengths[w] = wire.Meters;
            cost[w] = [.. series.Skip(first).Select(s => costPerMeter(s) * wire.Meters * wire.Parallel)];
            drop[w] = [.. series.Skip(first).Select(s => on[k] * branches[hottest[k]].OhmsOfCandidate(k, s))];
            Falling(drop[w]);
        }

        double[] allowance = new double[asked.LoadArray.Length];
        for (int l = 0; l < allowance.Length; l++)
        {
            allowance[l] = Allowance(now, duties, l) - tightened[l];
            foreach (int k in ways.Of(l).Where(k => Array.IndexOf(wires, k) < 0))
            {
                allowance[l] -= on[k] * duties[0].OhmsNow(k);
            }

            foreach (int w in Enumerable.Range(0, wires.Length).Where(w => ways.Of(l).Contains(wires[w])))
            {
                allowance[l] -= on[wires[w]] * now.BranchArray[wires[w]].FixedOhms;
            }
        }

        // What even the largest sizes do not keep cannot be cured by copper: it fails, and holds no wire up.
        for (int l = 0; l < allowance.Length; l++)
        {
            double smallest = Enumerable.Range(0, wires.Length).Where(w => ways.Of(l).Contains(wires[w])).Sum(w => drop[w][drop[w].Length - 1]);
            allowance[l] = allowance[l] < smallest ? double.PositiveInfinity : allowance[l];
        }

        int[][] serves = [.. wires.Select(k => Enumerable.Range(0, allowance.Length).Where(l => !double.IsInfinity(allowance[l]) && ways.Of(l).Contains(k)).ToArray())];
        return new SizingModel(new SizingProblem(cost, drop, serves, allowance), options, lengths, [.. asked.LoadArray.Select(l => l.Id)]);
    }

    /// <summary>Sizes as indices of the series; null where none keep every allowance.</summary>
    internal int[]? Solve()
    {
        tree = TreeSizer.TryCreate(problem);
        int[]? found = tree is null ? GreedySizer.Solve(problem) : tree.Solve();
        return found is null ? null : [.. found.Select((option, w) => First(w) + option)];
    }

    internal double CostOfSizes(int[] sizes) => problem.CostOf([.. sizes.Select((s, w) => Math.Max(0, s - First(w)))]);

    internal double[] LeftAt(int[] sizes) => problem.Left([.. sizes.Select((s, w) => Math.Max(0, s - First(w)))]);

    internal double LowerBound(double known)
    {
        if (IsTree)
        {
            return Solve() is { } found ? CostOfSizes(found) : known;
        }

        return SizingBound.Of(problem, known);
    }

    /// <summary>Cost where every wire may lose the share of each allowance that it has of the way's length.</summary>
    internal double DividedByLength()
    {
        double[] way = new double[problem.Allowance.Length];
        for (int w = 0; w < meters.Length; w++)
        {
            foreach (int l in problem.Loads[w])
            {
                way[l] += meters[w];
            }
        }

        double sum = 0;
        for (int w = 0; w < meters.Length; w++)
        {
            double most = problem.Loads[w].Select(l => problem.Allowance[l] * meters[w] / way[l]).DefaultIfEmpty(double.PositiveInfinity).Min();
            int option = Array.FindIndex(problem.Drop[w], d => d <= most);
            if (option < 0)
            {
                return double.PositiveInfinity;
            }

            sum += problem.Cost[w][option];
        }

        return sum;
    }

    /// <summary>Cost where the way of each load is sized by itself for its whole allowance, and a wire takes the largest of the sizes that its loads ask for; +∞ where a way has no answer.</summary>
    internal double CircuitByCircuit()
    {
        int[] chosen = new int[problem.Wires], only = [0];
        for (int l = 0; l < problem.Allowance.Length; l++)
        {
            int[] way = [.. Enumerable.Range(0, problem.Wires).Where(w => Array.IndexOf(problem.Loads[w], l) >= 0)];
            SizingProblem alone = new([.. way.Select(w => problem.Cost[w])], [.. way.Select(w => problem.Drop[w])], [.. way.Select(_ => only)], [problem.Allowance[l]]);
            int[]? found = way.Length == 0 ? [] : TreeSizer.TryCreate(alone)!.Solve();
            if (found is null)
            {
                return double.PositiveInfinity;
            }

            for (int n = 0; n < way.Length; n++)
            {
                chosen[way[n]] = Math.Max(chosen[way[n]], found[n]);
            }
        }

        return problem.CostOf(chosen);
    }

    /// <summary>Why a wire is no smaller.</summary>
    internal string HeldBy(int wire, int size, double[] left)
    {
        if (size == 0)
        {
            return "the smallest of the series";
        }

        int option = size - First(wire);
        if (option <= 0)
        {
            return options[wire].HeldBy?.Name ?? "a check of the whole way";
        }

        double more = problem.Drop[wire][option - 1] - problem.Drop[wire][option];
        int tight = problem.Loads[wire].OrderBy(l => left[l]).Where(l => left[l] < more).DefaultIfEmpty(-1).First();
        return tight >= 0 ? $"voltage drop of {loads[tight]}" : "a check of the whole way";
    }

    // Between sources: the larger of the fuses that stand alone at one of its ends.
    private static HarnessFuse? TieFuse(Harness now, CaseDuty duty, int branch)
    {
        LetThrough[] ends = [LetThrough.At(duty, branch, duty.Graph.From[branch]), LetThrough.At(duty, branch, duty.Graph.To[branch])];
        return ends.Where(e => !e.IsReturn && e.Fuses.Length == 1).Select(e => (HarnessFuse)now.BranchArray[e.Fuses[0]]).OrderByDescending(f => f.Rating?.Amperes ?? 0).FirstOrDefault();
    }

    private int First(int wire) => Math.Min(options[wire].Least, options[wire].Conductors.Length - 1);

    // A larger size of another make may have a little more resistance: a drop never counts as rising.
    private static void Falling(double[] drop)
    {
        for (int k = 1; k < drop.Length; k++)
        {
            drop[k] = Math.Min(drop[k], drop[k - 1]);
        }
    }

    private static double Allowance(Harness now, CaseDuty[] duties, int load)
    {
        HarnessLoad at = now.LoadArray[load];
        double most = double.PositiveInfinity;
        if ((at.DropLimit ?? now.Rules.DropLimit).TryVolts(now.NominalVolts, at.Intermittent, out double volts))
        {
            most = volts;
        }

        if (at.Load.MinimumVolts is { } least)
        {
            foreach (CaseDuty duty in duties.Where(d => d.IsOn(load)))
            {
                WireDuty of = duty.DutyOf(load);
                most = of.Exists ? Math.Min(most, of.LeastLoadVolts + of.DropVolts - least) : most;
            }
        }

        return most;
    }
}

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>The least cost on a tree, exactly: from the leaves up, of each part those choices that no other beats in both the room it leaves and its cost.</summary>
/// <remarks>
/// <code>room of a part = least over its loads of (allowance − drops inside)    two parts side by side: the lesser room, the sum of the costs    a wire above: room − its drop, cost + its own</code>
/// <para>Every choice that is dropped is beaten by one that is kept, and stays beaten by whatever is added above: what is left at the root with room of zero or more and the least cost is the least of all.</para>
/// </remarks>
internal sealed class TreeSizer
{
    private readonly SizingProblem problem;
    private readonly SizingTree tree;
    private readonly List<Choice>[] fronts;

    private TreeSizer(SizingProblem problem, SizingTree tree)
    {
        this.problem = problem;
        this.tree = tree;
        fronts = new List<Choice>[problem.Wires];
    }

    /// <summary>How many choices were kept in all.</summary>
    internal int Kept { get; private set; }

    /// <summary>The room and cost of the choices for the whole harness that nothing beats, by rising room: what more allowance saves, and less costs.</summary>
    internal IReadOnlyList<(double Room, double Cost)> Front { get; private set; } = [];

    /// <summary>The sizer of a problem that is a tree; else null.</summary>
    internal static TreeSizer? TryCreate(SizingProblem problem) => SizingTree.TryCreate(problem) is { } tree ? new TreeSizer(problem, tree) : null;

    /// <summary>The options of least cost; null where no choice keeps every allowance.</summary>
    internal int[]? Solve()
    {
        foreach (int wire in tree.Order)
        {
            fronts[wire] = Above(wire, Side([.. tree.Below[wire].Select(b => fronts[b])], Room(tree.OwnLoads[wire])));
            Kept += fronts[wire].Count;
        }

        HashSet<int> served = [.. problem.Loads.SelectMany(l => l)];
        List<Choice> whole = Side([.. tree.Roots.Select(r => fronts[r])], Room([.. Enumerable.Range(0, problem.Allowance.Length).Where(l => !served.Contains(l))]));
        Front = [.. whole.Select(c => (c.Room, c.Cost))];
        Choice? best = whole.Find(c => c.Room >= 0);
        if (best is null)
        {
            return null;
        }

        int[] options = new int[problem.Wires];
        Stack<Choice> waiting = new([best]);
        while (waiting.Count > 0)
        {
            Choice choice = waiting.Pop();
            if (choice.Wire >= 0)
            {
                options[choice.Wire] = choice.Option;
            }

            foreach (Choice part in choice.Parts)
            {
                waiting.Push(part);
            }
        }

        return options;
    }

    private double Room(int[] loads)
    {
        double room = double.PositiveInfinity;
        foreach (int load in loads)
        {
            room = Math.Min(room, problem.Allowance[load]);
        }

        return room;
    }

    // Parts side by side, by rising room and cost: for each room that one of them leaves, of each part the cheapest that leaves as much.
    private static List<Choice> Side(List<Choice>[] parts, double room)
    {
        if (parts.Length == 0)
        {
            return [new Choice(room, 0, -1, 0, [])];
        }

        if (parts.Length == 1 && double.IsPositiveInfinity(room))
        {
            return parts[0];
        }

        int[] at = new int[parts.Length];
        List<Choice> side = [];
        while (true)
        {
            double least = room, cost = 0;
            int tightest = -1;
            for (int k = 0; k < parts.Length; k++)
            {
                Choice choice = parts[k][at[k]];
                cost += choice.Cost;
                if (choice.Room < least)
                {
                    (least, tightest) = (choice.Room, k);
                }
            }

            side.Add(new Choice(least, cost, -1, 0, [.. parts.Select((part, k) => part[at[k]])]));
            if (tightest < 0 || ++at[tightest] == parts[tightest].Count)
            {
                return Pruned(side);
            }
        }
    }

    // The choices below stand by rising room and cost, and so they do with any one size of the wire above: merged from the greatest room down, only what is kept is made.
    private List<Choice> Above(int wire, List<Choice> below)
    {
        double[] cost = problem.Cost[wire], drop = problem.Drop[wire];
        int[] at = [.. Enumerable.Repeat(below.Count - 1, cost.Length)];
        List<Choice> kept = [];
        double cheapest = double.PositiveInfinity;
        while (true)
        {
            int next = -1;
            double most = 0, least = 0;
            for (int option = 0; option < at.Length; option++)
            {
                // What is no cheaper than what has more room is passed over at once.
                while (at[option] >= 0 && below[at[option]].Cost + cost[option] >= cheapest * (1 - 1e-14))
                {
                    at[option]--;
                }

                if (at[option] < 0)
                {
                    continue;
                }

                Choice choice = below[at[option]];
                double room = choice.Room - drop[option], its = choice.Cost + cost[option];
                if (next < 0 || room > most || (room == most && its < least))
                {
                    (next, most, least) = (option, room, its);
                }
            }

            if (next < 0)
            {
                kept.Reverse();
                return kept;
            }

            kept.Add(new Choice(most, least, wire, next, [below[at[next]]]));
            cheapest = least;
            at[next]--;
        }
    }

    // By rising room; each dearer than the one before. Costs that differ by rounding alone are one cost.
    private static List<Choice> Pruned(List<Choice> all)
    {
        all.Sort((a, b) => a.Room != b.Room ? b.Room.CompareTo(a.Room) : a.Cost.CompareTo(b.Cost));
        List<Choice> kept = [];
        double cheapest = double.PositiveInfinity;
        foreach (Choice choice in all)
        {
            if (choice.Cost < cheapest * (1 - 1e-14))
            {
                kept.Add(choice);
                cheapest = choice.Cost;
            }
        }

        kept.Reverse();
        return kept;
    }

    private sealed record Choice(double Room, double Cost, int Wire, int Option, Choice[] Parts);
}

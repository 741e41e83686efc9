using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses.Sizing;

/// <summary>Sizes wires and fuses together: options of each wire, the least cost that keeps every drop, currents worked out again, all of it verified, and what a check still refuses tightened.</summary>
internal sealed class HarnessSizer
{
    private const int MostRounds = 120;
    private const int MostSteps = 8;

    private readonly Harness asked;
    private readonly Func<Conductor, double> costPerMeter;
    private readonly Conductor[] series;
    private readonly int[] wires;
    private readonly int[] fuses;
    private readonly int[] least;
    private readonly double[] tightened;
    private readonly int[] steps;
    private int[] sizes;
    private FuseRating?[] ratings;

    internal HarnessSizer(Harness harness, Func<Conductor, double> costPerMeter)
    {
        asked = harness;
        this.costPerMeter = costPerMeter;
        series = [.. harness.Rules.Conductors.Conductors];
        wires = [.. Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessWire { Conductor: null })];
        fuses = [.. Enumerable.Range(0, harness.BranchArray.Length).Where(k => harness.BranchArray[k] is HarnessFuse { Rating: null })];
        least = new int[wires.Length];
        sizes = [.. Enumerable.Repeat(series.Length - 1, wires.Length)];
        ratings = new FuseRating?[fuses.Length];
        tightened = new double[harness.LoadArray.Length];
        steps = new int[harness.LoadArray.Length];
    }

    /// <summary>How often the currents were worked out.</summary>
    internal int Rounds { get; private set; }

    /// <summary>Whether the wires to be sized form a tree, so that the least is proven.</summary>
    internal bool IsTree { get; private set; }

    /// <summary>No sizes that keep every drop and every wire's own checks at these currents can cost less.</summary>
    internal double LowerBound { get; private set; }

    /// <summary>Cost with the allowances divided by length; +∞ where that has no answer.</summary>
    internal double DividedByLength { get; private set; } = double.PositiveInfinity;

    /// <summary>Finds the cost with each load's way sized by itself.</summary>
    internal Func<double> CircuitByCircuit { get; private set; } = () => double.PositiveInfinity;

    internal double Cost { get; private set; }

    /// <summary>Room and cost of the choices that nothing beats; empty where there is no tree.</summary>
    internal IReadOnlyList<(double Room, double Cost)> Front { get; private set; } = [];

    /// <summary>What holds each sized wire up: a check of its own, or the drop of a load.</summary>
    internal Dictionary<string, string> HeldBy { get; } = [];

    internal HarnessVerification Run(CancellationToken cancellation)
    {
        HarnessVerification verified;
        do
        {
            Settle(cancellation);
            verified = HarnessDesigner.Verify(Sized(), cancellation);
        }
        while (Rounds < MostRounds && Tighten(verified));

        Report();
        return verified;
    }

    internal Harness Sized()
    {
        HarnessBranch[] branches = [.. asked.BranchArray];
        for (int w = 0; w < wires.Length; w++)
        {
            branches[wires[w]] = ((HarnessWire)branches[wires[w]]).WithConductor(series[sizes[w]]);
        }

        for (int f = 0; f < fuses.Length; f++)
        {
            branches[fuses[f]] = ((HarnessFuse)branches[fuses[f]]).WithRating(ratings[f] ?? asked.Rules.Fuses.Ratings[0]);
        }

        return new Harness(asked.Parts with { Branches = branches });
    }

    // Sizes to currents to sizes, until both stay; where they go round in a ring the larger of the two stays.
    private void Settle(CancellationToken cancellation)
    {
        HashSet<string> seen = [];
        for (int n = 0; n < MostRounds; n++)
        {
            cancellation.ThrowIfCancellationRequested();
            Rounds++;
            string before = Key();
            CaseDuty[] duties = Duties();
            HarnessBranches[] branches = [.. duties.Select(d => new HarnessBranches(d))];
            ChooseFuses(duties, branches);
            SizingModel model = Model(duties, branches, least, tightened);
            int[] found = model.Solve() ?? model.Largest;
            bool ring = !seen.Add(before);
            for (int w = 0; w < wires.Length; w++)
            {
                sizes[w] = ring ? Math.Max(sizes[w], found[w]) : found[w];
            }

            if (Key() == before)
            {
                return;
            }
        }
    }

    private string Key() => string.Join(",", sizes) + "|" + string.Join(",", ratings.Select(r => r?.Amperes ?? 0));

    private CaseDuty[] Duties()
    {
        Harness now = Sized();
        return [.. CaseGroup.Of(now).Select(group => new CaseDuty(now, group))];
    }

    // The smallest that carries the load and holds at its starts, best of those that break the current.
    private void ChooseFuses(CaseDuty[] duties, HarnessBranches[] branches)
    {
        FuseEnds[] ends = [.. duties.Select(duty => new FuseEnds(duty))];
        for (int f = 0; f < fuses.Length; f++)
        {
            FuseRating? fallback = null, chosen = null;
            List<BranchState> states = [];
            for (int c = 0; c < duties.Length; c++)
            {
                BranchState[] own = [.. ends[c].OfFuse(fuses[f]).SelectMany(end => StartLoads.Of(duties[c], branches[c], end).Select(branches[c].OfFuse)).OfType<BranchState>()];
                states.AddRange(own);

                // Without a wire of its own it carries its current all the same.
                if (!Array.Exists(own, state => state.Stretches.Length > 0) && duties[c].On[fuses[f]] > 0)
                {
                    states.Add(branches[c].OfDevice(fuses[f]));
                }
            }

            foreach (FuseRating rating in asked.Rules.Fuses.Ratings)
            {
                bool carries = states.TrueForAll(s => Holds(s, rating, CheckKind.FuseCarriesLoad, CheckKind.FuseVoltage, CheckKind.InrushHeld));
                if (!carries)
                {
                    continue;
                }

                fallback ??= rating;
                if (states.TrueForAll(s => Holds(s, rating, CheckKind.BreakingCapacity)))
                {
                    chosen = rating;
                    break;
                }
            }

            ratings[f] = chosen ?? fallback ?? asked.Rules.Fuses.Ratings[asked.Rules.Fuses.Ratings.Count - 1];
        }
    }

    private static bool Holds(BranchState at, FuseRating rating, params CheckKind[] kinds)
    {
        at.SetFuse(rating);
        return Array.TrueForAll(kinds, kind => !((Check)kind).TryAsk(at, out CheckResult result) || result.Outcome != CheckOutcome.Fail);
    }

    private SizingModel Model(CaseDuty[] duties, HarnessBranches[] branches, int[] from, double[] less) =>
        SizingModel.Of(asked, Sized(), duties, branches, wires, series, from, less, costPerMeter);

    // What a check of the whole still refuses, as a higher least size or a smaller allowance; false where nothing is left to be done.
    private bool Tighten(HarnessVerification verified)
    {
        bool moved = false;
        foreach (HarnessCheck check in verified.Checks.Where(c => c.Outcome == CheckOutcome.Fail))
        {
            double beyond = check.Result is { Value: { } value, Limit: { } limit } ? Math.Abs(value - limit) : 0;
            if (((Check)check.Kind!).Scope == CheckScope.Load)
            {
                int load = asked.LoadIndex(check.Place);
                bool volts = ReferenceEquals(check.Kind, CheckKind.VoltageDrop) || ReferenceEquals(check.Kind, CheckKind.LoadVoltage) || ReferenceEquals(check.Kind, CheckKind.StartVoltage);
                if (volts && beyond > 0 && steps[load] < MostSteps && CanGrow(load))
                {
                    // What one step did not cure the next cures with more; what eight do not is no matter of these wires.
                    tightened[load] += ((beyond * 1.0001) + 1e-9) * (1 << steps[load]++);
                    moved = true;
                }
            }
            else
            {
                moved |= Raise(check, verified.Harness);
            }
        }

        return moved;
    }

    private bool CanGrow(int load) => Ways(load).Any(k => Array.IndexOf(wires, k) is >= 0 and int w && sizes[w] < series.Length - 1);

    private IEnumerable<int> Ways(int load) =>
        asked.Graph.WayFrom(asked.NodeIndex(asked.LoadArray[load].Positive)).Branches.Concat(asked.Graph.WayFrom(asked.NodeIndex(asked.LoadArray[load].Negative)).Branches);

    // The wire that the check names; for a fault at the far end the one of most resistance on the way there.
    private bool Raise(in HarnessCheck check, Harness sized)
    {
        if (ReferenceEquals(check.Kind, CheckKind.BreakingCapacity) || ReferenceEquals(check.Kind, CheckKind.FuseVoltage) || ReferenceEquals(check.Kind, CheckKind.FuseDistance)
            || ReferenceEquals(check.Kind, CheckKind.FuseCarriesLoad))
        {
            return false;
        }

        string? id = check.Wire;
        int w = id is null ? -1 : Array.IndexOf(wires, asked.BranchIndex(id));
        if (w < 0 && check.Toward is { } toward && Array.Exists(asked.LoadArray, l => l.Id == toward))
        {
            w = Ways(asked.LoadIndex(toward)).Select(k => Array.IndexOf(wires, k)).Where(k => k >= 0 && sizes[k] < series.Length - 1)
                .OrderByDescending(k => ((HarnessWire)sized.BranchArray[wires[k]]).Meters * series[sizes[k]].OhmsPerMeter20).DefaultIfEmpty(-1).First();
        }

        if (w < 0 || sizes[w] >= series.Length - 1)
        {
            return false;
        }

        least[w] = sizes[w] + 1;
        return true;
    }

    // Against the question as it was put, at the currents that were found: nothing tightened, every wire from its smallest size.
    private void Report()
    {
        CaseDuty[] duties = Duties();
        HarnessBranches[] branches = [.. duties.Select(d => new HarnessBranches(d))];
        SizingModel model = Model(duties, branches, new int[wires.Length], new double[tightened.Length]);
        Cost = model.CostOfSizes(sizes);
        IsTree = model.IsTree;
        LowerBound = model.LowerBound(Cost);
        Front = model.Front;
        DividedByLength = model.DividedByLength();
        CircuitByCircuit = model.CircuitByCircuit;
        double[] left = model.LeftAt(sizes);
        for (int w = 0; w < wires.Length; w++)
        {
            HeldBy[asked.BranchArray[wires[w]].Id] = model.HeldBy(w, sizes[w], left);
        }
    }
}

using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a short does: by one path in a row where that holds, else followed from stage to stage in every scenario.</summary>
internal sealed class ShortAudit(FaultCase at)
{
    // A wire that carries no more than this share of the current that stays has no part worth telling.
    private const double Part = 0.02;

    internal ShortResult Of(int node, int to)
    {
        ShortStates states = new(at, node, to);
        ShortRow row = new(at, states, node, to);
        if (row.IsDead)
        {
            return new ShortResult { Ending = FaultEnding.NoCurrent };
        }

        return (row.Applies ? row.Answer() : null) ?? Follow(row, new ShortSteps(at, states, node, to));
    }

    private ShortResult Follow(ShortRow row, ShortSteps steps)
    {
        ShortStory strongest = steps.Run(FaultScenario.Greatest, soonest: true);
        List<ShortStory> latest = [steps.Run(FaultScenario.Greatest, soonest: false)];
        latest.AddRange(at.Scenarios.Select(s => steps.Run(s, soonest: false)));

        // The currents at the beginning are those of a harness whose fuses are all whole.
        ShortStory[] whole = [.. latest.Where(s => s.Ending != FaultEnding.NoCurrent)];
        if (strongest.First is { } state && steps.UnknownFuses(state) is { Length: > 0 } unknown)
        {
            // A fuse whose times are not known opens never, as above, or at once: whenever it does, the truth lies between.
            latest.AddRange(at.Scenarios.Select(s => steps.Run(s, soonest: false, unknown)));
        }

        if (latest.Find(s => s.Ending == FaultEnding.Undetermined && s.LastThrough.Length == 0) is { } unsolved)
        {
            return ShortResult.Unknown(unsolved.Reason);
        }

        _ = latest.RemoveAll(s => s.Ending == FaultEnding.NoCurrent);
        ShortResult result = new() { Greatest = strongest.FirstAmperes };
        if (latest.Count == 0)
        {
            result.Ending = FaultEnding.NoCurrent;
            return result;
        }

        result.Least = (whole.Length > 0 ? whole : [.. latest]).Min(s => s.FirstAmperes);
        ShortStory? stays = latest.Where(s => s.Ending == FaultEnding.NotCleared).OrderByDescending(s => s.RemainingAmperes).FirstOrDefault();
        result.Ending = stays is not null ? FaultEnding.NotCleared
            : latest.Exists(s => s.Ending == FaultEnding.Undetermined) ? FaultEnding.Undetermined : FaultEnding.Cleared;
        result.Reason = (stays ?? latest.Find(s => s.Reason.Length > 0))?.Reason ?? "";
        AddOpenings(result, strongest, latest);
        if (row.Fuses.Length > 0)
        {
            result.WrongFuses.AddRange(result.Openings.Select(o => o.Fuse).Where(id => id != at.Harness.BranchArray[row.Fuses[0]].Id));
        }

        if (stays is null)
        {
            AddHeat(result, latest);
        }
        else
        {
            AddStaying(result, latest);
            AddHeat(result, latest, onlyTooHot: true);
        }

        return result;
    }

    private void AddOpenings(ShortResult result, ShortStory strongest, List<ShortStory> latest)
    {
        foreach (int fuse in latest.Append(strongest).SelectMany(s => s.Opened).Select(o => o.Fuse).Distinct())
        {
            string id = at.Harness.BranchArray[fuse].Id;
            double? least = strongest.Opened.Where(o => o.Fuse == fuse).Select(o => (double?)o.Seconds).FirstOrDefault();
            double[] ends = [.. latest.SelectMany(s => s.Opened).Where(o => o.Fuse == fuse).Select(o => o.Seconds)];
            double[] amperes = [.. latest.Append(strongest).SelectMany(s => s.Opened).Where(o => o.Fuse == fuse).Select(o => o.Amperes)];
            bool sure = ends.Length == latest.Count;

            // What opens at the soonest in another order than at the latest has no least time of its own: it may open at any moment from the first one on.
            least = least is { } early && sure && early > ends.Max() ? null : least;
            bool stated = ((HarnessFuse)at.Harness.BranchArray[fuse]).Rating!.FaultCurve!.LeastLine is not null;
            result.Openings.Add(new FuseOpening(id, stated ? least : null, sure ? ends.Max() : null, amperes.Min(), amperes.Max()));
        }

        result.Openings.Sort((a, b) => (a.LongestSeconds ?? double.PositiveInfinity).CompareTo(b.LongestSeconds ?? double.PositiveInfinity));
    }

    private void AddHeat(ShortResult result, List<ShortStory> latest, bool onlyTooHot = false)
    {
        double limit = at.Harness.Rules.FusePractice.FaultSeconds;
        for (int k = 0; k < at.Harness.BranchArray.Length; k++)
        {
            if (!at.IsWire(k))
            {
                continue;
            }

            double start = at.StartCelsius(k), hottest = start, amperes = 0;
            foreach (ShortStory story in latest)
            {
                double celsius = at.HeatedCelsius(k, story.Joules[k], start);
                celsius = story.Seconds > limit && at.Wires[k].IsRated ? Math.Min(celsius, Math.Max(start, at.SettledCelsius(k, story.Most[k]))) : celsius;
                (hottest, amperes) = celsius > hottest ? (celsius, story.Most[k]) : (hottest, amperes);
            }

            FaultedWire heated = FaultHeat.New(at, k, hottest, at.LimitCelsius(k), amperes, stays: false);
            if (amperes > 0 && (!onlyTooHot || (heated.IsTooHot && !result.Wires.Exists(w => w.Wire == heated.Wire && w.IsTooHot))))
            {
                _ = result.Wires.RemoveAll(w => w.Wire == heated.Wire);
                result.Wires.Add(heated);
            }
        }
    }

    private void AddStaying(ShortResult result, List<ShortStory> latest)
    {
        ShortStory[] staying = [.. latest.Where(s => s.Ending == FaultEnding.NotCleared)];
        double left = staying.Max(s => s.RemainingAmperes);
        result.Remaining = left;
        ShortStory most = staying.OrderByDescending(s => s.RemainingAmperes).First();
        result.Holding = at.Harness.BranchArray.OfType<HarnessFuse>().Where(f => most.Own[at.Harness.BranchIndex(f.Id)] > 0.5 * left).OrderBy(f => f.Rating!.Amperes).FirstOrDefault()?.Id;
        for (int k = 0; k < at.Harness.BranchArray.Length; k++)
        {
            if (at.IsWire(k) && staying.Any(s => s.Own[k] > Part * left))
            {
                FaultHeat.AddStaying(at, result, k, staying.Max(s => Math.Abs(s.LastThrough[k])));
            }
        }
    }
}

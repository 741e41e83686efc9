using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>A fuse without a wire of its own.</content>
internal sealed partial class HarnessBranches
{
    private readonly Dictionary<string, double[]> standing = new(StringComparer.Ordinal);

    /// <summary>A fuse that no wire's checks are asked with: beside a busbar, between sources, in a ring, in the way back. Its own current, its distance from what feeds it, and the most that it may have to break.</summary>
    internal BranchState OfDevice(int branch)
    {
        HarnessFuse fuse = (HarnessFuse)Harness.BranchArray[branch];
        Site site = SiteBeside(branch);
        WireDuty of = duty.DutyOfBranch(branch, default);
        BranchState at = New(
            AnySource() with { MaximumVolts = feeding.GreatestVolts }, AnyLoad, site, [], 0, new SolvedDuty { Duty = of, Heating = [] },
            fuseDistance: Distance(branch), fuseAmbient: fuse.AmbientCelsius ?? site.AmbientCelsius, letThrough: feeding.ShortThrough(branch));
        at.SetFuse(fuse.Rating);
        return at;
    }

    /// <summary>Whether a positive terminal feeds one end of a fuse or both: one in a way back protects no conductor from a source.</summary>
    internal bool IsInFeed(int fuse) => FeedSides(fuse).Any();

    /// <summary>Starts whose current reaches the loads through a fuse and past it: as if all of it passed.</summary>
    internal IEnumerable<(BranchState State, string Name)> OfDividedStarts(int fuse)
    {
        foreach (string[] set in duty.Group.Starts)
        {
            int[] starting = [.. Enumerable.Range(0, Harness.LoadArray.Length).Where(k => set.Contains(Harness.LoadArray[k].Id) && duty.IsOn(k))];
            if (starting.Length == 0 || IsHeldBelow(fuse, starting))
            {
                continue;
            }

            string name = $"{string.Join(" and ", starting.Select(k => Harness.LoadArray[k].Id))} starts";

            // What holds whatever lies between needs no equivalent of that.
            BranchState state = Divided(fuse, starting, AnySource() with { MaximumVolts = feeding.GreatestVolts, LeastOhms = 0, Action = LimitAction.None });
            yield return ((Check)CheckKind.InrushHeld).TryAsk(state, out CheckResult found) && found.Outcome != CheckOutcome.Pass
                ? (Divided(fuse, starting, Together(starting)), name)
                : (state, name);
        }
    }

    private BranchState Divided(int fuse, int[] starting, in SourceNumbers source)
    {
        HarnessFuse own = (HarnessFuse)Harness.BranchArray[fuse];
        Site site = SiteBeside(fuse);
        double others = Standing(starting)[fuse];
        Load all = Load.Together([.. starting.Select(k => Harness.LoadArray[k].Load), Load.ConstantCurrent(ElectricCurrent.FromAmperes(Math.Max(1e-6, others)))]);
        BranchState state = New(
            source, all, site, [], 0, new SolvedDuty { Duty = duty.DutyOfBranch(fuse, default), Heating = [] }, fuseAmbient: own.AmbientCelsius ?? site.AmbientCelsius,
            starts: starting.Max(k => Harness.LoadArray[k].CountedStarts), startDivides: true);
        state.SetFuse(own.Rating);
        return state;
    }

    // The largest currents of all branches while these loads are off, A.
    private double[] Standing(int[] starting)
    {
        string key = string.Join(",", starting);
        if (!standing.TryGetValue(key, out double[]? amperes))
        {
            amperes = new double[duty.On.Length];
            HarnessNetwork network = duty.Without(starting);
            foreach (SupplyLevel level in duty.Group.Levels)
            {
                HarnessState state = network.Solve(level);
                for (int k = 0; k < amperes.Length; k++)
                {
                    amperes[k] = Math.Max(amperes[k], state.Exists ? Math.Abs(state.Amperes[k]) : duty.On[k]);
                }
            }

            standing.Add(key, amperes);
        }

        return amperes;
    }

    // Side by side they take no more than one behind the conductance of all.
    private SourceNumbers Together(int[] starting)
    {
        double volts = 0, siemens = 0;
        foreach (int k in starting)
        {
            if (feeding.Between(Harness.NodeIndex(Harness.LoadArray[k].Positive), Harness.NodeIndex(Harness.LoadArray[k].Negative)) is not { } source)
            {
                return AnySource() with { MaximumVolts = feeding.GreatestVolts, LeastOhms = 0, Action = LimitAction.None };
            }

            (volts, siemens) = (Math.Max(volts, source.MaximumVolts), siemens + (1 / source.LeastOhms));
        }

        return AnySource() with { MaximumVolts = volts, LeastOhms = 1 / siemens, Action = LimitAction.None };
    }

    // All that lies beyond it is one source that holds a current which the fuse carries, and nothing that starts.
    private bool IsHeldBelow(int fuse, int[] starting)
    {
        double rating = ((HarnessFuse)Harness.BranchArray[fuse]).Rating!.Amperes;
        foreach (int node in new[] { duty.Graph.From[fuse], duty.Graph.To[fuse] })
        {
            HashSet<int> beyond = duty.Graph.Reached(node, k => k != fuse);
            HarnessSource[] sources = Array.FindAll(Harness.SourceArray, s => beyond.Contains(Harness.NodeIndex(s.Positive)) || beyond.Contains(Harness.NodeIndex(s.Negative)));
            if (sources.Length == 1 && sources[0].Source is { } only && only.Numbers.HeldAmperes <= rating && !starting.Any(k => beyond.Contains(Harness.NodeIndex(Harness.LoadArray[k].Positive))))
            {
                return true;
            }
        }

        return false;
    }

    // From the farther of the nearest sources at its two ends; null where that is not known.
    private double? Distance(int fuse)
    {
        double most = 0;
        foreach (int node in FeedSides(fuse))
        {
            int[] way = NearestWay.From(duty, node, plus: true, out _);
            if (way.Contains(fuse) || Unprotected(way, FeedEnd.Source) is not { } meters)
            {
                return null;
            }

            most = Math.Max(most, meters);
        }

        return most;
    }

    private IEnumerable<int> FeedSides(int fuse) => new[] { duty.Graph.From[fuse], duty.Graph.To[fuse] }
        .Where(node => duty.Graph.Reached(node, k => k != fuse).Overlaps(Harness.SourceArray.Select(s => Harness.NodeIndex(s.Positive))));

    // Of the nearest wire behind it: with no air stated it sits in that one's.
    private Site SiteBeside(int branch)
    {
        foreach (int[] way in ways)
        {
            int at = Array.IndexOf(way, branch);
            int wire = at < 0 ? -1 : Array.FindLastIndex(way, at, IsWire);
            if (wire >= 0)
            {
                return duty.WireOf(way[wire]).Site;
            }
        }

        return AnySite();
    }
}

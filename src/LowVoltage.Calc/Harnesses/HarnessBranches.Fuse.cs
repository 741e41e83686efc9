using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>A fuse without a wire of its own.</content>
internal sealed partial class HarnessBranches
{
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
        HarnessFuse own = (HarnessFuse)Harness.BranchArray[fuse];
        Site site = SiteBeside(fuse);
        foreach (string[] set in duty.Group.Starts)
        {
            int[] starting = [.. Enumerable.Range(0, Harness.LoadArray.Length).Where(k => set.Contains(Harness.LoadArray[k].Id) && duty.IsOn(k))];
            if (starting.Length == 0)
            {
                continue;
            }

            HarnessLoad at = Harness.LoadArray[starting[0]];
            SourceNumbers source = feeding.Between(Harness.NodeIndex(at.Positive), Harness.NodeIndex(at.Negative)) ?? AnySource() with { MaximumVolts = feeding.GreatestVolts, LeastOhms = 0 };
            Load all = Load.Together([.. starting.Select(k => Harness.LoadArray[k].Load), Load.ConstantCurrent(ElectricCurrent.FromAmperes(Math.Max(1e-6, duty.On[fuse])))]);
            BranchState state = New(
                source, all, site, [], 0, new SolvedDuty { Duty = duty.DutyOfBranch(fuse, default), Heating = [] }, fuseAmbient: own.AmbientCelsius ?? site.AmbientCelsius,
                starts: starting.Max(k => Harness.LoadArray[k].CountedStarts), startDivides: true);
            state.SetFuse(own.Rating);
            yield return (state, $"{string.Join(" and ", starting.Select(k => Harness.LoadArray[k].Id))} starts");
        }
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

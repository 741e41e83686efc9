using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <content>Starts at every fuse on their ways, and motors held still.</content>
internal sealed partial class TreeReferee
{
    /// <summary>A stall that opens its fuse only while other loads behind that fuse run.</summary>
    public const string StalledAlone = "StalledAlone";

    // Some three starts a day for ten years.
    private const int UsualStarts = 10_000;

    private void OfStarts()
    {
        IEnumerable<int[]> alone = Enumerable.Range(0, tree.Loads.Length).Select(load => new[] { load });
        foreach (int[] set in alone.Concat(given.Together))
        {
            int[] starting = [.. set.Where(load => tree.Loads[load].Surges)];
            if (starting.Length > 0)
            {
                OfStart(starting, SupplyLevel.Maximum);
                if (Array.Exists(tree.Loads, load => load.HasPower))
                {
                    OfStart(starting, SupplyLevel.Minimum);
                }
            }
        }

        for (int load = 0; load < tree.Loads.Length; load++)
        {
            OfStall(load);
        }
    }

    private void OfStart(int[] starting, SupplyLevel level)
    {
        foreach (StartMelts found in TreeStart.Of(tree, level, starting, cool[(int)level]))
        {
            OwnFuse fuse = tree.Fuses[found.Part]!;
            int starts = starting.Intersect(tree.Behind[found.Part]).Max(load => given.Loads[load].Starts ?? UsualStarts);
            string id = given.Parts[found.Part].Id, who = string.Join(" and ", starting.Select(load => given.Loads[load].Id));
            if (!fuse.HasLeastTimes)
            {
                Keep("InrushHeld", id, found.Peak > fuse.CarriedAmperes * 1.05 && !found.Collapses ? new(Say.MustNotPass, found.Peak, fuse.CarriedAmperes, $"A, no least times, {who}") : new(Say.CannotSay, found.Peak, 0));
                continue;
            }

            // Beyond the rating in running is what another check says.
            double often = found.Peak > fuse.Amperes && cool[(int)level].Parts[found.Part] < fuse.Amperes * 0.97 ? found.Joule / (PulseWithstand.ShareFor(starts) * fuse.LeastJoule(found.Peak)) : 0, running = On(found.Part).Most;
            Say say = found.Melted > 1.1 || often > 1.3 ? found.Collapses ? Say.CannotSay : Say.MustFail
                : running < fuse.Amperes * 0.95 && (found.Peak < fuse.Amperes * 0.95 || (found.Melted < 0.1 && often < 0.5)) ? Say.MustPass : Say.CannotSay;
            Keep("InrushHeld", id, new(say, found.Melted, 1, $"of the fuse melted as {who} starts at {found.Peak:G3} A; {often:G3} of what it stands as often"));
        }
    }

    // A stalled motor whose current its fuse need not interrupt burns: something else must end it.
    private void OfStall(int stalled)
    {
        int fuse = zones.First(zone => zone.Load == stalled).Fuse;
        if (!tree.Loads[stalled].Stalls || given.Rules.Allowance is null || fuse < 0)
        {
            return;
        }

        OwnFuse own = tree.Fuses[fuse]!;
        string id = given.Parts[fuse].Id;
        double beside = LeastStall(stalled, fuse, true), alone = LeastStall(stalled, fuse, false), fusing = own.HasTimes ? own.FusingAmperes * (1 - 1e-3) : double.PositiveInfinity;
        Keep("StalledMotor", id, beside >= fusing ? new(Say.CannotSay, beside, fusing) : new(Say.MustNotPass, beside, fusing, "A, the fuse need not open"));
        if (beside >= fusing && alone < fusing)
        {
            // The load case has the others run; with them off the fuse would stay shut.
            Keep(StalledAlone, id, new(Say.CannotSay, alone, fusing));
        }
    }

    private double LeastStall(int stalled, int fuse, bool othersRun)
    {
        double least = double.PositiveInfinity;
        foreach (SupplyLevel level in Levels)
        {
            TreeFlow flow = TreeFlow.Of(tree, level, false, (load, volts) => load == stalled ? tree.Loads[load].Stalled(volts) : othersRun ? tree.Loads[load].Running(volts) : 0);
            least = flow.Exists ? Math.Min(least, flow.Parts[fuse]) : least;
        }

        return least;
    }
}

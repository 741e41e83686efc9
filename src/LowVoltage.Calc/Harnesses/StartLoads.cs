using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A start behind a fuse, with all else behind the fuse running, as one load at an end.</summary>
/// <param name="Load">What starts and what runs.</param>
/// <param name="Starts">How often in the fuse's life.</param>
/// <param name="Name">Of the load case.</param>
/// <param name="End">The way to it: of several loads that start together what all of them share.</param>
/// <param name="ApartOhms">Of several, their own ways side by side, Ω.</param>
internal sealed record StartLoads(Load Load, int Starts, string Name, ZoneEnd End, double ApartOhms)
{
    /// <summary>Every start of the load at an end: the load alone first, then with others.</summary>
    internal static IEnumerable<StartLoads> Of(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        Harness harness = duty.Harness;
        if (end.Load < 0)
        {
            // Every start behind the next fuse has an end of its own, at its load.
            yield return new(HarnessBranches.AnyLoad, CircuitRequirements.UsualStarts, duty.Group.Steady.Name, end, 0);
            yield break;
        }

        string own = harness.LoadArray[end.Load].Id;
        bool alone = duty.Group.Starts.Any(set => set.Length == 1 && set[0] == own) && duty.IsFed(harness.LoadArray[end.Load]);
        yield return new(With(duty, branches, end, [end.Load]), harness.LoadArray[end.Load].CountedStarts, alone ? $"{own} starts" : duty.Group.Steady.Name, end, 0);
        foreach (string[] set in duty.Group.Starts.Where(set => set.Length > 1 && set.Contains(own)))
        {
            int[] starting = [.. end.Behind.Where(k => set.Contains(harness.LoadArray[k].Id) && duty.IsFed(harness.LoadArray[k]))];
            if (starting.Length > 1)
            {
                (ZoneEnd shared, double apart) = Shared(duty, branches, end, starting);
                yield return new(
                    With(duty, branches, end, starting), starting.Max(k => harness.LoadArray[k].CountedStarts), $"{string.Join(" and ", starting.Select(k => harness.LoadArray[k].Id))} starts", shared, apart);
            }
        }
    }

    // Each has a way of its own: one behind the conductance of all of them takes no less than they do together.
    private static (ZoneEnd End, double ApartOhms) Shared(CaseDuty duty, HarnessBranches branches, ZoneEnd end, int[] starting)
    {
        HashSet<int>[] ways = [.. starting.Select(k => new HashSet<int>([
            .. duty.Graph.WayFrom(duty.Harness.NodeIndex(duty.Harness.LoadArray[k].Positive)).Branches, .. duty.Graph.WayFrom(duty.Harness.NodeIndex(duty.Harness.LoadArray[k].Negative)).Branches]))];
        bool isShared(int branch) => Array.TrueForAll(ways, way => way.Contains(branch));
        double siemens = 0;
        foreach (HashSet<int> way in ways)
        {
            siemens += 1 / way.Where(k => k != end.Fuse && !isShared(k)).Sum(branches.CoolOhms);
        }

        return (end with { Path = [.. end.Path.Where(isShared)], Back = [.. end.Back.Where(isShared)], IsOfStart = true }, 1 / siemens);
    }

    private static Load With(CaseDuty duty, HarnessBranches branches, ZoneEnd end, int[] starting)
    {
        Harness harness = duty.Harness;
        double others = 0;
        foreach (int k in end.Behind.Except(starting))
        {
            WireDuty of = branches.LoadDuties[k];
            others += of.Exists ? Math.Max(of.OnAmperes, duty.Starts.AmperesOf(k, starting)) : 0;
        }

        List<Load> all = [.. starting.Select(k => harness.LoadArray[k].Load)];
        if (others > 1e-9)
        {
            all.Add(Load.ConstantCurrent(ElectricCurrent.FromAmperes(others)));
        }

        return all.Count == 1 ? all[0] : Load.Together([.. all]);
    }
}

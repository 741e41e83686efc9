using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Every start of the load at an end behind a fuse, each with all else behind the fuse running, as one load.</summary>
internal static class StartLoads
{
    internal static IEnumerable<(Load Load, int Starts, string Name)> Of(CaseDuty duty, HarnessBranches branches, ZoneEnd end)
    {
        Harness harness = duty.Harness;
        if (end.Load < 0)
        {
            // Every start behind the next fuse has an end of its own, at its load.
            yield return (Load.ConstantCurrent(ElectricCurrent.FromAmperes(1)), CircuitRequirements.UsualStarts, duty.Group.Steady.Name);
            yield break;
        }

        bool any = false;
        foreach (string[] set in duty.Group.Starts.Where(set => set.Contains(harness.LoadArray[end.Load].Id)))
        {
            int[] starting = [.. end.Behind.Where(k => set.Contains(harness.LoadArray[k].Id) && duty.IsFed(harness.LoadArray[k]))];
            if (starting.Length > 0)
            {
                any = true;
                yield return (With(harness, branches, end, starting), starting.Max(k => harness.LoadArray[k].CountedStarts), $"{string.Join(" and ", starting.Select(k => harness.LoadArray[k].Id))} starts");
            }
        }

        if (!any)
        {
            yield return (With(harness, branches, end, [end.Load]), harness.LoadArray[end.Load].CountedStarts, duty.Group.Steady.Name);
        }
    }

    private static Load With(Harness harness, HarnessBranches branches, ZoneEnd end, int[] starting)
    {
        double others = 0;
        foreach (int k in end.Behind.Except(starting))
        {
            WireDuty of = branches.LoadDuties[k];
            others += of.Exists ? of.OnAmperes : 0;
        }

        List<Load> all = [.. starting.Select(k => harness.LoadArray[k].Load)];
        if (others > 1e-9)
        {
            all.Add(Load.ConstantCurrent(ElectricCurrent.FromAmperes(others)));
        }

        return all.Count == 1 ? all[0] : Load.Together([.. all]);
    }
}

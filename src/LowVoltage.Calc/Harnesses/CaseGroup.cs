using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Load cases that are alike but for what starts: one steady state, and the starts that are looked at from it.</summary>
internal sealed class CaseGroup
{
    private readonly List<string[]> starts = [];

    private CaseGroup(LoadCase steady) => Steady = steady;

    /// <summary>The case with everything that starts or stalls running.</summary>
    internal LoadCase Steady { get; }

    /// <summary>Sets of loads that start together; each load alone is among them.</summary>
    internal IReadOnlyList<string[]> Starts => starts;

    internal SupplyLevel[] Levels => Steady.Level is { } level ? [level] : [SupplyLevel.Minimum, SupplyLevel.Nominal, SupplyLevel.Maximum];

    /// <summary>The groups of a harness's load cases.</summary>
    internal static List<CaseGroup> Of(Harness harness)
    {
        List<CaseGroup> groups = [];
        foreach (LoadCase used in harness.CaseArray)
        {
            LoadCase steady = used.AsRunning();
            CaseGroup? group = groups.Find(g => g.Steady.IsLike(steady));
            if (group is null)
            {
                groups.Add(group = new CaseGroup(steady));
                foreach (HarnessLoad load in harness.LoadArray.Where(l => (l.Load.HasSurge || l.Load.Starts || l.Load.CanStall) && steady.UseOf(l.Id) != LoadUse.Off))
                {
                    group.starts.Add([load.Id]);
                }
            }

            if (used.Starting.Count > 1)
            {
                group.starts.Add([.. used.Starting]);
            }
        }

        return groups;
    }
}

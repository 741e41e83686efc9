namespace LowVoltage.Calc.Harnesses;

/// <summary>A short before any fuse has opened, solved once for each scenario.</summary>
internal sealed class ShortStates(FaultCase at, int node, int to)
{
    private readonly Dictionary<FaultScenario, HarnessState?> known = [];

    /// <summary>The state; null where nothing bounds the current.</summary>
    internal HarnessState? Of(FaultScenario scenario)
    {
        if (!known.TryGetValue(scenario, out HarnessState? state))
        {
            known.Add(scenario, state = at.SolveShort(scenario, node, to));
        }

        return state;
    }
}

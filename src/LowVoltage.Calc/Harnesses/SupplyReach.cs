using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Whether any source that reaches a load still holds its voltage.</summary>
internal static class SupplyReach
{
    // A source at its limit is below its own voltage by more than this share of it; less is rounding.
    private const double Fallen = 1e-9;

    /// <summary>False where sources reach the load and each of them is at the current that it holds, its voltage fallen: then the load gets less than it is made for.</summary>
    internal static bool Holds(CaseDuty duty, HarnessState state, int load)
    {
        Harness harness = duty.Harness;
        if (!Array.Exists(harness.SourceArray, s => s.Source is { } source && !double.IsInfinity(source.Numbers.HeldAmperes)))
        {
            return true;
        }

        HashSet<int> reached = duty.Graph.Reached(harness.NodeIndex(harness.LoadArray[load].Positive), _ => true);
        bool any = false;
        for (int k = 0; k < harness.SourceArray.Length; k++)
        {
            if (!reached.Contains(harness.NodeIndex(harness.SourceArray[k].Positive)) || state.Disconnected[k])
            {
                continue;
            }

            if (!IsFallen(harness.SourceArray[k], state, k))
            {
                return true;
            }

            any = true;
        }

        return !any;
    }

    private static bool IsFallen(HarnessSource at, HarnessState state, int k)
    {
        if (at.Source is not { } source || double.IsInfinity(source.Numbers.HeldAmperes))
        {
            return false;
        }

        double volts = source.Numbers.VoltsAt(state.Level), amperes = state.SourceAmperes[k];
        return amperes >= source.Numbers.HeldAmperes * (1 - Fallen) && state.VoltsOfSource(k) < (volts * (1 - Fallen)) - (source.Numbers.OhmsAt(state.Level) * amperes);
    }
}

using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a solved harness is to be told beside its numbers.</summary>
internal static class HarnessRemarks
{
    internal static IReadOnlyList<string> Of(HarnessSolution solution, HarnessState state)
    {
        List<string> remarks = [];
        if (state.Harness.GreatestVolts > (double)CircuitDesigner.HighestVoltage.Volts)
        {
            remarks.Add($"A source may exceed 60 V ({Accept.Short(state.Harness.GreatestVolts)} V): it is solved, but neither verified nor designed here.");
        }

        if (!state.Exists)
        {
            remarks.Add(solution.Explanation);
            return remarks;
        }

        for (int k = 0; k < state.Harness.LoadArray.Length; k++)
        {
            string id = state.Harness.LoadArray[k].Id, volts = Accept.Short(state.VoltsAcross(k));
            string? remark = state.ConditionOf(k) switch
            {
                LoadCondition.CutOut => $"Load {id} has cut out at {volts} V.",
                LoadCondition.Restartable => $"Load {id} has cut out; with it off it sees {volts} V and may start again: two states exist.",
                LoadCondition.Starved => $"Load {id} gets {Accept.Short(state.LoadAmperes[k])} A, less than it asks for.",
                LoadCondition.Reversed => $"Load {id} is fed backwards with {volts} V.",
                LoadCondition.Dead => $"Load {id} is dead.",
                _ => null,
            };
            if (remark is not null)
            {
                remarks.Add(remark);
            }
        }

        if (state.DroppedOut > 1)
        {
            remarks.Add($"{Accept.Text(state.DroppedOut)} of {Accept.Text(state.Harness.LoadArray.Length)} loads drop out, the worst first; another order may leave others on.");
        }

        remarks.AddRange(solution.Disconnected.Select(id => $"Source {id} has disconnected above its limit."));
        remarks.AddRange(Enumerable.Range(0, state.SourceAmperes.Length).Where(k => state.VoltsOfSource(k) < 0)
            .Select(k => $"Source {state.Harness.SourceArray[k].Id} has {Accept.Short(state.VoltsOfSource(k))} V at its terminals: it is reversed by the others."));
        return remarks;
    }
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A harness while loads start, its wires as warm as in running: what they get, and what the others get meanwhile.</summary>
internal sealed class StartStates
{
    private readonly CaseDuty duty;
    private readonly List<(string[] Set, string Name, HarnessState[] States)> all = [];

    internal StartStates(CaseDuty duty)
    {
        this.duty = duty;
        if (!duty.Exists)
        {
            return;
        }

        HarnessChange change = new() { Ohms = duty.WarmOhms(), LoadsStayOn = true };
        foreach (string[] set in duty.Group.Starts)
        {
            string[] real = [.. set.Where(id => Load(id).Load.Starts && duty.IsFed(Load(id)))];
            if (real.Length > 0)
            {
                HarnessNetwork network = new(duty.Harness, duty.Used.WithStarting(real), change);
                all.Add((real, $"{string.Join(" and ", real)} starts", [.. duty.Group.Levels.Select(network.Solve)]));
            }
        }
    }

    /// <summary>What a load gets while it starts, by supply level; empty where it has no start. Of several starts that it is part of the one that leaves it least.</summary>
    internal LoopPoint[] PointsOf(int load)
    {
        LoopPoint[] worst = [];
        double least = double.PositiveInfinity;
        foreach ((_, _, HarnessState[] states) in all.Where(s => s.Set.Contains(duty.Harness.LoadArray[load].Id)))
        {
            LoopPoint[] points = Points(states, load);
            double lowest = points.Min(p => p.Exists ? p.Volts : double.NegativeInfinity);
            if (lowest < least)
            {
                (worst, least) = (points, lowest);
            }
        }

        return worst;
    }

    /// <summary>The most that a load draws while others start, A: one of constant power more than in running, at the voltage that they leave.</summary>
    internal double AmperesOf(int load, int[] starting)
    {
        double most = 0;
        foreach ((string[] set, _, HarnessState[] states) in all.Where(s => s.Set.Length == starting.Length && Array.TrueForAll(starting, k => s.Set.Contains(duty.Harness.LoadArray[k].Id))))
        {
            foreach (HarnessState state in states.Where(s => s.Exists && s.ConditionOf(load) == LoadCondition.Running))
            {
                most = Math.Max(most, Math.Abs(state.LoadAmperes[load]));
            }
        }

        return most;
    }

    /// <summary>What a load that has a least voltage sees while others start.</summary>
    internal IEnumerable<(string Name, WireDuty Duty)> OthersOf(int load, WireDuty steady)
    {
        if (!steady.Exists || duty.Harness.LoadArray[load].Load.MinimumVolts is null)
        {
            yield break;
        }

        foreach ((string[] set, string name, HarnessState[] states) in all.Where(s => !s.Set.Contains(duty.Harness.LoadArray[load].Id)))
        {
            WireDuty meanwhile = steady;
            foreach (HarnessState state in states.Where(s => s.Exists))
            {
                double volts = state.VoltsAcross(load);
                if (volts < meanwhile.LeastLoadVolts)
                {
                    (meanwhile.LeastLoadVolts, meanwhile.LeastLoadLevel) = (volts, state.Level);
                }
            }

            yield return (name, meanwhile);
        }
    }

    // One for each of the three levels; a level that the case does not have repeats the nearest that it has.
    private static LoopPoint[] Points(HarnessState[] states, int load)
    {
        LoopPoint[] points = new LoopPoint[3];
        for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum; level++)
        {
            points[(int)level] = Point(Array.Find(states, s => s.Level == level) ?? states[0], load);
        }

        return points;
    }

    private static LoopPoint Point(HarnessState state, int load)
    {
        LoadCondition condition = state.ConditionOf(load);
        if (condition == LoadCondition.Running)
        {
            double amperes = state.LoadAmperes[load];
            return new LoopPoint(amperes, amperes, state.VoltsAcross(load), state.IsAtLimit);
        }

        // A source that has disconnected: the start passed its limit, by how much the network cannot say.
        return Array.Exists(state.Disconnected, d => d)
            ? new LoopPoint(double.MaxValue, double.MaxValue, 0, false)
            : new LoopPoint(state.IsAtLimit ? NoOperatingPoint.SourceLimit : state.Exists ? NoOperatingPoint.CurrentOutOfReach : NoOperatingPoint.PowerOutOfReach, 0);
    }

    private HarnessLoad Load(string id) => duty.Harness.LoadArray[duty.Harness.LoadIndex(id)];
}

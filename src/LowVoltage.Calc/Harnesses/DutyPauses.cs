using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a branch carries while loads with a duty cycle pause: between sources, in a neutral, in a ring, beside a supply at its limit, and to a resistance that then has more voltage, that may be more than with all of them on.</summary>
/// <remarks>
/// A group is what hangs on the same place with the same share; on the same node, where there are loads that draw more at more voltage. Up to four of them, every set that may be on at once is solved. Of more: with I₀ while
/// all of them pause and c what each adds, to none of the others or to all of them, whichever is more (a resistance has less voltage then, a power draws more), about I₀ + Σc over those of one sign flows at most, which for
/// constant currents is exact; the likely sets are solved too. By Minkowski's inequality √(mean of I²) ≤ |I₀| + Σ|c|·√share. Where constant currents and powers hang on one source by one way there is nothing to raise.
/// </remarks>
internal sealed class DutyPauses
{
    private const double Rounding = 1e-9;
    private const int MostSolved = 4;

    private readonly CaseDuty duty;
    private readonly (int[] Loads, double Share)[] groups;
    private readonly bool oneWay;

    // Whether there is a load that draws more at more voltage: then what pauses adds to it, by one way to one source too.
    private readonly bool bends;
    private readonly Dictionary<string, HarnessNetwork> networks = new(StringComparer.Ordinal);
    private readonly Dictionary<(string On, SupplyLevel Level), HarnessState?> states = [];

    internal DutyPauses(CaseDuty duty)
    {
        this.duty = duty;
        Harness harness = duty.Harness;
        bends = Enumerable.Range(0, harness.LoadArray.Length).Any(k => duty.IsOn(k) && harness.LoadArray[k].Load.LawAt(LoadState.Running) is { Siemens: > 0 } or { Exact: false });
        groups =
        [
            .. Enumerable.Range(0, harness.LoadArray.Length).Where(k => duty.IsOn(k) && !Share(k).Equals(1.0))
                .GroupBy(k => (Place(harness.LoadArray[k].Positive), Place(harness.LoadArray[k].Negative), Share(k)))
                .Select(group => ((int[])[.. group], group.Key.Item3)),
        ];
        oneWay = groups.Length == 0 || (harness.SourceArray.Length == 1 && Enumerable.Range(0, duty.On.Length).All(k => duty.Open.Contains(k) || duty.Graph.IsFedFromOneEnd(k, out _)));
    }

    /// <summary>Raises the largest currents of the branches where pauses matter.</summary>
    internal void Raise()
    {
        if (groups.Length == 0 || (oneWay && !bends))
        {
            return;
        }

        foreach (HarnessState full in duty.States)
        {
            Raise(full);
        }
    }

    private void Raise(HarnessState full)
    {
        bool[] none = new bool[groups.Length], all = [.. none.Select(_ => true)];
        states[(Key(all), full.Level)] = full;
        double[] shares = [.. groups.Select(group => Share(group.Loads, group.Share, full))];
        HarnessState? still = With(none, full.Level);
        HarnessState?[] alone = [.. groups.Select((_, k) => With(Turned(none, k), full.Level))], without = [.. groups.Select((_, k) => With(Turned(all, k), full.Level))];
        HarnessState?[] sets = groups.Length > MostSolved ? [] : [.. Enumerable.Range(0, 1 << groups.Length).Select(set => With([.. groups.Select((_, k) => (set >> k & 1) == 1)], full.Level))];
        for (int branch = 0; branch < duty.On.Length; branch++)
        {
            Flow flow = Of(branch, (still, full), alone, without, shares);
            double most = sets.Length > 0 ? Most(sets, branch) : Math.Max(Math.Max(flow.Still + flow.Up, flow.Down - flow.Still), Most(Likely(flow, full.Level), branch));

            // A motor's starts, which a share above one counts, are more than flows in running.
            duty.RaiseTo(branch, full.Level, most, flow.Share > 1 ? Math.Max(flow.Heat, flow.Seen) : Math.Min(flow.Heat, most));
        }
    }

    private static double Most(IEnumerable<HarnessState?> states, int branch) => states.Max(state => Math.Abs(state?.Amperes[branch] ?? 0));

    // The sets of those that add to the current of a branch, by what they add to none, to all, or both, and of those that take from it.
    private IEnumerable<HarnessState?> Likely(Flow flow, SupplyLevel level) =>
        from weight in new[] { (1, 0), (0, 1), (1, 1) }
        from sign in new[] { 1, -1 }
        select With([.. flow.First.Select((first, k) => sign * ((weight.Item1 * first) + (weight.Item2 * flow.Last[k])) > 0)], level);

    private static string Key(bool[] on) => string.Concat(on.Select(isOn => isOn ? '1' : '0'));

    private static bool[] Turned(bool[] groups, int one)
    {
        bool[] turned = [.. groups];
        turned[one] = !turned[one];
        return turned;
    }

    // The state with some of the groups on. Without an answer it adds nothing: that the harness has none is said elsewhere.
    private HarnessState? With(bool[] on, SupplyLevel level)
    {
        string key = Key(on);
        if (!states.TryGetValue((key, level), out HarnessState? state))
        {
            if (!networks.TryGetValue(key, out HarnessNetwork? network))
            {
                networks[key] = network = duty.Without(groups.Where((_, k) => !on[k]).SelectMany(group => group.Loads));
            }

            states[(key, level)] = state = network.Solve(level) is { Exists: true } solved ? solved : null;
        }

        return state;
    }

    // Where it is fed from; where the voltage counts by itself, its own node.
    private int Place(string node) => bends ? duty.Harness.NodeIndex(node) : duty.Graph.WayFrom(duty.Harness.NodeIndex(node)).EndNode;

    // On one way to one source the current keeps its direction, and what takes from it is no heat.
    private Flow Of(int branch, (HarnessState? None, HarnessState Full) ends, HarnessState?[] each, HarnessState?[] but, double[] shares)
    {
        double still = ends.None?.Amperes[branch] ?? 0, full = ends.Full.Amperes[branch];
        Flow flow = new() { First = new double[groups.Length], Last = new double[groups.Length], Still = still, Heat = Math.Abs(still), Seen = Math.Max(Math.Abs(still), Math.Abs(full)) };
        int direction = oneWay ? Math.Sign(full) : 0;
        for (int i = 0; i < groups.Length; i++)
        {
            double alone = each[i]?.Amperes[branch] ?? still, without = but[i]?.Amperes[branch] ?? full, first = alone - still, last = full - without;
            (flow.First[i], flow.Last[i]) = (first, last);
            (flow.Up, flow.Down) = (flow.Up + Math.Max(0, Math.Max(first, last)), flow.Down + Math.Max(0, Math.Max(-first, -last)));
            flow.Heat += shares[i] * (direction == 0 ? Math.Max(Math.Abs(first), Math.Abs(last)) : Math.Max(0, Math.Max(direction * first, direction * last)));
            flow.Share = Math.Max(flow.Share, shares[i]);
            flow.Seen = Math.Max(flow.Seen, Math.Max(Math.Abs(alone), Math.Abs(without)));
        }

        return flow;
    }

    // Of loads with parts that pause apart, at the voltage that they have.
    private double Share(int[] loads, double stated, HarnessState full)
    {
        double amperes = loads.Sum(k => Math.Abs(full.LoadAmperes[k]));
        return stated != 1 - Rounding || amperes == 0 ? stated
            : loads.Sum(k => CaseDuty.HeatingOf(duty.Harness.LoadArray[k].Load, full.VoltsAcross(k), Math.Abs(full.LoadAmperes[k]))) / amperes;
    }

    // Above one of a motor whose starts in every period heat more than it does running.
    private double Share(int load)
    {
        Load at = duty.Harness.LoadArray[load].Load;
        double factor = at.HeatFactor(LoadState.Running);
        return !double.IsNaN(factor) ? factor
            : at.GreatestHeatFactor(LoadState.Running, duty.Harness.GreatestVolts) is > 1 and double most ? most
            : 1 - Rounding;
    }

    /// <summary>A branch over the states: with all of the groups pausing, with none, and what they add and take. A.</summary>
    private struct Flow
    {
        internal double[] First;
        internal double[] Last;
        internal double Still;
        internal double Up;
        internal double Down;
        internal double Heat;
        internal double Share;
        internal double Seen;
    }
}

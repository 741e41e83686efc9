using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a branch carries while loads with a duty cycle pause: between sources, in a neutral, in a ring or beside a supply at its limit that may be more than with all of them on.</summary>
/// <remarks>
/// With I₀ while all of them pause and c = I − I₀ of each group by itself, those that hang on the same place: about the sum of I₀ and all c of one sign flows at most (exactly so for loads of constant current and no limit), and by Minkowski's
/// inequality √(mean of I²) ≤ |I₀| + Σ|c|·√share; never more than the most that flows. Where everything hangs on one source by one way there is nothing to raise.
/// </remarks>
internal sealed class DutyPauses
{
    private const double Rounding = 1e-9;

    private readonly CaseDuty duty;
    private readonly (int[] Loads, double Share)[] groups;

    internal DutyPauses(CaseDuty duty)
    {
        this.duty = duty;
        Harness harness = duty.Harness;
        groups =
        [
            .. Enumerable.Range(0, harness.LoadArray.Length).Where(k => duty.IsOn(k) && !Share(k).Equals(1.0))
                .GroupBy(k => (duty.Graph.WayFrom(harness.NodeIndex(harness.LoadArray[k].Positive)).EndNode, duty.Graph.WayFrom(harness.NodeIndex(harness.LoadArray[k].Negative)).EndNode))
                .Select(group => ((int[])[.. group], group.Max(Share))),
        ];
    }

    // Nothing that pauses can add to a current that has one way to one source.
    private bool IsOneWay => duty.Harness.SourceArray.Length == 1 && Enumerable.Range(0, duty.On.Length).All(k => duty.Open.Contains(k) || duty.Graph.IsFedFromOneEnd(k, out _));

    /// <summary>Raises the largest currents of the branches where pauses matter.</summary>
    internal void Raise()
    {
        if (groups.Length == 0 || IsOneWay)
        {
            return;
        }

        int[] all = [.. groups.SelectMany(group => group.Loads)];
        foreach (SupplyLevel level in duty.Group.Levels)
        {
            HarnessState? none = Solve(level, all);
            HarnessState?[] each = groups.Length == 1 ? [duty.States.FirstOrDefault(state => state.Level == level)] : [.. groups.Select(group => Solve(level, all.Except(group.Loads)))];
            for (int branch = 0; branch < duty.On.Length; branch++)
            {
                Raise(branch, level, none, each);
            }
        }
    }

    private void Raise(int branch, SupplyLevel level, HarnessState? none, HarnessState?[] each)
    {
        double still = none?.Amperes[branch] ?? 0, up = 0, down = 0, heat = Math.Abs(still), share = 0, seen = heat;
        for (int i = 0; i < groups.Length; i++)
        {
            double amperes = each[i]?.Amperes[branch] ?? still, own = amperes - still;
            (up, down) = (up + Math.Max(0, own), down + Math.Max(0, -own));
            heat += Math.Abs(own) * groups[i].Share;
            share = Math.Max(share, groups[i].Share);
            seen = Math.Max(seen, Math.Abs(amperes));
        }

        // All the same way, and no more than with all on: the heat of the mean is that of their sum.
        double most = Math.Max(seen, Math.Max(still + up, down - still));
        bool sameWay = (still >= 0 && down <= Rounding * most) || (still <= 0 && up <= Rounding * most);
        if (sameWay && seen <= duty.On[branch] * (1 + Rounding))
        {
            return;
        }

        // A motor's starts, which a share above one counts, are more than flows in running.
        most = sameWay ? seen : most;
        duty.RaiseTo(branch, level, most, share > 1 ? Math.Max(heat, seen) : Math.Min(Math.Max(heat, sameWay ? seen : 0), most));
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

    // Without an answer it adds nothing: that the harness has none is said elsewhere.
    private HarnessState? Solve(SupplyLevel level, IEnumerable<int> off) => duty.Without(off).Solve(level) is { Exists: true } state ? state : null;
}

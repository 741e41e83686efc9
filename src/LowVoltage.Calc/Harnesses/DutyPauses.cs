using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What a branch carries while loads with a duty cycle pause: between sources, in a neutral or in a ring that is more than with all of them on, where their currents are against each other.</summary>
/// <remarks>
/// With I₀ while all of them pause and c = I − I₀ of each by itself: at most the sum of I₀ and all c of one sign flows at once, and by Minkowski's inequality √(mean of I²) ≤ |I₀| + Σ|c|·√share; never more than the most that flows.
/// </remarks>
internal sealed class DutyPauses
{
    private const double Rounding = 1e-9;

    private readonly CaseDuty duty;
    private readonly int[] loads;

    internal DutyPauses(CaseDuty duty)
    {
        this.duty = duty;
        loads = [.. Enumerable.Range(0, duty.Harness.LoadArray.Length).Where(k => duty.IsOn(k) && !Share(k).Equals(1.0))];
    }

    /// <summary>Raises the largest currents of the branches where pauses matter.</summary>
    internal void Raise()
    {
        if (loads.Length == 0)
        {
            return;
        }

        foreach (SupplyLevel level in duty.Group.Levels)
        {
            HarnessState? none = Solve(level, -1);
            HarnessState?[] each = [.. loads.Select(k => Solve(level, k))];
            for (int branch = 0; branch < duty.On.Length; branch++)
            {
                Raise(branch, level, none, each);
            }
        }
    }

    private void Raise(int branch, SupplyLevel level, HarnessState? none, HarnessState?[] each)
    {
        double still = none?.Amperes[branch] ?? 0, up = 0, down = 0, heat = Math.Abs(still), share = 0;
        for (int i = 0; i < loads.Length; i++)
        {
            double own = (each[i]?.Amperes[branch] ?? still) - still;
            (up, down) = (up + Math.Max(0, own), down + Math.Max(0, -own));
            heat += Math.Abs(own) * Share(loads[i]);
            share = Math.Max(share, Share(loads[i]));
        }

        // All the same way: together they are the most, and the heat of the mean is that of their sum.
        double most = Math.Max(still + up, down - still);
        if ((still >= 0 && down <= Rounding * most) || (still <= 0 && up <= Rounding * most))
        {
            return;
        }

        // A motor's starts, which a share above one counts, are more than flows in running.
        duty.RaiseTo(branch, level, most, share > 1 ? heat : Math.Min(heat, most));
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
    private HarnessState? Solve(SupplyLevel level, int only)
    {
        string[] off = [.. loads.Where(k => k != only).Select(k => duty.Harness.LoadArray[k].Id)];
        HarnessState state = new HarnessNetwork(duty.Harness, duty.Used.WithOff([.. duty.Used.Off, .. off]), new HarnessChange { LoadsStayOn = true }).Solve(level);
        return state.Exists ? state : null;
    }
}

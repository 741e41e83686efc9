using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Narrows bounds of voltages and currents on trees until they stay, on doubles.</summary>
internal sealed class BoundsFinder
{
    private const int MostRounds = 10_000;

    // Rounding, and the last step from outside that was not made: added to every bound.
    private const double Slack = 1e-9;

    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly SegmentState[] wires;
    private readonly int[][] ways;
    private readonly int[] source;
    private readonly double[] mostOhms;
    private readonly double[] most;
    private readonly double[] mostHeat;
    private readonly double loadShare;
    private readonly double supplyShare;
    private readonly bool allHaveWays;

    internal BoundsFinder(Harness harness, Tolerances tolerances, LoadCase used)
    {
        this.harness = harness;
        this.used = used;
        (loadShare, supplyShare) = (tolerances.LoadShare, tolerances.SupplyShare);
        LoadCase hot = used;
        wires = HarnessWires.StatesOf(harness, hot);
        for (int k = 0; k < wires.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire { Conductor: { } conductor } wire)
            {
                Temperature ambient = Temperature.FromDegreesCelsius((used.AmbientCelsius ?? wire.Place.AmbientCelsius) + tolerances.AmbientKelvins);
                wires[k] = HarnessWires.Of(harness, wire.WithPlace(wire.Place.WithAmbient(ambient)), conductor, wires[k].Site.OwnConductors, LoadCase.AllOn);
            }
        }

        double stretch = (1 + tolerances.LengthShare) * (1 + tolerances.ResistanceShare), joints = 1 + tolerances.JointShare;
        mostOhms = new double[wires.Length];
        (most, mostHeat) = (new double[wires.Length], new double[wires.Length]);
        int loads = harness.LoadArray.Length;
        (ways, source) = (new int[loads][], new int[loads]);
        (LeastVolts, MostVolts) = (new double[loads], new double[loads]);
        MayPassLimit = new bool[harness.SourceArray.Length];
        FindWays();
        allHaveWays = Enumerable.Range(0, loads).All(l => source[l] >= 0 || used.UseOf(harness.LoadArray[l].Id) == LoadUse.Off);
        Narrow(stretch, joints);
    }

    internal double[] LeastVolts { get; }

    internal double[] MostVolts { get; }

    /// <summary>Whether the loads on a source together may pass its current limit.</summary>
    internal bool[] MayPassLimit { get; }

    internal bool HasWay(int load) => source[load] >= 0 && used.UseOf(harness.LoadArray[load].Id) != LoadUse.Off;

    /// <summary>Not behind a source that may come to its limit: it would give less voltage than is counted on here. Nor where another load has several ways: what it draws of this source is not counted.</summary>
    internal bool IsGuaranteed(int load) => allHaveWays && HasWay(load) && LeastVolts[load] > 0 && !MayPassLimit[source[load]];

    internal double? Most(int branch)
    {
        bool any = false;
        for (int l = 0; l < ways.Length; l++)
        {
            if (ways[l].Contains(branch))
            {
                any = true;
                if (!IsGuaranteed(l) && used.UseOf(harness.LoadArray[l].Id) != LoadUse.Off)
                {
                    return null;
                }
            }
        }

        return any && Array.TrueForAll(source, s => s >= 0) ? most[branch] : null;
    }

    /// <summary>Voltage lost on a load's way at the greatest resistances and currents.</summary>
    internal double MostDrop(int load) => (Slack * harness.NominalVolts) + ways[load].Sum(k => mostOhms[k] * most[k]);

    internal double? MostHeat(int branch) => Most(branch) is null ? null : mostHeat[branch];

    internal double? Hottest(int branch) =>
        Most(branch) is not null && wires[branch].IsRated && wires[branch].TrySteadyCelsius(mostHeat[branch], out double celsius) && celsius < wires[branch].Conductor.Material.MeltingPointCelsius
            ? celsius + Slack
            : null;

    private void FindWays()
    {
        CaseGroup group = CaseGroup.Of(harness.ToBuilder().WithOnly(used))[0];
        CaseDuty duty = new(harness, group);
        FeedingSource feeding = new(duty);
        for (int l = 0; l < ways.Length; l++)
        {
            FeedWay feed = duty.Graph.WayFrom(harness.NodeIndex(harness.LoadArray[l].Positive)), back = duty.Graph.WayFrom(harness.NodeIndex(harness.LoadArray[l].Negative));
            ways[l] = [.. feed.Branches, .. back.Branches];
            source[l] = feeding.Single(feed, back);
            MostVolts[l] = source[l] < 0 ? 0 : harness.SourceArray[source[l]].Source!.Numbers.MaximumVolts * (1 + supplyShare);
            LeastVolts[l] = source[l] < 0 ? 0 : harness.SourceArray[source[l]].Source!.Numbers.MinimumVolts * (1 - supplyShare);
        }
    }

    // From no drop at all downward: each round bounds the currents by the voltages of the round before.
    private void Narrow(double stretch, double joints)
    {
        for (int n = 0; n < MostRounds; n++)
        {
            Currents();
            for (int k = 0; k < mostOhms.Length; k++)
            {
                mostOhms[k] = (harness.BranchArray[k].FixedOhms * joints) + (harness.BranchArray[k] is HarnessWire ? stretch * wires[k].OhmsAt(wires[k].CelsiusAt(mostHeat[k])) : 0);
            }

            double moved = 0;
            for (int l = 0; l < ways.Length; l++)
            {
                double volts = Math.Max(0, Least(l));
                moved = Math.Max(moved, Math.Abs(volts - LeastVolts[l]));
                LeastVolts[l] = volts;
            }

            if (moved <= 1e-12 * harness.NominalVolts)
            {
                break;
            }
        }

        for (int l = 0; l < ways.Length; l++)
        {
            LeastVolts[l] = Math.Max(0, LeastVolts[l] - (Slack * harness.NominalVolts));
            MostVolts[l] += Slack * harness.NominalVolts;
        }

        for (int k = 0; k < most.Length; k++)
        {
            (most[k], mostHeat[k]) = (most[k] * (1 + Slack), mostHeat[k] * (1 + Slack));
        }
    }

    private double Least(int load)
    {
        if (source[load] < 0)
        {
            return 0;
        }

        SourceNumbers numbers = harness.SourceArray[source[load]].Source!.Numbers;
        double total = 0, volts = numbers.MinimumVolts * (1 - supplyShare);
        for (int l = 0; l < ways.Length; l++)
        {
            total += source[l] == source[load] ? MostCurrent(l) : 0;
        }

        volts -= numbers.GreatestOhms * total;
        MayPassLimit[source[load]] = total > numbers.LimitAmperes * (1 - Slack);
        foreach (int k in ways[load])
        {
            volts -= mostOhms[k] * most[k];
        }

        return volts;
    }

    private void Currents()
    {
        Array.Clear(most, 0, most.Length);
        Array.Clear(mostHeat, 0, mostHeat.Length);
        for (int l = 0; l < ways.Length; l++)
        {
            double amperes = MostCurrent(l), heat = amperes * HeatShare(l);
            foreach (int k in ways[l])
            {
                most[k] += amperes;
                mostHeat[k] += heat;
            }
        }
    }

    // What rises with the voltage at the highest, what falls with it at the lowest.
    private double MostCurrent(int load)
    {
        HarnessLoad at = harness.LoadArray[load];
        if (!HasWay(load))
        {
            return 0;
        }

        LoadState state = StateOf(load);
        LoadLaw law = at.Load.LawAt(state);
        double rising = at.Load.AmperesAt(MostVolts[load], state) - (law.Watts / MostVolts[load]);
        double least = Math.Max(LeastVolts[load], 1e-6);
        return (rising + (law.Watts / least)) * (1 + loadShare);
    }

    private double HeatShare(int load)
    {
        Load at = harness.LoadArray[load].Load;
        LoadState state = StateOf(load);
        return double.IsNaN(at.HeatFactor(state)) ? Math.Max(1, at.GreatestHeatFactor(state, MostVolts[load])) : at.HeatFactor(state);
    }

    private LoadState StateOf(int load) => used.UseOf(harness.LoadArray[load].Id) switch { LoadUse.Starting => LoadState.Peak, LoadUse.Stalled => LoadState.LockedRotor, _ => LoadState.Running };
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What feeds a branch, seen from where it begins: one source in a row with what lies before it, or several as one equivalent.</summary>
internal sealed class FeedingSource
{
    private const int None = -1;

    // Of a short that a fuse without resistance may bridge: none at all would close a loop of nothing.
    private const double LeastShortOhms = 1e-8;

    // Of the voltage, across that short: a source that leaves as much has less than some 10 µΩ.
    private const double LeastShare = 1e-3;

    private readonly CaseDuty duty;
    private readonly double[] hot;
    private readonly double[] cool;
    private readonly Dictionary<(int, int), SourceNumbers?> equivalents = [];
    private double? greatestVolts;

    internal FeedingSource(CaseDuty duty)
    {
        this.duty = duty;
        hot = duty.HotOhms();
        cool = duty.CoolOhms();
    }

    internal double HotOhms(int branch) => hot[branch];

    internal double CoolOhms(int branch) => cool[branch];

    /// <summary>The one source whose terminals these two nodes are; −1 where there are several or none.</summary>
    internal int Single(FeedWay feed, FeedWay back)
    {
        if (feed.End != FeedEnd.Source || back.End != FeedEnd.Source)
        {
            return None;
        }

        int found = None;
        for (int k = 0; k < duty.Harness.SourceArray.Length; k++)
        {
            HarnessSource source = duty.Harness.SourceArray[k];
            int plus = duty.Harness.NodeIndex(source.Positive), minus = duty.Harness.NodeIndex(source.Negative);
            bool here = plus == feed.EndNode || minus == feed.EndNode || plus == back.EndNode || minus == back.EndNode;
            if (!here)
            {
                continue;
            }

            if (found != None || plus != feed.EndNode || minus != back.EndNode || source.Source is null)
            {
                return None;
            }

            found = k;
        }

        return found;
    }

    /// <summary>Several sources between two nodes as one: at the most their greatest currents, at the least the batteries alone with all loads drawing; null where that has no answer.</summary>
    internal SourceNumbers? Between(int a, int b)
    {
        if (!equivalents.TryGetValue((a, b), out SourceNumbers? found))
        {
            equivalents.Add((a, b), found = Find(a, b));
        }

        return found;
    }

    /// <summary>The greatest voltage between any two nodes that are connected, with every load off, V.</summary>
    internal double GreatestVolts => greatestVolts ??= OpenVoltage.Of(duty.Harness, duty.Used);

    /// <summary>The most that a short between an end of a fuse and a terminal of a source drives through the fuse, A; infinite where that has no answer.</summary>
    internal double ShortThrough(int fuse)
    {
        double most = 0;
        foreach (int end in new[] { duty.Graph.From[fuse], duty.Graph.To[fuse] })
        {
            foreach (int terminal in duty.Harness.SourceArray.SelectMany(s => new[] { duty.Harness.NodeIndex(s.Positive), duty.Harness.NodeIndex(s.Negative) }).Distinct().Where(node => node != end))
            {
                HarnessChange change = new() { LoadsOff = true, Ohms = cool, Short = (end, terminal, LeastShortOhms), SourcesStay = true };
                HarnessState state = new HarnessNetwork(duty.Harness, duty.Used, change).Solve(SupplyLevel.Maximum);
                double amperes = state.Exists ? Math.Abs(state.Amperes[fuse]) : double.PositiveInfinity;
                most = Math.Max(most, IsBoundByTheShort(amperes * LeastShortOhms) ? double.PositiveInfinity : amperes);
            }
        }

        return most;
    }

    private SourceNumbers? Find(int a, int b)
    {
        if (Greatest(a, b) is not { } most || Least(a, b) is not { } least)
        {
            return null;
        }

        double nominal = Math.Min(Math.Max(duty.Harness.NominalVolts, least.Volts), Math.Max(most.Volts, least.Volts));
        return new SourceNumbers(least.Volts, nominal, Math.Max(most.Volts, least.Volts), Math.Min(most.Ohms, least.Ohms), 0.5 * (Math.Min(most.Ohms, least.Ohms) + least.Ohms), least.Ohms);
    }

    // The line through the short circuit and a point halfway up: no current at a lower voltage lies above it.
    private (double Volts, double Ohms)? Greatest(int a, int b)
    {
        // Ideal sources with nothing before them: only the short itself bounds its current. One of no resistance would close a loop of nothing.
        double bounded = ShortAmperes(a, b, LeastShortOhms) * LeastShortOhms;
        if (IsBoundByTheShort(bounded))
        {
            return (bounded, 0);
        }

        double i1 = ShortAmperes(a, b, 0);
        if (!(i1 > 0))
        {
            return null;
        }

        double half = 0.5 * duty.Harness.GreatestVolts / i1, i2 = ShortAmperes(a, b, half);
        return i2 > 0 && i2 < i1 ? (i1 * (half * i2 / (i1 - i2)), half * i2 / (i1 - i2)) : null;
    }

    private bool IsBoundByTheShort(double volts) => volts > LeastShare * duty.Harness.GreatestVolts;

    private double ShortAmperes(int a, int b, double ohms)
    {
        HarnessNetwork network = new(duty.Harness, duty.Used, new HarnessChange { LoadsOff = true, Ohms = cool, Short = (a, b, ohms), SourcesStay = true });
        HarnessState state = network.Solve(SupplyLevel.Maximum);
        return state.Exists ? Math.Abs(state.ShortAmperes) : 0;
    }

    private (double Volts, double Ohms)? Least(int a, int b)
    {
        HarnessNetwork open = new(duty.Harness, duty.Used, new HarnessChange { Ohms = hot, BatteriesOnly = true, LoadsStayOn = true, SourcesStay = true });
        HarnessState loaded = open.Solve(SupplyLevel.Minimum);
        if (!loaded.Exists || loaded.Grounds[a] != loaded.Grounds[b])
        {
            return null;
        }

        HarnessNetwork without = new(duty.Harness, duty.Used, new HarnessChange { LoadsOff = true, Ohms = hot, BatteriesOnly = true, SourcesStay = true });
        (_, double ohms) = without.Thevenin(SupplyLevel.Minimum, a, b);
        double volts = loaded.Volts[a] - loaded.Volts[b];
        return volts > 0 && ohms >= 0 ? (volts, ohms) : null;
    }
}

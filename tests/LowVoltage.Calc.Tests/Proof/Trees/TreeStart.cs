using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>What a start did to one fuse on its way.</summary>
/// <param name="Part">The fuse.</param>
/// <param name="Melted">Share of its least melting that one start uses up.</param>
/// <param name="Peak">Highest current, A.</param>
/// <param name="Joule">Joule integral above the rating, A²s.</param>
/// <param name="Collapses">Whether a constant power that runs beside is left so little voltage that it may drop out or take any current.</param>
internal readonly record struct StartMelts(int Part, double Melted, double Peak, double Joule, bool Collapses);

/// <summary>Loads of a tree that start at the same moment while all others run, step by step; every fuse on their ways carries its part of it.</summary>
/// <remarks>In each step each starting load is solved with the others' currents as they are, and the others at the volts that this leaves them, a few times over.</remarks>
internal sealed class TreeStart
{
    private const double Growth = 1.08;
    private const int Halvings = 26;

    private readonly OwnTree tree;
    private readonly SupplyLevel level;
    private readonly int[] starting;
    private readonly TreeFlow running;
    private readonly double[] ohms;
    private readonly double[] way;
    private readonly double[] amperes;
    private readonly double[] parts;
    private readonly double[] stored;

    // Of others: their current falls no lower than at this share of their running volts.
    private const double LeastVoltsShare = 0.3;
    private const double CollapseShare = 0.6;

    private bool collapses;

    private TreeStart(OwnTree tree, SupplyLevel level, int[] starting, TreeFlow running)
    {
        this.tree = tree;
        this.level = level;
        this.starting = starting;
        this.running = running;
        ohms = [.. Enumerable.Range(0, tree.Wires.Length).Select(part => tree.Ohms(part, 0, false))];
        way = [.. tree.Ways.Select(its => its.Sum(part => ohms[part]))];
        amperes = [.. running.Amperes];
        parts = [.. running.Parts];
        stored = new double[amperes.Length];
        foreach (int load in starting)
        {
            Take(load, 0);
        }
    }

    /// <summary>Of every fuse on the way of a starting load.</summary>
    public static StartMelts[] Of(OwnTree tree, SupplyLevel level, int[] starting, TreeFlow running) => new TreeStart(tree, level, starting, running).Run();

    private StartMelts[] Run()
    {
        StartMelts[] fuses = [.. starting.SelectMany(load => tree.Ways[load]).Where(part => tree.Fuses[part] is not null).Distinct().Select(part => new StartMelts(part, 0, 0, 0, false))];
        double time = 0, first = starting.Min(Shortest), end = starting.Max(End), step = first;
        double[] edges = [.. starting.Select(load => tree.Loads[load].StartSeconds).Where(s => s > 0 && s < end).Distinct().Order(), end];
        while (time < end && Array.Exists(fuses, fuse => fuse.Melted < 10))
        {
            double edge = Array.Find(edges, e => e > time), dt = Math.Min(step, edge - time);
            Advance(time, dt, time == 0 || step == first ? 6 : 2);
            for (int k = 0; k < fuses.Length; k++)
            {
                fuses[k] = Add(fuses[k], parts[fuses[k].Part], dt);
            }

            time = edge - time - dt < 1e-12 ? edge : time + dt;
            step = time == edge ? first : Math.Max(step * Growth, first);
        }

        return [.. fuses.Select(fuse => fuse with { Collapses = collapses })];
    }

    private StartMelts Add(in StartMelts fuse, double current, double dt)
    {
        OwnFuse own = tree.Fuses[fuse.Part]!;
        double melted = own.HasLeastTimes ? dt / own.Least(current) : 0;
        return fuse with { Melted = fuse.Melted + melted, Peak = Math.Max(fuse.Peak, current), Joule = fuse.Joule + (current > own.Amperes ? current * current * dt : 0) };
    }

    private void Advance(double time, double dt, int rounds)
    {
        double[] after = new double[stored.Length];
        for (int round = 0; round < rounds; round++)
        {
            foreach (int load in starting)
            {
                Take(load, 0);
                (double i, after[load]) = StartOf(load, time + (0.5 * dt), dt);
                Take(load, i);
            }

            for (int load = 0; load < amperes.Length; load++)
            {
                if (!starting.Contains(load))
                {
                    double u = Math.Max(VoltsAt(load), LeastVoltsShare * running.Volts[load]);
                    collapses |= tree.Loads[load].HasPower && u < Math.Max(CollapseShare * running.Volts[load], tree.Loads[load].LeastVolts);
                    Take(load, 0.5 * (amperes[load] + tree.Loads[load].Running(u)));
                }
            }
        }

        foreach (int load in starting)
        {
            stored[load] = after[load];
        }
    }

    // Current into a starting load whose own is taken out of the tree, and the volts of its capacitor after the step.
    private (double Amperes, double Stored) StartOf(int load, double time, double dt)
    {
        OwnLoad own = tree.Loads[load];
        TreeSupply supply = Seen(load);
        double r = way[load], farads = own.Farads, from = stored[load];
        double draws(double u) => own.Starting(u, time, running.Volts[load], cold => supply.Flow(r + cold, 0));
        double low = 0, high = Math.Max(supply.Volts, 1e-6);
        for (int k = 0; k < Halvings; k++)
        {
            double u = 0.5 * (low + high), surplus = supply.Flow(r, u) - draws(u) - (farads > 0 ? farads * (u - from) / dt : 0);
            (low, high) = surplus > 0 ? (u, high) : (low, u);
        }

        double volts = 0.5 * (low + high);
        return (supply.Flow(r, farads > 0 ? 0.5 * (from + volts) : volts), volts);
    }

    private TreeSupply Seen(int load) => TreeSupply.Of(tree, level, amperes.Sum(), tree.Ways[load].Sum(part => parts[part] * ohms[part]));

    private double VoltsAt(int load) => tree.Source.Volts(level, Math.Min(amperes.Sum(), tree.Source.HeldAmperes)) - tree.Ways[load].Sum(part => parts[part] * ohms[part]);

    private void Take(int load, double current)
    {
        double more = current - amperes[load];
        amperes[load] = current;
        foreach (int part in tree.Ways[load])
        {
            parts[part] += more;
        }
    }

    private double Shortest(int load) => tree.Loads[load].Farads > 0 ? Math.Min(1e-3 * tree.Loads[load].Farads * Total(load), 1e-4) : 1e-4;

    private double End(int load)
    {
        OwnLoad own = tree.Loads[load];
        double end = Math.Max(own.StartSeconds, 0.2);
        if (own.Farads > 0)
        {
            double held = tree.Source.HeldAmperes - (running.Total - running.Amperes[load]);
            end = Math.Max(end, 12 * own.Farads * Total(load));
            end = double.IsInfinity(held) ? end : Math.Max(end, Math.Min(20, 3 * own.Farads * tree.Source.MostVolts / Math.Max(1e-3, held)));
        }

        return end;
    }

    private double Total(int load) => Math.Max(1e-6, way[load] + TreeSupply.Of(tree, level, 0, 0).Ohms);
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>The steady state of a tree: currents summed from the leaves, volts from the root, again and again until nothing moves; the wires' warmth in each round.</summary>
internal sealed class TreeFlow
{
    private const int MostRounds = 600;
    private const double Step = 0.6;

    // A load at less than this share of the supply is no operating point worth judging.
    private const double LeastShare = 0.2;

    private TreeFlow(OwnTree tree)
    {
        Volts = new double[tree.Loads.Length];
        Amperes = new double[Volts.Length];
        Parts = new double[tree.Wires.Length];
        Heating = new double[Parts.Length];
        MostHeating = new double[Parts.Length];
    }

    public bool Exists { get; private set; }

    /// <summary>At the source's terminals.</summary>
    public double SourceVolts { get; private set; }

    public double Total { get; private set; }

    /// <summary>Volts and amperes of each load.</summary>
    public double[] Volts { get; }

    public double[] Amperes { get; }

    /// <summary>Of each part: its current with everything on; its r.m.s. with pulses on top of each other; the most by any timing.</summary>
    public double[] Parts { get; }

    public double[] Heating { get; }

    public double[] MostHeating { get; }

    /// <summary>Everything running, or what a law says instead.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="level">The supply level.</param>
    /// <param name="warm">Whether wires are as warm as may be, or as cool.</param>
    /// <param name="law">Current of a load at its volts; null for all running.</param>
    public static TreeFlow Of(OwnTree tree, SupplyLevel level, bool warm, Func<int, double, double>? law = null)
    {
        TreeFlow flow = new(tree);
        flow.Settle(tree, level, warm, law ?? ((load, volts) => tree.Loads[load].Running(volts)), law is not null);
        return flow;
    }

    private void Settle(OwnTree tree, SupplyLevel level, bool warm, Func<int, double, double> law, bool cold)
    {
        double open = tree.Source.Volts(level, 0);
        Array.Fill(Volts, open);
        for (int round = 0; round < MostRounds; round++)
        {
            Currents(tree, law);
            SourceVolts = tree.Source.Volts(level, Total);
            double moved = 0;
            for (int load = 0; load < Volts.Length; load++)
            {
                double u = SourceVolts;
                foreach (int part in tree.Ways[load])
                {
                    u -= Parts[part] * tree.Ohms(part, cold ? 0 : warm ? MostHeating[part] : Heating[part], warm && !cold);
                }

                if (!(u > LeastShare * open * 0.1))
                {
                    u = LeastShare * open * 0.1;
                }

                moved = Math.Max(moved, Math.Abs(u - Volts[load]));
                Volts[load] += Step * (u - Volts[load]);
            }

            if (moved < 1e-7 * open)
            {
                Exists = Array.TrueForAll(Volts, u => u > LeastShare * open);
                return;
            }
        }
    }

    private void Currents(OwnTree tree, Func<int, double, double> law)
    {
        for (int load = 0; load < Volts.Length; load++)
        {
            Amperes[load] = law(load, Volts[load]);
        }

        Total = Amperes.Sum();
        for (int part = 0; part < Parts.Length; part++)
        {
            int[] behind = tree.Behind[part];
            Parts[part] = behind.Sum(load => Amperes[load]);
            bool pulsed = Array.Exists(behind, load => tree.Loads[load].HasDuty);
            Heating[part] = pulsed ? OwnLoad.Nested(behind.SelectMany(load => tree.Loads[load].Pulses(Volts[load])).Select(p => (p.Duty, p.Amperes))) : Parts[part];
            MostHeating[part] = pulsed ? behind.Sum(load => tree.Loads[load].MostHeating(Volts[load])) : Parts[part];
        }
    }
}

using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>The current through a fuse after switching on, step by step, and how much of the fuse it melts.</summary>
internal static class OwnStart
{
    private const double Growth = 1.04;

    /// <summary>Share of the fuse's least melting that one start uses up (1 opens it), the highest current, and the Joule integral above the rating.</summary>
    /// <remarks>Everything is switched on at once. Damage is summed as the time spent at a current over the least time at that current.</remarks>
    public static (double Melted, double Peak, double Joule) Melted(OwnCircuit circuit, OwnFuse fuse, SupplyLevel level, double runningVolts)
    {
        OwnLoad load = circuit.Load;
        double ohms = Math.Max(1e-9, circuit.Ohms(0, false)), end = Math.Max(load.StartSeconds, 0.2);
        double stage(double u, double t) => load.Starting(u, t, runningVolts, cold => circuit.Source.Flow(level, ohms + cold, 0));
        double shortest = load.Farads > 0 ? 1e-3 * load.Farads * Total(circuit, level, ohms) : 1e-4;
        end = Math.Max(end, load.Farads > 0 ? 12 * load.Farads * Total(circuit, level, ohms) : 0);
        if (load.Farads > 0 && circuit.Source.Holds)
        {
            end = Math.Max(end, 3 * load.Farads * circuit.Source.MostVolts / Math.Max(1e-3, circuit.Source.Into(level, ohms)));
        }

        double t = 0, step = shortest, stored = 0, melted = 0, peak = 0, joule = 0;
        while (t < end && melted < 100)
        {
            // A motor's start ends at its own moment.
            double edge = t < load.StartSeconds ? load.StartSeconds : end, next = Math.Min(t + step, edge), dt = next - t;
            double i = load.Farads > 0 ? Charge(circuit, level, ohms, load.Farads, dt, ref stored, u => stage(u, t)) : Settle(circuit, level, ohms, u => stage(u, t));
            peak = Math.Max(peak, i);
            melted += dt / fuse.Least(i);
            joule += i > fuse.Amperes ? i * i * dt : 0;
            t = next;
            step = t + step >= edge ? shortest : Math.Max(step * Growth, shortest);
            step = t < load.StartSeconds ? Math.Max(step, Math.Min(load.StartSeconds / 50, 0.02 * (t + shortest))) : step;
        }

        return (melted, peak, joule);
    }

    private static double Total(OwnCircuit circuit, SupplyLevel level, double ohms) =>
        ohms + Math.Max(0, circuit.Source.Volts(level, 0) - circuit.Source.Volts(level, 1e-3)) / 1e-3;

    /// <summary>Current that flows into volts across the load.</summary>
    private static double Flow(OwnCircuit circuit, SupplyLevel level, double ohms, double u) => circuit.Source.Flow(level, ohms, u + circuit.OthersVolts(0, false));

    // Without a capacitor the load's volts follow at once: the source's surplus over the load's appetite changes sign.
    private static double Settle(OwnCircuit circuit, SupplyLevel level, double ohms, Func<double, double> load)
    {
        double low = 0, high = circuit.Source.Volts(level, 0);
        for (int k = 0; k < 40; k++)
        {
            double u = 0.5 * (low + high);
            (low, high) = Flow(circuit, level, ohms, u) > load(u) ? (u, high) : (low, u);
        }

        return Flow(circuit, level, ohms, 0.5 * (low + high));
    }

    // One step backwards in time (implicit), so that it cannot run away: C·(u1 − u0)/dt = flow(u1) − load(u1).
    private static double Charge(OwnCircuit circuit, SupplyLevel level, double ohms, double farads, double dt, ref double stored, Func<double, double> load)
    {
        double low = 0, high = circuit.Source.Volts(level, 0), from = stored;
        for (int k = 0; k < 40; k++)
        {
            double u = 0.5 * (low + high);
            (low, high) = Flow(circuit, level, ohms, u) - load(u) > farads * (u - from) / dt ? (u, high) : (low, u);
        }

        stored = 0.5 * (low + high);
        return Flow(circuit, level, ohms, 0.5 * (from + stored));
    }
}

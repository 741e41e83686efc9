using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Where source, path and load meet.</summary>
internal readonly record struct LoopPoint(bool Exists, double Volts, double Amperes, double Heating, double Drop);

/// <summary>The operating point by looking for a change of sign from the source's voltage downwards, then by halving; the wire's temperature is in the loop.</summary>
internal static class OwnLoop
{
    private const int Grid = 200;
    private const int Halvings = 48;

    /// <summary>Everything running.</summary>
    public static LoopPoint Running(OwnCircuit circuit, SupplyLevel level, bool warm, double share = 1)
    {
        OwnLoad load = circuit.Load;
        return Solve(circuit, level, warm, u => share * load.Running(u), warm ? u => load.MostHeating(u) : load.Heating);
    }

    /// <summary>At some current of the load while the wire is as warm as the air.</summary>
    public static LoopPoint Cold(OwnCircuit circuit, SupplyLevel level, Func<double, double> amperes) => Solve(circuit, level, false, amperes, _ => 0);

    private static LoopPoint Solve(OwnCircuit circuit, SupplyLevel level, bool warm, Func<double, double> amperes, Func<double, double> heating)
    {
        OwnSource source = circuit.Source;
        double surplus(double u)
        {
            double i = amperes(u), heat = heating(u), r = circuit.Ohms(heat, warm);
            return double.IsInfinity(r) ? double.NegativeInfinity : source.Volts(level, i) - (i * r) - circuit.OthersVolts(heat, warm) - u;
        }

        double top = source.Volts(level, 0), high = top;
        for (int k = 1; k <= Grid; k++)
        {
            double low = top * (Grid - k + 0.001) / Grid;
            if (surplus(low) < 0)
            {
                // A supply that holds its current ends on a step, just above which there may be a point that no grid sees.
                double above = AboveTheStep(source, amperes, low, high);
                if (surplus(above) < 0)
                {
                    high = low;
                    continue;
                }

                low = above;
            }

            for (int i = 0; i < Halvings; i++)
            {
                double middle = 0.5 * (low + high);
                (low, high) = surplus(middle) >= 0 ? (middle, high) : (low, middle);
            }

            double current = amperes(low), hot = heating(low);
            return new(true, low, current, hot, (current * circuit.Ohms(hot, warm)) + circuit.OthersVolts(hot, warm));
        }

        return default;
    }

    // The lowest volts between two at which a supply does not yet only hold its current; the lower of the two where there is no such step.
    private static double AboveTheStep(OwnSource source, Func<double, double> amperes, double low, double high)
    {
        if (!source.OnlyHolds(amperes(low), 1) || source.OnlyHolds(amperes(high), 1))
        {
            return low;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = source.OnlyHolds(amperes(middle), 1) ? (middle, high) : (low, middle);
        }

        return high;
    }
}

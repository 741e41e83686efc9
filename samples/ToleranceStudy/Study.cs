using LowVoltage.Calc.Bulk;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>Solves all cases, a block at a time: voltage at the load and wire temperature, each of which depends on the other.</summary>
/// <remarks>
/// The warmer wire has more resistance, so that the load gets less voltage, draws more current and warms the wire. Starting at the ambient, each round takes
/// the temperature of the last one; an error shrinks to some hundredth each time, until no wire changes by more than a billionth of a kelvin.
/// </remarks>
internal static class Study
{
    // A few blocks' worth of arrays stay in the near caches, and progress has something to tell.
    private const int Block = 1000;
    private const int MostRounds = 100;
    private const double SettledKelvins = 1e-9;

    internal static void Solve(Circuit circuit, Cases cases, Action<int> progress, CancellationToken stop = default)
    {
        double[] ohmsPerMeter20 = new double[Block], ohmsPerMeter = new double[Block], ohms = new double[Block], before = new double[Block];
        Array.Fill(ohmsPerMeter20, circuit.OhmsPerMeter20);
        for (int start = 0; start < cases.Count; start += Block)
        {
            stop.ThrowIfCancellationRequested();
            int count = Math.Min(Block, cases.Count - start);
            SolveBlock(circuit, cases, start, ohmsPerMeter20.AsSpan(0, count), ohmsPerMeter.AsSpan(0, count), ohms.AsSpan(0, count), before.AsSpan(0, count));
            progress(start + count);
        }
    }

    private static void SolveBlock(
        Circuit circuit, Cases cases, int start, ReadOnlySpan<double> ohmsPerMeter20, Span<double> ohmsPerMeter, Span<double> ohms, Span<double> before)
    {
        Span<double> Part(double[] all, int length) => all.AsSpan(start, length);
        int count = ohms.Length;
        Span<double> meters = Part(cases.Meters, count), joints = Part(cases.JointOhms, count), watts = Part(cases.LoadWatts, count), ambient = Part(cases.AmbientCelsius, count);
        Span<double> supply = Part(cases.SupplyVolts, count), volts = Part(cases.LoadVolts, count), amperes = Part(cases.Amperes, count), celsius = Part(cases.WireCelsius, count);
        ambient.CopyTo(celsius);
        for (int round = 0; round < MostRounds; round++)
        {
            celsius.CopyTo(before);
            BulkResistance.PerMeter(circuit.Metal, ohmsPerMeter20, celsius, ohmsPerMeter);
            BulkResistance.OutAndBack(ohmsPerMeter, meters, ohmsPerMeter, meters, ohms);
            for (int i = 0; i < count; i++)
            {
                ohms[i] += joints[i];
            }

            BulkLoadVoltage.ConstantPower(supply, ohms, watts, volts);
            for (int i = 0; i < count; i++)
            {
                // 0 V: no operating point, and so no current.
                amperes[i] = volts[i] > 0 ? watts[i] / volts[i] : 0;
            }

            BulkConductorTemperature.AtCurrent(circuit.RatedAmperes, circuit.MostCelsius - circuit.BaseCelsius, ambient, amperes, celsius);
            if (Settled(before, celsius))
            {
                return;
            }
        }

        throw new InvalidOperationException($"A wire temperature has not settled within {MostRounds} rounds: the load takes nearly all that the wire can bring.");
    }

    private static bool Settled(ReadOnlySpan<double> before, ReadOnlySpan<double> after)
    {
        double most = 0;
        for (int i = 0; i < after.Length; i++)
        {
            most = Math.Max(most, Math.Abs(after[i] - before[i]));
        }

        return most <= SettledKelvins;
    }
}

using LowVoltage.Calc.Benchmarks.Formulas;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The bulk formulas as anyone would write them: one plain loop over spans of doubles, without any check.</summary>
internal static class RawLoops
{
    internal static void Drop(
        ReadOnlySpan<double> feedOhms, ReadOnlySpan<double> feed, ReadOnlySpan<double> backOhms, ReadOnlySpan<double> back, ReadOnlySpan<double> amperes, Span<double> volts)
    {
        for (int i = 0; i < volts.Length; i++)
        {
            volts[i] = ((feedOhms[i] * feed[i]) + (backOhms[i] * back[i])) * amperes[i];
        }
    }

    internal static void Sizing(ReadOnlySpan<double> celsius, ReadOnlySpan<double> meters, ReadOnlySpan<double> amperes, ReadOnlySpan<double> allowed, Span<double> areas)
    {
        double rho = Copper.Rho20, alpha = Copper.Alpha;
        for (int i = 0; i < areas.Length; i++)
        {
            areas[i] = rho * (1 + (alpha * (celsius[i] - 20))) * 1e6 * meters[i] * amperes[i] / allowed[i];
        }
    }

    internal static void LoadVoltage(ReadOnlySpan<double> volts, ReadOnlySpan<double> ohms, ReadOnlySpan<double> watts, Span<double> loadVolts)
    {
        for (int i = 0; i < loadVolts.Length; i++)
        {
            double v = volts[i], square = (v * v) - (4 * ohms[i] * watts[i]);
            loadVolts[i] = square >= 0 ? (v + Math.Sqrt(square)) / 2 : 0;
        }
    }

    internal static void FinalTemperature(
        ReadOnlySpan<double> areas, ReadOnlySpan<double> amperes, ReadOnlySpan<double> seconds, ReadOnlySpan<double> initial, Span<double> final)
    {
        double constant = Copper.ConstantSquared, beta = Copper.Beta;
        for (int i = 0; i < final.Length; i++)
        {
            double theta = initial[i];
            final[i] = theta + ((theta + beta) * (Math.Exp(amperes[i] * amperes[i] * seconds[i] / (constant * areas[i] * areas[i])) - 1));
        }
    }

    internal static void TimeToReach(double limit, ReadOnlySpan<double> areas, ReadOnlySpan<double> amperes, ReadOnlySpan<double> initial, Span<double> seconds)
    {
        double constant = Copper.ConstantSquared, beta = Copper.Beta;
        for (int i = 0; i < seconds.Length; i++)
        {
            double ratio = areas[i] / amperes[i];
            seconds[i] = constant * ratio * ratio * Math.Log((limit + beta) / (initial[i] + beta));
        }
    }

    internal static void ShortCircuitSizing(double limit, ReadOnlySpan<double> amperes, ReadOnlySpan<double> seconds, ReadOnlySpan<double> initial, Span<double> areas)
    {
        double constant = Copper.ConstantSquared, beta = Copper.Beta;
        for (int i = 0; i < areas.Length; i++)
        {
            areas[i] = amperes[i] * Math.Sqrt(seconds[i]) / Math.Sqrt(constant * Math.Log((limit + beta) / (initial[i] + beta)));
        }
    }
}

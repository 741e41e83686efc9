using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>A current that is on and off in turn, on doubles: what one cycle adds to the surface temperature that it started with.</summary>
/// <remarks>A cycle brings two starting temperatures closer together, so there is one that it returns to, and the wire settles there.</remarks>
internal readonly struct CyclicKernel(HeatBalanceKernel heat, double capacity, double amperes, double on, double off) : IScalarFunction
{
    private readonly double limit = heat.SurfaceFor(heat.MostCelsius);

    public double Evaluate(double x) => TryPulse(x, out double hot) ? Rest(hot) - x : double.NaN;

    /// <summary>The settled surface temperatures; false when the wire melts on the way.</summary>
    internal bool TryFindBand(out double lowest, out double highest)
    {
        lowest = heat.NoLoadCelsius;
        if (!TryPulse(lowest, out highest))
        {
            return false;
        }

        // The hottest start that one pulse does not melt, or that the current would hold indefinitely.
        double top = heat.TryBalance(amperes * amperes, out double settled) && settled < limit ? settled : HottestStart();
        if (!Brent.TryFindRoot(this, lowest, top, 1e-10, out double start) && top - lowest > 1e-9)
        {
            return false;
        }

        lowest = start;
        return TryPulse(start, out highest);
    }

    private bool TryPulse(double surface, out double hot) => new OverloadKernel(heat, amperes, capacity, surface).TryAdvance(on, limit, out hot);

    private double Rest(double surface)
    {
        _ = new OverloadKernel(heat, 0, capacity, surface).TryAdvance(off, limit, out double cool);
        return cool;
    }

    private double HottestStart()
    {
        double low = heat.NoLoadCelsius, high = limit;
        for (int i = 0; i < 60 && high - low > 1e-10; i++)
        {
            double middle = 0.5 * (low + high);
            if (TryPulse(middle, out _))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}

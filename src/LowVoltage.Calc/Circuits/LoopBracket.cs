using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Circuits;

/// <summary>The part of <see cref="LoopKernel"/> for loads without a closed form: lamps, and mixtures of duty cycles.</summary>
/// <remarks>
/// A load whose current does not fall with voltage has one root in 0…V; with constant power the highest root is sought, and the search for it starts from where the
/// balance is greatest. Newton's method from the source's voltage mostly finds it first.
/// </remarks>
internal static class LoopBracket
{
    private const int MostSteps = 12;
    private const double LastStep = 1e-9;

    /// <summary>The highest voltage at which source and load agree; zero when there is none.</summary>
    internal static double HighestRoot(double volts, double ohms, double cubic, Load load, LoadState state)
    {
        if (volts <= 0)
        {
            return 0;
        }

        if (TryNewton(volts, ohms, cubic, load, state, out double fast))
        {
            return fast;
        }

        VoltageBalance balance = new(volts, ohms, cubic, load, state);
        double low = 0;
        if (load.LawAt(state).Watts > 0)
        {
            low = Peak(balance, volts);
            if (balance.Evaluate(low) < 0)
            {
                return 0;
            }
        }

        return Brent.TryFindRoot(balance, low, volts, 1e-16 * volts, out double u) ? u : (balance.Evaluate(volts) >= 0 ? volts : 0);
    }

    /// <summary>The highest voltage up to that of the source at which the load draws just a current; zero when there is none.</summary>
    internal static double HighestAtLimit(double volts, Load load, LoadState state, double limit)
    {
        LimitBalance excess = new(load, state, limit);
        double low = load.LawAt(state).Watts > 0 ? Peak(excess, volts) : 0;
        return excess.Evaluate(low) >= 0 && Brent.TryFindRoot(excess, low, volts, 1e-16 * volts, out double root) ? root : 0;
    }

    // From the voltage of the source down. A balance with one hill that falls where it ends has its highest root there.
    private static bool TryNewton(double volts, double ohms, double cubic, Load load, LoadState state, out double root)
    {
        double factor = load.HeatFactor(state);
        root = volts;
        for (int i = 0; i < MostSteps && !double.IsNaN(factor); i++)
        {
            double amperes = load.AmperesAt(root, state), bend = cubic * factor * factor * amperes * amperes;
            double fall = 1 + (load.SlopeAt(root, state) * (ohms + (3 * bend)));
            double step = (volts - root - (amperes * (ohms + bend))) / fall;
            root += step;
            if (!(fall > 0) || !(root > 0) || !(root <= volts))
            {
                return false;
            }

            // Quadratic: what would follow is below the rounding.
            if (Math.Abs(step) <= LastStep * volts)
            {
                return true;
            }
        }

        return false;
    }

    // Where a function with one hill is greatest in 0…high: golden section.
    private static double Peak<TFunction>(in TFunction function, double high)
        where TFunction : struct, IScalarFunction
    {
        const double Golden = 0.6180339887498949;
        double a = 0, b = high, c = b - (Golden * (b - a)), d = a + (Golden * (b - a));
        double fc = function.Evaluate(c), fd = function.Evaluate(d);
        while (b - a > 1e-9 * high)
        {
            if (fc > fd)
            {
                (b, d, fd) = (d, c, fc);
                c = b - (Golden * (b - a));
                fc = function.Evaluate(c);
            }
            else
            {
                (a, c, fc) = (c, d, fd);
                d = a + (Golden * (b - a));
                fd = function.Evaluate(d);
            }
        }

        return 0.5 * (a + b);
    }

    // V − U − I·(A + B·heat²): positive where the source offers more than the load takes.
    private readonly struct VoltageBalance(double volts, double ohms, double cubic, Load load, LoadState state) : IScalarFunction
    {
        private readonly double factor = load.HeatFactor(state);

        // Far below anything real, yet finite, so that an interpolation never meets infinity.
        private const double Floor = -1e100;

        public double Evaluate(double x)
        {
            double i = load.AmperesAt(x, state), heat = double.IsNaN(factor) ? load.HeatingAmperesAt(x, state) : factor * i;
            double balance = volts - x - (i == 0 ? 0 : i * (ohms + (cubic == 0 ? 0 : cubic * heat * heat)));
            // The floor slopes, so that a search for the peak leaves it on the right side: towards more voltage.
            return balance > Floor ? balance : Floor * (2 - (x / volts));
        }
    }

    // The limit less what the load takes.
    private readonly struct LimitBalance(Load load, LoadState state, double limit) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double balance = limit - load.AmperesAt(x, state);
            return balance > -1e100 ? balance : -1e100;
        }
    }
}

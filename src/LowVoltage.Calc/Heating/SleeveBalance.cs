using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>The balance of wires in a sleeve, never above that of the same wires without it.</summary>
/// <remarks>
/// The air between conducts and radiates the better the hotter it is, so its resistance is found by repetition: it falls with the temperatures, and they
/// rise with it, which converges. The current for a temperature is the one function; the temperature for a current is its root.
/// </remarks>
internal readonly struct SleeveBalance(WireBundle bundle, Surroundings surroundings)
{
    private const int MostRepetitions = 100;
    private const double Accuracy = 1e-13;

    private readonly HeatBalanceKernel free = BundleHeat.Kernel(bundle.Unsleeved(), surroundings);
    private readonly double coldest = BundleHeat.Kernel(bundle, surroundings, 0).NoLoadCelsius;

    internal double AmperesFor(double conductor) => Governing(conductor).AmperesFor(conductor);

    internal bool TrySteady(double amperes, out HeatBalanceKernel kernel, out double surface, out double conductor)
    {
        conductor = coldest;
        bool steady = amperes == 0 || Brent.TryFindRoot(new Excess(this, amperes), coldest, free.MostCelsius, 1e-9, out conductor);
        conductor = steady ? conductor : free.MostCelsius;
        kernel = Governing(conductor);
        surface = kernel.SurfaceFor(conductor);
        return steady;
    }

    /// <summary>The balance that carries less at a conductor temperature.</summary>
    private HeatBalanceKernel Governing(double conductor)
    {
        HeatBalanceKernel sleeved = At(conductor);
        return sleeved.AmperesFor(conductor) <= free.AmperesFor(conductor) ? sleeved : free;
    }

    /// <summary>The balance with the air between as warm as it gets at a conductor temperature.</summary>
    private HeatBalanceKernel At(double conductor)
    {
        double gap = Sleeve.Resistance(bundle, surroundings, conductor, conductor);
        HeatBalanceKernel kernel = BundleHeat.Kernel(bundle, surroundings, gap);
        for (int i = 0; i < MostRepetitions; i++)
        {
            double surface = kernel.SurfaceFor(conductor), wires = surface + (gap * kernel.Loss(surface, out _));
            double next = Sleeve.Resistance(bundle, surroundings, wires, surface);
            double change = Math.Abs(next - gap);
            gap = next;
            kernel = BundleHeat.Kernel(bundle, surroundings, gap);
            if (change <= Accuracy * gap)
            {
                break;
            }
        }

        return kernel;
    }

    private readonly struct Excess(SleeveBalance balance, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => balance.AmperesFor(x) - amperes;
    }
}

namespace LowVoltage.Calc.Heating;

/// <summary>The balance of wires that lie together, held between two others where the formulas alone would give a wire too much or too little.</summary>
/// <remarks>
/// With idle wires, I(n, m) is held between I(n, n) and I(m, m): idle wires neither heat nor cool the loaded ones beyond what they can. A current rises with
/// its temperature in each balance, so the same choice holds in both directions. A sleeve has a balance of its own.
/// </remarks>
internal readonly struct BundleBalance
{
    private readonly HeatBalanceKernel own;
    private readonly HeatBalanceKernel floor;
    private readonly HeatBalanceKernel ceiling;
    private readonly bool held;
    private readonly SleeveBalance? sleeve;

    internal BundleBalance(WireBundle bundle, Surroundings surroundings)
    {
        own = BundleHeat.Kernel(bundle, surroundings, 0);
        floor = ceiling = own;
        if (bundle.SleeveMeters > 0)
        {
            sleeve = new SleeveBalance(bundle, surroundings);
        }
        else if (bundle.Loaded < bundle.Wires)
        {
            held = true;
            floor = BundleHeat.Kernel(bundle.AllLoaded(bundle.Wires), surroundings);
            ceiling = BundleHeat.Kernel(bundle.AllLoaded(bundle.Loaded), surroundings);
        }
    }

    internal double MostCelsius => own.MostCelsius;

    /// <summary>Current of each loaded wire that holds a conductor temperature; 0 when the surroundings alone make it that hot.</summary>
    internal double AmperesFor(double conductor)
    {
        if (sleeve is { } sleeved)
        {
            return sleeved.AmperesFor(conductor);
        }

        double amperes = own.AmperesFor(conductor);
        return held ? Math.Min(Math.Max(amperes, floor.AmperesFor(conductor)), ceiling.AmperesFor(conductor)) : amperes;
    }

    /// <summary>Where a current settles, and the balance that decides it; false when there is no steady state below the melting point.</summary>
    internal bool TrySteady(double amperes, out HeatBalanceKernel kernel, out double surface, out double conductor)
    {
        if (sleeve is { } sleeved)
        {
            return sleeved.TrySteady(amperes, out kernel, out surface, out conductor);
        }

        kernel = own;
        bool steady = HeatBalance.TrySteady(own, amperes, out surface, out conductor);
        if (!held)
        {
            return steady;
        }

        // The cooler of the two, and then the hotter of that and the third; without a steady state it is hotter than any.
        if (HeatBalance.TrySteady(floor, amperes, out double lowSurface, out double low) && (!steady || low < conductor))
        {
            (steady, kernel, surface, conductor) = (true, floor, lowSurface, low);
        }

        bool settles = HeatBalance.TrySteady(ceiling, amperes, out double highSurface, out double high);
        if (steady && (!settles || high > conductor))
        {
            (steady, kernel, surface, conductor) = (settles, ceiling, highSurface, high);
        }

        return steady;
    }
}

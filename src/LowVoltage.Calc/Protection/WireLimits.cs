using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>A wire for the comparison with a fuse, on doubles: how it heats and cools, where it starts, how hot it may get. Temperatures in °C.</summary>
internal readonly struct WireLimits(
    HeatBalanceKernel heat, double capacity, double startCelsius, double sustainedCelsius, double overloadCelsius, double shortCircuitCelsius)
{
    internal HeatBalanceKernel Heat { get; } = heat;

    /// <summary>J/(m·K).</summary>
    internal double Capacity { get; } = capacity;

    internal double StartCelsius { get; } = startCelsius;

    /// <summary>For a current that the fuse need not open.</summary>
    internal double SustainedCelsius { get; } = sustainedCelsius;

    /// <summary>Where the fuse takes more than 5 s.</summary>
    internal double OverloadCelsius { get; } = overloadCelsius;

    /// <summary>Where the fuse takes at most 5 s.</summary>
    internal double ShortCircuitCelsius { get; } = shortCircuitCelsius;

    /// <summary>The limit that counts in a regime, °C.</summary>
    internal double LimitCelsius(ProtectionRegime regime) => regime switch
    {
        ProtectionRegime.Sustained => SustainedCelsius,
        ProtectionRegime.Overload => OverloadCelsius,
        _ => ShortCircuitCelsius,
    };

    internal static WireLimits Of(in HeatBalanceKernel heat, Wire wire, OverloadAllowance allowance, double? startCelsius)
    {
        InsulationMaterial insulation = wire.Insulation;
        double most = Math.Min(heat.MostCelsius, insulation.ShortCircuitCelsiusFor(wire.Conductor.AreaSquareMillimeters));
        return new WireLimits(
            heat,
            OverloadKernel.Capacity(wire, InsulationHeat.None),
            Math.Max(heat.NoLoadCelsius, Math.Min(startCelsius ?? insulation.ContinuousCelsius, heat.MostCelsius)),
            Math.Min(most, insulation.ContinuousCelsius + allowance.SustainedKelvins),
            Math.Min(most, insulation.ContinuousCelsius + allowance.OpenedKelvins),
            most);
    }

    /// <summary>Conductor temperature after a time at a current, °C, or, without a time, where it settles; null when the metal melts.</summary>
    internal double? ReachedCelsius(double amperes, double? seconds)
    {
        if (seconds is not double time)
        {
            return HeatBalance.TrySteady(Heat, amperes, out _, out double steady) ? steady : null;
        }

        OverloadKernel overload = new(Heat, amperes, Capacity, Heat.SurfaceFor(StartCelsius));
        return overload.TryAdvance(time, Heat.SurfaceFor(Heat.MostCelsius), out double surface) ? Heat.ConductorAt(surface) : null;
    }

    /// <summary>The balance with a coefficient at which a current just brings the wire to a temperature; never one that cools better than free in air there.</summary>
    internal static HeatBalanceKernel Cooled(in HeatBalanceKernel free, double amperes, double celsius) => Cooled(free, free, amperes, celsius);

    /// <summary>The same where the current is rated for other air than the wire runs in: the cooling that the rating stands for, in the air where the wire is.</summary>
    /// <param name="free">The balance of the wire free in the air where it runs.</param>
    /// <param name="rated">That in the air which the rating is for.</param>
    /// <param name="amperes">The rating.</param>
    /// <param name="celsius">Conductor temperature that it stands for.</param>
    internal static HeatBalanceKernel Cooled(in HeatBalanceKernel free, in HeatBalanceKernel rated, double amperes, double celsius)
    {
        double limit = Math.Min(celsius, rated.MostCelsius);
        if (rated.HoldsAtLeast(amperes, limit))
        {
            return free;
        }

        // Below what free air carries, so the surface stays above the air: less heat, less drop in the insulation.
        double heat = amperes * amperes * rated.OhmsPerMeterAt(limit);
        double surface = limit - (rated.InnerResistance * heat);
        double rise = surface - rated.NoLoadCelsius;
        return free.WithCoefficient(Math.Max(heat / (Math.PI * rated.Diameter * rise), 1e-6));
    }
}

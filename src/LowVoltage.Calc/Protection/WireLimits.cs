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

    /// <summary>The balance with a coefficient at which a current just brings the wire to its continuous limit; never one that cools better than the air.</summary>
    internal static HeatBalanceKernel Cooled(in HeatBalanceKernel free, Wire wire, Surroundings surroundings, double? amperes)
    {
        double limit = Math.Min(wire.Insulation.ContinuousCelsius, free.MostCelsius);
        double most = free.AmperesFor(limit);
        if (amperes is not double carried || carried >= most)
        {
            return free;
        }

        // Below what free air carries, so the surface stays above the air: less heat, less drop in the insulation.
        double heat = carried * carried * free.OhmsPerMeterAt(limit);
        double surface = limit - (free.InnerResistance * heat);
        double rise = surface - free.NoLoadCelsius;
        double coefficient = heat / (Math.PI * free.Diameter * rise);
        Surroundings poorer = new()
        {
            Ambient = Temperature.FromDegreesCelsius(free.NoLoadCelsius),
            SurfaceCoefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Math.Max(coefficient, 1e-6)),
        };
        return HeatBalanceKernel.For(wire, poorer);
    }
}

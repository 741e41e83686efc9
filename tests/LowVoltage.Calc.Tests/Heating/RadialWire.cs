using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Oracle: a wire whose insulation conducts heat along the radius, by implicit finite volumes in rings of equal resistance. Loss and resistance are those of the heat balance.</summary>
internal sealed class RadialWire
{
    private readonly int rings;
    private readonly HeatBalanceKernel heat;
    private readonly double metal;
    private readonly double[] capacities;
    private readonly double[] conductances;

    internal RadialWire(Wire wire, Surroundings air, int rings = 24)
    {
        this.rings = rings;
        heat = HeatBalanceKernel.For(wire, air);
        metal = wire.Conductor.EffectiveAreaSquareMillimeters * 1e-6 * wire.Conductor.Material.HeatCapacityJoulesPerCubicMeterKelvin;
        double inner = wire.Conductor.DiameterMillimeters / 2000, ratio = wire.OuterDiameterMillimeters / wire.Conductor.DiameterMillimeters;
        capacities = new double[rings];
        conductances = new double[rings + 1];
        double one = Math.Log(ratio) / rings * wire.Insulation.ThermalResistivityKelvinMetersPerWatt / (2 * Math.PI);
        for (int i = 0; i < rings; i++)
        {
            double from = inner * Math.Pow(ratio, (double)i / rings), to = inner * Math.Pow(ratio, (i + 1.0) / rings);
            capacities[i] = Math.PI * ((to * to) - (from * from)) * wire.Insulation.HeatCapacityJoulesPerCubicMeterKelvin;
            conductances[i] = 1 / (i == 0 ? 0.5 * one : one);
        }

        conductances[rings] = 2 / one;
    }

    /// <summary>Seconds until the metal reaches a limit that the current leads beyond, from the steady profile at a temperature.</summary>
    internal double SecondsTo(double amperes, double start, double limit, double steps = 800)
    {
        double loss = heat.Loss(heat.SurfaceFor(start), out _), celsius = start, surface = heat.SurfaceFor(start), time = 0;
        double[] at = new double[rings];
        for (int i = 0; i < rings; i++)
        {
            // Half a ring's resistance more each time.
            at[i] = start - (loss * heat.InnerResistance * (i + 0.5) / rings);
        }

        double square = amperes * amperes, step = metal * (limit - start) / (square * heat.OhmsPerMeterAt(start)) / steps;
        double[] lower = new double[rings + 2], diagonal = new double[rings + 2], upper = new double[rings + 2], right = new double[rings + 2];
        while (time < 1e7)
        {
            double now = heat.Loss(surface, out double slope), perKelvin = square * heat.OhmsPerMeter20 * heat.Alpha;
            diagonal[0] = (metal / step) + conductances[0] - perKelvin;
            upper[0] = -conductances[0];
            right[0] = (metal / step * celsius) + (square * heat.OhmsPerMeterAt(0));
            for (int i = 1; i <= rings; i++)
            {
                lower[i] = -conductances[i - 1];
                diagonal[i] = (capacities[i - 1] / step) + conductances[i - 1] + conductances[i];
                upper[i] = -conductances[i];
                right[i] = capacities[i - 1] / step * at[i - 1];
            }

            lower[rings + 1] = -conductances[rings];
            diagonal[rings + 1] = conductances[rings] + slope;
            right[rings + 1] = (slope * surface) - now;
            for (int i = 1; i < rings + 2; i++)
            {
                double factor = lower[i] / diagonal[i - 1];
                diagonal[i] -= factor * upper[i - 1];
                right[i] -= factor * right[i - 1];
            }

            double value = right[rings + 1] / diagonal[rings + 1];
            surface = value;
            for (int i = rings; i >= 1; i--)
            {
                value = at[i - 1] = (right[i] - (upper[i] * value)) / diagonal[i];
            }

            value = (right[0] - (upper[0] * value)) / diagonal[0];
            if (value >= limit)
            {
                return time + (step * (limit - celsius) / (value - celsius));
            }

            double rise = value - celsius;
            celsius = value;
            time += step;
            step *= rise < (limit - start) / steps ? 1.1 : 1;
        }

        return double.PositiveInfinity;
    }
}

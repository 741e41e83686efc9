using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The loop of a fault that lasts: a voltage behind a fixed resistance feeding one wire that gives heat to still air.</summary>
/// <remarks>
/// One wire only: with several that cool, each has a state of its own, and there is no quadrature. Count the others as fixed resistance at the temperature
/// that they have at the start, which keeps the current from falling with them and is on the safe side for the wire. Immutable and thread-safe.
/// </remarks>
public sealed class CooledFaultPath
{
    private readonly FaultLossKernel kernel;

    private CooledFaultPath(Wire wire, in FaultLossKernel kernel, double initial)
    {
        Wire = wire;
        this.kernel = kernel;
        InitialCelsius = initial;
    }

    /// <summary>The wire.</summary>
    public Wire Wire { get; }

    /// <summary>Conductor temperature when the fault starts.</summary>
    public Temperature Initial => Temperature.FromDegreesCelsius(InitialCelsius);

    /// <summary>The current at the first moment.</summary>
    public ElectricCurrent ProspectiveCurrent => ElectricCurrent.FromAmperes(kernel.AmperesAt(InitialCelsius));

    /// <summary>Conductor temperature that the fault would settle at if nothing opened; <c>null</c> when the metal melts.</summary>
    public Temperature? SteadyTemperature => kernel.Settles ? Temperature.FromDegreesCelsius(Heat.ConductorAt(kernel.Pole)) : null;

    internal HeatBalanceKernel Heat => kernel.Heat;

    internal double InitialCelsius { get; }

    /// <summary>A loop.</summary>
    /// <param name="voltage">Open-circuit voltage of the source. Positive.</param>
    /// <param name="fixedResistance">Resistance of everything but the wire. Zero or greater.</param>
    /// <param name="wire">The wire; the heat capacity of its insulation is left out, which is on the safe side.</param>
    /// <param name="length">Length of wire in the loop. Positive.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="initial">Conductor temperature at the start, −70 °C to the melting point.</param>
    /// <returns>The loop.</returns>
    /// <exception cref="ArgumentNullException">The wire or the surroundings are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static CooledFaultPath Create(
        ElectricPotential voltage, ElectricResistance fixedResistance, Wire wire, Length length, Surroundings surroundings, Temperature initial)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, surroundings);
        double celsius = HeatBalance.Conductor(initial, heat, nameof(initial));
        FaultLossKernel kernel = new(
            heat,
            OverloadKernel.Capacity(wire, InsulationHeat.None),
            Accept.Volts(voltage, nameof(voltage)),
            Accept.OhmsOrZero(fixedResistance, nameof(fixedResistance)),
            Accept.Meters(length, nameof(length)),
            celsius);
        return new CooledFaultPath(wire, kernel, celsius);
    }

    internal double SecondsTo(double celsius) => InitialCelsius >= celsius ? 0 : kernel.SecondsTo(Heat.SurfaceFor(celsius));

    internal FaultState StateAfter(double seconds)
    {
        bool solid = kernel.TryAdvance(seconds, out double surface, out double reached, out double joules);
        double celsius = seconds == 0 ? InitialCelsius : Heat.ConductorAt(surface);
        return new FaultState(reached, kernel.AmperesAt(celsius), joules, [celsius], 0, !solid);
    }
}

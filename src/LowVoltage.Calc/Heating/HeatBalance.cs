using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Steady heat balance of one round wire, level or vertical, alone in still air or in a stream across it: ampacity (how many amps it carries) and temperature from physics.</summary>
/// <remarks>
/// <code>
/// I²·R′(θc) = q′ = π·D·[h·(Ts − Ta) + ε·σ·(Ts⁴ − Tw⁴)]
/// θc − θs   = q′·ρT·ln(D/d)/(2π)
/// </code>
/// <para><b>Symbols.</b> R′: resistance per length at the conductor temperature θc. D, d: diameter over the insulation and of the conductor.
/// Ts, Ta, Tw: surface, air and walls, in kelvin (θs the surface in °C). h: natural convection by Churchill and Chu with the air at
/// (Ts + Ta)/2 and the pressure of the altitude. ε: emissivity. σ: Stefan-Boltzmann constant. ρT: thermal resistivity of the insulation.</para>
/// <para><b>Source.</b> Churchill and Chu (1975); insulation after IEC 60287-2-1; atmosphere ISO 2533.</para>
/// <para><b>Moving air</b> (<see cref="Surroundings.AirSpeed"/>): h is the larger of that and of Churchill and Bernstein (1977) for a stream across the wire.</para>
/// <para><b>Valid for</b> ambient −70 °C to 300 °C, altitude −500 m to 20 000 m, conductor up to its melting point. One straight level
/// wire, or a vertical one at its top (<see cref="Surroundings.VerticalHeight"/>, by <see cref="VerticalConvection"/>), free on all sides: a wire in a bundle, a sleeve or a duct, or lying on a surface, runs hotter (<see cref="BundleHeat"/>).</para>
/// <para><b>Accuracy.</b> Within 3 % in current (<see cref="Margin"/>) of the free-air currents that FAA AC 43.13-1B states, with nominal tinned
/// copper and the dimensions of aircraft wire. The correlation itself scatters by 10 % to 15 % in h, some 5 % in current.</para>
/// <para>A critical radius belongs to every insulation (<see cref="CriticalRadius"/>): a thin wire runs cooler insulated than bare.</para>
/// </remarks>
public static partial class HeatBalance
{
    /// <summary>The stated margin of the model in current, as a fraction: 0.03.</summary>
    public const double Margin = 0.03;

    /// <summary>The source of the temperature drop through the insulation.</summary>
    public static Reference InsulationReference { get; } = new()
    {
        Title = "IEC 60287-2-1", Edition = "2015", Locator = "clause 4.1.2.1, single-core cables", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>The sources of the model.</summary>
    public static IReadOnlyList<Reference> References { get; } = Array.AsReadOnly(
    [
        NaturalConvection.ChurchillChuReference,
        AirProperties.Reference,
        StandardAtmosphere.Reference,
        InsulationReference,
    ]);

    /// <summary>Current that a wire carries indefinitely at a conductor temperature.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="conductor">Conductor temperature, −70 °C to the melting point.</param>
    /// <returns>The current; zero when the surroundings alone bring the wire to that temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The conductor temperature is outside its range.</exception>
    public static ElectricCurrent CurrentFor(Wire wire, Surroundings surroundings, Temperature conductor)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, surroundings);
        return ElectricCurrent.FromAmperes(kernel.AmperesFor(Conductor(conductor, kernel, nameof(conductor))));
    }

    /// <summary>Temperature that the conductor settles at.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The current, zero or more.</param>
    /// <returns>Conductor temperature in the steady state.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The current is negative, or so large that no steady state exists below the melting point; <see cref="TryTemperatureAt"/> asks first.
    /// </exception>
    public static Temperature TemperatureAt(Wire wire, Surroundings surroundings, ElectricCurrent current)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double celsius = TrySteady(kernel, amperes, out _, out double conductor) ? conductor : RefuseCurrent(kernel, amperes, nameof(current));
        return Temperature.FromDegreesCelsius(celsius);
    }

    /// <summary>Temperature that the conductor settles at, if it does below the melting point.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The current, zero or more.</param>
    /// <param name="conductor">Conductor temperature in the steady state; the melting point when there is none.</param>
    /// <returns>False when there is no steady state: the wire heats until it melts.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or above 1e7 A.</exception>
    public static bool TryTemperatureAt(Wire wire, Surroundings surroundings, ElectricCurrent current, out Temperature conductor)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, surroundings);
        bool steady = TrySteady(kernel, Accept.AmperesOrZero(current, nameof(current)), out _, out double celsius);
        conductor = Temperature.FromDegreesCelsius(celsius);
        return steady;
    }

    /// <summary>The whole balance at a current.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">The current, zero or more.</param>
    /// <returns>Temperatures, heat and shares; <c>null</c> when there is no steady state below the melting point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or above 1e7 A.</exception>
    public static HeatBalanceState? StateAt(Wire wire, Surroundings surroundings, ElectricCurrent current)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        return TrySteady(kernel, amperes, out double surface, out _) ? new HeatBalanceState(kernel, amperes, surface, surroundings) : null;
    }

    /// <summary>The whole balance at a conductor temperature.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="conductor">Conductor temperature, −70 °C to the melting point.</param>
    /// <returns>Current, temperatures, heat and shares; <c>null</c> when the surroundings alone make the wire hotter than that.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The conductor temperature is outside its range.</exception>
    public static HeatBalanceState? StateFor(Wire wire, Surroundings surroundings, Temperature conductor)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, surroundings);
        double celsius = Conductor(conductor, kernel, nameof(conductor));
        return celsius >= kernel.NoLoadCelsius
            ? new HeatBalanceState(kernel, kernel.AmperesFor(celsius), kernel.SurfaceFor(celsius), surroundings)
            : null;
    }

    internal static bool TrySteady(in HeatBalanceKernel kernel, double amperes, out double surface, out double conductor)
    {
        if (kernel.TryBalance(amperes * amperes, out surface))
        {
            conductor = kernel.ConductorInBalance(amperes * amperes, surface);
            if (conductor <= kernel.MostCelsius)
            {
                return true;
            }
        }

        conductor = kernel.MostCelsius;
        return false;
    }

    internal static double Conductor(in Temperature conductor, in HeatBalanceKernel kernel, string name) =>
        Accept.CelsiusWithin(conductor, Surroundings.LeastCelsius, kernel.MostCelsius, name);

    internal static double RefuseCurrent(in HeatBalanceKernel kernel, double amperes, string name) =>
        RefuseCurrent(kernel.AmperesFor(kernel.MostCelsius), kernel.MostCelsius, amperes, name);

    internal static double RefuseCurrent(double most, double mostCelsius, double amperes, string name) =>
        Accept.Refuse(
            name, amperes, "A", $"at most {Accept.Text(most)} A, the largest that settles below {Accept.Text(mostCelsius)} °C here");
}

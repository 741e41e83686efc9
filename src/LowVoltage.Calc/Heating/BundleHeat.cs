using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Steady heat balance of a round bundle of equal wires in still air, hottest at its centre.</summary>
/// <remarks>
/// <code>
/// m·I²·R′(θ) = heat from a cylinder of the bundle's diameter, as for one wire
/// θ − θs     = Q′·(1 − 1/n)/(4π·k) + q′·[ρT·ln(D/d) + ln(1/√fill)/ka]/(2π)
/// k          = ka·(1 + fill·β)/(1 − fill·β),  β = (kw − ka)/(kw + ka),  kw = [1 + (d/D)²]/[1 − (d/D)²]/ρT
/// </code>
/// <para><b>Symbols.</b> n wires, m of them loaded. q′: heat of one loaded wire per length; Q′ = m·q′. D, d: diameter over the insulation
/// and of the conductor. k: conductivity of the packed interior; kw: of a wire across its axis, its metal taken as a perfect
/// conductor; ka: of air at the ambient temperature. θs: surface of the bundle. fill: see <see cref="WireBundle"/>.</para>
/// <para><b>Source.</b> A cylinder with evenly spread heat; conductivity of cylinders in a matrix after Rayleigh (1892), lowest order. Own
/// composition, checked against published bundle factors.</para>
/// <para><b>Assumes</b> loaded wires spread evenly, all with the resistance of the hottest, wires that touch nowhere, and no radiation inside: each on the safe side.
/// Loaded wires gathered in one place run hotter than this says. With one wire it is <see cref="HeatBalance"/>.</para>
/// <para><b>Accuracy.</b> An estimate, at fill 0.6 (PVC 70 °C, 3.3 mm², 30 °C ambient; aircraft wire 200 °C, 60 °C ambient):</para>
/// <list type="table">
/// <listheader><term>published factor</term><description>model over published</description></listheader>
/// <item><term>IEC 60364-5-52 table B.52.17 item 1, 2 to 20 circuits</term><description>0.91 to 1.00</description></item>
/// <item><term>33 CFR 183.425 note 2, 3 to 7 wires; 25 wires</term><description>0.93 to 0.98; 0.76</description></item>
/// <item><term>FAA figure 11-5: 12 wires all loaded; 8 at 60 %; 35 at 20 %</term><description>0.94; 0.96; 1.12</description></item>
/// <item><term>NEC 310.15(C)(1), against three conductors, 4 to 41</term><description>1.07 to 1.32</description></item>
/// </list>
/// <para>Why they differ: the boat law and the building codes put many wires into one step and expect that not all are loaded at once; NEC
/// rates conductors in a raceway and each step for its largest count; the FAA curve for a fifth loaded allows for loaded wires side by side.
/// Where a published factor applies, use the lower of both.</para>
/// </remarks>
public static class BundleHeat
{
    /// <summary>The source of the conductivity of the interior.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Lord Rayleigh, On the influence of obstacles arranged in rectangular order upon the properties of a medium",
        Edition = "Philosophical Magazine 34, 1892", Locator = "pages 481 to 502, lowest order", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>Current that each loaded wire carries for ever with the hottest conductor at a temperature.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="conductor">Temperature of the hottest conductor, −70 °C to the melting point.</param>
    /// <returns>The current of one wire; zero when the surroundings alone bring it to that temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The conductor temperature is outside its range.</exception>
    public static ElectricCurrent CurrentFor(WireBundle bundle, Surroundings surroundings, Temperature conductor)
    {
        HeatBalanceKernel kernel = Kernel(bundle, surroundings);
        return ElectricCurrent.FromAmperes(kernel.AmperesFor(HeatBalance.Conductor(conductor, kernel, nameof(conductor))));
    }

    /// <summary>Temperature that the hottest conductor settles at.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">Current of each loaded wire, zero or more.</param>
    /// <returns>Temperature of the hottest conductor.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The current is negative, or so large that no steady state exists below the melting point; <see cref="StateAt"/> asks first.
    /// </exception>
    public static Temperature TemperatureAt(WireBundle bundle, Surroundings surroundings, ElectricCurrent current)
    {
        HeatBalanceKernel kernel = Kernel(bundle, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double celsius = HeatBalance.TrySteady(kernel, amperes, out _, out double conductor)
            ? conductor
            : HeatBalance.RefuseCurrent(kernel, amperes, nameof(current));
        return Temperature.FromDegreesCelsius(celsius);
    }

    /// <summary>The whole balance at a current.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">Current of each loaded wire, zero or more.</param>
    /// <returns>Temperatures, heat of the whole bundle and shares; <c>null</c> when there is no steady state below the melting point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or above 1e7 A.</exception>
    public static HeatBalanceState? StateAt(WireBundle bundle, Surroundings surroundings, ElectricCurrent current)
    {
        HeatBalanceKernel kernel = Kernel(bundle, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        return HeatBalance.TrySteady(kernel, amperes, out double surface, out _)
            ? new HeatBalanceState(kernel, amperes, surface, surroundings)
            : null;
    }

    /// <summary>The bundle factor: current of a loaded wire in the bundle over that of the same wire alone, at the same conductor temperature.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="conductor">Conductor temperature; above the temperature without current, at most the melting point.</param>
    /// <returns>The factor; <c>null</c> when the surroundings alone bring the wire to that temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The conductor temperature is outside its range.</exception>
    public static double? Factor(WireBundle bundle, Surroundings surroundings, Temperature conductor)
    {
        double together = CurrentFor(bundle, surroundings, conductor).Amperes;
        double alone = HeatBalance.CurrentFor(bundle.Wire, surroundings, conductor).Amperes;
        return alone > 0 ? together / alone : null;
    }

    internal static HeatBalanceKernel Kernel(WireBundle bundle, Surroundings surroundings)
    {
        _ = bundle ?? throw new ArgumentNullException(nameof(bundle));
        _ = surroundings ?? throw new ArgumentNullException(nameof(surroundings));
        Conductor conductor = bundle.Wire.Conductor;
        return new(
            bundle.DiameterMeters,
            InnerResistance(bundle, surroundings),
            bundle.Loaded * conductor.OhmsPerMeter20,
            conductor.Material,
            surroundings);
    }

    // Per watt and metre of all the heat: that of one loaded wire is 1/m of it.
    private static double InnerResistance(WireBundle bundle, Surroundings air)
    {
        double airConductivity = AirKernel.ThermalConductivity(air.AmbientCelsius + AirKernel.ZeroCelsius, out _);
        double film = Math.Log(1 / bundle.Fill) / (4 * Math.PI * airConductivity);
        double own = (HeatBalanceKernel.InsulationResistance(bundle.Wire) + film) / bundle.Loaded;
        double others = (1 - (1.0 / bundle.Wires)) / (4 * Math.PI * Conductivity(bundle, airConductivity));
        return own + others;
    }

    private static double Conductivity(WireBundle bundle, double airConductivity)
    {
        double ratio = bundle.Wire.Conductor.DiameterMillimeters / bundle.Wire.OuterDiameterMillimeters;
        double metal = ratio * ratio;

        // A bare wire is metal throughout: β = 1.
        double wire = (1 + metal) / ((1 - metal) * bundle.Wire.Insulation.ThermalResistivityKelvinMetersPerWatt);
        double beta = metal < 1 ? (wire - airConductivity) / (wire + airConductivity) : 1;
        return airConductivity * (1 + (bundle.Fill * beta)) / (1 - (bundle.Fill * beta));
    }
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Steady heat balance of equal wires that lie together in still air: a pair, three, a round bundle, a twin cable, each also in a sleeve.</summary>
/// <remarks>
/// <code>
/// m·I²·R′(θ) = π·De·h(De)·(θs − θa) + P·ε′·σ·(Ts⁴ − Tw⁴)          P = π·De, h as for one wire
/// 1 to 3 wires   P = (π + b)·D, b = 0, 2, 3;  s = P/(n·π·D);  ε′ = ε/[ε + s·(1 − ε)]
///                θ − θs = q′·T1/s,  T1 = ρT·ln(D/d)/(2π)
/// 4 and more     De = D·√(n/f);  ε′ = ε;  s = 0.652
///                θ − θs = q′·{T1/s + [ln(1/f) − (m/n)·(1 − f)]/(4π·ka) + m·[1 − √(f/n)]/(4π·k)}
///                k = ka·(1 + f·β)/(1 − f·β) + 4·σ·Ta³·D·ε/(2 − ε)
///                β = (kw − ka)/(kw + ka),  kw = [1 + (d/D)²]/[1 − (d/D)²]/ρT
/// twin cable     De = 2·Ro;  ε′ = ε;  θ − θs = q′·ρT/(2π)·ln[(Ro⁴ − D⁴/16)/(D·d/2·Ro²)]
/// sleeve         De → Di;  between: q = 2π·ka·(θ1 − θ2)/ln(Di/De) + P·σ·(T1⁴ − T2⁴)/[1/ε′ + (De/Di)·(1/ε − 1)], no convection
/// </code>
/// <para><b>Symbols.</b> n wires, m of them loaded; q′ = I²·R′: heat of one loaded wire per length. D, d: diameter over the insulation and of the conductor.
/// P: length of a tight string round one, two or three wires (three lie in a triangle); De: the cylinder of that circumference. s: share of a
/// wire's surface that sees out. θs: surface. ρT: thermal resistivity of the insulation. f: fill, see <see cref="WireBundle"/>. k: conductivity of the packed interior; kw: of a wire across
/// its axis, its metal taken as a perfect conductor; ka: of air at the ambient temperature (in a sleeve, of its mean); Ta: ambient in kelvin. Ro: radius over the sheath; Di: inner diameter of the sleeve; T1, T2: of the wires' surface and of the sleeve.</para>
/// <para><b>Idle wires.</b> Two or three wires of which not all are loaded get the film of the bundle with f = n·(D/De)². The current of a loaded wire is held between that of n loaded
/// wires and that of m loaded wires alone: idle wires never raise a rating above that of the loaded ones without them.</para>
/// <para><b>Source.</b> Convection: Churchill and Chu (1975), as for one wire. Surfaces that see each other: crossed strings (Hottel). Interior: Rayleigh (1892), lowest order; radiation as in a
/// packed bed. The composition is our own, held to published ratings.</para>
/// <para><b>Valid for</b> the ranges of <see cref="HeatBalance"/>; wires of one size at one current, loaded ones spread evenly: gathered in one place they run hotter than this says.
/// More loaded wires never carry more each where walls and air have one temperature (<see cref="Surroundings.RadiatingSurroundings"/>): with walls much hotter than the air the step
/// from three to four may rise.</para>
/// <para><b>Accuracy</b> in current, before <see cref="HeatBalance.Margin"/>, against published values that the tests hold:</para>
/// <list type="table">
/// <listheader><term>published</term><description>model, deviation</description></listheader>
/// <item><term>IEC 60364-5-52 method F, 25 to 120 mm²: pair, PVC; XLPE</term><description>−6 % to −2 %; −4 % to +1 %</description></item>
/// <item><term>the same, trefoil, PVC; XLPE</term><description>−2 % to 0 %; 0 % to +3 %</description></item>
/// <item><term>the same, three flat, rated as trefoil</term><description>−6 % to −2 %</description></item>
/// <item><term>the same, method E, two cores, 1.5 to 120 mm², as twin cable, PVC; XLPE</term><description>−7 % to −1 %; −2 % to +7 %</description></item>
/// <item><term>FAA figure 11-5, 2 to 19 wires all loaded; stated points with idle wires</term><description>−5 % to +6 %; −4 % to +3 %</description></item>
/// <item><term>IEC table B.52.17 item 1, 2 to 20 circuits, 0.5 to 10 mm²; 35 and 120 mm²</term><description>−19 % to −4 %; −29 % to −12 %</description></item>
/// <item><term>IEC method B1, pair in a conduit taken as a sleeve of 1.5·De, PVC; XLPE (from memory)</term><description>−9 % to −4 %; −16 % to −10 %</description></item>
/// </list>
/// <para>Other practices expect that not all wires are loaded at once, or rate conductors in a raceway, and lie below or above this. Where a published factor applies, use the lower of both.</para>
/// </remarks>
public static class BundleHeat
{
    /// <summary>The source of what wires that touch see of each other.</summary>
    public static Reference CrossedStringsReference { get; } = new()
    {
        Title = "Crossed-strings method (Hottel), view factors of touching cylinders, heat-transfer textbooks", Kind = ReferenceKind.Handbook,
        Note = "A cylinder sees (π/2 − 1)/π of an equal one that touches it.",
    };

    /// <summary>The source of the conductivity of the interior.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Lord Rayleigh, On the influence of obstacles arranged in rectangular order upon the properties of a medium",
        Edition = "Philosophical Magazine 34, 1892", Locator = "pages 481 to 502, lowest order", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>Current that each loaded wire carries indefinitely with the hottest conductor at a temperature.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="conductor">Temperature of the hottest conductor, −70 °C to the melting point.</param>
    /// <returns>The current of one wire; zero when the surroundings alone bring it to that temperature.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The conductor temperature is outside its range.</exception>
    public static ElectricCurrent CurrentFor(WireBundle bundle, Surroundings surroundings, Temperature conductor)
    {
        BundleBalance balance = new(bundle, surroundings);
        return ElectricCurrent.FromAmperes(
            balance.AmperesFor(Accept.CelsiusWithin(conductor, Surroundings.LeastCelsius, balance.MostCelsius, nameof(conductor))));
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
        BundleBalance balance = new(bundle, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        double celsius = balance.TrySteady(amperes, out _, out _, out double conductor)
            ? conductor
            : HeatBalance.RefuseCurrent(balance.AmperesFor(balance.MostCelsius), balance.MostCelsius, amperes, nameof(current));
        return Temperature.FromDegreesCelsius(celsius);
    }

    /// <summary>The whole balance at a current.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="surroundings">Air, altitude and emissivity.</param>
    /// <param name="current">Current of each loaded wire, zero or more.</param>
    /// <returns>
    /// Temperatures, heat of the whole bundle and shares; <c>null</c> when there is no steady state below the melting point. Where the current is held
    /// to that of another number of loaded wires, the surface and heat are those of that bundle.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or above 1e7 A.</exception>
    public static HeatBalanceState? StateAt(WireBundle bundle, Surroundings surroundings, ElectricCurrent current)
    {
        BundleBalance balance = new(bundle, surroundings);
        double amperes = Accept.AmperesOrZero(current, nameof(current));
        return balance.TrySteady(amperes, out HeatBalanceKernel kernel, out double surface, out _)
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

    /// <summary>The balance by the formulas alone, not held: for all wires loaded and no sleeve that is all there is to it.</summary>
    internal static HeatBalanceKernel Kernel(WireBundle bundle, Surroundings surroundings) => Kernel(bundle, surroundings, 0);

    /// <summary>The same with the thermal resistance between the wires and their sleeve.</summary>
    internal static HeatBalanceKernel Kernel(WireBundle bundle, Surroundings surroundings, double gap)
    {
        _ = bundle ?? throw new ArgumentNullException(nameof(bundle));
        _ = surroundings ?? throw new ArgumentNullException(nameof(surroundings));
        bool sleeved = bundle.SleeveMeters > 0;
        if (bundle.Arrangement == BundleArrangement.Alone && !sleeved)
        {
            return HeatBalanceKernel.For(bundle.Wire, surroundings);
        }

        Conductor conductor = bundle.Wire.Conductor;
        return new(
            sleeved ? bundle.SleeveMeters : bundle.DiameterMeters,
            InnerResistance(bundle, surroundings) + gap,
            bundle.Loaded * conductor.OhmsPerMeter20,
            conductor.Material,
            surroundings,
            sleeved ? surroundings.Emissivity : Emissivity(bundle, surroundings.Emissivity));
    }

    /// <summary>ε′ of the surface round the wires.</summary>
    internal static double Emissivity(WireBundle bundle, double emissivity) =>
        bundle.Arrangement is BundleArrangement.Bundle or BundleArrangement.TwinCable ? emissivity : TouchingWires.Emissivity(emissivity, bundle.Wires);

    // Per watt and metre of all the heat: that of one loaded wire is 1/m of it.
    private static double InnerResistance(WireBundle bundle, Surroundings air)
    {
        double still = AirKernel.ThermalConductivity(air.AmbientCelsius + AirKernel.ZeroCelsius, out _);
        double one = bundle.Arrangement switch
        {
            BundleArrangement.Bundle => PackedWires.InnerResistance(bundle, air, still),
            BundleArrangement.TwinCable => TwinResistance(bundle),
            _ => TouchingWires.InnerResistance(bundle.Wire, bundle.Wires, bundle.Loaded, still),
        };
        return one / bundle.Loaded;
    }

    // Two line sources and their images in a cylinder of one material.
    private static double TwinResistance(WireBundle bundle)
    {
        double across = bundle.Wire.OuterDiameterMillimeters * 1e-3, conductor = bundle.Wire.Conductor.DiameterMillimeters * 1e-3;
        double squared = 0.25 * bundle.DiameterMeters * bundle.DiameterMeters, apart = across * across;
        return bundle.Wire.Insulation.ThermalResistivityKelvinMetersPerWatt / (2 * Math.PI)
            * Math.Log(((squared * squared) - (apart * apart / 16)) / (0.5 * across * conductor * squared));
    }
}

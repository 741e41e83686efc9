using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Heating;

/// <summary>The inside of a round bundle of four wires and more. Lengths in m, conductivities in W/(m·K), thermal resistances in K·m/W.</summary>
/// <remarks>The formulas and their sources stand with <see cref="BundleHeat"/>.</remarks>
internal static class PackedWires
{
    /// <summary>[ln(1/f) − (m/n)(1 − f)]/(4π·ka): the air of a wire's own cell, which the wires around heat too.</summary>
    internal static double Film(double fill, double loadedShare, double airConductivity) =>
        (Math.Log(1 / fill) - (loadedShare * (1 - fill))) / (4 * Math.PI * airConductivity);

    /// <summary>m·[1 − √(f/n)]/(4π·k): from the middle to the outer layer.</summary>
    internal static double Centre(double fill, int wires, int loaded, double conductivity) =>
        loaded * (1 - Math.Sqrt(fill / wires)) / (4 * Math.PI * conductivity);

    /// <summary>From the surface to the hottest conductor, for the heat of one loaded wire.</summary>
    internal static double InnerResistance(WireBundle bundle, Surroundings air, double airConductivity)
    {
        double fill = bundle.Fill, conductivity = Conductivity(bundle.Wire, fill, air, airConductivity);
        return (HeatBalanceKernel.InsulationResistance(bundle.Wire) / TouchingWires.OpenShare(TouchingWires.Most))
            + Film(fill, (double)bundle.Loaded / bundle.Wires, airConductivity)
            + Centre(fill, bundle.Wires, bundle.Loaded, conductivity);
    }

    /// <summary>k: conduction through wires and air, and radiation from wire to wire.</summary>
    internal static double Conductivity(Wire wire, double fill, Surroundings air, double airConductivity)
    {
        double beta = Beta(AcrossWire(wire), airConductivity);
        return (airConductivity * (1 + (fill * beta)) / (1 - (fill * beta))) + Radiation(wire, air);
    }

    /// <summary>4·σ·Ta³·D·ε/(2 − ε): radiation across a packed bed as a conductivity.</summary>
    internal static double Radiation(Wire wire, Surroundings air)
    {
        double kelvin = air.AmbientCelsius + AirKernel.ZeroCelsius;
        return 4 * HeatBalanceKernel.StefanBoltzmann * kelvin * kelvin * kelvin * wire.OuterDiameterMillimeters * 1e-3 * air.Emissivity / (2 - air.Emissivity);
    }

    /// <summary>kw: a wire across its axis, its metal taken as a perfect conductor; infinite when it is bare.</summary>
    internal static double AcrossWire(Wire wire)
    {
        double ratio = wire.Conductor.DiameterMillimeters / wire.OuterDiameterMillimeters;
        double metal = ratio * ratio;
        return metal < 1 ? (1 + metal) / ((1 - metal) * wire.Insulation.ThermalResistivityKelvinMetersPerWatt) : double.PositiveInfinity;
    }

    /// <summary>β = (kw − ka)/(kw + ka); 1 for bare wires.</summary>
    internal static double Beta(double acrossWire, double airConductivity) =>
        double.IsPositiveInfinity(acrossWire) ? 1 : (acrossWire - airConductivity) / (acrossWire + airConductivity);
}

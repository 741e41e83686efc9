using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Heating;

/// <summary>One to three equal wires that touch, bounded by the tight string round them. Lengths in m, thermal resistances in K·m/W.</summary>
/// <remarks>The formulas and their sources stand with <see cref="BundleHeat"/>.</remarks>
internal static class TouchingWires
{
    /// <summary>The most wires that a string touches all of; a fourth has no face of its own to the air all round.</summary>
    internal const int Most = 3;

    /// <summary>b: what the string needs beyond the circumference of one wire, in wire diameters. Three lie in a triangle.</summary>
    internal static double StringExcess(int wires) => wires == 1 ? 0 : wires;

    /// <summary>De/D = (π + b)/π.</summary>
    internal static double DiameterRatio(int wires) => wires == 1 ? 1 : (Math.PI + StringExcess(wires)) / Math.PI;

    /// <summary>s = P/(n·π·D): the share of a wire's surface that sees out.</summary>
    internal static double OpenShare(int wires) => DiameterRatio(wires) / wires;

    /// <summary>ε′ = ε/[ε + s·(1 − ε)]: the grooves between the wires are darker than their surface.</summary>
    internal static double Emissivity(double emissivity, int wires) =>
        wires == 1 || emissivity == 0 ? emissivity : emissivity / (emissivity + (OpenShare(wires) * (1 - emissivity)));

    /// <summary>From the string to the conductor, for the heat of one loaded wire.</summary>
    internal static double InnerResistance(Wire wire, int wires, int loaded, double airConductivity)
    {
        double own = HeatBalanceKernel.InsulationResistance(wire) / OpenShare(wires);
        double ratio = DiameterRatio(wires);
        return loaded == wires ? own : own + PackedWires.Film(wires / (ratio * ratio), (double)loaded / wires, airConductivity);
    }
}

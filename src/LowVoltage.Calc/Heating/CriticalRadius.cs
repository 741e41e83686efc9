using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The radius up to which insulation cools a wire: below it, the larger surface gains more than the layer costs.</summary>
/// <remarks>
/// <code>r = k/h = 1/(ρT·h)</code>
/// <para><b>Symbols.</b> k: thermal conductivity of the insulation; ρT = 1/k its thermal resistivity. h: heat-transfer coefficient of the
/// surface, convection and radiation together, taken as constant.</para>
/// <para>With some 15 W/(m²·K) in still air and PVC the critical radius is 13 mm: nearly every wire of a low-voltage job is thinner, so its
/// insulation cools it. Since h falls as the wire grows, the wall that carries the most current is a little thinner than this formula says;
/// compare <see cref="HeatBalance.CurrentFor"/> for two walls when it matters.</para>
/// </remarks>
public static class CriticalRadius
{
    /// <summary>Where the formula comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Critical radius of insulation on a cylinder, heat-transfer textbooks", Kind = ReferenceKind.Handbook,
    };

    /// <summary>Critical radius of an insulation.</summary>
    /// <param name="insulation">The insulation.</param>
    /// <param name="coefficient">Heat-transfer coefficient of the surface, convection and radiation together. Positive.</param>
    /// <returns>The outer radius that carries the most heat.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="insulation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is not positive or above 1e6 W/(m²·K).</exception>
    public static Length Of(InsulationMaterial insulation, HeatTransferCoefficient coefficient)
    {
        _ = insulation ?? throw new ArgumentNullException(nameof(insulation));
        return Radius(1 / insulation.ThermalResistivityKelvinMetersPerWatt, coefficient);
    }

    /// <summary>Critical radius of a material of a thermal conductivity.</summary>
    /// <param name="conductivity">Thermal conductivity of the insulation. Positive.</param>
    /// <param name="coefficient">Heat-transfer coefficient of the surface, convection and radiation together. Positive.</param>
    /// <returns>The outer radius that carries the most heat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not positive, or above 1e6 in its SI unit.</exception>
    public static Length Of(ThermalConductivity conductivity, HeatTransferCoefficient coefficient) =>
        Radius(Accept.Positive(Accept.Raw(conductivity), 1e6, "W/(m·K)", nameof(conductivity)), coefficient);

    private static Length Radius(double wattsPerMeterKelvin, in HeatTransferCoefficient coefficient) =>
        Length.FromMeters(
            wattsPerMeterKelvin / Accept.Positive(Accept.Raw(coefficient), 1e6, "W/(m²·K)", nameof(coefficient)));
}

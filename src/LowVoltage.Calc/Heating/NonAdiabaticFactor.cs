using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>How much more short-circuit current a conductor stands because some heat goes into its insulation (IEC 60949): I = ε·I_adiabatic.</summary>
/// <remarks>
/// <code>general:    ε = √(1 + F·A·√(t/S) + F²·B·(t/S)),  A = (C1/σc)·√(σi/ρi),  B = (C2/σc)·(σi/ρi)
/// simplified: ε = √(1 + X·√(t/S) + Y·(t/S))</code>
/// <para><b>Symbols.</b> t [s]; S [mm²]; σc, σi [J/(m³·K)] heat capacity of conductor and insulation; ρi [K·m/W] thermal resistivity of the
/// insulation; F thermal contact, 0.7 (1.0 fluid-filled); C1 = 2464 mm/m; C2 = 1.22 K·m·mm²/J; X [√(mm²/s)], Y [mm²/s].</para>
/// <para><b>Source.</b> IEC 60949:1988, clauses 5 and 6, from memory; the general formula gives all 14 published pairs X, Y to the printed digits.</para>
/// <para><b>Valid for</b> up to 5 s. The source advises to take ε = 1 below t/S = 0.1 s/mm² (<see cref="IsNegligible"/>). The formula was made for power
/// cables: for a thin wire and seconds ε becomes large (1.6 for 0.5 mm² and 5 s) and shows only that the adiabatic result is very pessimistic there.
/// Using ε permits more current than the adiabatic equation: it is the less cautious of the two.</para>
/// </remarks>
public static class NonAdiabaticFactor
{
    private const double C1 = 2464;
    private const double C2 = 1.22;
    private const double NegligibleBelow = 0.1;

    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60949",
        Edition = "1988",
        Locator = "clauses 5 and 6",
        Kind = ReferenceKind.FromMemory,
        Note = "All published pairs X, Y follow from the general formula to the printed digits.",
    };

    /// <summary>ε by the general formula.</summary>
    /// <param name="material">The metal of the conductor.</param>
    /// <param name="insulation">What surrounds it.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <returns>ε, greater than 1.</returns>
    /// <exception cref="ArgumentNullException">The material or the insulation is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The area or the duration is outside its range.</exception>
    public static double General(ConductorMaterial material, NonAdiabaticInsulation insulation, Area area, Duration duration)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        _ = insulation ?? throw new ArgumentNullException(nameof(insulation));
        double x = GeneralX(material.HeatCapacityJoulesPerCubicMeterKelvin, insulation);
        double y = GeneralY(material.HeatCapacityJoulesPerCubicMeterKelvin, insulation);
        return Factor(x, y, SecondsPerSquareMillimeter(area, duration));
    }

    /// <summary>ε by the simplified formula.</summary>
    /// <param name="coefficients">X and Y, from <see cref="NonAdiabaticInsulation.Copper"/> or <see cref="NonAdiabaticInsulation.Aluminium"/>.</param>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <returns>ε, at least 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area or the duration is outside its range.</exception>
    public static double Simplified(NonAdiabaticCoefficients coefficients, Area area, Duration duration) =>
        Factor(coefficients.X, coefficients.Y, SecondsPerSquareMillimeter(area, duration));

    /// <summary>Whether the source advises to take ε = 1: t/S below 0.1 s/mm².</summary>
    /// <param name="area">Section of metal, S. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <returns>True below 0.1 s/mm².</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area or the duration is outside its range.</exception>
    public static bool IsNegligible(Area area, Duration duration) => SecondsPerSquareMillimeter(area, duration) < NegligibleBelow;

    /// <summary>F·A, the X that the general formula gives, in √(mm²/s); σc in J/(m³·K).</summary>
    internal static double GeneralX(double heatCapacity, NonAdiabaticInsulation i) =>
        i.ContactFactor * C1 / heatCapacity * Math.Sqrt(i.HeatCapacityJoulesPerCubicMeterKelvin / i.ThermalResistivity);

    /// <summary>F²·B, the Y that the general formula gives, in mm²/s; σc in J/(m³·K).</summary>
    internal static double GeneralY(double heatCapacity, NonAdiabaticInsulation i) =>
        i.ContactFactor * i.ContactFactor * C2 / heatCapacity * (i.HeatCapacityJoulesPerCubicMeterKelvin / i.ThermalResistivity);

    /// <summary>ε from X, Y and t/S in s/mm².</summary>
    internal static double Factor(double x, double y, double ratio) => Math.Sqrt(1 + (x * Math.Sqrt(ratio)) + (y * ratio));

    private static double SecondsPerSquareMillimeter(in Area area, in Duration duration) =>
        Accept.Positive(Accept.Seconds(duration, nameof(duration)), AdiabaticHeating.LongestSeconds, "s", nameof(duration))
        / Accept.SquareMillimeters(area, nameof(area));
}

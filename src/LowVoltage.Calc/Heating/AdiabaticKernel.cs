using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>IEC 60949 adiabatic heating on plain doubles: no checks, no allocation.</summary>
/// <remarks>
/// Units: I in A, t in s, S in mm², θ in °C, β in K, K² in A²·s/mm⁴, I²t in A²·s.
/// <code>I²t = K²·S²·ln((θf + β)/(θi + β)),  K² = σc·(β + 20)·1e-12/ρ20</code>
/// </remarks>
internal static class AdiabaticKernel
{
    /// <summary>K² in A²·s/mm⁴ from σc in J/(m³·K), ρ20 in Ω·m, β in K.</summary>
    internal static double ConstantSquared(double heatCapacity, double ohmMeters20, double beta) =>
        heatCapacity * (beta + 20) * 1e-12 / ohmMeters20;

    /// <summary>K² of a metal in A²·s/mm⁴.</summary>
    internal static double ConstantSquared(ConductorMaterial material) =>
        ConstantSquared(material.HeatCapacityJoulesPerCubicMeterKelvin, material.OhmMeters20, -material.InferredZeroCelsius);

    /// <summary>ln((θf + β)/(θi + β)), without losing a small rise.</summary>
    internal static double LogRatio(double initialCelsius, double finalCelsius, double beta) =>
        ExpLog.LogRatio(initialCelsius + beta, finalCelsius - initialCelsius, finalCelsius + beta);

    /// <summary>k = K·√ln(…) in A·√s/mm².</summary>
    internal static double KFactor(double constantSquared, double initialCelsius, double finalCelsius, double beta) =>
        Math.Sqrt(constantSquared * LogRatio(initialCelsius, finalCelsius, beta));

    /// <summary>The I²t that takes the conductor from θi to θf, in A²·s.</summary>
    internal static double JouleIntegral(double constantSquared, double squareMillimeters, double initialCelsius, double finalCelsius, double beta) =>
        constantSquared * squareMillimeters * squareMillimeters * LogRatio(initialCelsius, finalCelsius, beta);

    /// <summary>θf after an I²t, in °C. Not limited by melting; overflows to infinity for an absurd I²t.</summary>
    internal static double FinalCelsius(double constantSquared, double squareMillimeters, double jouleIntegral, double initialCelsius, double beta) =>
        initialCelsius + ((initialCelsius + beta) * ExpLog.Expm1(jouleIntegral / (constantSquared * squareMillimeters * squareMillimeters)));
}

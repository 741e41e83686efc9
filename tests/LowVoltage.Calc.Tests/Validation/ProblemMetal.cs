using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>A metal of which a published problem states resistivity and temperature coefficient only.</summary>
internal static class ProblemMetal
{
    // Density, heat and melting point do not enter these problems.
    public static ConductorMaterial Of(double ohmMeters, double alpha) => ConductorMaterial.Create(
        "metal of the problem",
        ElectricResistivity.FromOhmMeters(ohmMeters),
        alpha,
        Density.FromKilogramsPerCubicMeter(8000),
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(3e6),
        Temperature.FromDegreesCelsius(1000),
        Reference.CommonPractice("data of the problem"));
}

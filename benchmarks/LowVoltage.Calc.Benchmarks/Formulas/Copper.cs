using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Benchmarks.Formulas;

/// <summary>The metal and the wire that the formulas take, and their numbers for the raw ones.</summary>
internal static class Copper
{
    internal static readonly ConductorMaterial Metal = ConductorMaterial.Copper;

    internal static readonly Conductor Wire = Conductor.Solid(AwgSize.FromNumber(14), Metal);

    internal static readonly double Alpha = Metal.TemperatureCoefficient;

    internal static readonly double Rho20 = Metal.OhmMeters20;

    internal static readonly double Beta = -Metal.InferredZeroCelsius;

    internal static readonly double ConstantSquared = AdiabaticKernel.ConstantSquared(Metal);

    internal static readonly double OhmsPerMeter20 = Wire.OhmsPerMeter20;

    internal static readonly double SquareMillimeters = Wire.AreaSquareMillimeters;

    internal static readonly double EffectiveSquareMillimeters = Wire.EffectiveAreaSquareMillimeters;

    internal static readonly double KilogramsPerMeter = Wire.KilogramsPerMeter;

    internal static double RatioTo20(double celsius) => 1 + (Alpha * (celsius - 20));

    internal static double Log(double initial, double limit) => Math.Log((limit + Beta) / (initial + Beta));
}

namespace LowVoltage.Calc.Heating;

/// <summary>Properties of dry air on doubles, with the logarithmic derivatives that Newton's method needs. T in K, p in Pa.</summary>
/// <remarks>
/// The formulas and their sources stand with <see cref="AirProperties"/>; the ranges are checked there and in <see cref="Surroundings"/>.
/// </remarks>
internal static class AirKernel
{
    internal const double GasConstant = 287.05287;
    internal const double StandardGravity = 9.80665;
    internal const double ZeroCelsius = 273.15;

    // 12 K · ln 10: the US Standard Atmosphere writes the exponential as 10^(−12/T).
    private const double TwelveLogTen = 27.631021115928547;

    internal static double ThermalConductivity(double kelvin, out double logSlope)
    {
        double term = 245.4 * Math.Exp(-TwelveLogTen / kelvin);
        double denominator = kelvin + term;
        logSlope = (1.5 / kelvin) - ((1 + (term * TwelveLogTen / (kelvin * kelvin))) / denominator);
        return 2.64638e-3 * kelvin * Math.Sqrt(kelvin) / denominator;
    }

    internal static double DynamicViscosity(double kelvin, out double logSlope)
    {
        logSlope = (1.5 / kelvin) - (1 / (kelvin + 110.4));
        return 1.458e-6 * kelvin * Math.Sqrt(kelvin) / (kelvin + 110.4);
    }

    internal static double SpecificHeat(double kelvin, out double logSlope)
    {
        double value = ((((((1.9327e-10 * kelvin) - 7.9999e-7) * kelvin) + 1.1407e-3) * kelvin) - 0.44890) * kelvin;
        value += 1057.5;
        logSlope = ((((((7.7308e-10 * kelvin) - 2.39997e-6) * kelvin) + 2.2814e-3) * kelvin) - 0.44890) / value;
        return value;
    }

    internal static double Density(double kelvin, double pascals) => pascals / (GasConstant * kelvin);
}

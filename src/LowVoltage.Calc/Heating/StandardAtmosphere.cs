using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Pressure of the standard atmosphere, which sets how well air cools a wire at altitude.</summary>
/// <remarks>
/// <code>
/// up to 11 000 m: p = 101325 Pa · (1 − 0.0065 K/m · H / 288.15 K)^(g/(R · 0.0065 K/m))
/// above:          p = p(11 000 m) · exp(−g · (H − 11 000 m)/(R · 216.65 K))
/// </code>
/// <para><b>Symbols.</b> H: geopotential (pressure) altitude. g = 9.80665 m/s². R = 287.05287 J/(kg·K).</para>
/// <para><b>Valid for</b> −500 m to 20 000 m. The temperature of the standard atmosphere is not used: the ambient is what the caller states.</para>
/// </remarks>
public static class StandardAtmosphere
{
    internal const double LeastMeters = -500;
    internal const double MostMeters = 20_000;
    internal const double SeaLevelPascals = 101_325;

    private const double LapseRate = 0.0065;
    private const double SeaLevelKelvin = 288.15;
    private const double TropopauseMeters = 11_000;
    private const double TropopauseKelvin = SeaLevelKelvin - (LapseRate * TropopauseMeters);

    /// <summary>The source of the model.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "ISO 2533", Edition = "1975", Locator = "clause 2 (the US Standard Atmosphere 1976 is the same up to 20 km)", Kind = ReferenceKind.FromMemory,
        Note = "Formulas and constants from memory; they give the tabulated pressures at 5, 11 and 20 km.",
    };

    /// <summary>Standard pressure at an altitude.</summary>
    /// <param name="altitude">Pressure altitude, −500 m to 20 000 m.</param>
    /// <returns>Pressure of the air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside −500 m to 20 000 m.</exception>
    public static Pressure PressureAt(Length altitude) =>
        Pressure.FromPascals(Pascals(Accept.MetersWithin(altitude, LeastMeters, MostMeters, nameof(altitude))));

    internal static double Pascals(double meters)
    {
        double exponent = AirKernel.StandardGravity / (AirKernel.GasConstant * LapseRate);
        double lower = Math.Min(meters, TropopauseMeters);
        double pressure = SeaLevelPascals * Math.Pow(1 - (LapseRate * lower / SeaLevelKelvin), exponent);
        return meters <= TropopauseMeters
            ? pressure
            : pressure * Math.Exp(-AirKernel.StandardGravity * (meters - TropopauseMeters) / (AirKernel.GasConstant * TropopauseKelvin));
    }
}

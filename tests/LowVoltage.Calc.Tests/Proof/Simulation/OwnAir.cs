namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Dry air and natural convection, written apart from the library and with other property formulas.</summary>
/// <remarks>
/// Viscosity: Sutherland with 110.4 K. Conductivity: power law through 0.0263 W/(m·K) at 300 K (heat-transfer textbooks, from memory; within 1 % from 250 K to 600 K).
/// Heat capacity 1007 J/(kg·K) at 300 K, rising to 1051 at 600 K. Convection: Churchill and Chu, 1975, horizontal cylinder.
/// </remarks>
internal static class OwnAir
{
    private const double Gas = 287.05;
    private const double Gravity = 9.80665;
    private const double StefanBoltzmann = 5.670374e-8;

    public static double Conductivity(double kelvin) => 0.0263 * Math.Pow(kelvin / 300, 0.86);

    public static double Pascals(double altitude) => 101_325 * (altitude <= 11_000
        ? Math.Pow(1 - (altitude * 2.25577e-5), 5.25588)
        : 0.223361 * Math.Exp(-(altitude - 11_000) / 6341.62));

    /// <summary>W/m leaving a horizontal cylinder by convection.</summary>
    public static double Convection(double meters, double surface, double ambient, double pascals)
    {
        double rise = surface - ambient, film = 273.15 + (0.5 * (surface + ambient));
        double viscosity = 1.458e-6 * Math.Pow(film, 1.5) / (film + 110.4), conductivity = Conductivity(film);
        double prandtl = viscosity * (1007 + (1.6e-4 * (film - 300) * (film - 300) * (film > 300 ? 3 : 1))) / conductivity;
        double density = pascals / (Gas * film), kinematic = viscosity / density;
        double rayleigh = Gravity * Math.Abs(rise) / film * meters * meters * meters / (kinematic * kinematic) * prandtl;
        double root = 0.6 + (0.387 * Math.Pow(rayleigh, 1 / 6.0) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0));
        return Math.PI * conductivity * root * root * rise;
    }

    /// <summary>W per m² of area that radiates to surroundings at the ambient.</summary>
    public static double Radiation(double emissivity, double surface, double ambient)
    {
        double a = surface + 273.15, b = ambient + 273.15;
        return emissivity * StefanBoltzmann * ((a * a * a * a) - (b * b * b * b));
    }
}

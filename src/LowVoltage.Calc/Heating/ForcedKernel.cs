using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Heating;

/// <summary>Churchill and Bernstein (1977) on doubles, with the slope that Newton's method needs. Lengths in m, T in K, heat in W/m.</summary>
/// <remarks>The formula and its range stand with <see cref="ForcedConvection"/>.</remarks>
internal static class ForcedKernel
{
    private const double Transition = 282_000;

    /// <summary>v·D·p/R, of which Re is the quotient by T·μ; 0 in still air. Refuses a stream outside the correlation anywhere up to a film temperature.</summary>
    internal static double ReynoldsFactor(Surroundings surroundings, double diameter, double hottestFilmCelsius)
    {
        double speed = surroundings.MetersPerSecond;
        if (speed == 0)
        {
            return 0;
        }

        double factor = speed * diameter * surroundings.Pascals / AirKernel.GasConstant;
        double hot = hottestFilmCelsius + AirKernel.ZeroCelsius, cold = Surroundings.LeastCelsius + AirKernel.ZeroCelsius;
        double least = speed * ForcedConvection.LeastPeclet / (Reynolds(factor, hot) * Prandtl(hot));
        double most = speed * ForcedConvection.MostReynolds / Reynolds(factor, cold);
        return speed > least && speed <= most
            ? factor
            : throw new ArgumentOutOfRangeException(
                nameof(surroundings),
                speed,
                $"The AirSpeed of surroundings must be zero, or above {Accept.Text(least)} m/s and at most {Accept.Text(most)} m/s across {Accept.Text(diameter * 1000)} mm, "
                + $"where the correlation holds (Re·Pr above 0.2, Re to 1e7); it was {Accept.Text(speed)} m/s.");
    }

    /// <summary>Heat that the stream carries off, and its slope against the surface temperature.</summary>
    internal static double Loss(double reynoldsFactor, double difference, double film, out double slope)
    {
        double conductivity = AirKernel.ThermalConductivity(film, out double conductivitySlope);
        double viscosity = AirKernel.DynamicViscosity(film, out double viscositySlope);
        double prandtl = AirKernel.SpecificHeat(film, out double heatCapacitySlope) * viscosity / conductivity;
        double reynolds = reynoldsFactor / (film * viscosity);
        double part = Varying(reynolds, prandtl, out double byReynolds, out double byPrandtl), nusselt = 0.3 + part;

        // d ln(part)/dT through the film properties; the film warms half as fast as the surface.
        double partSlope = (byPrandtl * (heatCapacitySlope + viscositySlope - conductivitySlope)) - (byReynolds * (viscositySlope + (1 / film)));
        slope = Math.PI * conductivity * ((nusselt * (1 + (0.5 * difference * conductivitySlope))) + (0.5 * difference * part * partSlope));
        return Math.PI * conductivity * nusselt * difference;
    }

    /// <summary>Nu − 0.3, and the slopes of its logarithm against those of Re and Pr.</summary>
    internal static double Varying(double reynolds, double prandtl, out double byReynolds, out double byPrandtl)
    {
        double x = Math.Pow(0.4 / prandtl, 2 / 3.0), y = Math.Pow(reynolds / Transition, 0.625);
        byReynolds = 0.5 + (0.5 * y / (1 + y));
        byPrandtl = (1 / 3.0) + (x / (6 * (1 + x)));
        return 0.62 * Math.Sqrt(reynolds) * Math.Pow(prandtl, 1 / 3.0) * Math.Pow(1 + x, -0.25) * Math.Pow(1 + y, 0.8);
    }

    private static double Reynolds(double factor, double kelvin) => factor / (kelvin * AirKernel.DynamicViscosity(kelvin, out _));

    private static double Prandtl(double kelvin) =>
        AirKernel.SpecificHeat(kelvin, out _) * AirKernel.DynamicViscosity(kelvin, out _) / AirKernel.ThermalConductivity(kelvin, out _);
}

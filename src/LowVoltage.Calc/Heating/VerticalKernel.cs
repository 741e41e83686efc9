namespace LowVoltage.Calc.Heating;

/// <summary>Le Fevre and Ede (1956) on doubles, at the top of a vertical wire, with the slope that Newton's method needs. T in K, heat in W/m.</summary>
/// <remarks>The formula and its range stand with <see cref="VerticalConvection"/>.</remarks>
internal static class VerticalKernel
{
    /// <summary>Heat that the air carries off a metre at the top, and its slope against the surface temperature.</summary>
    /// <param name="heightToDiameter">L/D.</param>
    /// <param name="rayleigh">On the diameter.</param>
    /// <param name="difference">Surface less ambient.</param>
    /// <param name="film">Film temperature.</param>
    /// <param name="slope">Slope of the heat.</param>
    internal static double Loss(double heightToDiameter, double rayleigh, double difference, double film, out double slope)
    {
        double conductivity = AirKernel.ThermalConductivity(film, out double conductivitySlope);
        double viscosity = AirKernel.DynamicViscosity(film, out double viscositySlope);
        double heatCapacity = AirKernel.SpecificHeat(film, out double heatCapacitySlope);
        double prandtl = heatCapacity * viscosity / conductivity, prandtlSlope = heatCapacitySlope + viscositySlope - conductivitySlope;
        double plate = 0.75 * Plate(rayleigh, heightToDiameter, prandtl), curved = Curved(prandtl);

        // d ln/dT through the film properties; the film warms half as fast as the surface.
        double plateSlope = (0.25 * 20 / (20 + (21 * prandtl)) * prandtlSlope) + (0.25 * (heatCapacitySlope - (3 / film) - viscositySlope - conductivitySlope));
        double curvedSlope = ((315 * prandtl / (272 + (315 * prandtl))) - (63 * prandtl / (64 + (63 * prandtl)))) * prandtlSlope;
        double nusselt = plate + curved;
        slope = Math.PI * conductivity * ((nusselt * (1 + (0.5 * difference * conductivitySlope))) + (0.25 * plate) + (0.5 * difference * ((plate * plateSlope) + (curved * curvedSlope))));
        return Math.PI * conductivity * nusselt * difference;
    }

    /// <summary>The part of a plate, mean over the height, on the diameter: (4/3)·[7·Ra·Pr/(5·(20 + 21·Pr))]^(1/4)·D/L with Ra on the height.</summary>
    internal static double Plate(double rayleigh, double heightToDiameter, double prandtl)
    {
        double root = Math.Sqrt(Math.Sqrt(7 * rayleigh * prandtl / (5 * (20 + (21 * prandtl)) * heightToDiameter)));
        return 4 / 3.0 * root;
    }

    /// <summary>The part of the curved surface, the same at every height, on the diameter.</summary>
    internal static double Curved(double prandtl) => 4 * (272 + (315 * prandtl)) / (35 * (64 + (63 * prandtl)));
}

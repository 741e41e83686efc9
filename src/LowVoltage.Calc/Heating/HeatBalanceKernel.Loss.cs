namespace LowVoltage.Calc.Heating;

/// <content>The two ways that heat leaves the surface.</content>
internal readonly partial struct HeatBalanceKernel
{
    /// <summary>Whether the stream carries off more than natural convection would.</summary>
    internal bool IsForcedAt(double surface)
    {
        double difference = surface - ambient;
        if (reynoldsFactor == 0 || difference == 0)
        {
            return false;
        }

        double forced = ForcedKernel.Loss(reynoldsFactor, difference, ambientKelvin + (0.5 * difference), out _);
        return forced.Equals(Convection(surface, out _, out _));
    }

    private double Convection(double surface, out double slope, out double rayleigh)
    {
        double difference = surface - ambient;
        if (givenConductance > 0)
        {
            rayleigh = 0;
            slope = givenConductance;
            return givenConductance * difference;
        }

        double film = ambientKelvin + (0.5 * difference);
        double conductivity = AirKernel.ThermalConductivity(film, out double conductivitySlope);
        double viscosity = AirKernel.DynamicViscosity(film, out double viscositySlope);
        double heatCapacity = AirKernel.SpecificHeat(film, out double heatCapacitySlope);
        rayleigh = rayleighFactor * Math.Abs(difference) * heatCapacity / (film * film * film * viscosity * conductivity);
        if (heightToDiameter > 0)
        {
            double vertical = VerticalKernel.Loss(heightToDiameter, rayleigh, difference, film, out slope);
            return reynoldsFactor == 0 ? vertical : Greater(vertical, difference, film, ref slope);
        }

        double term = NaturalConvection.SixthRootTerm(rayleigh, heatCapacity * viscosity / conductivity, out double prandtlPart);
        double root = 0.60 + term;

        // d ln(term)/dT through the film properties; the film warms half as fast as the surface.
        double rayleighSlope = heatCapacitySlope - (3 / film) - viscositySlope - conductivitySlope;
        double termSlope = (rayleighSlope / 6) + (prandtlPart * (heatCapacitySlope + viscositySlope - conductivitySlope));
        slope = Math.PI * conductivity * root
            * ((root * (1 + (0.5 * difference * conductivitySlope))) + (2 * term * ((1 / 6.0) + (0.5 * difference * termSlope))));
        double natural = Math.PI * conductivity * root * root * difference;
        return reynoldsFactor == 0 ? natural : Greater(natural, difference, film, ref slope);
    }

    /// <summary>The larger of natural and forced convection. Both are convex in the surface temperature above the ambient, and so is the larger.</summary>
    private double Greater(double natural, double difference, double film, ref double slope)
    {
        double forced = ForcedKernel.Loss(reynoldsFactor, difference, film, out double forcedSlope);
        if (Math.Abs(forced) <= Math.Abs(natural))
        {
            return natural;
        }

        slope = forcedSlope;
        return forced;
    }

    private double Radiation(double surface, ref double slope)
    {
        if (givenConductance > 0)
        {
            return 0;
        }

        double kelvin = surface + AirKernel.ZeroCelsius;
        double cube = kelvin * kelvin * kelvin;
        slope += 4 * radiationFactor * cube;
        return radiationFactor * ((cube * kelvin) - wallsToTheFourth);
    }
}

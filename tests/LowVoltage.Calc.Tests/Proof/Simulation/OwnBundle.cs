namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Heat that one of n equal loaded wires lying together gives off, own composition on the convection and radiation of one cylinder.</summary>
/// <remarks>
/// Two and three wires: the tight string round them; their grooves are darker than the surface. From four: a packed cylinder at a fill of 0.6 with a film of air
/// round each wire and radiation between them. Where the text of a standard prints bundles, this lies within some 6 % of it; <see cref="OwnRating"/> keeps a band.
/// </remarks>
internal static class OwnBundle
{
    private const double Fill = 0.6;

    /// <summary>W/m of one wire of n with the hottest conductor at a temperature; negative where the air is hotter.</summary>
    public static double HeatOfOne(OwnWire wire, int n, double celsius, double ambient, double altitude)
    {
        double pascals = OwnAir.Pascals(altitude);
        (double cylinder, double perimeter, double emissivity, double inner) = Shape(wire, n, ambient);
        double total(double surface) =>
            OwnAir.Convection(cylinder, surface, ambient, pascals) + (perimeter * OwnAir.Radiation(emissivity, surface, ambient));
        double low = Math.Min(ambient, celsius), high = Math.Max(ambient, celsius);
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = middle + (inner * total(middle) / n) < celsius ? (middle, high) : (low, middle);
        }

        return total(0.5 * (low + high)) / n;
    }

    /// <summary>Current of each of n wires with the hottest conductor at a temperature; zero in hotter air.</summary>
    public static double Amperes(OwnWire wire, int n, double celsius, double ambient, double altitude) =>
        celsius <= ambient ? 0 : Math.Sqrt(HeatOfOne(wire, n, celsius, ambient, altitude) / wire.OhmsAt(celsius));

    // The cylinder for convection, m; the perimeter that radiates, m; its emissivity; K·m per watt of one wire from the surface to the hottest conductor.
    private static (double Cylinder, double Perimeter, double Emissivity, double Inner) Shape(OwnWire wire, int n, double ambient)
    {
        double d = wire.Outer, own = wire.Insulation.Emissivity;
        if (n <= 3)
        {
            double perimeter = (Math.PI + (n == 1 ? 0 : n)) * d, share = perimeter / (n * Math.PI * d);
            return (perimeter / Math.PI, perimeter, n == 1 ? own : own / (own + (share * (1 - own))), wire.InnerResistance / share);
        }

        double kelvin = ambient + 273.15, air = OwnAir.Conductivity(kelvin), metal = wire.Diameter / d * (wire.Diameter / d);
        double across = metal < 1 ? (1 + metal) / (1 - metal) / wire.Insulation.ThermalResistivity : double.PositiveInfinity;
        double beta = metal < 1 ? (across - air) / (across + air) : 1;
        double packed = (air * (1 + (Fill * beta)) / (1 - (Fill * beta))) + (4 * 5.670374e-8 * kelvin * kelvin * kelvin * d * own / (2 - own));
        double inner = (wire.InnerResistance / 0.652)
            + ((Math.Log(1 / Fill) - (1 - Fill)) / (4 * Math.PI * air))
            + (n * (1 - Math.Sqrt(Fill / n)) / (4 * Math.PI * packed));
        double cylinder = d * Math.Sqrt(n / Fill);
        return (cylinder, Math.PI * cylinder, own, inner);
    }
}

using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("CriticalRadius.Of", "r = λ/h", 1)]
public readonly struct CriticalRadiusOf : IFormula
{
    private static readonly ThermalConductivity Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.2);

    public double Raw(Case x) => 0.2 / x.WattsPerSquareMeterKelvin;

    public double Typed(Case x) => CriticalRadius.Of(Conductivity, x.Coefficient).Meters;
}

[Formula("StandardAtmosphere.PressureAt", "p = p₀·(1 − 0.0065·h/288.15)^5.26", 1)]
public readonly struct PressureAt : IFormula
{
    private static readonly double Exponent = 9.80665 / (287.05287 * 0.0065);

    public double Raw(Case x) => 101_325 * Math.Pow(1 - (0.0065 * x.Meters / 288.15), Exponent);

    public double Typed(Case x) => StandardAtmosphere.PressureAt(x.Length).Pascals;
}

[Formula("NaturalConvection.ChurchillChu", "Nu = (0.60 + 0.387·Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))²", 0)]
public readonly struct ChurchillChu : IFormula
{
    public double Raw(Case x)
    {
        double root = 0.60 + (0.387 * Math.Pow(x.Number, 1 / 6.0) / Math.Pow(1 + Math.Pow(0.559 / 0.707, 9 / 16.0), 8 / 27.0));
        return root * root;
    }

    public double Typed(Case x) => NaturalConvection.ChurchillChu(x.Number, 0.707);
}

[Formula("NaturalConvection.Morgan", "Nu = C·Ra^n", 0)]
public readonly struct Morgan : IFormula
{
    public double Raw(Case x) => 0.850 * Math.Pow(x.Number, 0.188);

    public double Typed(Case x) => NaturalConvection.Morgan(x.Number);
}

[Formula("NaturalConvection.RayleighNumber", "Ra = g·β·ΔT·d³·Pr/ν²", 2)]
public readonly struct Rayleigh : IFormula
{
    private static readonly AirProperties Film = AirProperties.At(Temperature.FromDegreesCelsius(50), Pressure.FromPascals(101_325));
    private static readonly double Kelvin = Film.Kelvin, Viscosity = Film.SquareMetersPerSecond, Prandtl = Film.PrandtlNumber;

    public double Raw(Case x)
    {
        double d = x.Millimeters * 1e-3;
        return 9.80665 / Kelvin * x.Kelvins * d * d * d * Prandtl / (Viscosity * Viscosity);
    }

    public double Typed(Case x) => NaturalConvection.RayleighNumber(Film, x.Difference, x.Diameter);
}

[Formula("AirProperties.At", "density, conductivity, viscosity, heat capacity", 2)]
public readonly struct AirAt : IFormula
{
    private static readonly Pressure Sea = Pressure.FromPascals(101_325);

    public double Raw(Case x)
    {
        double kelvin = x.Celsius + 273.15, root = kelvin * Math.Sqrt(kelvin);
        double conductivity = 2.64638e-3 * root / (kelvin + (245.4 * Math.Pow(10, -12 / kelvin)));
        double heat = 1057.5 + (kelvin * (-0.44890 + (kelvin * (1.1407e-3 + (kelvin * (-7.9999e-7 + (kelvin * 1.9327e-10)))))));
        return heat * (1.458e-6 * root / (kelvin + 110.4)) / conductivity;
    }

    public double Typed(Case x) => AirProperties.At(x.Temperature, Sea).PrandtlNumber;
}

[Formula("NaturalConvection.Coefficient", "h = Nu(Ra, Pr)·λ/d", 2)]
public readonly struct ConvectionCoefficient : IFormula
{
    private static readonly AirProperties Film = AirProperties.At(Temperature.FromDegreesCelsius(50), Pressure.FromPascals(101_325));
    private static readonly double Kelvin = Film.Kelvin, Viscosity = Film.SquareMetersPerSecond, Prandtl = Film.PrandtlNumber, Conductivity = Film.WattsPerMeterKelvin;

    public double Raw(Case x)
    {
        double d = x.Millimeters * 1e-3, rayleigh = 9.80665 / Kelvin * x.Kelvins * d * d * d * Prandtl / (Viscosity * Viscosity);
        double root = 0.60 + (0.387 * Math.Pow(rayleigh, 1 / 6.0) / Math.Pow(1 + Math.Pow(0.559 / Prandtl, 9 / 16.0), 8 / 27.0));
        return root * root * Conductivity / d;
    }

    public double Typed(Case x) => NaturalConvection.Coefficient(Film, x.Difference, x.Diameter).WattsPerSquareMeterKelvin;
}

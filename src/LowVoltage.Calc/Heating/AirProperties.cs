using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Properties of dry air at one temperature and pressure, as natural convection uses them.</summary>
/// <remarks>
/// <code>
/// μ  = 1.458e-6 · T^1.5 / (T + 110.4)                       Pa·s, Sutherland
/// k  = 2.64638e-3 · T^1.5 / (T + 245.4 · 10^(−12/T))        W/(m·K)
/// cp = 1057.5 − 0.4489·T + 1.1407e-3·T² − 7.9999e-7·T³ + 1.9327e-10·T⁴   J/(kg·K)
/// ρ  = p/(R·T), ν = μ/ρ, Pr = cp·μ/k, expansion = 1/T
/// </code>
/// <para><b>Symbols.</b> T in K, p in Pa, R = 287.05287 J/(kg·K).</para>
/// <para><b>Source.</b> μ and k: US Standard Atmosphere, 1976, equations 51 and 53. cp: a fourth-degree fit in common use (Dixon, The Shock
/// Absorber Handbook, 2007, appendix B). Ideal gas.</para>
/// <para><b>Valid for</b> 200 K to 1200 K and 1 kPa to 200 kPa.</para>
/// <para><b>Accuracy.</b> Against the air table of a heat-transfer textbook, 200 K to 1200 K: k within 1.5 %, ν within 2.5 %, cp within 0.5 %, Pr within 4 %.</para>
/// </remarks>
public sealed class AirProperties
{
    internal const double LeastKelvin = 200;
    internal const double MostKelvin = 1200;
    private const double LeastPascals = 1_000;
    private const double MostPascals = 200_000;

    private readonly double kelvin;
    private readonly double pascals;

    private AirProperties(double kelvin, double pascals)
    {
        this.kelvin = kelvin;
        this.pascals = pascals;
        WattsPerMeterKelvin = AirKernel.ThermalConductivity(kelvin, out _);
        PascalSeconds = AirKernel.DynamicViscosity(kelvin, out _);
        PrandtlNumber = AirKernel.SpecificHeat(kelvin, out _) * PascalSeconds / WattsPerMeterKelvin;
    }

    /// <summary>The source of the viscosity and conductivity.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "US Standard Atmosphere", Edition = "1976", Locator = "equations 51 and 53", Kind = ReferenceKind.FromMemory,
        Note = "Formulas from memory, checked against a textbook air table; heat capacity by a polynomial fit.",
    };

    /// <summary>Temperature that the properties are for.</summary>
    public Temperature Temperature => Temperature.FromKelvins(kelvin);

    /// <summary>Pressure that the properties are for.</summary>
    public Pressure Pressure => Pressure.FromPascals(pascals);

    /// <summary>Density, ρ.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMeter);

    /// <summary>Thermal conductivity, k.</summary>
    public ThermalConductivity ThermalConductivity => ThermalConductivity.FromWattsPerMeterKelvin(WattsPerMeterKelvin);

    /// <summary>Dynamic viscosity, μ.</summary>
    public DynamicViscosity DynamicViscosity => DynamicViscosity.FromPascalSeconds(PascalSeconds);

    /// <summary>Kinematic viscosity, ν = μ/ρ.</summary>
    public KinematicViscosity KinematicViscosity => KinematicViscosity.FromSquareMetersPerSecond(SquareMetersPerSecond);

    /// <summary>Isobaric heat capacity, cp.</summary>
    public SpecificEntropy SpecificHeatCapacity => SpecificEntropy.FromJoulesPerKilogramKelvin(AirKernel.SpecificHeat(kelvin, out _));

    /// <summary>Volumetric thermal expansion, 1/T for an ideal gas.</summary>
    public CoefficientOfThermalExpansion Expansion => CoefficientOfThermalExpansion.FromPerKelvin(1 / kelvin);

    /// <summary>Prandtl number, cp·μ/k.</summary>
    public double PrandtlNumber { get; }

    internal double WattsPerMeterKelvin { get; }

    internal double KilogramsPerCubicMeter => AirKernel.Density(kelvin, pascals);

    internal double SquareMetersPerSecond => PascalSeconds / KilogramsPerCubicMeter;

    internal double Kelvin => kelvin;

    private double PascalSeconds { get; }

    /// <summary>Air at a temperature and pressure.</summary>
    /// <param name="temperature">Temperature of the air; for convection the film temperature, midway between surface and ambient. 200 K to 1200 K.</param>
    /// <param name="pressure">Pressure, 1 kPa to 200 kPa; <see cref="StandardAtmosphere"/> gives it for an altitude.</param>
    /// <returns>The properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Temperature or pressure is outside the range of the fits.</exception>
    public static AirProperties At(Temperature temperature, Pressure pressure)
    {
        double kelvin = Accept.Kelvins(temperature);
        _ = Accept.Within(kelvin, LeastKelvin, MostKelvin, "K", nameof(temperature));
        double pascals = Accept.Within(Accept.Raw(pressure), LeastPascals, MostPascals, "Pa", nameof(pressure));
        return new AirProperties(kelvin, pascals);
    }
}

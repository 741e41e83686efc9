using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

public sealed partial class ConductorMaterial
{
    private const double CopperOhmMeters = 1e-6 / 58;
    private const double CopperCoefficient = 0.00393;
    private const double CopperDensity = 8890;
    private const double CopperHeatCapacity = 3.45e6;
    private const double CopperMelting = 1083;

    /// <summary>Annealed copper, 100 % IACS: ρ20 = 1/58 Ω·mm²/m, α20 = 0.00393 /K, β = 234.5 °C.</summary>
    public static ConductorMaterial Copper { get; } = CopperLike("copper", CopperOhmMeters, new Reference
    {
        Title = "IEC 60028",
        Edition = "1925",
        Kind = ReferenceKind.Standard,
        Note = "Density as ASTM B496; β and heat capacity as IEC 60949, from memory, validated by K = 226; melting point 1083 °C, customary.",
    });

    /// <summary>Hard-drawn copper at the largest resistivity of ASTM B1 for wire under 0.325 in: 96.16 % IACS, α20 = 0.00378 /K.</summary>
    /// <remarks>From memory. The average of NBS Circular 31 is 97.3 % IACS; the standard's limit is the more resistive and is used.</remarks>
    public static ConductorMaterial HardDrawnCopper { get; } = OfIacs("hard-drawn copper", CopperOhmMeters / (0.15940 / CopperDensity * 1e-3), new Reference
    {
        Title = "ASTM B1",
        Locator = "maximum mass resistivity 0.15940 Ω·g/m², wire under 0.325 in",
        Kind = ReferenceKind.FromMemory,
        Note = "α20 in proportion to conductivity (NBS); density and heat capacity as annealed copper.",
    });

    /// <summary>EC aluminium, 61 % IACS: ρ20 = 2.8264e-8 Ω·m, α20 = 0.00403 /K, β = 228 °C.</summary>
    /// <remarks>FAA AC 43.13-1B prints 238.1 for β (α20 = 0.00387); the IEC value reproduces the published k factors and is used.</remarks>
    public static ConductorMaterial Aluminium { get; } = new()
    {
        Name = "aluminium",
        OhmMeters20 = 2.8264e-8,
        TemperatureCoefficient = 0.00403,
        InferredZeroCelsius = -228,
        DensityKilogramsPerCubicMeter = 2703,
        HeatCapacityJoulesPerCubicMeterKelvin = 2.5e6,
        MeltingPointCelsius = 660,
        Reference = new Reference
        {
            Title = "IEC 60287-1-1",
            Locator = "Table 1",
            Kind = ReferenceKind.FromMemory,
            Note = "2.8264e-8 Ω·m and 0.00403 /K confirmed in reprints; β and heat capacity as IEC 60949, from memory, validated by K = 148; density as IEC 60889, from memory.",
        },
    };

    /// <summary>Mild steel of a chassis: ρ20 = 1.38e-7 Ω·m, α20 = 0.0045 /K, β = 202 °C.</summary>
    /// <remarks>
    /// Sheet runs from 1.0e-7 to 1.8e-7 Ω·m (from memory; 1.43e-7 is printed for carbon steel 1010), and joints usually outweigh the sheet: measure a
    /// body return where it matters. The melting point is the lower end of the range 1425 to 1540 °C.
    /// </remarks>
    public static ConductorMaterial MildSteel { get; } = new()
    {
        Name = "mild steel",
        OhmMeters20 = 1.38e-7,
        TemperatureCoefficient = 0.0045,
        InferredZeroCelsius = -202,
        DensityKilogramsPerCubicMeter = 7850,
        HeatCapacityJoulesPerCubicMeterKelvin = 3.8e6,
        MeltingPointCelsius = 1425,
        Reference = new Reference
        {
            Title = "IEC 60287-1-1 and IEC 60949",
            Kind = ReferenceKind.FromMemory,
            Note = "Validated by K = 78; density and melting range from memory.",
        },
    };

    /// <summary>Copper as in a standard's table of coated conductors: the table gives the resistance, copper the heat.</summary>
    internal static ConductorMaterial CoatedCopper { get; } = CopperLike("tinned copper", CopperOhmMeters, new Reference
    {
        Title = "IEC 60028",
        Edition = "1925",
        Kind = ReferenceKind.Standard,
        Note = "Constants of annealed copper; a coating is under 2 % of the volume and its effect on resistance is in the standard's own table.",
    });

    // α and the rest as annealed copper, at a resistivity of its own.
    private static ConductorMaterial CopperLike(string name, double ohmMeters, Reference reference) => new()
    {
        Name = name,
        OhmMeters20 = ohmMeters,
        TemperatureCoefficient = CopperCoefficient,
        InferredZeroCelsius = -234.5,
        DensityKilogramsPerCubicMeter = CopperDensity,
        HeatCapacityJoulesPerCubicMeterKelvin = CopperHeatCapacity,
        MeltingPointCelsius = CopperMelting,
        Reference = reference,
    };

    // α in proportion to conductivity, so that the inferred zero follows from it.
    private static ConductorMaterial OfIacs(string name, double share, Reference reference)
    {
        double coefficient = CopperCoefficient * share;
        return new ConductorMaterial
        {
            Name = name,
            OhmMeters20 = CopperOhmMeters / share,
            TemperatureCoefficient = coefficient,
            InferredZeroCelsius = 20 - (1 / coefficient),
            DensityKilogramsPerCubicMeter = CopperDensity,
            HeatCapacityJoulesPerCubicMeterKelvin = CopperHeatCapacity,
            MeltingPointCelsius = CopperMelting,
            Reference = reference,
        };
    }
}

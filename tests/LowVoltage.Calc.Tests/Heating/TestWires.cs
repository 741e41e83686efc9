using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Wires that the heat tests share, built from dimensions.</summary>
internal static class TestWires
{
    private static readonly Reference ByHand = Reference.CommonPractice("built by the test");

    public static Conductor Bare(double diameterMillimeters, double ohmsPerMeter20, ConductorMaterial? material = null, double? area = null) => new()
    {
        Name = "test conductor",
        Reference = ByHand,
        Material = material ?? ConductorMaterial.Copper,
        DiameterMillimeters = diameterMillimeters,
        AreaSquareMillimeters = area ?? (Math.PI / 4 * diameterMillimeters * diameterMillimeters),
        OhmsPerMeter20 = ohmsPerMeter20,
    };

    /// <summary>Solid copper of a diameter in PVC.</summary>
    public static Wire Solid(double diameterMillimeters, double wallMillimeters, InsulationMaterial? insulation = null) =>
        Wire.Create(
            Bare(diameterMillimeters, 1e-6 / 58 / (Math.PI / 4 * diameterMillimeters * diameterMillimeters * 1e-6)),
            insulation ?? InsulationMaterial.PolyvinylChloride,
            Length.FromMillimeters(wallMillimeters));

    public static InsulationMaterial Insulation(double kelvinMetersPerWatt, double heatCapacity = 2e6) => new()
    {
        ContinuousCelsius = 200,
        ShortCircuitCelsius = 250,
        ThermalResistivityKelvinMetersPerWatt = kelvinMetersPerWatt,
        HeatCapacityJoulesPerCubicMeterKelvin = heatCapacity,
    };

    /// <summary>A metal whose resistance does not change, for textbook problems.</summary>
    public static ConductorMaterial ConstantMetal(double ohmMeters, double heatCapacity) => new()
    {
        Name = "constant metal",
        Reference = ByHand,
        OhmMeters20 = ohmMeters,
        TemperatureCoefficient = 0,
        InferredZeroCelsius = -1e6,
        HeatCapacityJoulesPerCubicMeterKelvin = heatCapacity,
        MeltingPointCelsius = 1400,
    };

    public static Surroundings Air(double ambient = 25, double meters = 0, double emissivity = 0.9) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(ambient),
        Altitude = Length.FromMeters(meters),
        Emissivity = emissivity,
    };

    public static Surroundings Given(double ambient, double coefficient) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(ambient),
        SurfaceCoefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient),
    };

    public static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    public static Duration S(double seconds) => Duration.FromSeconds(seconds);
}

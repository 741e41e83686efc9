using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Conductors;

public class MaterialTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);
    private static readonly Reference Source = Reference.CommonPractice("test");

    [Property]
    public void CopperCladAluminium_AnyShare_LiesBetweenTheTwoMetalsAndAboveTheRuleOfMixtures(ushort a)
    {
        double share = 0.05 + (a / 65535.0 * 0.35);
        ConductorMaterial clad = ConductorMaterial.CopperCladAluminium(share);
        double parallel = 1 / ((share * 58e6) + ((1 - share) / 2.8264e-8));
        Assert.InRange(clad.Resistivity.OhmMeters, parallel * 1.03, parallel * 1.0371);
        Assert.InRange(clad.TemperatureCoefficient, 0.00393, 0.00403);
        Assert.InRange(clad.Density.KilogramsPerCubicMeter, 2703, 8890);
        Assert.Equal(660, clad.MeltingPoint.DegreesCelsius);
    }

    [Theory]
    [InlineData(0.049)]
    [InlineData(0.41)]
    [InlineData(double.NaN)]
    public void CopperCladAluminium_ShareOutside_IsRefused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>("copperShareByVolume", () => ConductorMaterial.CopperCladAluminium(share));

    // NBS: α20 is proportional to conductivity; 100 % is annealed copper.
    public static TheoryData<string> Metals => ["clad 10 %", "clad 15 %", "clad 30 %", "97 % IACS", "hard-drawn", "coated"];

    /// <summary>The inferred zero is where the straight line ρ20·(1 + α·(θ − 20)) meets zero: IEC 60949 calls its negative β.</summary>
    [Theory, MemberData(nameof(Metals))]
    public void InferredZero_AnyMetal_IsWhereItsLineMeetsZero(string name)
    {
        ConductorMaterial metal = name switch
        {
            "clad 10 %" => ConductorMaterial.CopperCladAluminium(0.10),
            "clad 15 %" => ConductorMaterial.CopperCladAluminium(0.15),
            "clad 30 %" => ConductorMaterial.CopperCladAluminium(0.30),
            "97 % IACS" => ConductorMaterial.FromConductivity(97),
            "hard-drawn" => ConductorMaterial.HardDrawnCopper,
            _ => ConductorMaterial.CoatedCopper,
        };

        Assert.Equal(0, 1 + (metal.TemperatureCoefficient * (metal.InferredZeroCelsius - 20)), 0.002);
    }

    [Fact]
    public void Iso6722_Tinned_IsCoatedCopper()
    {
        MetricSize size = MetricSize.FromSquareMillimeters(1.5);
        Assert.Same(ConductorMaterial.CoatedCopper, Conductor.Iso6722(size, tinned: true).Material);
        Assert.Same(ConductorMaterial.Copper, Conductor.Iso6722(size, tinned: false).Material);
    }

    [Fact]
    public void FromConductivity_ScalesCoefficientAndResistivity()
    {
        ConductorMaterial full = ConductorMaterial.FromConductivity(100);
        Assert.Equal(ConductorMaterial.Copper.Resistivity.OhmMeters, full.Resistivity.OhmMeters, 1e-20);
        Assert.Equal(0.00393, full.TemperatureCoefficient, 1e-15);
        ConductorMaterial lower = ConductorMaterial.FromConductivity(97.3);
        Assert.Equal(1.772e-8, lower.Resistivity.OhmMeters, 5e-12); // NBS Circular 31, hard-drawn average
        Assert.Equal(0.00382, lower.TemperatureCoefficient, 5e-6);
        Assert.Equal(97.3, lower.PercentIacs, 1e-9);
        Assert.Equal("copper, 97.3 % IACS", lower.Name);
        Assert.Throws<ArgumentOutOfRangeException>("percentIacs", () => ConductorMaterial.FromConductivity(69.9));
        Assert.Throws<ArgumentOutOfRangeException>("percentIacs", () => ConductorMaterial.FromConductivity(103.1));
    }

    [Fact]
    public void Create_EveryArgument_IsChecked()
    {
        ConductorMaterial brass = Make();
        Assert.Equal(20 - (1 / 0.00171), brass.InferredZero.DegreesCelsius, 1e-9);
        Assert.Equal("brass", brass.ToString());
        Assert.Same(Source, brass.Reference);
        Assert.Equal(-100, ConductorMaterial.LowestTemperature.DegreesCelsius);
        Assert.Throws<ArgumentNullException>("name", () => Make(name: null!));
        Assert.Throws<ArgumentException>("name", () => Make(name: " "));
        Assert.Throws<ArgumentNullException>("reference", () => ConductorMaterial.Create(
            "x", ElectricResistivity.FromOhmMeters(1e-8), 0.004, Density.FromKilogramsPerCubicMeter(8000), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(3e6), Temperature.FromDegreesCelsius(900), null!));
        Assert.Throws<ArgumentOutOfRangeException>("resistivity", () => Make(ohmMeters: 0.9e-9));
        Assert.Throws<ArgumentOutOfRangeException>("resistivity", () => Make(ohmMeters: 0.011));
        Assert.Throws<ArgumentOutOfRangeException>("temperatureCoefficient", () => Make(alpha: -1e-9));
        Assert.Throws<ArgumentOutOfRangeException>("temperatureCoefficient", () => Make(alpha: 0.9e-5));
        Assert.Throws<ArgumentOutOfRangeException>("temperatureCoefficient", () => Make(alpha: 0.0081));
        Assert.Throws<ArgumentOutOfRangeException>("density", () => Make(density: 99));
        Assert.Throws<ArgumentOutOfRangeException>("volumetricHeatCapacity", () => Make(heat: 1.1e7));
        Assert.Throws<ArgumentOutOfRangeException>("meltingPoint", () => Make(melting: 99));
        // No coefficient that is accepted lets the line reach zero inside its range.
        Assert.True(Make(alpha: 0.008).ResistivityAt(Temperature.FromDegreesCelsius(-100)).OhmMeters > 0);
    }

    // IEC 60949: K = √(σ(β + 20)·1e-12/ρ20) is 226, 148 and 78 A·√s/mm² for copper, aluminium and steel; the constants must give them within 1 %.
    [Fact]
    public void Constants_TogetherGiveTheAdiabaticConstants()
    {
        Assert.Equal(226, K(ConductorMaterial.Copper), 2.26);
        Assert.Equal(148, K(ConductorMaterial.Aluminium), 1.48);
        Assert.Equal(78, K(ConductorMaterial.MildSteel), 0.78);
    }

    [Theory]
    [InlineData(0.00393, 20, 0, 0.00427)] // textbook pairs of copper: 0.00427 at 0 °C, 0.00385 at 25 °C; half a unit in the last digit
    [InlineData(0.00393, 20, 25, 0.00385)]
    public void CoefficientAt_OtherReference_IsThePublishedOne(double alpha, double at, double other, double expected) =>
        Assert.Equal(expected, TemperatureCorrection.CoefficientAt(alpha, Temperature.FromDegreesCelsius(at), Temperature.FromDegreesCelsius(other)), 5e-6);

    [Property]
    public void TemperatureFrom_IsTheInverseOfResistanceAt(ushort a, ushort b, bool negative)
    {
        double alpha = (negative ? -1 : 1) * (0.0002 + (a / 65535.0 * 0.005));
        double celsius = -50 + (b / 65535.0 * 200);
        ElectricResistance known = ElectricResistance.FromOhms(3);
        Temperature at = Temperature.FromDegreesCelsius(15);
        ElectricResistance other = TemperatureCorrection.ResistanceAt(known, at, Temperature.FromDegreesCelsius(celsius), alpha, Twenty);
        Assert.Equal(celsius, TemperatureCorrection.TemperatureFrom(known, at, other, alpha, Twenty).DegreesCelsius, 1e-7);
        // The reference temperature does not matter when its coefficient goes with it.
        Temperature seventy = Temperature.FromDegreesCelsius(70);
        Assert.Equal(other.Ohms, TemperatureCorrection.ResistanceAt(known, at, Temperature.FromDegreesCelsius(celsius), TemperatureCorrection.CoefficientAt(alpha, Twenty, seventy), seventy).Ohms, 1e-9);
    }

    [Fact]
    public void TemperatureCorrection_BadInput_IsRefusedByName()
    {
        ElectricResistance one = ElectricResistance.FromOhms(1);
        Temperature cold = Temperature.FromDegreesCelsius(-250);
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => TemperatureCorrection.ResistanceAt(one, Twenty, cold, 0.00393, Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("knownAt", () => TemperatureCorrection.ResistanceAt(one, cold, Twenty, 0.00393, Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("coefficient", () => TemperatureCorrection.ResistanceAt(one, Twenty, Twenty, 0.06, Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("coefficient", () => TemperatureCorrection.TemperatureFrom(one, Twenty, one, 0, Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("known", () => TemperatureCorrection.ResistanceAt(ElectricResistance.Zero, Twenty, Twenty, 0.004, Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("measured", () => TemperatureCorrection.TemperatureFrom(one, Twenty, ElectricResistance.FromOhms(100), 0.00393, Twenty));
        Assert.Throws<ArgumentNullException>("material", () => TemperatureCorrection.ResistanceAt(one, Twenty, Twenty, null!));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => TemperatureCorrection.ResistanceAt(one, Twenty, cold, ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => TemperatureCorrection.NecResistanceAt(one, cold, 0.00323));
        Assert.Equal(0, TemperatureCorrection.CoefficientAt(0, Twenty, cold));
        Assert.Null(TemperatureCorrection.TemperatureOfEqualResistance(one, 0.004, ElectricResistance.FromOhms(2), 0.002, Twenty)); // parallel lines
        Assert.Null(TemperatureCorrection.TemperatureOfEqualResistance(one, 0.004, ElectricResistance.FromOhms(2), 0.004, Twenty)); // cross at zero ohms
    }

    [Fact]
    public void Rated_Insulation_TakesTheSafestShortCircuitLimit()
    {
        InsulationMaterial rated = InsulationMaterial.Rated("125 °C rated", Temperature.FromDegreesCelsius(125));
        Assert.Equal(125, rated.ShortCircuitLimit.DegreesCelsius);
        Assert.False(rated.HasPublishedShortCircuitLimit);
        Assert.Contains("safest", rated.ShortCircuitReference.Title, StringComparison.Ordinal);
        InsulationMaterial stated = InsulationMaterial.Rated("105 °C rated", Temperature.FromDegreesCelsius(105), Temperature.FromDegreesCelsius(160));
        Assert.Equal(160, stated.ShortCircuitLimit.DegreesCelsius);
        Assert.True(stated.HasPublishedShortCircuitLimit);
        Assert.True(rated.ThermalResistivity >= InsulationMaterial.PolyvinylChloride.ThermalResistivity);
        Assert.True(rated.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin <= InsulationMaterial.PolyvinylChloride.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin);
        Assert.Throws<ArgumentNullException>("name", () => InsulationMaterial.Rated(null!, Twenty));
        Assert.Throws<ArgumentException>("name", () => InsulationMaterial.Rated("", Temperature.FromDegreesCelsius(105)));
        Assert.Throws<ArgumentOutOfRangeException>("continuous", () => InsulationMaterial.Rated("x", Temperature.FromDegreesCelsius(39)));
        Assert.Throws<ArgumentOutOfRangeException>("continuous", () => InsulationMaterial.Rated("x", Temperature.FromDegreesCelsius(401)));
        Assert.Throws<ArgumentOutOfRangeException>("shortCircuit", () => InsulationMaterial.Rated("x", Temperature.FromDegreesCelsius(105), Temperature.FromDegreesCelsius(104)));
        Assert.Throws<ArgumentOutOfRangeException>("temperatureClass", () => InsulationMaterial.RoadVehicle((RoadVehicleTemperatureClass)8));
        Assert.Throws<ArgumentNullException>("conductor", () => InsulationMaterial.PolyvinylChloride.ShortCircuitLimitFor(null!));
    }

    [Fact]
    public void Wire_Create_AddsTheWallTwice()
    {
        Conductor conductor = Conductor.SolidOfDiameter(Length.FromMillimeters(2), ConductorMaterial.Copper);
        Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        Assert.Equal(3.2, wire.OuterDiameter.Millimeters, 1e-12);
        Assert.Equal(0.6, wire.Wall.Millimeters, 1e-12);
        Assert.Equal("2 mm copper wire, PVC (70 °C)", wire.ToString());
        Assert.Same(conductor, wire.Conductor);
        Assert.Same(InsulationMaterial.PolyvinylChloride, wire.Insulation);
        Assert.Throws<ArgumentNullException>("conductor", () => Wire.Create(null!, InsulationMaterial.PolyvinylChloride, Length.Zero));
        Assert.Throws<ArgumentNullException>("insulation", () => Wire.Create(conductor, null!, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("wall", () => Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(-0.1)));
    }

    private static double K(ConductorMaterial metal) => Math.Sqrt(
        metal.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin * (20 - metal.InferredZero.DegreesCelsius) * 1e-12 / metal.Resistivity.OhmMeters);

    // Brass 70/30 of a handbook's tables, varied one value at a time.
    private static ConductorMaterial Make(
        string name = "brass", double ohmMeters = 6.08e-8, double alpha = 0.00171, double density = 8470, double heat = 3.4e6, double melting = 940) => ConductorMaterial.Create(
        name,
        ElectricResistivity.FromOhmMeters(ohmMeters),
        alpha,
        Density.FromKilogramsPerCubicMeter(density),
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heat),
        Temperature.FromDegreesCelsius(melting),
        Source);
}

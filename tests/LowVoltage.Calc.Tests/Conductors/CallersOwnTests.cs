using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Conductors;

/// <summary>Insulations, metals, conductors and series that the caller brings.</summary>
public class CallersOwnTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet", Edition = "2026", Kind = ReferenceKind.Handbook };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static ConductorMaterial Constantan => ConductorMaterial.Create(
        "constantan", ElectricResistivity.FromOhmMeters(4.9e-7), 0, Density.FromKilogramsPerCubicMeter(8900), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(3.65e6), C(1220), Sheet);

    private static InsulationMaterial Plastic(
        double continuous = 90, double shortCircuit = 150, double conductivity = 0.2, double heat = 2e6, double emissivity = 0.9, string name = "plastic", Reference? reference = null) => InsulationMaterial.Create(
        name, C(continuous), C(shortCircuit), ThermalConductivity.FromWattsPerMeterKelvin(conductivity), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heat), emissivity, reference ?? Sheet);

    [Fact]
    public void InsulationCreate_GivesBackWhatWasStated()
    {
        InsulationMaterial own = Plastic();
        Assert.Equal(90, own.ContinuousLimit.DegreesCelsius);
        Assert.Equal(150, own.ShortCircuitLimit.DegreesCelsius);
        Assert.Equal(0.2, own.ThermalConductivity.WattsPerMeterKelvin, 1e-15);
        Assert.Equal(5, own.ThermalResistivity, 1e-12);
        Assert.Equal(2e6, own.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin);
        Assert.Equal(0.9, own.Emissivity);
        Assert.Equal(Sheet, own.Reference);
        Assert.Equal(Sheet, own.ThermalReference);
        Assert.True(own.HasPublishedShortCircuitLimit);
        Assert.False(Plastic(shortCircuit: 90).HasPublishedShortCircuitLimit);
        Assert.Equal("plastic", own.ToString());
    }

    [Theory]
    [InlineData("continuous", 39, 150, 0.2, 2e6, 0.9)]
    [InlineData("continuous", 401, 450, 0.2, 2e6, 0.9)]
    [InlineData("shortCircuit", 90, 89, 0.2, 2e6, 0.9)]
    [InlineData("shortCircuit", 90, 501, 0.2, 2e6, 0.9)]
    [InlineData("conductivity", 90, 150, 0.019, 2e6, 0.9)]
    [InlineData("heatCapacity", 90, 150, 0.2, 0, 0.9)]
    [InlineData("emissivity", 90, 150, 0.2, 2e6, 1.01)]
    [InlineData("emissivity", 90, 150, 0.2, 2e6, double.NaN)]
    public void InsulationCreate_OutsideARange_IsRefusedByName(string parameter, double continuous, double shortCircuit, double conductivity, double heat, double emissivity) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => Plastic(continuous, shortCircuit, conductivity, heat, emissivity));

    [Fact]
    public void InsulationCreate_WithoutANameOrASource_IsRefused()
    {
        Assert.Throws<ArgumentException>("name", () => Plastic(name: " "));
        Assert.Throws<ArgumentNullException>("name", () => Plastic(name: null!));
        Assert.Throws<ArgumentNullException>("reference", () => InsulationMaterial.PolyvinylChloride.WithThermal(
            ThermalConductivity.FromWattsPerMeterKelvin(0.2), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(2e6), 0.9, null!));
    }

    [Fact]
    public void WithThermal_KeepsTheLimits()
    {
        InsulationMaterial own = InsulationMaterial.PolyvinylChloride.WithThermal(
            ThermalConductivity.FromWattsPerMeterKelvin(0.17), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(1.5e6), 0.92, Sheet);
        Conductor thick = Conductor.OfArea(Area.FromSquareMillimeters(400), ConductorMaterial.Copper);
        Assert.Equal(70, own.ContinuousLimit.DegreesCelsius);
        Assert.Equal(140, own.ShortCircuitLimitFor(thick).DegreesCelsius);
        Assert.Equal(0.17, own.ThermalConductivity.WattsPerMeterKelvin, 1e-15);
        Assert.Equal(0.92, own.Emissivity);
        Assert.Equal(InsulationMaterial.PolyvinylChloride.Reference, own.Reference);
        Assert.Equal(Sheet, own.ThermalReference);
    }

    // A better conductor of heat on the same wire carries more, a poor one less.
    [Fact]
    public void InsulationCreate_ConductivityReachesTheHeatBalance()
    {
        double Carried(double conductivity) => HeatBalance.CurrentFor(
            Wire.Create(Conductor.Awg(14), Plastic(conductivity: conductivity), Length.FromMillimeters(1)), new Surroundings { Ambient = C(30) }, C(90)).Amperes;
        Assert.True(Carried(0.1) < Carried(0.2) && Carried(0.2) < Carried(0.4));
    }

    [Fact]
    public void ConstantResistance_IsTheSameAtEveryTemperature()
    {
        Conductor wire = Conductor.OfArea(Area.FromSquareMillimeters(1), Constantan);
        Assert.True(Constantan.HasConstantResistance && !ConductorMaterial.Copper.HasConstantResistance);
        Assert.Equal(0.49, wire.Resistance(Length.FromMeters(1), C(20)).Ohms, 1e-15);
        Assert.Equal(0.49, wire.Resistance(Length.FromMeters(1), C(900)).Ohms, 1e-15);
        Assert.Throws<InvalidOperationException>(() => Constantan.InferredZero);
        Assert.Throws<ArgumentOutOfRangeException>("measured", () => wire.TemperatureFromResistance(ElectricResistance.FromOhms(0.49), Length.FromMeters(1)));
        Assert.False(wire.TryTemperatureFromResistance(ElectricResistance.FromOhms(0.49), Length.FromMeters(1), out _));
        Assert.Throws<ArgumentOutOfRangeException>("temperatureCoefficient", () => ConductorMaterial.Create(
            "x", ElectricResistivity.FromOhmMeters(4.9e-7), 1e-6, Density.FromKilogramsPerCubicMeter(8900), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(3.65e6), C(1220), Sheet));
    }

    // Without a change of resistance the adiabatic law is I²·t·ρ = σ·S²·ΔT: 3.65e6·1e-12·100 K/4.9e-7 = 744.898 A²s for 1 mm².
    [Fact]
    public void ConstantResistance_ShortCircuit_IsPlainHeating()
    {
        double k = AdiabaticHeating.KFactor(Constantan, C(20), C(120));
        Assert.Equal(3.65e6 * 1e-12 * 100 / 4.9e-7, k * k, 1e-6);
        Conductor wire = Conductor.OfArea(Area.FromSquareMillimeters(1), Constantan);
        Assert.Equal(120, AdiabaticHeating.FinalTemperature(wire, ElectricCurrent.FromAmperes(Math.Sqrt(3.65e6 * 1e-12 * 100 / 4.9e-7)), Duration.FromSeconds(1), C(20)).DegreesCelsius, 1e-6);
        Wire insulated = Wire.Create(wire, Plastic());
        double amperes = HeatBalance.CurrentFor(insulated, new Surroundings { Ambient = C(30) }, C(90)).Amperes;
        Assert.InRange(amperes, 1, 20);
    }

    private static Conductor Cable(double ohms, double area, double diameter, string name = "cable", ConductorSize? size = null) => size is { } known
        ? Conductor.Create(name, known, LinearResistanceOf(ohms), Area.FromSquareMillimeters(area), Length.FromMillimeters(diameter), ConductorMaterial.TinnedCopper, Sheet)
        : Conductor.Create(name, LinearResistanceOf(ohms), Area.FromSquareMillimeters(area), Length.FromMillimeters(diameter), ConductorMaterial.TinnedCopper, Sheet);

    private static LowVoltage.Calc.Quantities.LinearResistance LinearResistanceOf(double ohmsPerKilometer) => LowVoltage.Calc.Quantities.LinearResistance.FromOhmsPerKilometer(ohmsPerKilometer);

    [Fact]
    public void ConductorCreate_GivesBackWhatWasStated()
    {
        Conductor own = Cable(5.09, 3.9, 2.7, "4 mm² tinned", MetricSize.FromSquareMillimeters(4));
        Assert.Equal("4 mm² tinned", own.Name);
        Assert.Equal(5.09, own.ResistancePerLength(C(20)).OhmsPerKilometer, 1e-12);
        Assert.Equal(3.9, own.Area.SquareMillimeters);
        Assert.Equal(2.7, own.Diameter.Millimeters, 1e-12);
        Assert.Equal("4 mm²", own.Size.ToString());
        Assert.Equal(ResistanceBasis.Stated, own.Basis);
        Assert.Equal(Sheet, own.Reference);
        Assert.Null(Cable(5.09, 3.9, 2.7).Size);
    }

    [Fact]
    public void ConductorCreate_WhatCannotBe_IsRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => Cable(4.0, 3.9, 2.7)); // 3.9 mm² of tinned copper have 4.75 Ω/km
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => Cable(5.09, 3.9, 2.2)); // solid would be 2.23 mm
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => Cable(5.09, 3.9, 7));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => Cable(8, 2.5, 2, size: MetricSize.FromSquareMillimeters(4)));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Cable(5.09, 3.9, 2.7, size: default(ConductorSize)));
        Assert.Throws<ArgumentException>("name", () => Cable(5.09, 3.9, 2.7, ""));
    }

    [Fact]
    public void SeriesCreate_IsWalkedLikeACarriedOne()
    {
        Conductor[] cables = [Cable(8.21, 2.4, 2.1, "a", MetricSize.FromSquareMillimeters(2.5)), Cable(5.09, 3.9, 2.7, "b", MetricSize.FromSquareMillimeters(4)), Cable(3.39, 5.8, 3.3, "c")];
        ConductorSeries own = ConductorSeries.Create("reels", cables, Sheet);
        Assert.Equal("reels", own.ToString());
        Assert.Equal(Sheet, own.Reference);
        Assert.Equal(cables, own.Conductors);
        Assert.Same(cables[2], own.NextLarger(cables[1]));
        Assert.True(own.TryGet(MetricSize.FromSquareMillimeters(4), out Conductor? found) && found == cables[1]);
        Assert.Equal([cables[0]], own.Only("one", MetricSize.FromSquareMillimeters(2.5)).Conductors);
        Assert.Same(cables[1], own.SmallestFor(Length.FromMeters(10), ElectricCurrent.FromAmperes(10), C(20), ElectricPotential.FromVolts(0.6))); // 0.821, 0.509 V
    }

    [Fact]
    public void SeriesCreate_RowThatDoesNotRise_IsRefusedWithItsReason()
    {
        string Refused(params Conductor[] conductors) => Assert.Throws<ArgumentException>(nameof(conductors), () => ConductorSeries.Create("x", conductors, Sheet)).Message;
        Conductor small = Cable(8.21, 2.4, 2.1, "small"), large = Cable(5.09, 3.9, 2.7, "large");
        Assert.StartsWith("conductors[1] (small) has 2.4 mm², which is not more than the 3.9 mm² of conductors[0] (large).", Refused(large, small), StringComparison.Ordinal);
        Assert.StartsWith("conductors[1] (worse) has 8.3 Ω/km at 20 °C, which is not less than the 8.21 Ω/km of conductors[0] (small).", Refused(small, Cable(8.3, 3.9, 2.7, "worse")), StringComparison.Ordinal);
        Assert.StartsWith("conductors[1] (twice) has the same size as conductors[0] (once).", Refused(
            Cable(8.21, 2.4, 2.1, "once", MetricSize.FromSquareMillimeters(2.5)), Cable(7.9, 2.5, 2.1, "twice", MetricSize.FromSquareMillimeters(2.5))), StringComparison.Ordinal);
        Assert.Contains("empty", Refused(), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("conductors", () => ConductorSeries.Create("x", [small, null!], Sheet));
        Assert.Throws<ArgumentNullException>("reference", () => ConductorSeries.Create("x", [small], null!));
        Assert.Throws<ArgumentException>("name", () => ConductorSeries.Create(" ", [small], Sheet));
    }
}

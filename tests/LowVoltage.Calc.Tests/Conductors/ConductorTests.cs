using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Conductors;

public class ConductorTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    [Fact]
    public void Solid_14AwgCopper_SaysWhatItIs()
    {
        Conductor wire = Conductor.Solid(AwgSize.Parse("14"), ConductorMaterial.Copper);
        Assert.Equal("14 AWG copper", wire.Name);
        Assert.Equal("14 AWG copper", wire.ToString());
        Assert.Equal(SizeSystem.AmericanWireGauge, wire.System);
        Assert.Equal(ResistanceBasis.SolidGeometry, wire.Basis);
        Assert.Equal(AwgSize.Parse("14"), wire.Size);
        Assert.Equal("ASTM B258 (2018) [standard]", wire.Reference.ToString());
        Assert.Equal(1, wire.LayFactor);
        Assert.Equal(wire.Area.SquareMillimeters, wire.EffectiveArea.SquareMillimeters, 1e-12);
        Assert.Same(ConductorMaterial.Copper, wire.Material);
    }

    [Fact]
    public void Stranded_LayFactor_LengthensEveryStrand()
    {
        Conductor solid = Conductor.Solid(AwgSize.Parse("10"), ConductorMaterial.Copper);
        Conductor stranded = Conductor.Stranded(AwgSize.Parse("10"), ConductorMaterial.Copper);
        Conductor rope = Conductor.Stranded(AwgSize.Parse("10"), ConductorMaterial.Copper, 1.05);
        Assert.Equal(1.02, Ohms(stranded) / Ohms(solid), 1e-12); // ASTM B8, B496: 2 %
        Assert.Equal(1.05, Ohms(rope) / Ohms(solid), 1e-12);
        Assert.Equal(1.02, stranded.MassPerLength.KilogramsPerMeter / solid.MassPerLength.KilogramsPerMeter, 1e-12);
        Assert.Equal(solid.Area.SquareMillimeters / 1.02, stranded.EffectiveArea.SquareMillimeters, 1e-12);
        Assert.Equal(3 / Math.Sqrt(7), stranded.Diameter.Millimeters / solid.Diameter.Millimeters, 1e-12); // seven strands: three diameters
        Assert.Equal(5 / Math.Sqrt(19), Conductor.Stranded(AwgSize.Parse("1"), ConductorMaterial.Copper).Diameter.Mils / AwgSize.Parse("1").Diameter.Mils, 1e-12);
        Assert.Equal(ResistanceBasis.StrandedGeometry, rope.Basis);
        Assert.Throws<ArgumentOutOfRangeException>("layFactor", () => Conductor.Stranded(AwgSize.Parse("10"), ConductorMaterial.Copper, 0.99));
        Assert.Throws<ArgumentOutOfRangeException>("layFactor", () => Conductor.Stranded(KcmilSize.FromKcmil(250), ConductorMaterial.Copper, 1.11));
        Assert.Throws<ArgumentOutOfRangeException>("layFactor", () => Conductor.Stranded(AwgSize.Parse("10"), ConductorMaterial.Copper, double.NaN));
    }

    [Fact]
    public void StrandedFrom_OneStrandWithoutLay_IsTheSolidWire()
    {
        Conductor one = Conductor.StrandedFrom(1, Length.FromMillimeters(2), ConductorMaterial.Copper, 1);
        Conductor solid = Conductor.SolidOfDiameter(Length.FromMillimeters(2), ConductorMaterial.Copper);
        Assert.Equal(Ohms(solid), Ohms(one), 1e-15);
        Assert.Equal(2, one.Diameter.Millimeters, 1e-12);
        Assert.Equal(9 * 0.5, Conductor.StrandedFrom(61, Length.FromMillimeters(0.5), ConductorMaterial.Copper).Diameter.Millimeters, 1e-12);
        Assert.Null(one.Size);
        Assert.Equal(SizeSystem.Geometry, one.System);
        Assert.Throws<ArgumentOutOfRangeException>("strands", () => Conductor.StrandedFrom(0, Length.FromMillimeters(1), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("strands", () => Conductor.StrandedFrom(100_001, Length.FromMillimeters(1), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("strandDiameter", () => Conductor.StrandedFrom(7, Length.Zero, ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("strandDiameter", () => Conductor.StrandedFrom(100_000, Length.FromMeters(1), ConductorMaterial.Copper));
    }

    [Fact]
    public void Factories_BadInput_IsRefusedByName()
    {
        Assert.Throws<ArgumentNullException>("material", () => Conductor.Solid(AwgSize.Parse("10"), null!));
        Assert.Throws<ArgumentNullException>("material", () => Conductor.Stranded(AwgSize.Parse("10"), null!));
        Assert.Throws<ArgumentNullException>("material", () => Conductor.VehicleGauge(VehicleGaugeSize.FromNumber(10), null!));
        Assert.Throws<ArgumentNullException>("material", () => Conductor.OfArea(Area.FromSquareMillimeters(1), null!));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => Conductor.OfArea(Area.Zero, ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => Conductor.OfArea(Area.FromSquareMillimeters(-1), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("diameter", () => Conductor.SolidOfDiameter(Length.FromMeters(1.001), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conductor.Solid(default(KcmilSize), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Conductor.Iec60228(default, Iec60228Class.Flexible));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Conductor.Iso6722(default));
        Assert.Throws<ArgumentOutOfRangeException>("conductorClass", () => Conductor.Iec60228(MetricSize.FromSquareMillimeters(1), (Iec60228Class)3));
        Assert.Throws<ArgumentOutOfRangeException>("metal", () => Conductor.Iec60228(MetricSize.FromSquareMillimeters(1), Iec60228Class.Flexible, (Iec60228Metal)3));
    }

    [Fact]
    public void Stated_Resistance_IsKeptAndItsSectionNeverExceedsTheMetal()
    {
        LinearResistance stated = LinearResistance.FromOhmsPerKilometer(7.0);
        Conductor wire = Conductor.Stated(stated, Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper);
        Assert.Equal(7.0, wire.ResistancePerLength(Twenty).OhmsPerKilometer, 1e-12);
        Assert.Equal(ResistanceBasis.Stated, wire.Basis);
        Assert.Equal(1000 / 58.0 / 7.0, wire.EffectiveArea.SquareMillimeters, 1e-12);
        // 5 % less than ρ/A: more metal than stated, or a warm measurement corrected too far; accepted, and capped at the stated section.
        Assert.Equal(2.5, Conductor.Stated(LinearResistance.FromOhmsPerKilometer(6.6), Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper).EffectiveArea.SquareMillimeters);
        Assert.Throws<ArgumentOutOfRangeException>(
            "resistance", () => Conductor.Stated(LinearResistance.FromOhmsPerKilometer(6.2), Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => Conductor.Stated(default, Area.FromSquareMillimeters(2.5), ConductorMaterial.Copper));
    }

    [Theory]
    [InlineData(-100, true)]
    [InlineData(-100.1, false)]
    [InlineData(1083, true)]
    [InlineData(1083.1, false)]
    [InlineData(-274, false)]
    public void ResistancePerLength_OutsideTheStraightLine_IsRefused(double celsius, bool accepted)
    {
        Conductor wire = Conductor.Solid(AwgSize.Parse("10"), ConductorMaterial.Copper);
        Temperature temperature = Temperature.FromDegreesCelsius(celsius);
        if (accepted)
        {
            Assert.Equal(1 + (0.00393 * (celsius - 20)), wire.ResistancePerLength(temperature).OhmsPerMeter / Ohms(wire), 1e-12);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(temperature), () => wire.ResistancePerLength(temperature));
            Assert.Throws<ArgumentOutOfRangeException>(nameof(temperature), () => wire.Resistance(Length.FromMeters(1), temperature));
            Assert.Throws<ArgumentOutOfRangeException>(nameof(temperature), () => wire.Material.ResistivityAt(temperature));
        }
    }

    [Fact]
    public void Resistance_OfALength_IsProportional()
    {
        Conductor wire = Conductor.Stranded(AwgSize.Parse("10"), ConductorMaterial.Aluminium);
        Assert.Equal(25 * Ohms(wire), wire.Resistance(Length.FromMeters(25), Twenty).Ohms, 1e-12);
        Assert.Equal(0, wire.Resistance(Length.Zero, Twenty).Ohms);
        Assert.Equal(2 * wire.MassPerLength.KilogramsPerMeter, wire.Mass(Length.FromMeters(2)).Kilograms, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>("length", () => wire.Resistance(Length.FromMeters(-1), Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => wire.Mass(Length.FromMeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => wire.CurrentDensity(ElectricCurrent.FromAmperes(-1)));
    }

    [Property]
    public void TemperatureFromResistance_IsTheInverse(ushort a, ushort b, byte c)
    {
        Conductor wire = ConductorSeries.Iec60228Class5.Conductors[c % 20];
        double celsius = -100 + (a / 65535.0 * 1183);
        Length length = Length.FromMeters(Math.Pow(10, (b / 65535.0 * 5) - 2));
        ElectricResistance measured = wire.Resistance(length, Temperature.FromDegreesCelsius(celsius));
        Assert.Equal(celsius, wire.TemperatureFromResistance(measured, length).DegreesCelsius, 1e-8);
        Assert.True(wire.TryTemperatureFromResistance(measured, length, out Temperature back));
        Assert.Equal(celsius, back.DegreesCelsius, 1e-8);
    }

    [Fact]
    public void TemperatureFromResistance_Outside_SaysTheRange()
    {
        Conductor wire = Conductor.Solid(AwgSize.Parse("10"), ConductorMaterial.Copper);
        Length meter = Length.FromMeters(1);
        ElectricResistance tooLow = ElectricResistance.FromOhms(Ohms(wire) * 0.5);
        Assert.False(wire.TryTemperatureFromResistance(tooLow, meter, out _));
        string message = Assert.Throws<ArgumentOutOfRangeException>("measured", () => wire.TemperatureFromResistance(tooLow, meter)).Message;
        Assert.Contains("10 AWG copper between -100 °C and its melting point", message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("measured", () => wire.TemperatureFromResistance(ElectricResistance.FromOhms(Ohms(wire) * 6), meter));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => wire.TemperatureFromResistance(tooLow, Length.Zero));
    }

    [Property]
    public void Resistance_DoesNotDependOnUnits(ushort a, byte c)
    {
        Conductor wire = ConductorSeries.AwgStranded.Conductors[c % 34];
        double meters = Math.Pow(10, (a / 65535.0 * 6) - 3);
        double expected = wire.Resistance(Length.FromMeters(meters), Twenty).Ohms;
        Assert.Equal(expected, wire.Resistance(Length.FromFeet(meters / 0.3048), Temperature.FromDegreesFahrenheit(68)).Ohms, expected * 1e-12);
        Assert.Equal(expected, wire.Resistance(Length.FromKilometers(meters / 1000), Temperature.FromKelvins(293.15)).Ohms, expected * 1e-12);
    }

    [Fact]
    public void VehicleGauge_Copper_CarriesTheBunchedLay()
    {
        Conductor wire = Conductor.VehicleGauge(VehicleGaugeSize.FromNumber(14), ConductorMaterial.Copper);
        Assert.Equal(1000 / 58.0 * 1.02 / 1.85, wire.ResistancePerLength(Twenty).OhmsPerKilometer, 1e-9);
        Assert.Equal(SizeSystem.VehicleGauge, wire.System);
        Assert.True(wire.Reference.Kind == ReferenceKind.FromMemory);
    }

    public static TheoryData<string> SeriesNames() => [.. AllSeries.Select(series => series.Name)];

    private static readonly ConductorSeries[] AllSeries =
    [
        ConductorSeries.AwgStranded, ConductorSeries.AwgSolid, ConductorSeries.RoadVehicle, ConductorSeries.Iec60228Class5,
        ConductorSeries.Iec60228Class2, ConductorSeries.VehicleGauge, ConductorSeries.AircraftWire,
    ];

    [Theory]
    [MemberData(nameof(SeriesNames))]
    public void Series_Walk_IsOrderedAndFindsItself(string name)
    {
        ConductorSeries series = AllSeries.Single(s => s.Name == name);
        Assert.Equal(name, series.ToString());
        Assert.NotNull(series.Reference);
        for (int i = 0; i < series.Conductors.Count; i++)
        {
            Conductor conductor = series.Conductors[i];
            Assert.Same(conductor, series.SmallestAtLeast(conductor.Area));
            Assert.True(series.TryGet(conductor.Size!.Value, out Conductor? found));
            Assert.Same(conductor, found);
            Conductor? next = series.NextLarger(conductor);
            Assert.Same(i + 1 < series.Conductors.Count ? series.Conductors[i + 1] : null, next);
            if (next is not null)
            {
                Assert.True(next.Area > conductor.Area && next.Diameter > conductor.Diameter && Ohms(next) < Ohms(conductor));
                Assert.True(next.EffectiveArea > conductor.EffectiveArea && next.MassPerLength > conductor.MassPerLength);
                Assert.Same(next, series.SmallestAtLeast(Area.FromSquareMillimeters(conductor.Area.SquareMillimeters * 1.0001)));
            }
        }

        Area tooMuch = Area.FromSquareMillimeters(series.Conductors[^1].Area.SquareMillimeters * 1.001);
        Assert.False(series.TrySmallestAtLeast(tooMuch, out Conductor? none));
        Assert.Null(none);
        Assert.Contains(name, Assert.Throws<ArgumentOutOfRangeException>("area", () => series.SmallestAtLeast(tooMuch)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("area", () => series.SmallestAtLeast(Area.Zero));
        Assert.Throws<ArgumentException>("conductor", () => series.NextLarger(Conductor.OfArea(Area.FromSquareMillimeters(1), ConductorMaterial.Copper)));
        Assert.Throws<ArgumentNullException>("conductor", () => series.NextLarger(null!));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => series.TryGet(default, out _));
    }

    [Fact]
    public void Series_Lengths_AreThoseOfTheStandards() =>
        Assert.Equal([34, 44, 28, 20, 20, 15, 17], AllSeries.Select(series => series.Conductors.Count));

    private static double Ohms(Conductor conductor) => conductor.ResistancePerLength(Twenty).OhmsPerMeter;
}

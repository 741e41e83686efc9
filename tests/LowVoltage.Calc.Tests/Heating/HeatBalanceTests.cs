using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class HeatBalanceTests
{
    private const double StefanBoltzmann = 5.670374419e-8;
    private static readonly Wire Insulated = Solid(1.628, 0.6);

    /// <summary>The equations written out again, from the public air and convection; the balance must close to 1e-9.</summary>
    [Theory]
    [InlineData(0.25, 0.1, 40, 0, 105)]
    [InlineData(1.628, 0.6, 40, 0, 105)]
    [InlineData(1.628, 0, -40, 12_000, 200)]
    [InlineData(11.7, 1.5, 60, 3_000, 90)]
    [InlineData(1.628, 0.6, 40, 0, 40.001)]
    public void StateFor_AnyWire_ClosesTheBalance(double diameter, double wall, double ambient, double meters, double conductor)
    {
        Wire wire = Solid(diameter, wall);
        Surroundings air = Air(ambient, meters);
        HeatBalanceState? state = HeatBalance.StateFor(wire, air, C(conductor));
        Assert.NotNull(state);
        double outer = (diameter + (2 * wall)) * 1e-3, surface = state.SurfaceTemperature.DegreesCelsius;
        AirProperties film = AirProperties.At(C(0.5 * (surface + ambient)), StandardAtmosphere.PressureAt(Length.FromMeters(meters)));
        double coefficient = NaturalConvection.Coefficient(film, TemperatureDelta.FromKelvins(surface - ambient), Length.FromMeters(outer)).WattsPerSquareMeterKelvin;
        double convection = Math.PI * outer * coefficient * (surface - ambient);
        double radiation = Math.PI * outer * 0.9 * StefanBoltzmann * (Math.Pow(surface + 273.15, 4) - Math.Pow(ambient + 273.15, 4));
        double heat = convection + radiation;
        double current = state.Current.Amperes;

        AssertRelative(heat, state.HeatPerLength.WattsPerMeter);
        AssertRelative(heat, current * current * wire.Conductor.OhmsPerMeterAt(conductor));
        AssertRelative(convection, state.Convection.WattsPerMeter);
        AssertRelative(radiation, state.Radiation.WattsPerMeter);
        Assert.Equal(convection / heat, state.ConvectiveShare, 9);
        Assert.Equal(radiation / heat, state.RadiativeShare, 9);
        Assert.Equal(conductor - surface, heat * 5.0 * Math.Log(outer * 1000 / diameter) / (2 * Math.PI), 9);
        Assert.Equal(conductor, state.ConductorTemperature.DegreesCelsius, 9);
        Assert.Equal(0.5 * (surface + ambient), state.FilmTemperature.DegreesCelsius, 12);
        AssertRelative(
            NaturalConvection.RayleighNumber(film, TemperatureDelta.FromKelvins(surface - ambient), Length.FromMeters(outer)), state.RayleighNumber, 1e-7);
        Assert.True(state.IsWithinCorrelation);
        Assert.Equal(HeatBalance.References, state.References);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.01)]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(60)]
    public void StateAt_AnyCurrent_ClosesTheBalance(double amperes)
    {
        HeatBalanceState? state = HeatBalance.StateAt(Insulated, Air(40), A(amperes));
        Assert.NotNull(state);
        double made = amperes * amperes * Insulated.Conductor.OhmsPerMeterAt(state.ConductorTemperature.DegreesCelsius);
        Assert.Equal(made, state.HeatPerLength.WattsPerMeter, 1e-9 * made + 1e-13);
        Assert.Equal(amperes, state.Current.Amperes);
        Assert.Equal(HeatBalance.TemperatureAt(Insulated, Air(40), A(amperes)).DegreesCelsius, state.ConductorTemperature.DegreesCelsius);
    }

    [Fact]
    public void StateAt_NoCurrent_IsAtAmbientWithoutShares()
    {
        HeatBalanceState? state = HeatBalance.StateAt(Insulated, Air(40), A(0));
        Assert.NotNull(state);
        Assert.Equal(40, state.ConductorTemperature.DegreesCelsius, 12);
        Assert.Equal(0, state.RadiativeShare);
        Assert.Equal(0, state.ConvectiveShare);
        Assert.False(state.IsWithinCorrelation);
    }

    [Fact]
    public void TemperatureAt_CurrentWithoutSteadyState_SaysSo()
    {
        double most = HeatBalance.CurrentFor(Insulated, Air(40), C(1083)).Amperes;
        Assert.True(HeatBalance.TryTemperatureAt(Insulated, Air(40), A(most * 0.9999), out Temperature hot));
        Assert.InRange(hot.DegreesCelsius, 1070, 1083);
        Assert.False(HeatBalance.TryTemperatureAt(Insulated, Air(40), A(most * 1.0001), out Temperature melting));
        Assert.Equal(1083, melting.DegreesCelsius);
        Assert.Null(HeatBalance.StateAt(Insulated, Air(40), A(1e7)));
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "current", () => HeatBalance.TemperatureAt(Insulated, Air(40), A(1000)));
        Assert.Contains("settles below 1083 °C", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void CurrentFor_ConductorNoHotterThanTheSurroundings_IsZero()
    {
        Assert.Equal(0, HeatBalance.CurrentFor(Insulated, Air(40), C(40)).Amperes);
        Assert.Equal(0, HeatBalance.CurrentFor(Insulated, Air(40), C(-20)).Amperes);
        Assert.Null(HeatBalance.StateFor(Insulated, Air(40), C(39)));
    }

    [Fact]
    public void StateAt_HotWalls_WarmTheIdleWireBetweenAirAndWalls()
    {
        Surroundings engine = new() { Ambient = C(40), RadiatingSurroundings = C(120) };
        HeatBalanceState? idle = HeatBalance.StateAt(Insulated, engine, A(0));
        Assert.NotNull(idle);
        Assert.InRange(idle.ConductorTemperature.DegreesCelsius, 45, 115);
        Assert.True(idle.Radiation.WattsPerMeter < 0);
        Assert.Equal(0, idle.HeatPerLength.WattsPerMeter, 9);
        Assert.True(HeatBalance.CurrentFor(Insulated, engine, C(105)).Amperes < HeatBalance.CurrentFor(Insulated, Air(40), C(105)).Amperes);
        Assert.Equal(0, HeatBalance.CurrentFor(Insulated, engine, C(50)).Amperes);
        Surroundings sky = new() { Ambient = C(40), RadiatingSurroundings = C(-70) };
        Assert.InRange(HeatBalance.TemperatureAt(Insulated, sky, A(0)).DegreesCelsius, -70, 40);
        Assert.True(HeatBalance.CurrentFor(Insulated, sky, C(105)).Amperes > HeatBalance.CurrentFor(Insulated, Air(40), C(105)).Amperes);
    }

    /// <summary>Radiation of a black body written out; with emissivity 0 only convection is left.</summary>
    [Fact]
    public void StateFor_WithoutEmissivity_OnlyConvects()
    {
        HeatBalanceState? state = HeatBalance.StateFor(Insulated, Air(40, 0, 0), C(105));
        Assert.NotNull(state);
        Assert.Equal(0, state.Radiation.WattsPerMeter);
        Assert.Equal(1, state.ConvectiveShare);
    }

    [Fact]
    public void StateFor_GivenCoefficient_TakesItForEverything()
    {
        HeatBalanceState? state = HeatBalance.StateFor(Solid(2, 0), Given(20, 50), C(70));
        Assert.NotNull(state);
        Assert.Equal(Math.PI * 2e-3 * 50 * 50, state.HeatPerLength.WattsPerMeter, 12);
        Assert.Equal(0, state.RadiativeShare);
        Assert.Equal(0, state.RayleighNumber);
        Assert.True(state.IsWithinCorrelation);
    }

    /// <summary>The known paradox: a thin wire carries more insulated than bare, as long as its radius is below the critical one.</summary>
    [Fact]
    public void CurrentFor_InsulationBelowTheCriticalRadius_CoolsTheWire()
    {
        double bare = HeatBalance.CurrentFor(Solid(1, 0), Air(25), C(70)).Amperes;
        Assert.True(HeatBalance.CurrentFor(Solid(1, 0.5), Air(25), C(70)).Amperes > bare);
        Assert.True(HeatBalance.CurrentFor(Solid(1, 40), Air(25), C(70)).Amperes < HeatBalance.CurrentFor(Solid(1, 8), Air(25), C(70)).Amperes);
    }

    [Fact]
    public void CriticalRadius_OfAnInsulation_IsThatOfItsConductivity()
    {
        HeatTransferCoefficient fifteen = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(15);
        Assert.Equal(1 / (5.0 * 15), CriticalRadius.Of(InsulationMaterial.PolyvinylChloride, fifteen).Meters, 12);
        Assert.Equal(0.02, CriticalRadius.Of(ThermalConductivity.FromWattsPerMeterKelvin(0.3), fifteen).Meters, 12);
        Assert.NotEmpty(CriticalRadius.Reference.Title);
        Assert.Throws<ArgumentNullException>("insulation", () => CriticalRadius.Of(null!, fifteen));
        Assert.Throws<ArgumentOutOfRangeException>("coefficient", () => CriticalRadius.Of(InsulationMaterial.PolyvinylChloride, HeatTransferCoefficient.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("conductivity", () => CriticalRadius.Of(ThermalConductivity.Zero, fifteen));
    }

    [Fact]
    public void Surroundings_OutOfRange_NamesTheProperty()
    {
        Assert.Throws<ArgumentOutOfRangeException>("Ambient", () => Air(-70.01));
        Assert.Throws<ArgumentOutOfRangeException>("Ambient", () => Air(300.01));
        Assert.Throws<ArgumentOutOfRangeException>("Altitude", () => Air(25, -500.1));
        Assert.Throws<ArgumentOutOfRangeException>("Altitude", () => Air(25, 20_000.1));
        Assert.Throws<ArgumentOutOfRangeException>("Emissivity", () => Air(25, 0, -0.001));
        Assert.Throws<ArgumentOutOfRangeException>("Emissivity", () => Air(25, 0, 1.001));
        Assert.Throws<ArgumentOutOfRangeException>("Emissivity", () => Air(25, 0, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("SurfaceCoefficient", () => Given(25, 0));
        Assert.Throws<ArgumentOutOfRangeException>("RadiatingSurroundings", () => new Surroundings { Ambient = C(20), RadiatingSurroundings = C(301) });
    }

    [Fact]
    public void Surroundings_Defaults_AreSeaLevelAndInsulation()
    {
        Surroundings air = new() { Ambient = C(20) };
        Assert.Equal(20, air.Ambient.DegreesCelsius);
        Assert.Equal(0, air.Altitude.Meters);
        Assert.Equal(0.9, air.Emissivity);
        Assert.Null(air.RadiatingSurroundings);
        Assert.Null(air.SurfaceCoefficient);
        Assert.Equal(
            HeatBalance.CurrentFor(Insulated, Air(20), C(70)).Amperes, HeatBalance.CurrentFor(Insulated, air, C(70)).Amperes);
        Surroundings same = new() { Ambient = C(20), RadiatingSurroundings = C(20), Altitude = Length.FromMeters(0) };
        Assert.Equal(20, same.RadiatingSurroundings!.Value.DegreesCelsius);
        Assert.Equal(
            HeatBalance.CurrentFor(Insulated, air, C(70)).Amperes, HeatBalance.CurrentFor(Insulated, same, C(70)).Amperes);
    }

    [Fact]
    public void PublicMembers_BadArguments_NameTheParameter()
    {
        Assert.Throws<ArgumentNullException>("wire", () => HeatBalance.CurrentFor(null!, Air(), C(70)));
        Assert.Throws<ArgumentNullException>("surroundings", () => HeatBalance.CurrentFor(Insulated, null!, C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.CurrentFor(Insulated, Air(), C(1083.1)));
        Assert.Throws<ArgumentOutOfRangeException>("conductor", () => HeatBalance.StateFor(Insulated, Air(), C(-71)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => HeatBalance.TemperatureAt(Insulated, Air(), A(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => AirProperties.At(Temperature.FromKelvins(199.9), Pressure.FromAtmospheres(1)));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => AirProperties.At(Temperature.FromKelvins(1200.1), Pressure.FromAtmospheres(1)));
        Assert.Throws<ArgumentOutOfRangeException>("pressure", () => AirProperties.At(Temperature.FromKelvins(300), Pressure.FromPascals(999)));
        Assert.Throws<ArgumentOutOfRangeException>("altitude", () => StandardAtmosphere.PressureAt(Length.FromKilometers(20.1)));
        Assert.Throws<ArgumentOutOfRangeException>("rayleigh", () => NaturalConvection.ChurchillChu(1.1e12, 0.7));
        Assert.Throws<ArgumentOutOfRangeException>("prandtl", () => NaturalConvection.ChurchillChu(1, 0.001));
        Assert.Throws<ArgumentOutOfRangeException>("rayleigh", () => NaturalConvection.Morgan(1e-11));
        Assert.Throws<ArgumentNullException>("film", () => NaturalConvection.RayleighNumber(null!, TemperatureDelta.Zero, Length.Zero));
    }

    [Fact]
    public void References_SayWhereTheModelsComeFrom()
    {
        Assert.Equal(4, HeatBalance.References.Count);
        Assert.Contains("Churchill", HeatBalance.References[0].Title, StringComparison.Ordinal);
        Assert.Contains("Morgan", NaturalConvection.MorganReference.Title, StringComparison.Ordinal);
        Assert.Equal("IEC 60949", OverloadHeating.Reference.Title);
        Assert.NotEmpty(WireBundle.FillReference.Title);
    }

    [Fact]
    public void AirProperties_At_KeepsItsTemperatureAndPressure()
    {
        AirProperties air = AirProperties.At(C(26.85), Pressure.FromKilopascals(50));
        Assert.Equal(300, air.Temperature.Kelvins, 9);
        Assert.Equal(50_000, air.Pressure.Pascals, 9);
        Assert.Equal(50_000 / (287.05287 * 300), air.Density.KilogramsPerCubicMeter, 9);
    }

    private static void AssertRelative(double expected, double actual, double fraction = 1e-9) =>
        Assert.InRange(actual, expected - (fraction * Math.Abs(expected)), expected + (fraction * Math.Abs(expected)));
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class VerticalConvectionTests
{
    private static readonly Wire Insulated = Solid(1.628, 0.6);

    // Mean over a flat plate in air of Pr = 0.72, the exact solution of Ostrach (1953, from memory): local Nu·(4/Gr)^(1/4) = 0.5046, so the mean is (4/3)·0.5046/√2·Gr^(1/4) = 0.4757·Gr^(1/4).
    // Of a thin cylinder, Cebeci's solution in the fit of Popiel (2008, from memory) over that of the plate: 1 + 0.3·(√32·ξ)^0.909, ξ = (L/D)/Gr^(1/4).
    private static double Exact(double grashof, double ratio) =>
        0.4757 * Math.Pow(grashof, 0.25) * (1 + (0.3 * Math.Pow(Math.Sqrt(32) * ratio / Math.Pow(grashof, 0.25), 0.909)));

    [Theory]
    [InlineData(1e6, 0.01, 1.04, 1.07)]
    [InlineData(1e9, 17.78, 0.97, 1.0)] // ξ = 0.1
    [InlineData(1e9, 178, 0.86, 0.92)] // ξ = 1
    [InlineData(1e9, 889, 0.86, 0.92)] // ξ = 5
    public void LeFevreEde_AgainstTheExactSolution_IsBelowForWires(double grashof, double ratio, double least, double most) =>
        Assert.InRange(VerticalConvection.LeFevreEde(0.72 * grashof, 0.72, ratio) / Exact(grashof, ratio), least, most);

    [Fact]
    public void LeFevreEde_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("rayleigh", () => VerticalConvection.LeFevreEde(-1, 0.7, 100));
        Assert.Throws<ArgumentOutOfRangeException>("prandtl", () => VerticalConvection.LeFevreEde(1e6, 0, 100));
        Assert.Throws<ArgumentOutOfRangeException>("heightToDiameter", () => VerticalConvection.LeFevreEde(1e6, 0.7, 0));
        Assert.Throws<ArgumentOutOfRangeException>("VerticalHeight", () => new Surroundings { Ambient = Temperature.FromDegreesCelsius(20), VerticalHeight = Length.FromMillimeters(49) });
        Assert.Throws<ArgumentOutOfRangeException>("verticalHeight", () => Air().WithVerticalHeight(Length.FromMeters(10_001)));
        Assert.NotEmpty(VerticalConvection.LeFevreEdeReference.Locator);
    }

    /// <summary>The balance written out with the public coefficient: what leaves the top of a vertical wire.</summary>
    [Theory]
    [InlineData(0.3, 0)]
    [InlineData(2, 0)]
    [InlineData(2, 3000)]
    public void StateAt_OfAVerticalWire_CarriesOffWhatTheCorrelationSaysAtTheTop(double height, double altitude)
    {
        Surroundings air = Air(30, altitude).WithVerticalHeight(Length.FromMeters(height));
        HeatBalanceState state = HeatBalance.StateAt(Insulated, air, A(20))!;
        AirProperties film = AirProperties.At(state.FilmTemperature, StandardAtmosphere.PressureAt(Length.FromMeters(altitude)));
        double rise = state.SurfaceTemperature.DegreesCelsius - 30;
        double h = VerticalConvection.CoefficientAtTop(film, TemperatureDelta.FromKelvins(rise), Insulated.OuterDiameter, Length.FromMeters(height)).WattsPerSquareMeterKelvin;
        Assert.Equal(1, state.Convection.WattsPerMeter / (h * Math.PI * 2.828e-3 * rise), 9);

        // The mean over the height is more than the top has, by a third of the part of a plate.
        double ratio = height / 2.828e-3, rayleigh = NaturalConvection.RayleighNumber(film, TemperatureDelta.FromKelvins(rise), Insulated.OuterDiameter) * ratio * ratio * ratio;
        Assert.True(VerticalConvection.LeFevreEde(rayleigh, film.PrandtlNumber, ratio) / ratio > h * 2.828e-3 / film.ThermalConductivity.WattsPerMeterKelvin);
    }

    [Fact]
    public void CurrentFor_OfAVerticalWire_IsLessThanLevelAndFallsWithHeight()
    {
        Temperature limit = Temperature.FromDegreesCelsius(70);
        double level = HeatBalance.CurrentFor(Insulated, Air(30), limit).Amperes, before = level;
        foreach (double height in new[] { 0.05, 0.2, 1, 3, 20 })
        {
            double amperes = HeatBalance.CurrentFor(Insulated, Air(30).WithVerticalHeight(Length.FromMeters(height)), limit).Amperes;
            Assert.True(amperes < before, $"{amperes} A at {height} m, {before} A before");
            before = amperes;
        }

        // Radiation stays: no more than some 30 % of the current is lost.
        Assert.InRange(before / level, 0.7, 0.9);
        Assert.Equal(level, HeatBalance.CurrentFor(Insulated, Air(30).WithVerticalHeight(Length.FromMeters(1)).WithVerticalHeight(null), limit).Amperes);
    }

    // Current and temperature are inverses, which Newton's method only finds with the right slope.
    [Theory]
    [InlineData(0.05)]
    [InlineData(2)]
    public void TemperatureAt_OfTheCurrentForIt_IsBack(double height)
    {
        Surroundings air = Air(-20).WithVerticalHeight(Length.FromMeters(height));
        foreach (double celsius in new[] { -15.0, 20, 70, 150, 400 })
        {
            ElectricCurrent current = HeatBalance.CurrentFor(Insulated, air, Temperature.FromDegreesCelsius(celsius));
            Assert.Equal(celsius, HeatBalance.TemperatureAt(Insulated, air, current).DegreesCelsius, 6);
        }
    }

    [Theory]
    [InlineData(12)]
    [InlineData(120)]
    [InlineData(-40)]
    public void Slope_IsThatOfTheLoss(double difference)
    {
        double rayleighAt(double d)
        {
            double film = 300 + (0.5 * d);
            return 2e10 * Math.Abs(d) * AirKernel.SpecificHeat(film, out _) / (film * film * film * AirKernel.DynamicViscosity(film, out _) * AirKernel.ThermalConductivity(film, out _)) * 1e-17;
        }

        double at(double d) => VerticalKernel.Loss(400, rayleighAt(d), d, 300 + (0.5 * d), out _);
        _ = VerticalKernel.Loss(400, rayleighAt(difference), difference, 300 + (0.5 * difference), out double slope);
        Assert.Equal(1, (at(difference + 1e-3) - at(difference - 1e-3)) / 2e-3 / slope, 6);
    }
}

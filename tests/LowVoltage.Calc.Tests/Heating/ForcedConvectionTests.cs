using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class ForcedConvectionTests
{
    private static readonly Wire Insulated = Solid(1.628, 0.6);

    /// <summary>
    /// Two worked examples of heat-transfer textbooks, from memory. Incropera and others, Fundamentals of Heat and Mass Transfer, example 7.4: 12.7 mm, 10 m/s, ν = 20.92e-6 m²/s,
    /// Pr = 0.70, k = 0.030: Re = 6071, Nu = 40.6, h = 96.0. Çengel, Heat and Mass Transfer, steam pipe in windy air: 0.1 m, 8 m/s, ν = 1.896e-5 m²/s, Pr = 0.7202: Re = 4.219e4, Nu = 124.
    /// </summary>
    [Theory]
    [InlineData(12.7e-3, 10, 20.92e-6, 0.70, 6071, 0.5, 40.6, 0.05)]
    [InlineData(0.1, 8, 1.896e-5, 0.7202, 42_190, 5, 124, 0.5)]
    public void ChurchillBernstein_TextbookExamples_AreMet(double diameter, double speed, double viscosity, double prandtl, double reynolds, double near, double nusselt, double half)
    {
        double re = speed * diameter / viscosity;
        Assert.InRange(re, reynolds - near, reynolds + near);
        Assert.InRange(ForcedConvection.ChurchillBernstein(re, prandtl), nusselt - half, nusselt + half);
    }

    /// <summary>The first example with our own air of 350 K and sea level: its properties differ by a per cent or two.</summary>
    [Fact]
    public void Coefficient_TextbookExampleWithOurAir_IsWithinTwoPercent()
    {
        AirProperties film = AirProperties.At(Temperature.FromKelvins(350), Pressure.FromAtmospheres(1));
        Length diameter = Length.FromMillimeters(12.7);
        double h = ForcedConvection.Coefficient(film, Speed.FromMetersPerSecond(10), diameter).WattsPerSquareMeterKelvin;
        Assert.InRange(h / 96.0, 0.98, 1.02);
        Assert.InRange(ForcedConvection.ReynoldsNumber(film, Speed.FromMetersPerSecond(10), diameter) / 6071, 0.97, 1.03);
    }

    [Fact]
    public void ChurchillBernstein_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("reynolds", () => ForcedConvection.ChurchillBernstein(0.28, 0.7));
        Assert.InRange(ForcedConvection.ChurchillBernstein(0.3, 0.7), 0.3, 0.7);
        Assert.InRange(ForcedConvection.ChurchillBernstein(1e7, 0.7), 5000, 20_000);
        Assert.Throws<ArgumentOutOfRangeException>("reynolds", () => ForcedConvection.ChurchillBernstein(1.001e7, 0.7));
        Assert.Throws<ArgumentOutOfRangeException>("prandtl", () => ForcedConvection.ChurchillBernstein(100, 0));
        Assert.Throws<ArgumentNullException>("film", () => ForcedConvection.ReynoldsNumber(null!, Speed.Zero, Length.FromMillimeters(1)));
        Assert.NotEmpty(ForcedConvection.ChurchillBernsteinReference.Locator);
    }

    /// <summary>The balance written out with the public correlation: convection of a wire in a wind of 3 m/s.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3000)]
    public void StateAt_InAWind_CarriesOffWhatTheCorrelationSays(double meters)
    {
        Surroundings wind = Wind(3, meters);
        HeatBalanceState state = HeatBalance.StateAt(Insulated, wind, A(40))!;
        AirProperties film = AirProperties.At(state.FilmTemperature, StandardAtmosphere.PressureAt(Length.FromMeters(meters)));
        double h = ForcedConvection.Coefficient(film, wind.AirSpeed, Insulated.OuterDiameter).WattsPerSquareMeterKelvin;
        double expected = h * Math.PI * 2.828e-3 * (state.SurfaceTemperature.DegreesCelsius - 30);
        Assert.Equal(1, state.Convection.WattsPerMeter / expected, 9);
        Assert.True(state.IsForced && state.IsWithinCorrelation);
    }

    [Fact]
    public void CurrentFor_Wind_NeverLowersAndRisesWithTheSpeed()
    {
        double before = HeatBalance.CurrentFor(Insulated, Air(30), C(90)).Amperes;
        bool forced = false;
        foreach (double speed in new[] { 0.03, 0.05, 0.1, 0.2, 0.5, 1, 3, 10, 30, 100 })
        {
            double now = HeatBalance.CurrentFor(Insulated, Wind(speed), C(90)).Amperes;
            HeatBalanceState state = HeatBalance.StateFor(Insulated, Wind(speed), C(90))!;
            Assert.True(state.IsForced ? now > before : now.Equals(before), $"{speed} m/s: {now} after {before}");
            Assert.True(!forced || state.IsForced, "once the stream counts it counts at any higher speed");
            Assert.Equal(90, HeatBalance.TemperatureAt(Insulated, Wind(speed), A(now)).DegreesCelsius, 6);
            forced = state.IsForced;
            before = now;
        }

        Assert.True(forced);
        Assert.False(HeatBalance.StateFor(Insulated, Wind(0.03), C(90))!.IsForced);
    }

    /// <summary>Newton's method needs the slope of the loss: against a difference quotient, in a stream and where natural convection takes over.</summary>
    [Theory]
    [InlineData(0.1, 200)]
    [InlineData(0.1, 40)]
    [InlineData(5, 200)]
    [InlineData(5, 31)]
    public void Loss_InAStream_HasTheSlopeOfItsDifferences(double speed, double surface)
    {
        HeatBalanceKernel kernel = HeatBalanceKernel.For(Insulated, Wind(speed));
        _ = kernel.Loss(surface, out double slope);
        double quotient = (kernel.Loss(surface + 1e-3, out _) - kernel.Loss(surface - 1e-3, out _)) / 2e-3;
        Assert.Equal(1, slope / quotient, 6);
    }

    [Fact]
    public void CurrentFor_AStreamTooSlowForTheCorrelation_IsRefused()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>("surroundings", () => HeatBalance.CurrentFor(Insulated, Wind(0.001), C(90)));
        Assert.Contains("across 2.828 mm", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("AirSpeed", () => Wind(-1));
        Assert.Throws<ArgumentOutOfRangeException>("AirSpeed", () => Wind(100.1));
    }

    [Fact]
    public void CurrentFor_GivenCoefficient_TheSpeedDoesNothing()
    {
        Surroundings given = new() { Ambient = C(30), AirSpeed = Speed.FromMetersPerSecond(5), SurfaceCoefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(20) };
        Assert.Equal(HeatBalance.CurrentFor(Insulated, Given(30, 20), C(70)), HeatBalance.CurrentFor(Insulated, given, C(70)));
        Assert.False(HeatBalance.StateAt(Insulated, given, A(5))!.IsForced);
    }

    private static Surroundings Wind(double speed, double meters = 0) => new() { Ambient = C(30), Altitude = Length.FromMeters(meters), AirSpeed = Speed.FromMetersPerSecond(speed) };
}

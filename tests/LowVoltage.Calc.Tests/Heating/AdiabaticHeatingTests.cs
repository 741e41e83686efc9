using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Heating;

public class AdiabaticHeatingTests
{
    private static readonly ConductorMaterial Copper = ConductorMaterial.Copper;
    private static readonly Conductor Wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);

    [Fact]
    public void FinalTemperature_HalfTheTimeToTheLimit_FollowsTheEquation()
    {
        // By hand: K² = 3.45e6·254.5·1e-12·58e6 = 50 925.45; (500 A/10 mm²)²·1 s/K² = 0.0490914; 264.5·e^0.0490914 − 234.5 = 43.3086 °C.
        Temperature hot = AdiabaticHeating.FinalTemperature(
            Copper, Area.FromSquareMillimeters(10), ElectricCurrent.FromAmperes(500), Duration.FromSeconds(1), C(30));
        Assert.InRange(hot.DegreesCelsius, 43.3085, 43.3088);
    }

    [Fact]
    public void WireForms_UseTheEffectiveSectionOfTheConductor()
    {
        // A conductor of 2 % more resistance than its metal has by itself: less effective section, hotter.
        Conductor stranded = new()
        {
            Name = "test", Reference = new() { Title = "test", Kind = References.ReferenceKind.CommonPractice },
            AreaSquareMillimeters = 2, OhmsPerMeter20 = Copper.OhmMeters20 * 1e6 / 2 * 1.02,
        };
        Area effective = Area.FromSquareMillimeters(2 / 1.02);
        ElectricCurrent current = A(200);
        Assert.Equal(
            AdiabaticHeating.FinalTemperature(Copper, effective, current, S(1), C(20)).DegreesCelsius,
            AdiabaticHeating.FinalTemperature(stranded, current, S(1), C(20)).DegreesCelsius, 9);
        Assert.Equal(
            AdiabaticHeating.TimeToReach(Copper, effective, current, C(20), C(160)).Seconds,
            AdiabaticHeating.TimeToReach(stranded, current, C(20), C(160)).Seconds, 12);
        Assert.Equal(
            AdiabaticHeating.CurrentFor(Copper, effective, S(1), C(20), C(160)).Amperes,
            AdiabaticHeating.CurrentFor(stranded, S(1), C(20), C(160)).Amperes, 9);
        Assert.Equal(
            AdiabaticHeating.WithstandJouleIntegral(Copper, effective, C(20), C(160)).AmpereSquaredSeconds,
            AdiabaticHeating.WithstandJouleIntegral(stranded, C(20), C(160)).AmpereSquaredSeconds, 6);
        Assert.True(AdiabaticHeating.TryFinalTemperature(stranded, current, S(1), C(20), out Temperature final));
        Assert.Equal(AdiabaticHeating.FinalTemperature(stranded, current, S(1), C(20)).DegreesCelsius, final.DegreesCelsius);
    }

    [Fact]
    public void FinalTemperature_BeyondMelting_SaysWhenItMelts()
    {
        ConductorMeltsException melts = Assert.Throws<ConductorMeltsException>(() => AdiabaticHeating.FinalTemperature(Wire, A(2000), S(5), C(20)));
        Assert.Equal(1083, melts.MeltingPoint.DegreesCelsius);
        Assert.Equal(AdiabaticHeating.TimeToReach(Wire, A(2000), C(20), C(1083)).Seconds, melts.TimeToMelt.Seconds, 12);
        Assert.Contains("melts", melts.Message, StringComparison.Ordinal);
        Assert.Contains("2000 A", melts.Message, StringComparison.Ordinal);
        Assert.Contains("copper", melts.Message, StringComparison.Ordinal);
        Assert.False(AdiabaticHeating.TryFinalTemperature(Wire, A(2000), S(5), C(20), out Temperature final));
        Assert.Equal(1083, final.DegreesCelsius);
        Assert.False(AdiabaticHeating.TryFinalTemperature(Copper, Wire.Area, A(1e7), S(5), C(20), out _));
    }

    [Fact]
    public void FinalTemperature_AtTheMeltingPointItself_IsGiven()
    {
        ElectricCurrent current = AdiabaticHeating.CurrentFor(Wire, S(1), C(20), C(1083));
        Assert.Equal(1083, AdiabaticHeating.FinalTemperature(Wire, current, S(1), C(20)).DegreesCelsius, 9);
        Assert.Throws<ConductorMeltsException>(() => AdiabaticHeating.FinalTemperature(Wire, current * 1.0001, S(1), C(20)));
    }

    [Fact]
    public void Duration_UpToFiveSecondsOnly()
    {
        Assert.Equal(5, AdiabaticHeating.LongestDuration.Seconds);
        _ = AdiabaticHeating.FinalTemperature(Wire, A(100), S(5), C(20));
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            "duration", () => AdiabaticHeating.FinalTemperature(Wire, A(100), S(5.001), C(20)));
        Assert.Contains("5 s", refused.Message, StringComparison.Ordinal);
        Assert.Contains("5.001 s", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => AdiabaticHeating.CurrentFor(Wire, S(6), C(20), C(160)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => AdiabaticHeating.AreaFor(Copper, A(100), S(6), C(20), C(160)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => AdiabaticHeating.FinalTemperature(Wire, A(100), S(0), C(20)));
    }

    [Fact]
    public void TimeToReach_BeyondFiveSeconds_IsStillGiven() =>
        Assert.True(AdiabaticHeating.TimeToReach(Wire, A(50), C(20), C(160)) > AdiabaticHeating.LongestDuration);

    [Theory]
    [InlineData(20, 20)]
    [InlineData(20, 10)]
    [InlineData(20, 1083.5)]
    public void Limit_NotAboveTheInitialOrAboveMelting_IsRefused(double initial, double end)
    {
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.TimeToReach(Wire, A(100), C(initial), C(end)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.CurrentFor(Wire, S(1), C(initial), C(end)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.AreaFor(Copper, A(100), S(1), C(initial), C(end)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.KFactor(Copper, C(initial), C(end)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.WithstandJouleIntegral(Wire, C(initial), C(end)));
    }

    [Fact]
    public void Arguments_OutOfRange_NameTheParameter()
    {
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => AdiabaticHeating.FinalTemperature(Wire, A(100), S(1), C(-101)));
        _ = AdiabaticHeating.FinalTemperature(Wire, A(100), S(1), C(-100));
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => AdiabaticHeating.TimeToReach(Wire, A(100), C(-300), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => AdiabaticHeating.FinalTemperature(Wire, A(0), S(1), C(20)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => AdiabaticHeating.TimeToReach(Wire, A(-1), C(20), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => AdiabaticHeating.AreaFor(Copper, A(0), S(1), C(20), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => AdiabaticHeating.TimeToReach(Copper, Area.FromSquareMillimeters(0), A(1), C(20), C(100)));
        Assert.Throws<ArgumentNullException>("wire", () => AdiabaticHeating.FinalTemperature(null!, A(100), S(1), C(20)));
        Assert.Throws<ArgumentNullException>("material", () => AdiabaticHeating.MaterialConstant(null!));
        Assert.Throws<ArgumentNullException>("material", () => AdiabaticHeating.AreaFor(null!, A(1), S(1), C(20), C(100)));
        Assert.Throws<ArgumentNullException>("material", () => AdiabaticHeating.TimeToReach(null!, Wire.Area, A(1), C(20), C(100)));
    }

    [Fact]
    public void FinalTemperature_OfAThickConductorAndASmallCurrent_KeepsTheSmallRise()
    {
        // Rise = (θi + β)·I²t/(K·S)² when it is small: 254.5·(1/100)²/50 925.45 = 4.9975e-7 K.
        Area thick = Area.FromSquareMillimeters(100);
        double rise = AdiabaticKernel.FinalCelsius(AdiabaticKernel.ConstantSquared(Copper), 100, 1, 20, 234.5) - 20;
        Assert.InRange(rise, 4.997e-7, 4.998e-7);
        Assert.True(AdiabaticHeating.FinalTemperature(Copper, thick, A(1), S(1), C(20)).DegreesCelsius > 20);
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}

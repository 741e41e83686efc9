using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>
/// Worked examples of FAA AC 43.13-1B paragraph 11-69 (from memory, and a variant of FAA-H-8083-31 chapter 9) and the one of page 11-27 (read).
/// The source rounds every step to one decimal, so the test does too.
/// </summary>
public class FaaParagraph1169Tests
{
    private static double Rounded(double value) => Math.Round(value, 1);

    [Theory]
    [InlineData(60_000, 8.8, 6.6, 253, 50.6)]
    [InlineData(35_000, 9.6, 7.2, 276, 55.2)]
    public void Example1_SevenOf35WiresInUse_GivesThePrintedTotals(double feet, double printed20, double printed22, double printedTotal, double printedLimit)
    {
        // Ten wires of size 20 and 25 of size 22, 200 °C wire in 60 °C; 7 of 35 wires loaded is 20 %.
        double bundle = FaaBundle.Factor(35, Percent(100 * 7 / 35.0)).Value;
        double altitude = FaaAltitude.Factor(Feet(feet)).Value;
        double size20 = Rounded(Rounded(FaaFreeAir.Ambient60.Rating(Aircraft(20), C(200)).Current.Amperes * bundle) * altitude);
        double size22 = Rounded(Rounded(FaaFreeAir.Ambient60.Rating(Aircraft(22), C(200)).Current.Amperes * bundle) * altitude);
        Assert.Equal(printed20, size20, 9);
        Assert.Equal(printed22, size22, 9);
        Assert.Equal(printedTotal, (10 * size20) + (25 * size22), 9);
        Assert.Equal(printedLimit, 0.2 * ((10 * size20) + (25 * size22)), 9);
    }

    [Fact]
    public void Example1_WithoutRoundingBetweenSteps_StaysWithinTheRoundingOfTheSource()
    {
        DeratedAmpacity derated = DeratedAmpacity.From(FaaFreeAir.Ambient60.Rating(Aircraft(20), C(200)))
            .With(FaaBundle.Factor(35, Percent(20)))
            .With(FaaAltitude.Factor(Feet(60_000)));

        // 8.8 A printed: half a unit of its own rounding and half a unit of the step before, times the factor 0.79.
        Assert.InRange(derated.Current.Amperes, 8.8 - 0.05 - (0.05 * 0.79), 8.8 + 0.05 + (0.05 * 0.79));
        Assert.Equal(21.5 * 0.52 * 0.79, derated.Current.Amperes, 9);
        Assert.Empty(derated.Remarks);
    }

    [Fact]
    public void Example2_TwelveWiresAllLoaded_GivesThePrintedCurrent()
    {
        double inBundle = Rounded(FaaFreeAir.Ambient60.Rating(Aircraft(12), C(200)).Current.Amperes * FaaBundle.Factor(12, Percent(100)).Value);
        Assert.Equal(26.2, inBundle, 9);
        Assert.Equal(23.8, Rounded(inBundle * FaaAltitude.Factor(Feet(20_000)).Value), 9);
    }

    [Fact]
    public void Page1127_EightWiresAtSixtyPercent_GivesThePrintedCurrentWithinTheReadingOfTheCurve()
    {
        // 47 A · 0.6 · 0.91 = 26 A printed; the digitised curve has 0.595 for the 0.6, one step of the reading (0.005) lower.
        DeratedAmpacity derated = DeratedAmpacity.From(FaaFreeAir.Ambient50.Rating(Aircraft(14), C(200)))
            .With(FaaBundle.Factor(8, Percent(60)))
            .With(FaaAltitude.Factor(Feet(20_000)));
        Assert.InRange(derated.Current.Amperes, 26 - 0.5 - (47 * 0.005 * 0.91), 26 + 0.5);
        Assert.Equal(26, Math.Round(47 * 0.6 * FaaAltitude.Factor(Feet(20_000)).Value));
    }
}

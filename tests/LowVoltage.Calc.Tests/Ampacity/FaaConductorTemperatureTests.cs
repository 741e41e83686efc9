using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

public class FaaConductorTemperatureTests
{
    private static double Celsius(double ambient, double rated, double amperes, double most) =>
        FaaConductorTemperature.Estimate(C(ambient), C(rated), ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(most)).DegreesCelsius;

    // By hand: 50 + 150 · √(20/26) = 181.56; the root of a quarter is a half.
    [Theory]
    [InlineData(50, 200, 20, 26, 181.56)]
    [InlineData(20, 120, 5, 20, 70)]
    [InlineData(20, 120, 0, 20, 20)]
    [InlineData(20, 120, 20, 20, 120)]
    public void Estimate_IsTheRootRule(double ambient, double rated, double amperes, double most, double expected) =>
        Assert.Equal(expected, Celsius(ambient, rated, amperes, most), 0.005);

    [Theory]
    [InlineData(20, 20, 1, 2, "rated")]
    [InlineData(20, 400, 1, 2, "rated")]
    [InlineData(-80, 100, 1, 2, "ambient")]
    [InlineData(20, 100, 3, 2, "current")]
    [InlineData(20, 100, -1, 2, "current")]
    [InlineData(20, 100, 1, 0, "ratedCurrent")]
    public void Estimate_OutsideItsRange_IsRefusedByName(double ambient, double rated, double amperes, double most, string name) =>
        Assert.Equal(name, Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Celsius(ambient, rated, amperes, most)).ParamName);
}

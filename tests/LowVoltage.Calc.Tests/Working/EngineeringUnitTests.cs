using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

public class EngineeringUnitTests
{
    [Theory]
    [InlineData(0.0456, "Ω", 45.6, "mΩ")]
    [InlineData(-0.0456, "V", -45.6, "mV")]
    [InlineData(0.013282, "m", 13.282, "mm")]
    [InlineData(0.009093, "Ω/m", 9.093, "mΩ/m")]
    [InlineData(0.0000256, "s", 25.6, "µs")]
    [InlineData(0.0001, "A", 0.1, "mA")]
    [InlineData(0.36, "V", 0.36, "V")]
    [InlineData(0.1, "W", 0.1, "W")]
    [InlineData(4000, "A", 4000, "A")]
    [InlineData(0, "V", 0, "V")]
    [InlineData(0.05, "mm²", 0.05, "mm²")]
    [InlineData(0.05, "", 0.05, "")]
    public void Of_ScalesWhatIsBelowATenth(double value, string unit, double expected, string expectedUnit) =>
        Assert.Equal((expected, expectedUnit), EngineeringUnit.Of(value, unit));
}

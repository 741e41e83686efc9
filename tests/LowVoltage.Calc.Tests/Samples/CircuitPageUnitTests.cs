using System.Globalization;
using CircuitPage;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Lengths and temperatures of the page in both systems of units. 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959); °F = °C × 1.8 + 32 by definition.</summary>
public class CircuitPageUnitTests
{
    [Theory]
    [InlineData("18", "5.4864")]
    [InlineData("0.5", "0.1524")]
    [InlineData("1000", "304.8")]
    public void Convert_OfFeet_IsTheExactLength(string feet, string meters) => Assert.Equal(meters, UnitText.Convert(feet, Measure.Length, PageUnits.Us, PageUnits.Metric));

    [Theory]
    [InlineData("50", "122")]
    [InlineData("-40", "-40")]
    [InlineData("37,5", "99.5")]
    public void Convert_OfCelsius_IsTheExactTemperature(string celsius, string fahrenheit) => Assert.Equal(fahrenheit, UnitText.Convert(celsius, Measure.Temperature, PageUnits.Metric, PageUnits.Us));

    [Property(MaxTest = 500)]
    public Property Convert_ThereAndBack_IsWhatWasTyped() => Prop.ForAll(
        Gen.Choose(1, 999_999).ToArbitrary(),
        Gen.Choose(-6000, 25_000).ToArbitrary(),
        (millimeters, hundredths) =>
        {
            AssertComesBack(millimeters / 1000m, Measure.Length, PageUnits.Metric, PageUnits.Us);
            AssertComesBack(millimeters / 100m, Measure.Length, PageUnits.Us, PageUnits.Metric);
            AssertComesBack(hundredths / 100m, Measure.Temperature, PageUnits.Metric, PageUnits.Us);
            AssertComesBack(hundredths / 100m, Measure.Temperature, PageUnits.Us, PageUnits.Metric);
        });

    [Fact]
    public void Convert_OfWhatIsNoNumber_LeavesItAlone()
    {
        Assert.Equal("3 m", UnitText.Convert("3 m", Measure.Length, PageUnits.Metric, PageUnits.Us));
        Assert.Equal("", UnitText.Convert("", Measure.Length, PageUnits.Metric, PageUnits.Us));
        Assert.Equal("12", UnitText.Convert("12", Measure.Same, PageUnits.Metric, PageUnits.Us));
    }

    [Theory]
    [InlineData(5.4999, "5.499")]
    [InlineData(0.123456, "0.1234")]
    [InlineData(98765.4, "9.876E+04")]
    [InlineData(-12.341, "-12.35")]
    [InlineData(0, "0")]
    public void ShortDown_NeverShowsMore(double value, string shown)
    {
        Assert.Equal(shown, NumberWords.ShortDown(value));
        Assert.True(double.Parse(shown, CultureInfo.InvariantCulture) <= value);
    }

    private static void AssertComesBack(decimal number, Measure measure, PageUnits from, PageUnits to)
    {
        string text = number.ToString("0.######", CultureInfo.InvariantCulture);
        Assert.Equal(text, UnitText.Convert(UnitText.Convert(text, measure, from, to), measure, to, from));
    }
}

using System.Globalization;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Quantities;

/// <summary>Order and equality of our own quantities are those of their numbers, and their text has four digits.</summary>
public class OrderTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 1)]
    [InlineData(2, 2)]
    [InlineData(0, 1e-9)]
    public void JouleIntegral_Operators_AreThoseOfTheNumbers(double x, double y)
    {
        JouleIntegral left = JouleIntegral.FromAmpereSquaredSeconds(x), right = JouleIntegral.FromAmpereSquaredSeconds(y);
        Assert.Equal([(x < y), (x > y), (x <= y), (x >= y), x.Equals(y), !x.Equals(y)], new[] { (left < right), (left > right), (left <= right), (left >= right), (left == right), (left != right) });
        Assert.Equal(x.CompareTo(y), left.CompareTo(right));
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 1)]
    [InlineData(2, 2)]
    [InlineData(0, 1e-9)]
    public void LinearResistance_Operators_AreThoseOfTheNumbers(double x, double y)
    {
        LinearResistance left = LinearResistance.FromOhmsPerMeter(x), right = LinearResistance.FromOhmsPerMeter(y);
        Assert.Equal([(x < y), (x > y), (x <= y), (x >= y), x.Equals(y), !x.Equals(y)], new[] { (left < right), (left > right), (left <= right), (left >= right), (left == right), (left != right) });
        Assert.Equal(x.CompareTo(y), left.CompareTo(right));
    }

    [Fact]
    public void Text_HasFourDigitsInTheCultureAskedFor()
    {
        CultureInfo german = CultureInfo.GetCultureInfo("de-DE");
        JouleIntegral joules = JouleIntegral.FromAmpereSquaredSeconds(123.456);
        LinearResistance resistance = LinearResistance.FromOhmsPerKilometer(8.28555);

        Assert.StartsWith("123.5 ", joules.ToString(null, CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.StartsWith("123,5 ", joules.ToString(null, german), StringComparison.Ordinal);
        Assert.StartsWith("8.286 ", resistance.ToString(null, CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.StartsWith("8,286 ", resistance.ToString(null, german), StringComparison.Ordinal);
    }
}

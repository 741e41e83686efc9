using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>33 CFR 183.455(c): below 50 V up to 150 %; at 50 V or more 100 %, or the next larger standard rating up to 150 %.</summary>
public class OvercurrentRuleTests
{
    private static readonly ElectricCurrent[] Series = [A(10), A(40), A(15), A(20), A(25), A(30)];

    [Theory]
    [InlineData(20, 12, 30)]     // 150 % of 20 A is a rating
    [InlineData(19.9, 12, 25)]   // 29.85 A: the next below
    [InlineData(20, 49.9, 30)]
    [InlineData(20, 50, 20)]     // 100 % is a rating: nothing larger
    [InlineData(21, 50, 25)]     // the next larger standard rating, below 31.5 A
    [InlineData(31, 60, 40)]     // 46.5 A is the end
    [InlineData(6, 50, 0)]       // the next is 10 A, 150 % is 9 A
    [InlineData(7, 50, 10)]
    [InlineData(200, 50, 40)]
    [InlineData(6.6, 12, 0)]
    public void TryGreatestStandardRating_FollowsTheLaw(double allowed, double volts, double expected)
    {
        DeviceRatingLimit limit = Cfr33Part183OvercurrentRule.Limit(A(allowed), V(volts));
        Assert.Equal(expected > 0, limit.TryGreatestStandardRating(Series, out ElectricCurrent rating));
        Assert.Equal(expected, rating.Amperes);
    }

    [Fact]
    public void Limit_SaysBothBounds()
    {
        DeviceRatingLimit low = Cfr33Part183OvercurrentRule.Limit(A(20), V(12));
        Assert.Equal((30, 30), (low.Limit.Amperes, low.Greatest.Amperes));
        DeviceRatingLimit high = Cfr33Part183OvercurrentRule.Limit(A(20), V(50));
        Assert.Equal((20, 30), (high.Limit.Amperes, high.Greatest.Amperes));
        Assert.Contains("up to 20 A, next standard rating up to 30 A", high.ToString(), StringComparison.Ordinal);
        DeviceRatingLimit vessel = Cfr46OvercurrentRule.Limit(A(20));
        Assert.Equal((20, 30), (vessel.Limit.Amperes, vessel.Greatest.Amperes));
        Assert.Contains("46 CFR", vessel.Reference.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void TryGreatestStandardRating_NextLargerBeyondTheEnd_FallsBackToTheOneBelow()
    {
        // 28 A at 50 V: 20 A is below, 45 A is above 150 % (42 A).
        Assert.True(Cfr46OvercurrentRule.Limit(A(28)).TryGreatestStandardRating([A(20), A(45)], out ElectricCurrent rating));
        Assert.Equal(20, rating.Amperes);
    }

    [Fact]
    public void BadInput_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("allowedCurrent", () => Cfr33Part183OvercurrentRule.Limit(A(0), V(12)));
        Assert.Throws<ArgumentOutOfRangeException>("circuitVoltage", () => Cfr33Part183OvercurrentRule.Limit(A(10), V(-12)));
        Assert.Throws<ArgumentOutOfRangeException>("allowedCurrent", () => Cfr46OvercurrentRule.Limit(A(-1)));
        Assert.Throws<ArgumentNullException>("standardRatings", () => Cfr46OvercurrentRule.Limit(A(1)).TryGreatestStandardRating(null!, out _));
        Assert.Throws<ArgumentOutOfRangeException>("standardRatings", () => Cfr46OvercurrentRule.Limit(A(1)).TryGreatestStandardRating([A(0)], out _));
    }

    [Fact]
    public void Distances_AndSmallestSizes_AreThoseOfTheRegulation()
    {
        // 33 CFR 183.455(b): 7 and 40 inch; 183.460: 72 inch (from memory); 183.425(d), (e): 18 and 16 AWG.
        Assert.Equal(177.8, Cfr33Part183OvercurrentRule.FarthestFromSource.Millimeters, 9);
        Assert.Equal(1016, Cfr33Part183OvercurrentRule.FarthestFromSourceEnclosed.Millimeters, 9);
        Assert.Equal(1828.8, Cfr33Part183OvercurrentRule.FarthestFromBattery.Millimeters, 9);
        Assert.Equal(18, Cfr33Part183OvercurrentRule.SmallestInSheath.Number);
        Assert.Equal(16, Cfr33Part183OvercurrentRule.SmallestSeparate.Number);
        Assert.NotEqual(Cfr33Part183OvercurrentRule.BatteryDistanceReference.Kind, Cfr33Part183OvercurrentRule.SmallestSizeReference.Kind);
    }
}

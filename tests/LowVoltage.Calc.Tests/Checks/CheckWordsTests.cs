using LowVoltage.Calc.Checks;
using static LowVoltage.Calc.Tests.Checks.CheckResultTests;

namespace LowVoltage.Calc.Tests.Checks;

public class CheckWordsTests
{
    [Theory]
    [InlineData("VoltageDrop", 0.27, 0.36, true, "voltage drop 0.27 V, at most 0.36 V: pass")]
    [InlineData("LoadVoltage", 9.5, 10, false, "voltage at the load 9.5 V, at least 10 V: fail")]
    [InlineData("InrushHeld", 0.5, 1, true, "fuse holds at start, share of what it withstands 0.5, at most 1: pass")]
    [InlineData("ContinuousCurrent", 32.0001, 32, false, "continuous current 32.0001 A, at most 32 A: fail")]
    [InlineData("ContinuousCurrent", 32.00000000001, 32, false, "continuous current 32.00000000001 A, at most 32 A: fail")]
    [InlineData("ContinuousCurrent", 32.0000000000001, 32, false, "continuous current 32.0000000000001 A, at most 32 A: fail")]
    [InlineData("ContinuousCurrent", 31.9999, 32, true, "continuous current 32 A, at most 32 A: pass")]
    [InlineData("ContinuousCurrent", 32, 32, false, "continuous current 32 A, at most 32 A: fail")]
    public void Line_ShowsThatAFailureIsBeyondItsLimit(string id, double value, double limit, bool passes, string line)
    {
        Assert.Equal(line, CheckWords.Line(Of(id, value, limit, passes), named: false));
        Assert.Equal(line, Of(id, value, limit, passes).ToString());
    }

    [Fact]
    public void Line_NamesThePlaceWhereThereAreSeveral_AndSaysWhatIsMissing()
    {
        Assert.Equal("voltage drop 0.27 V, at most 0.36 V, way out and back: pass", CheckWords.Line(Of("VoltageDrop", 0.27, 0.36, true), named: true));
        CheckResult unknown = new(Kind("OvercurrentProtection"), double.NaN, double.NaN, CheckOutcome.Undetermined, Of("VoltageDrop", 1, 2, true).Reference, CheckSubject.Of(1).In(StretchName.Feed));
        Assert.Equal("protection against overcurrent, feed: undetermined, the wire is not rated here, and no fuse protects it", unknown.ToString());
        Assert.Equal("protection against overcurrent: undetermined, the wire is not rated here, and no fuse protects it", CheckWords.Line(unknown, named: false));
    }

    [Theory]
    [InlineData("VoltageDrop", 0.3276, 0.36, true, "Margin 9 %")]
    [InlineData("VoltageDrop", 0.31571, 0.36, true, "Margin 12.3 %")]
    [InlineData("VoltageDrop", 0.45, 0.36, false, "Beyond the limit by 25 %")]
    [InlineData("VoltageDrop", 0.36, 0.36, true, "Margin 0 %")]
    [InlineData("VoltageDrop", 0.359999, 0.36, true, "Margin under 0.01 %")]
    [InlineData("VoltageDrop", 3.96, 0.36, false, "Beyond the limit by 1000 %")]
    [InlineData("VoltageDrop", 3.97, 0.36, false, "More than ten times what is allowed")]
    [InlineData("FuseVoltage", 58, 5, true, "More than ten times what is needed")]
    [InlineData("ConductorTemperature", 41.25, 70, true, "Margin 28.8 K")]
    [InlineData("ConductorTemperature", 71, 70, false, "Beyond the limit by 1 K")]
    [InlineData("ConductorTemperature", 1083, 70, false, "Beyond the limit by 1013 K")]
    [InlineData("ConductorTemperature", 69.5, 70, true, "Margin 0.5 K")]
    [InlineData("ConductorTemperature", 0, 0.01, true, "Margin 0.01 K")]
    [InlineData("ConductorTemperature", 999.5, 0, false, "Beyond the limit by 1000 K")]
    [InlineData("ConductorTemperature", 999.4, 0, false, "Beyond the limit by 999 K")]
    public void Margin_IsInPerCentOrKelvins(string id, double value, double limit, bool passes, string words) => Assert.Equal(words, CheckWords.Margin(Of(id, value, limit, passes)));

    /// <summary>In a table: a minus beyond the limit, plain words beyond ten times of it.</summary>
    [Theory]
    [InlineData("VoltageDrop", 0.3276, 0.36, true, "9 %")]
    [InlineData("VoltageDrop", 0.45, 0.36, false, "−25 %")]
    [InlineData("VoltageDrop", 3.97, 0.36, false, "beyond 10 times")]
    [InlineData("FuseVoltage", 58, 5, true, "over 10 times")]
    [InlineData("ConductorTemperature", 71, 70, false, "−1 K")]
    [InlineData("ConductorTemperature", 1083, 70, false, "−1013 K")]
    public void ShortMargin_HasAMinusBeyondTheLimit(string id, double value, double limit, bool passes, string words) =>
        Assert.Equal(words, CheckWords.ShortMargin(Of(id, value, limit, passes)));

    [Fact]
    public void Line_OfAnAnswerThatWasNotMade_SaysSo()
    {
        CheckResult none = default;
        Assert.Equal(("not evaluated", "not evaluated", "", "", ""), (none.Name, none.ToString(), none.Where, none.Note, none.Unit));
        Assert.Equal("a check that was not made has no source", none.Reference.Title);
    }
}

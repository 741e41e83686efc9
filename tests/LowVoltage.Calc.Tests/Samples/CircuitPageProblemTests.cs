using CircuitPage;
using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Bad input is named at its field, with value, unit and what is accepted.</summary>
public class CircuitPageProblemTests
{
    [Theory]
    [InlineData("feed_m", "-2", "Must be greater than zero and at most 1E+07 m; it was -2 m.")]
    [InlineData("feed_m", "3 m", "Expected a number in m, such as 2.5; found '3 m'.")]
    [InlineData("feed_m", "", "Needed: a number in m, such as 2.5.")]
    [InlineData("feed_m", "1,500", "'1,500' can be read with and without a thousands separator: write it without one.")]
    [InlineData("ambient_degC", "400", "Must be from -60 °C to 250 °C; it was 400 °C.")]
    [InlineData("load_A", "0", "Must be greater than zero and at most 1E+")]
    [InlineData("loaded_conductors", "2.5", "Expected a whole number such as 2; found '2.5'.")]
    [InlineData("loaded_conductors", "0", "Must be from 1 to 1000; it was 0.")]
    [InlineData("drop_limit_percent", "200", "Must be from 0.001 % to 99.9 %; it was 200 %.")]
    [InlineData("supply_lead_mOhm", "x", "Expected a number in mΩ, such as 2.5; found 'x'.")]
    [InlineData("sizes", "2.5; 3.3", "'3.3' is not a size of road-vehicle plain copper: 0.13 mm²; 0.22 mm²; 0.35 mm²;")]
    public void Reading_OfABadField_NamesItThere(string key, string text, string words)
    {
        PageModel model = Page("practice=road vehicle&supply=lead-acid&cold_cranking_A=600&load=current&load_A=4&feed_m=3&ambient_degC=40");
        Assert.NotNull(model.Answer);
        model.Type(key, text);
        Assert.Null(model.Answer);
        Assert.Equal([key], model.Problems.Keys);
        Assert.StartsWith(words, model.Problems[key], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("feed_m", "-2", "Must be greater than zero and at most 3.28084E+07 ft; it was -2 ft.")]
    [InlineData("ambient_degC", "700", "Must be from -76 °F to 482 °F; it was 700 °F.")]
    public void Reading_InUsUnits_SaysTheRangeInThem(string key, string text, string words)
    {
        PageModel model = Page("units=us&practice=small craft&supply=lead-acid&cold_cranking_A=600&load=current&load_A=4&feed_ft=10&ambient_degF=104");
        Assert.NotNull(model.Answer);
        model.Type(key, text);
        Assert.Equal(words, model.Problems[key]);
    }

    [Theory]
    [InlineData("supply=voltage&supply_V=72", "supply_V")]
    [InlineData("supply=lead-acid&cold_cranking_A=600&blocks_in_series=5", "blocks_in_series")]
    [InlineData("supply=LiFePO4&cells_in_series=20&capacity_Ah=100", "cells_in_series")]
    public void Design_OfASourceBeyondSixtyVolts_IsRefusedAtTheSupply(string supply, string key)
    {
        PageModel model = Page($"practice=bench&{supply}&load=current&load_A=4&feed_m=3&ambient_degC=40");
        Assert.Null(model.Answer);
        Assert.Equal([key], model.Problems.Keys);
        Assert.Contains("accepted is a source of at most 60 V", model.Problems[key], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("&main_fuse=IEC 60269-1 gG", "main_fuse_A", "Needed: a number in A, such as 2.5.")]
    [InlineData("&main_fuse=IEC 60269-1 gG&main_fuse_A=61", "main_fuse_A", "IEC 60269-1 gG has 2, 4, 6, ")]
    [InlineData("&main_fuse=as marked&main_fuse_A=60&main_fuse_V=-1", "main_fuse_V", "Must be greater than zero")]
    [InlineData("&main_fuse=as marked&main_fuse_A=60&supply_lead_mOhm=5&main_fuse_lead_mOhm=9", "main_fuse_lead_mOhm", "")]
    [InlineData("&insulation=rated", "rated_degC", "Needed: a number in °C, such as 2.5.")]
    [InlineData("&drop_limit_percent=3&drop_limit_V=0.3", "drop_limit_V", "Expected one of")]
    public void Reading_OfFieldsThatDoNotFit_NamesOne(string more, string key, string words)
    {
        PageModel model = Page("practice=road vehicle&supply=lead-acid&cold_cranking_A=600&load=current&load_A=4&feed_m=3&ambient_degC=40" + more);
        Assert.Null(model.Answer);
        Assert.Equal([key], model.Problems.Keys);
        Assert.StartsWith(words, model.Problems[key], StringComparison.Ordinal);
    }

    [Fact]
    public void Examples_CoverEveryVerdict_AndUndeterminedIsNotCalledAPass()
    {
        Verdict[] verdicts = [.. Examples.All.Select(example => Page(example.Address).Answer!.Design.Verdict)];
        Assert.Equal([Verdict.Pass, Verdict.Pass, Verdict.Pass, Verdict.Pass, Verdict.Fail, Verdict.Undetermined], verdicts);
        Answer undetermined = Page(Examples.All[^1].Address).Answer!;
        Assert.Equal("Undetermined", undetermined.Verdict);
        Assert.DoesNotContain("pass", undetermined.Because + undetermined.Spoken, StringComparison.OrdinalIgnoreCase);
    }

    private static PageModel Page(string address)
    {
        PageModel model = new();
        model.Load(address);
        Assert.Empty(model.Remarks);
        return model;
    }
}

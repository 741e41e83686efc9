using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>A fuse carries less where the air around it is hot, where that is published.</summary>
/// <remarks>gG: 0.5 % per kelvin above 40 °C, to 80 °C. Loading 80 %: common practice, no published source.</remarks>
public class FuseSurroundingsTests
{
    private static FuseRating Gg(double amperes) => FuseSeries.IndustrialGg.SmallestAtLeast(A(amperes));

    [Theory]
    [InlineData(-20.0, 1.0)]
    [InlineData(40.0, 1.0)]
    [InlineData(50.0, 0.95)]
    [InlineData(60.0, 0.90)]
    [InlineData(80.0, 0.80)]
    public void Gg_IsReratedByTheAirAroundIt(double celsius, double factor)
    {
        CircuitDesign design = Verify(celsius, Gg(10));
        design.Is(CheckKind.FuseCarriesLoad, 10, 7.9 / 0.8 / factor, 1e-7);
        Assert.Equal(10 >= 7.9 / 0.8 / factor ? CheckOutcome.Pass : CheckOutcome.Fail, design.Of(CheckKind.FuseCarriesLoad).Outcome);
        Assert.Equal(factor < 1, design.Of(CheckKind.FuseCarriesLoad).Note.Contains($"the fuse carries {(100 * factor).ToString("G4", System.Globalization.CultureInfo.InvariantCulture)} % of its rating", StringComparison.Ordinal));
    }

    [Fact]
    public void Gg_AtSixtyDegrees_NeedsMoreThanTenAmperesForSevenPointNine()
    {
        // Once it passed: "carries the load, at least 9.875 A". 7.9/0.8/0.9 = 10.97 A.
        CircuitDesign ten = Verify(60, Gg(10));
        Assert.Equal("fuse carries the load 10 A, at least 10.97 A: fail", ten.Of(CheckKind.FuseCarriesLoad).ToString());
        Assert.Equal(CheckOutcome.Pass, Verify(60, Gg(12)).Of(CheckKind.FuseCarriesLoad).Outcome);
        Assert.Contains("The air around the fuse is counted at 60 °C. Its rating is lowered with that by: gG fuse-link.", ten.Assumptions);
        Assert.Contains(ten.Advice, line => line.StartsWith("The fuse is too small for the load", StringComparison.Ordinal));
    }

    [Fact]
    public void Gg_BeyondItsPublishedAir_IsUndetermined()
    {
        CheckResult check = Verify(85, Gg(25)).Of(CheckKind.FuseCarriesLoad);
        Assert.Equal((CheckOutcome.Undetermined, null), (check.Outcome, check.Value));
        Assert.Contains("does not cover 85 °C", check.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Gg_WhereNothingIsStated_StandsInTheAirOfTheWire()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(7.9)), feed: 1, ambient: 50), Class5(2.5), Gg(10), DesignRules.Bench);
        design.Is(CheckKind.FuseCarriesLoad, 10, 7.9 / 0.8 / 0.95, 1e-7);
        Assert.Contains(design.Assumptions, line => line.StartsWith("The air around the fuse is counted at 50 °C, that of the wire: it was not stated.", StringComparison.Ordinal));
    }

    [Fact]
    public void Blade_ForWhichNothingIsPublished_CountsInFullAndSaysSo()
    {
        CircuitDesign design = Verify(60, Blade(10));
        design.Is(CheckKind.FuseCarriesLoad, 10, 9.875, 1e-7);
        Assert.Contains(
            "The air around the fuse is counted at 60 °C. No re-rating with temperature is published for the 10 A blade fuse (ISO 8820-3 type C): its rating counts in full.", design.Assumptions);
    }

    [Fact]
    public void Design_WithSuchASeries_TakesTheNextRating()
    {
        // 12.6/0.8 = 15.75 A: 16 A; at 60 °C 17.5 A: 20 A.
        DesignRules rules = new(DesignRules.Bench) { Fuses = FuseSeries.IndustrialGg };
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(12.6)), feed: 1, drop: DropLimit.Percent(10));
        CircuitDesign cool = CircuitDesigner.Design(asked, rules), hot = CircuitDesigner.Design(new CircuitRequirements(asked) { FuseAmbient = C(60) }, rules);
        Assert.Equal((16, false), (cool.Fuse!.Current.Amperes, cool.IsNearest));
        Assert.Equal((20, false), (hot.Fuse!.Current.Amperes, hot.IsNearest));
        hot.Is(CheckKind.FuseCarriesLoad, 20, 12.6 / 0.8 / 0.9, 1e-7);
    }

    private static CircuitDesign Verify(double celsius, FuseRating fuse) => CircuitDesigner.Verify(
        new CircuitRequirements(Circuit(Load.ConstantCurrent(A(7.9)), feed: 1)) { FuseAmbient = C(celsius) }, Class5(2.5), fuse, DesignRules.Bench);
}

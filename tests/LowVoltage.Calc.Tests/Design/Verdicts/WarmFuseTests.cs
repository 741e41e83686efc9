using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A fuse in warm surroundings carries less: gG by 0.5 % for each kelvin above 40 °C (application guidance for fuse-links).</summary>
public class WarmFuseTests
{
    // 7.9 A need 9.875 A at a loading of 80 %; at 60 °C 9.875/0.9 = 10.97 A.
    [Theory]
    [InlineData(30, 10, CheckOutcome.Pass)]
    [InlineData(60, 10, CheckOutcome.Fail)]
    [InlineData(60, 12, CheckOutcome.Pass)]
    public void Verify_GgFuse_CarriesWhatItsAmbientLeaves(double celsius, double rating, CheckOutcome expected)
    {
        FuseRating fuse = FuseSeries.IndustrialGg.SmallestAtLeast(A(rating));
        Assert.Equal(rating, fuse.Current.Amperes);
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(7.9)), ambient: celsius, insulation: InsulationMaterial.CrossLinkedPolyethylene);
        Assert.Equal(expected, CircuitDesigner.Verify(asked, Class5(6), fuse, DesignRules.Bench).Of(CheckKind.FuseCarriesLoad).Outcome);
    }
}

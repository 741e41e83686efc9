using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class FuseVoltageCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Theory]
    [InlineData(31.999, CheckOutcome.Pass)]
    [InlineData(32, CheckOutcome.Pass)]
    [InlineData(32.001, CheckOutcome.Fail)]
    public void AroundTheRating_PassesAndFails(double volts, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(10), source: Source.BehindResistance(V(20), V(24), V(volts), MilliOhm(20), MilliOhm(40)));
        design.Is(CheckKind.FuseVoltage, 32, volts, 1e-12);
        CheckCase.Answers(design, CheckKind.FuseVoltage, expected, "fuse", "");
        Assert.Equal(SupplyLevel.Maximum, design.Of(CheckKind.FuseVoltage).Level);
        Assert.Equal(
            "Choose fuses rated for the highest voltage of the supply, not its nominal one: a pack of 16 lithium iron phosphate cells reaches 58.4 V on charge, more than a 58 V fuse.",
            CheckCase.AdviceOf(design, CheckKind.FuseVoltage));
        Assert.False(CheckCase.IsCured(design, CheckKind.FuseVoltage));
        Assert.Equal(expected == CheckOutcome.Fail, FuseVoltageCheck.IsBelow(design.State(), Blade(10)));
        Assert.Equal("a fuse is rated for at least the highest voltage of its circuit", design.Of(CheckKind.FuseVoltage).Reference.Title);
        CheckCase.Steps(design, CheckKind.FuseVoltage, "V_f ≥ V_max");
    }

    [Fact]
    public void RatingForAlternatingCurrent_IsUndetermined()
    {
        FuseRating fuse = FuseSeries.Iec60127Sheet1.SmallestAtLeast(A(6.3));
        Assert.Equal(250, fuse.VoltageRating!.Value.Volts);
        CircuitDesign design = CheckCase.Verify(Load, fuse);
        CheckCase.Answers(design, CheckKind.FuseVoltage, CheckOutcome.Undetermined, "fuse", $"no d.c. voltage rating is published for the {fuse}");
        Assert.Null(design.Of(CheckKind.FuseVoltage).Value);
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.FuseVoltage), StringComparison.Ordinal);
        Assert.False(FuseVoltageCheck.IsBelow(design.State(), fuse));
        CheckCase.Stated(design, CheckKind.FuseVoltage);
    }

    [Fact]
    public void NoRatingAtAll_IsUndetermined() => CheckCase.Answers(
        CheckCase.Verify(Load, CheckCase.Nameless), CheckKind.FuseVoltage, CheckOutcome.Undetermined, "fuse", "no d.c. voltage rating is published for the 10 A fuse (own list)");

    [Fact]
    public void NoFuse_IsNotAsked() => Assert.Null(CheckCase.Verify(Load, null).Find(CheckKind.FuseVoltage));
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class LoadVoltageCheckTests
{
    private static readonly double Lowest = 11.89 - (8 * (0.018 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(8)));

    [Theory]
    [InlineData(-1e-6, CheckOutcome.Pass)]
    [InlineData(1e-6, CheckOutcome.Fail)]
    public void AroundTheLimit_PassesAndFails(double more, CheckOutcome expected)
    {
        CircuitDesign design = Needs(Lowest * (1 + more));
        design.Is(CheckKind.LoadVoltage, Lowest, Lowest * (1 + more), 1e-9);
        CheckCase.Answers(design, CheckKind.LoadVoltage, expected, "load", "");
        Assert.Equal(SupplyLevel.Minimum, design.Of(CheckKind.LoadVoltage).Level);
        Assert.Equal(
            "The load gets too little voltage when the supply is at its lowest: use a larger wire, a shorter run, better joints, or a load that works at a lower voltage.",
            CheckCase.AdviceOf(design, CheckKind.LoadVoltage));
        Assert.True(CheckCase.IsCured(design, CheckKind.LoadVoltage));
        CheckCase.Steps(design, CheckKind.LoadVoltage, "U_b ≥ U_min");
    }

    [Fact]
    public void LoadWithoutAMinimum_IsNotAsked() => Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(8)), Blade(10)).Find(CheckKind.LoadVoltage));

    [Fact]
    public void LoadWithoutAnOperatingPoint_IsNotAsked() => Assert.Null(CheckCase.Verify(Load.ConstantPower(W(5000)).WithMinimumVoltage(V(5)), Blade(10)).Find(CheckKind.LoadVoltage));

    [Fact]
    public void SourceThatFallsToWhatTheLoadNeeds_NoWireCures()
    {
        CircuitDesign design = Needs(11.89);
        CheckCase.Answers(design, CheckKind.LoadVoltage, CheckOutcome.Fail, "load", "");
        Assert.Equal("The source itself falls to 11.89 V, so no wire can help: use another source, or a load that works at a lower voltage.", CheckCase.AdviceOf(design, CheckKind.LoadVoltage));
        Assert.False(CheckCase.IsCured(design, CheckKind.LoadVoltage));
        Assert.True(CheckCase.IsCured(Needs(11.88), CheckKind.LoadVoltage));
    }

    private static CircuitDesign Needs(double volts) => CheckCase.Verify(Load.ConstantCurrent(A(8)).WithMinimumVoltage(V(volts)), Blade(10));
}

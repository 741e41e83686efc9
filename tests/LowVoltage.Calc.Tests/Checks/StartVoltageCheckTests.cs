using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class StartVoltageCheckTests
{
    // 3 A running, 20 A while it starts, the wire as warm as in running.
    private static readonly double Path = CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(3);
    private static readonly double Lowest = 11.89 - (20 * (0.018 + Path));

    [Theory]
    [InlineData(-1e-6, CheckOutcome.Pass)]
    [InlineData(1e-6, CheckOutcome.Fail)]
    public void AroundTheLimit_PassesAndFails(double more, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Motor(20).WithMinimumVoltage(V(Lowest * (1 + more))), Blade(15));
        design.Is(CheckKind.StartVoltage, Lowest, Lowest * (1 + more), 1e-9);
        CheckCase.Answers(design, CheckKind.StartVoltage, expected, "load", "");
        Assert.Equal(SupplyLevel.Minimum, design.Of(CheckKind.StartVoltage).Level);
        Assert.Equal(
            "The load gets too little, or nothing, while it starts: a stronger source, a larger wire, a shorter run, or limit the starting current.",
            CheckCase.AdviceOf(design, CheckKind.StartVoltage));
        SolutionStep derived = CheckCase.Steps(design, CheckKind.StartVoltage, "U_start ≥ U_min").Steps.First(s => s.Symbol?.Spec == "U_start");
        Assert.Equal(
            (StepKind.Calculation, "lowest voltage at the load while it starts", "The lowest of the supply levels; the start is over before the wire warms up further."),
            (derived.Kind, derived.Sought, derived.Reason));
    }

    [Fact]
    public void MotorOfARatedVoltage_IsAResistanceAtStandstill()
    {
        CircuitDesign design = CheckCase.Verify(Load.Motor(A(3), A(20), A(20), Duration.FromSeconds(0.5), V(12)).WithMinimumVoltage(V(8)), Blade(15));
        double standstill = 12 / 20.0;
        design.Is(CheckKind.StartVoltage, 11.89 * standstill / (standstill + 0.018 + Path), 8, 1e-9);
        SolutionStep derived = CheckCase.Steps(design, CheckKind.StartVoltage, "U_start ≥ U_min").Steps.First(s => s.Symbol?.Spec == "U_start");
        Assert.Equal(
            (StepKind.Calculation, "The lowest of the supply levels; the start is over before the wire warms up further. At standstill the motor is a resistance."), (derived.Kind, derived.Reason));
    }

    [Fact]
    public void PackThatDisconnectsAtItsHighestVoltageOnly_Fails()
    {
        // At standstill 12 V/13 A = 0.923 Ω: at the nominal 12.8 V below 13.9 A, at the greatest 14.6 V through at most 40 mΩ above 15 A.
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(14.5));
        CircuitDesign design = CheckCase.Verify(Load.Motor(A(3), A(13), A(13), Duration.FromSeconds(0.5), V(12)), Blade(15), source: pack);
        Assert.True(12.8 / (12 / 13.0) < 14.5);
        Assert.True(14.6 / ((12 / 13.0) + 0.04) > 14.5);
        CheckCase.Answers(design, CheckKind.StartVoltage, CheckOutcome.Fail, "load", "the start takes more than the 14.5 A at which the source disconnects");
        Assert.Equal(SupplyLevel.Maximum, design.Of(CheckKind.StartVoltage).Level);
    }

    [Fact]
    public void LoadThatNeedsNoLeast_OrDoesNotStart_IsNotAsked()
    {
        Assert.Null(CheckCase.Verify(Motor(20), Blade(15)).Find(CheckKind.StartVoltage));
        Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(3)).WithMinimumVoltage(V(9)), Blade(15)).Find(CheckKind.StartVoltage));
    }

    [Fact]
    public void SupplyThatHoldsItsLimit_IsUndetermined()
    {
        Source supply = Source.CurrentLimited(V(12), A(10));
        CircuitDesign design = CheckCase.Verify(Motor(20), Blade(15), source: supply);
        CheckCase.Answers(
            design, CheckKind.StartVoltage, CheckOutcome.Undetermined, "load", "the supply holds 10 A and the start asks for more: whether the load starts is not known");
        Assert.Null(design.Of(CheckKind.StartVoltage).Value);
        CheckCase.Stated(design, CheckKind.StartVoltage);

        // At the limit itself the supply still gives what is asked.
        Assert.Null(CheckCase.Verify(Motor(10), Blade(15), source: supply).Find(CheckKind.StartVoltage));
    }

    [Fact]
    public void PackThatDisconnects_Fails()
    {
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(15));
        CircuitDesign design = CheckCase.Verify(Motor(16), Blade(15), source: pack);
        CheckCase.Answers(design, CheckKind.StartVoltage, CheckOutcome.Fail, "load", "the start takes more than the 15 A at which the source disconnects");
        Assert.Null(CheckCase.Verify(Motor(15), Blade(15), source: pack).Find(CheckKind.StartVoltage));
    }

    [Fact]
    public void MoreThanComesThrough_Fails() => CheckCase.Answers(
        CheckCase.Verify(Motor(1000), Blade(15)), CheckKind.StartVoltage, CheckOutcome.Fail, "load", "the start takes more than can come through this path");

    [Fact]
    public void SourceBelowWhatTheLoadNeeds_NoWireCures()
    {
        CircuitDesign design = CheckCase.Verify(Motor(20).WithMinimumVoltage(V(11.9)), Blade(15));
        Assert.StartsWith("The source itself falls to 11.89 V", CheckCase.AdviceOf(design, CheckKind.StartVoltage), StringComparison.Ordinal);
        Assert.False(CheckCase.IsCured(design, CheckKind.StartVoltage));
        Assert.True(CheckCase.IsCured(CheckCase.Verify(Motor(20).WithMinimumVoltage(V(11.8)), Blade(15)), CheckKind.StartVoltage));
    }

    private static Load Motor(double peak) => Load.Motor(A(3), A(peak), A(peak), Duration.FromSeconds(0.5));
}

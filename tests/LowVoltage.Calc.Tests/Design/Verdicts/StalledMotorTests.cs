using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>What a stalled motor draws is asked for, so it is judged.</summary>
public class StalledMotorTests
{
    [Fact]
    public void Verify_StallThatTheFuseNeedNeverOpen_DoesNotPass()
    {
        // 8 A is 107 % of 7.5 A: the fuse must carry 110 % for 100 hours.
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Motor(3, 7, 8)), RoadVehicle(2.5), Blade(7.5), DesignRules.RoadVehicle);
        Assert.NotEqual(Verdict.Pass, design.Verdict);
        Assert.NotEqual(CheckOutcome.Pass, design.Of(CheckKind.StalledMotor).Outcome);
    }

    [Fact]
    public void Verify_AnotherStall_AnswersAnother()
    {
        string small = Said(8), large = Said(60);
        Assert.NotEqual(small, large);
    }

    [Fact]
    public void Motor_PeakAboveItsStall_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Motor(3, 9, 8));

    private static string Said(double stall) =>
        string.Join("\n", CircuitDesigner.Verify(Circuit(Motor(3, 7, stall)), RoadVehicle(2.5), Blade(7.5), DesignRules.RoadVehicle).Checks.Select(check => check.ToString()));

    private static Load Motor(double running, double peak, double stall) => Load.Motor(A(running), A(peak), A(stall), Duration.FromSeconds(0.1));
}

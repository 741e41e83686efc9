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

    // 25 A through 1 mm² glows; a strip fuse has no published times. It passed with 154 °C of at most 115 °C.
    [Fact]
    public void Verify_StallThatBurnsTheWireBehindAFuseWithoutTimes_DoesNotPass()
    {
        Calc.Protection.FuseRating strip = Calc.Protection.FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(50));
        Assert.Null(strip.Curve);
        CheckResult thin = CircuitDesigner.Verify(Circuit(Motor(6, 18, 25)), RoadVehicle(1), strip, DesignRules.RoadVehicle).Of(CheckKind.StalledMotor);
        Assert.Equal(CheckOutcome.Undetermined, thin.Outcome);
        Assert.Contains("no operating times", thin.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Motor_PeakAboveItsStall_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Motor(3, 9, 8));

    private static string Said(double stall) =>
        string.Join("\n", CircuitDesigner.Verify(Circuit(Motor(3, 7, stall)), RoadVehicle(2.5), Blade(7.5), DesignRules.RoadVehicle).Checks.Select(check => check.ToString()));

    private static Load Motor(double running, double peak, double stall) => Load.Motor(A(running), A(peak), A(stall), Duration.FromSeconds(0.1));
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Design.Upstream;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>Of several devices before the fuse the worst answer counts: a failure before what is not known, that before what passes, of two alike the one nearer to its limit, of equals the first from the source.</summary>
public class SupplyCheckTests
{
    /// <summary>A supply of 32 V at most against the rated voltages of two breakers; 0 stands for one that is not known.</summary>
    [Theory]
    [InlineData(24, 16, CheckOutcome.Fail, "rear")]
    [InlineData(16, 24, CheckOutcome.Fail, "front")]
    [InlineData(80, 48, CheckOutcome.Pass, "rear")]
    [InlineData(48, 80, CheckOutcome.Pass, "front")]
    [InlineData(16, 16, CheckOutcome.Fail, "front")]
    [InlineData(80, 80, CheckOutcome.Pass, "front")]
    [InlineData(0, 0, CheckOutcome.Undetermined, "front")]
    [InlineData(32, 0, CheckOutcome.Undetermined, "rear")]
    [InlineData(0, 32, CheckOutcome.Undetermined, "front")]
    [InlineData(80, 0, CheckOutcome.Undetermined, "rear")]
    [InlineData(0, 16, CheckOutcome.Fail, "rear")]
    [InlineData(16, 0, CheckOutcome.Fail, "front")]
    public void Worst_OfTwoDevices_IsNamed_WhicheverComesFirst(double front, double rear, CheckOutcome outcome, string named)
    {
        CheckResult worst = Of(front, rear).Of(CheckKind.MainFuseVoltage);
        Assert.Equal((outcome, $"behind the 63 A {named} breaker (as stated)"), (worst.Outcome, worst.Where));
    }

    [Fact]
    public void Sheet_TellsOfEachDeviceWhatCanFlowBehindIt()
    {
        // 32 V behind 20 mΩ: 1600 A at the terminals, and 32 V/28 mΩ behind 8 mΩ of lead.
        SolutionStep[] told = [.. Of(80, 80).Explain().Steps.Where(s => s.Sought.EndsWith("breaker (as stated)", StringComparison.Ordinal))];
        Assert.Equal(["the 63 A front breaker (as stated)", "the 63 A rear breaker (as stated)"], told.Select(s => s.Sought));
        Assert.Equal(
            [
                "Up to 1600 A can flow into a short right behind it; the lead behind it is held to the same rules as a circuit, with this as its fuse.",
                "Up to 1143 A can flow into a short right behind it; the lead behind it is held to the same rules as a circuit, with this as its fuse.",
            ],
            told.Select(s => s.Reason));
    }

    [Fact]
    public void Sheet_OfASourceWithoutResistance_SaysSo()
    {
        CircuitRequirements asked = Mains.Fan(25, Source.Ideal(V(12))).WithUpstreamProtection(Breaker("front", 80, 0));
        SolutionStep told = Assert.Single(CircuitDesigner.Verify(asked, RoadVehicle(1.5), Blade(5), DesignRules.RoadVehicle).Explain().Steps, s => s.Sought == "the 63 A front breaker (as stated)");
        Assert.Equal("The source is given without internal resistance; the lead behind it is held to the same rules as a circuit, with this as its fuse.", told.Reason);
    }

    private static CircuitDesign Of(double front, double rear)
    {
        Source supply = Source.BehindResistance(V(24), V(28), V(32), MilliOhm(20), MilliOhm(20));
        CircuitRequirements asked = Mains.Fan(25, supply).WithUpstreamProtection(Breaker("front", front, 0), Breaker("rear", rear, 8));
        return CircuitDesigner.Verify(asked, RoadVehicle(1.5), Blade(5), DesignRules.RoadVehicle);
    }

    private static UpstreamProtection Breaker(string name, double volts, double milliOhms) => UpstreamProtection
        .Device($"{name} breaker", A(63), volts == 0 ? null : V(volts), A(10_000)).WithUpstream(MilliOhm(milliOhms)).WithLead(Mains.Lead(35, 1));
}

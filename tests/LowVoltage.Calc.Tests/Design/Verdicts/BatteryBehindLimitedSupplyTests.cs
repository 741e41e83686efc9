using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A battery in series with a supply that limits its current: driven backwards the supply conducts, and the battery's current flows into a short.</summary>
public class BatteryBehindLimitedSupplyTests
{
    private static readonly Source Both = Source.InSeries(LeadAcid(), Source.CurrentLimited(V(12), A(5)));

    [Fact]
    public void AtSource_BatteryWithLimitedSupply_CountsTheBattery() =>
        // 14.4 V behind (12.6 V − 7.2 V)/600 A/2.5.
        Near(14.4 / (5.4 / 600 / 2.5), ProspectiveCurrent.AtSource(Both).Greatest!.Value.Amperes, 1e-9);

    [Fact]
    public void Verify_BehindTwoMilliohms_BladeBreaksTooLittle()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), source: Both, upstreamMilliOhms: 2);
        CircuitDesign design = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(5), DesignRules.RoadVehicle);
        CheckResult breaks = design.Of(CheckKind.BreakingCapacity);
        Assert.Equal(CheckOutcome.Fail, breaks.Outcome);
        Near(14.4 / 0.0056, breaks.Value, 1e-9);
    }
}

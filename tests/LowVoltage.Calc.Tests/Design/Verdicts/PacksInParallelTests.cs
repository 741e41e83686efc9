using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>Lithium packs side by side share the current by their resistance, not by what their protections allow.</summary>
public class PacksInParallelTests
{
    [Fact]
    public void Design_OnePackPassesItsLimitAndThenTheOther_Fails()
    {
        // 0.5 A: 284 of 293 Ah carry 0.48 A, beyond 0.273 A, and drop out; the small pack is left with all of it, beyond 0.276 A.
        Source both = Source.InParallel(
            Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(284), A(0.273)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(9.25), A(0.276)));
        Assert.Equal(Verdict.Fail, CircuitDesigner.Design(Circuit(Load.ConstantPower(W(5)), source: both, feed: 1), DesignRules.RoadVehicle).Verdict);
    }
}

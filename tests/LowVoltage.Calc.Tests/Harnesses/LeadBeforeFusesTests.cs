using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A wire between the source and the first fuses is opened by those alone: in a fault behind one of them it carries the same current for as long.</summary>
public class LeadBeforeFusesTests
{
    private static readonly Place Air = new() { Ambient = C(30) };

    // Behind the lead a feeder of 4 mm² with 20 A, and a branch with 3 A beside it.
    private static HarnessBuilder Feeders(HarnessBuilder builder) => builder
        .Source("battery", "plus", "ground", Source.BehindResistance(V(12), V(12), V(12), MilliOhm(20), MilliOhm(40)))
        .Fuse("feeder fuse", "bus", "fed", Blade(20)).Wire("feeder", "fed", "far", RoadVehicle(4), M(3), Air, InsulationMaterial.PolyvinylChloride).Load("pump", "far", "ground", Load.ConstantCurrent(A(3)))
        .Fuse("lamp fuse", "bus", "lamp fused", Blade(3)).Wire("lamp wire", "lamp fused", "lamp", RoadVehicle(1.5), M(3), Air, InsulationMaterial.PolyvinylChloride).Load("lamp", "lamp", "ground", Load.ConstantCurrent(A(1)));

    private static HarnessBuilder Empty => new HarnessBuilder("leads", DesignRules.Bench).Terminals("plus", "fed", "far", "lamp fused", "lamp").Busbars("bus").Grounds("ground");

    private static HarnessVerification With(double squareMillimeters) =>
        HarnessDesigner.Verify(Feeders(Empty.Wire("lead", "plus", "bus", RoadVehicle(squareMillimeters), M(0.4), Air, InsulationMaterial.PolyvinylChloride)).Build());

    /// <summary>In a far fault behind the feeder's fuse the lead of 0.75 mm² takes what 4 mm² are protected for; it passed.</summary>
    [Fact]
    public void ThinLead_IsHeldAgainstTheFusesBehindIt()
    {
        HarnessVerification thin = With(0.75);
        HarnessCheck[] failing = [.. thin.Checks.Where(check => check.Result.Outcome == CheckOutcome.Fail)];
        Assert.NotEmpty(failing);
        Assert.All(failing, check => Assert.Equal(("lead", "feeder fuse"), (check.Wire, check.Place)));

        // 20 A of a fuse need not open before 1.35 times that, more than 0.75 mm² carry in any table.
        Assert.Contains(failing, check => check.Result.Kind == CheckKind.OverloadTemperature);
    }

    [Fact]
    public void LeadAsThickAsTheFeeder_Passes()
    {
        HarnessVerification thick = With(4);
        Assert.DoesNotContain(thick.Checks, check => check.Wire == "lead" && check.Result.Outcome != CheckOutcome.Pass);
        Assert.Contains(thick.Checks, check => check.Wire == "lead" && check.Place == "feeder fuse" && check.Result.Kind == CheckKind.OverloadTemperature);
    }

    /// <summary>The sizing of a whole harness holds its leads against the fuses behind them too.</summary>
    [Fact]
    public void Design_ChoosesALeadThatTheFusesBehindItProtect()
    {
        HarnessDesign design = HarnessDesigner.Design(Feeders(Empty.Wire("lead", "plus", "bus", null, M(2), Air, InsulationMaterial.PolyvinylChloride)).Build());
        Assert.True(design.Verification.Checks.Where(check => check.Wire == "lead").All(check => check.Result.Outcome == CheckOutcome.Pass), design.Verification.ToString());
    }
}

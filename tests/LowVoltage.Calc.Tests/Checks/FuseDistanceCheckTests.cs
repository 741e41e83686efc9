using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design.Upstream;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>33 CFR 183.455(b): 7 in of conductor before the fuse, 40 in where it is sheathed.</summary>
public class FuseDistanceCheckTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData(7 * Inch, false, 7, CheckOutcome.Pass)]
    [InlineData(7.001 * Inch, false, 7, CheckOutcome.Fail)]
    [InlineData(40 * Inch, true, 40, CheckOutcome.Pass)]
    [InlineData(40.001 * Inch, true, 40, CheckOutcome.Fail)]
    public void AroundTheRule_PassesAndFails(double meters, bool sheathed, double inches, CheckOutcome expected)
    {
        CircuitDesign design = At(SourceDistance.Cfr33, meters, sheathed);
        design.Is(CheckKind.FuseDistance, meters, inches * Inch, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseDistance, expected, "fuse", sheathed ? "sheathed" : "not sheathed");
        Assert.Same(SourceDistance.Cfr33.Reference, design.Of(CheckKind.FuseDistance).Reference);
        Assert.Equal("Move the fuse nearer to the source, or sheathe the conductor up to it.", CheckCase.AdviceOf(design, CheckKind.FuseDistance));
        Assert.False(CheckCase.IsCured(design, CheckKind.FuseDistance));
        CheckCase.Steps(design, CheckKind.FuseDistance, "l_f ≤ l_max");
    }

    [Fact]
    public void DistanceNotStated_IsUndetermined()
    {
        CircuitDesign design = At(SourceDistance.Cfr33, null, false);
        CheckCase.Answers(design, CheckKind.FuseDistance, CheckOutcome.Undetermined, "fuse", "state how much conductor lies between the source and the fuse; at most 0.1778 m is allowed");
        Assert.Equal("State how much conductor lies between the source and the fuse, and whether it is sheathed.", CheckCase.AdviceOf(design, CheckKind.FuseDistance));
        CheckCase.Stated(design, CheckKind.FuseDistance);
    }

    [Fact]
    public void NothingToBeHeldTo_IsNotAsked()
    {
        Assert.Null(At(null, 5, false).Find(CheckKind.FuseDistance));

        // ISO 10133 allows any distance in a sheath.
        Assert.Null(At(SourceDistance.Iso10133, 50, true).Find(CheckKind.FuseDistance));
        Assert.Equal(CheckOutcome.Fail, At(SourceDistance.Iso10133, 0.201, false).Of(CheckKind.FuseDistance).Outcome);
        DesignRules rules = new(CheckCase.Table) { FusePractice = new FusePractice { Overload = null, Distance = SourceDistance.Cfr33 } };
        Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(5)), null, rules).Find(CheckKind.FuseDistance));
    }

    /// <summary>72 in are for a conductor at the battery post, which nothing says of this one: 40 in.</summary>
    [Fact]
    public void SheathedDistance_IsNotThatOfAConductorAtTheBatteryPost()
    {
        Assert.Equal(CheckOutcome.Pass, At(SourceDistance.AbycE11, 40 * Inch, true).Of(CheckKind.FuseDistance).Outcome);
        CircuitDesign beyond = At(SourceDistance.AbycE11, 41 * Inch, true);
        beyond.Is(CheckKind.FuseDistance, 41 * Inch, 40 * Inch, 2e-9);
        Assert.Equal(CheckOutcome.Fail, beyond.Of(CheckKind.FuseDistance).Outcome);
    }

    /// <summary>Behind a main fuse it is that one's conductor which nothing protects: its length and its sheath count, whatever the circuit's own.</summary>
    [Theory]
    [InlineData(0.5, true, false, CheckOutcome.Pass, "main fuse, sheathed", 40)]
    [InlineData(0.5, false, true, CheckOutcome.Fail, "main fuse, not sheathed", 7)]
    public void BehindAMainFuse_TheConductorBeforeThatCounts(double meters, bool sheathed, bool own, CheckOutcome expected, string note, double inches)
    {
        CircuitRequirements asked = new(Mains.Fan(12)) { FuseDistance = M(0.01), SheathedToFuse = own };
        UpstreamProtection main = UpstreamProtection.Fuse(Mains.Gg(63)).WithUpstream(ElectricResistance.Zero).WithDistance(M(meters), sheathed).WithLead(Mains.Lead(35, 4));
        DesignRules rules = new(DesignRules.RoadVehicle) { FusePractice = new FusePractice { Distance = SourceDistance.Cfr33 } };
        CircuitDesign design = CircuitDesigner.Verify(asked.WithUpstreamProtection(main), RoadVehicle(1.5), Blade(5), rules);
        design.Is(CheckKind.FuseDistance, meters, inches * Inch, 2e-9);
        Assert.Equal((expected, note), (design.Of(CheckKind.FuseDistance).Outcome, design.Of(CheckKind.FuseDistance).Note));
    }

    private static CircuitDesign At(SourceDistance? rule, double? meters, bool sheathed) => CheckCase.Verify(
        new CircuitRequirements(CheckCase.Asked(Load.ConstantCurrent(A(5)))) { FuseDistance = meters is { } m ? M(m) : null, SheathedToFuse = sheathed },
        Blade(10),
        new(CheckCase.Table) { FusePractice = new FusePractice { Overload = null, Distance = rule } });
}

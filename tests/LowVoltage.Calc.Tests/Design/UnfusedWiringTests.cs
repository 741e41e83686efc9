using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Wiring without a fuse passes only where the supply cannot overload it.</summary>
public class UnfusedWiringTests
{
    // IEC 60364-5-52 method C, two loaded conductors, 30 °C, PVC 70 °C: 1.5 mm² 19.5 A, 2.5 mm² 27 A.
    private static readonly DesignRules Table = new(DesignRules.Bench) { Ampacity = AmpacityBasis.BuildingTable };

    private static readonly CheckKind[] OfWire =
    [
        CheckKind.MechanicalMinimum, CheckKind.VoltageDrop, CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature, CheckKind.OvercurrentProtection,
    ];

    [Theory]
    [InlineData(5, true)]
    [InlineData(19.5, true)]
    [InlineData(19.6, false)]
    [InlineData(100, false)]
    public void CurrentLimitedSupply_PassesUpToWhatTheWireCarries(double limit, bool passes)
    {
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(limit)), feed: 0.5, upstreamMilliOhms: 0), Class5(1.5), null, Table);
        design.Is(CheckKind.OvercurrentProtection, limit, 19.5);
        Assert.Equal((passes ? Verdict.Pass : Verdict.Fail, null), (design.Verdict, design.Fuse));
        Assert.Equal(OfWire, design.Checks.Select(check => check.Kind!));
        Assert.StartsWith("1.5 mm² class 5 copper without a fuse: ", design.ToString(), StringComparison.Ordinal);
        Assert.Equal(passes ? "no fuse is needed: the supply cannot overload the wire" : "no fuse or breaker protects this wire, and the supply can overload it", design.Of(CheckKind.OvercurrentProtection).Note);
        if (!passes)
        {
            Assert.Equal(CheckKind.OvercurrentProtection, design.Governing.Kind);
            Assert.StartsWith("Fit a fuse or breaker at the source that the wire's current allows", design.Advice[0], StringComparison.Ordinal);
            Assert.StartsWith("For this duty the rules would choose ", design.Advice[1], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Battery_CanAlwaysOverloadTheWire()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), feed: 0.5), Class5(1.5), null, Table);
        design.Is(CheckKind.OvercurrentProtection, 14.4 / (0.0036 + 0.020), 19.5);
        Assert.Equal((Verdict.Fail, CheckKind.OvercurrentProtection), (design.Verdict, design.Governing.Kind!));
    }

    [Fact]
    public void SourceBehindItsOwnResistance_PassesWhereOhmsLawBoundsIt()
    {
        // 12 V behind 0.6 Ω and 20 mΩ of lead: 19.35 A; behind 0.59 Ω 19.67 A.
        CircuitDesign with(double ohms) => CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(0.2)), Source.BehindResistance(V(12), ElectricResistance.FromOhms(ohms)), feed: 0.5), Class5(1.5), null, Table);
        with(0.6).Is(CheckKind.OvercurrentProtection, 12 / 0.62, 19.5);
        Assert.Equal(Verdict.Pass, with(0.6).Verdict);
        with(0.59).Is(CheckKind.OvercurrentProtection, 12 / 0.61, 19.5);
        Assert.Equal(Verdict.Fail, with(0.59).Verdict);
    }

    [Fact]
    public void IdealSource_FailsWithoutANumber()
    {
        // Nothing bounds its current: there is no number, and no pass.
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), Source.Ideal(V(12)), feed: 0.5, upstreamMilliOhms: null), Class5(1.5), null, Table);
        CheckResult check = design.Of(CheckKind.OvercurrentProtection);
        Assert.Equal((CheckOutcome.Fail, null, null, null), (check.Outcome, check.Value, check.Limit, check.Margin));
        Assert.Equal("protection against overcurrent: fail, no fuse or breaker protects this wire, and the supply can overload it", check.ToString());
        Everything.AssertFinite(design);

        // Behind a stated supply lead there is one: 12 V over 20 mΩ.
        CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), Source.Ideal(V(12)), feed: 0.5), Class5(1.5), null, Table).Is(CheckKind.OvercurrentProtection, 600, 19.5);
    }

    [Fact]
    public void Path_IsHeldToItsWeakestStretch_WhichIsNamed()
    {
        CircuitPath path = CircuitPath.Create([Segment.Create(Class5(2.5), M(0.5)), Segment.Create(Class5(1.5), M(0.2))], ReturnPath.Wire(Segment.Create(Class5(2.5), M(0.7))));
        CircuitDesign at(double limit) => CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(limit)), upstreamMilliOhms: 0), path, null, Table);
        Assert.Equal(Verdict.Pass, at(19).Verdict);
        Assert.Equal(
            "protection against overcurrent 25 A, at most 19.5 A, feed, 0.2 m of 1.5 mm² class 5 copper: fail", at(25).Of(CheckKind.OvercurrentProtection).ToString());
    }

    [Fact]
    public void SharedReturn_LeavesWhatTheOthersDoNotTake()
    {
        // 27 A of 2.5 mm², of which others take 20 A.
        ReturnPath back = ReturnPath.Shared([Segment.Create(Class5(2.5), M(0.5))], A(20));
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(2)), Source.CurrentLimited(V(12), A(8)), feed: 0.5, back: back, upstreamMilliOhms: 0), Class5(2.5), null, Table);
        design.Is(CheckKind.OvercurrentProtection, 8, 7);
        Assert.Equal("shared return, 0.5 m of 2.5 mm² class 5 copper", design.Of(CheckKind.OvercurrentProtection).Where);
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(2)), Source.CurrentLimited(V(12), A(5)), feed: 0.5, ambient: 65, upstreamMilliOhms: 0), Class5(1.5), null, Table);
        CheckResult check = design.Of(CheckKind.OvercurrentProtection);
        Assert.Equal((CheckOutcome.Undetermined, "the wire is not rated here, and no fuse protects it"), (check.Outcome, check.Note));
        Assert.Equal(Verdict.Undetermined, design.Verdict);
    }

    [Fact]
    public void LoadWithoutAnOperatingPoint_IsStillAskedForItsProtection()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantPower(W(5000))), Class5(1.5), null, Table);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.PowerDelivery).Outcome);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.OvercurrentProtection).Outcome);
    }

    [Fact]
    public void Fused_IsNotAskedForIt() => Assert.Null(CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), feed: 0.5), Class5(1.5), Blade(5), Table).Find(CheckKind.OvercurrentProtection));

    [Fact]
    public void Sheet_WritesTheProtectionDown()
    {
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(25)), feed: 0.5, upstreamMilliOhms: 0), Class5(1.5), null, Table);
        Assert.Contains(design.Explain().Steps, step => step.Sought == "check: protection against overcurrent" && step.Holds == false);
    }
}

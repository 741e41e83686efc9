using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>A stated main fuse, and the supply lead behind it as a wire of its own.</summary>
public class MainFuseTests
{
    private static readonly CheckKind[] Lead =
    [
        CheckKind.MainFuseProtectsLead, CheckKind.LeadTemperature, CheckKind.FaultOpensMainFuse, CheckKind.LeadShortCircuitTemperature, CheckKind.LeadOverloadTemperature,
    ];

    [Fact]
    public void MainFuse_FitsLeadAndSource_PassesThroughout()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4)), DesignRules.RoadVehicle);
        Assert.True(design.Verdict == Verdict.Pass, string.Join("\n", design.Checks));
        Assert.All(Lead, kind => Assert.Equal(CheckOutcome.Pass, design.Of(kind).Outcome));
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.SelectivityOfFuses).Outcome);
        design.Is(CheckKind.MainFuseVoltage, 250, 14.4);

        // 14.4 V over the 3.6 mΩ that are the least of a 600 A battery: the fuse sits on the terminal.
        design.Is(CheckKind.MainFuseBreakingCapacity, 4000, 25_000, 1e-3);
        design.Is(CheckKind.MainFuseCarriesLoad, 63, 3.2 / 0.8);
    }

    [Fact]
    public void MainFuse_NotStated_LeadIsNotJudged()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(12), DesignRules.RoadVehicle);
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.All(Lead, kind => Assert.Null(design.Find(kind)));
        Assert.Contains(design.Assumptions, line => line.EndsWith("This fuse does not protect it.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(63, 16, 4)]
    [InlineData(100, 35, 2)]
    [InlineData(160, 16, 6)]
    [InlineData(40, 2.5, 3)]
    [InlineData(250, 10, 1)]
    public void Lead_WithItsMainFuse_IsJudgedAsTheSameWiringAsACircuitIs(double main, double section, double meters)
    {
        // The lead as a circuit whose load is what its fuse may carry, on the terminal, nothing before it.
        UpstreamProtection before = OnTerminal(Gg(main), section, meters);
        double wire = before.Lead!.ResistanceAt(C(20)).Milliohms;
        CircuitDesign asMain = CircuitDesigner.Design(Fan(wire + 1).WithUpstreamProtection(before), DesignRules.RoadVehicle);
        CircuitRequirements asCircuit = Circuit(Load.ConstantCurrent(A(main * 0.8)), feed: meters, upstreamMilliOhms: 0);
        CircuitPath path = Mains.Lead(section, meters).WithFeedJoints(Joint.Create("the rest of what is stated", MilliOhm(1)));
        CircuitDesign verified = CircuitDesigner.Verify(asCircuit, path, Gg(main), DesignRules.RoadVehicle);

        (CheckKind, CheckKind)[] pairs =
        [
            (CheckKind.MainFuseProtectsLead, CheckKind.FuseProtectsWire), (CheckKind.FaultOpensMainFuse, CheckKind.FaultOpensFuse), (CheckKind.MainFuseVoltage, CheckKind.FuseVoltage),
            (CheckKind.LeadShortCircuitTemperature, CheckKind.ShortCircuitTemperature), (CheckKind.LeadOverloadTemperature, CheckKind.OverloadTemperature),
            (CheckKind.MainFuseBreakingCapacity, CheckKind.BreakingCapacity), (CheckKind.LeadTemperature, CheckKind.ConductorTemperature),
        ];
        foreach ((CheckKind lead, CheckKind circuit) in pairs)
        {
            CheckResult? one = asMain.Find(lead), other = verified.Find(circuit);
            Assert.Equal(other?.Outcome, one?.Outcome);
            if (other?.Value is { } value)
            {
                Near(value, one!.Value.Value, 1e-9, lead.Name);
                Assert.Equal(other.Value.Limit, one.Value.Limit);
            }
        }
    }

    [Fact]
    public void MainFuse_TooLargeForTheLead_Fails()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(OnTerminal(Gg(200), 6, 1.5)), DesignRules.RoadVehicle);
        CheckResult check = design.Of(CheckKind.MainFuseProtectsLead);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Assert.Equal(200, check.Value);
        Assert.Equal(Verdict.Fail, design.Verdict);
        Assert.Contains("supply lead", check.Where, StringComparison.Ordinal);
        Assert.Contains(design.Advice, line => line.StartsWith("The main fuse is too large for the supply lead", StringComparison.Ordinal));
    }

    [Fact]
    public void Lead_NotStated_IsUndeterminedAndNamedOnce()
    {
        UpstreamProtection main = UpstreamProtection.Fuse(Gg(63)).WithUpstream(ElectricResistance.Zero);
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(main), DesignRules.RoadVehicle);
        CheckResult open = Assert.Single(design.Undetermined);
        Assert.Same(CheckKind.MainFuseProtectsLead, open.Kind);
        Assert.Equal("state the wire of the supply lead behind the 63 A gG fuse-link (IEC 60269-2 gG, 250 V), out and back", open.Note);
        Assert.Contains(design.Advice, line => line.Contains("WithLead", StringComparison.Ordinal));
    }

    [Fact]
    public void Lead_OfNoLength_IsNotAskedFor()
    {
        UpstreamProtection beside = UpstreamProtection.Fuse(Gg(63)).WithUpstream(MilliOhm(12));
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(beside), DesignRules.RoadVehicle);
        Assert.Null(design.Find(CheckKind.MainFuseProtectsLead));
        Assert.Equal(Verdict.Pass, design.Verdict);
    }

    [Fact]
    public void StatedDevice_VoltageBelowTheSource_IsAFailedCheckAndNoException()
    {
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(32), A(10_000)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(3.2)), Battery.LithiumIronPhosphate(15, ElectricCharge.FromAmpereHours(50)), upstreamMilliOhms: 60);
        CircuitDesign design = CircuitDesigner.Design(asked.WithUpstreamProtection(main), DesignRules.RoadVehicle);
        CheckResult check = design.Of(CheckKind.MainFuseVoltage);
        Assert.Equal((CheckOutcome.Fail, 32.0), (check.Outcome, check.Value));
        Near(54.75, check.Limit, 1e-9); // 15 × 3.65 V
        Assert.Equal("main fuse", check.Where);
    }

    [Fact]
    public void StatedDevice_WithoutACurve_LeavesTheLeadUndeterminedWhereTimesDecide()
    {
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(main), DesignRules.RoadVehicle);
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        CheckKind[] open = [.. design.Undetermined.Select(check => check.Kind!)];
        Assert.Equal([CheckKind.FaultOpensMainFuse, CheckKind.LeadShortCircuitTemperature, CheckKind.LeadOverloadTemperature, CheckKind.SelectivityOfFuses], open);
        Assert.Contains("no operating times are published for the 63 A main breaker (as stated)", design.Of(CheckKind.SelectivityOfFuses).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void StatedBreaker_WithTheCallersCurve_IsJudgedByIt()
    {
        TimeCurrentCurve curve = TimeCurrentCurve.CreateCircuitBreaker(
            [Point(85, 30), Point(630, 0.05)], [Point(82, 3600), Point(190, 60), Point(630, 0.5), Point(1000, 0.2)]);
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000), curve).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
        CircuitDesign design = CircuitDesigner.Design(Fan(30).WithUpstreamProtection(main), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.MainFuseProtectsLead).Outcome);
        Assert.NotEqual(CheckOutcome.Undetermined, design.Of(CheckKind.FaultOpensMainFuse).Outcome);
        Assert.NotEqual(CheckOutcome.Undetermined, design.Of(CheckKind.LeadOverloadTemperature).Outcome);
    }

    [Fact]
    public void MainFuse_BreaksLessThanTheTerminalsGive_Fails()
    {
        // 14.6 V over 0.4 mΩ, the least of a 200 Ah pack, is 36.5 kA; behind 0.3 mΩ of links it is 20.9 kA.
        UpstreamProtection main = OnTerminal(Gg(63), 10, 4);
        CircuitDesign on = CircuitDesigner.Design(Fan(15, Pack).WithUpstreamProtection(main), DesignRules.RoadVehicle);
        on.Is(CheckKind.MainFuseBreakingCapacity, 36_500, 25_000, 1e-6);
        Assert.Equal(CheckOutcome.Fail, on.Of(CheckKind.MainFuseBreakingCapacity).Outcome);
        CircuitDesign behind = CircuitDesigner.Design(Fan(15, Pack).WithUpstreamProtection(main.WithUpstream(MilliOhm(0.3))), DesignRules.RoadVehicle);
        behind.Is(CheckKind.MainFuseBreakingCapacity, 14.6 / 0.0007, 25_000, 1e-6);
        Assert.Equal(CheckOutcome.Pass, behind.Of(CheckKind.MainFuseBreakingCapacity).Outcome);
        CircuitDesign unknown = CircuitDesigner.Design(Fan(15, Pack).WithUpstreamProtection(main.WithUpstream(null)), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Undetermined, unknown.Of(CheckKind.MainFuseBreakingCapacity).Outcome);
    }

    [Fact]
    public void MainFuse_SmallerThanTheCircuit_DoesNotCarryIt()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(15)), upstreamMilliOhms: 20).WithUpstreamProtection(OnTerminal(Gg(16), 6, 2));
        CheckResult check = CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Of(CheckKind.MainFuseCarriesLoad);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Near(15 / 0.8, check.Limit, 1e-8);
    }

    [Theory]
    [InlineData(60, 0.9)]
    [InlineData(30, 1)]
    public void MainFuse_InWarmAir_CarriesLess(double celsius, double share)
    {
        UpstreamProtection main = OnTerminal(Gg(63), 35, 4).WithAmbient(C(celsius));
        CheckResult check = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(main), DesignRules.RoadVehicle).Of(CheckKind.MainFuseCarriesLoad);
        Near(3.2 / 0.8 / share, check.Limit, 1e-8);
    }

    [Fact]
    public void DistanceRule_BehindAMainFuse_CountsTheConductorBeforeThat()
    {
        CircuitRequirements far = new(Fan(12)) { FuseDistance = M(2) };
        Assert.Equal(CheckOutcome.Fail, CircuitDesigner.Design(far, DesignRules.SmallCraft).Of(CheckKind.FuseDistance).Outcome);
        CheckResult with = CircuitDesigner.Design(far.WithUpstreamProtection(OnTerminal(Gg(63), 35, 4)), DesignRules.SmallCraft).Of(CheckKind.FuseDistance);
        Assert.Equal((CheckOutcome.Pass, 0.1), (with.Outcome, with.Value));
        CheckResult unknown = CircuitDesigner.Design(far.WithUpstreamProtection(OnTerminal(Gg(63), 35, 4).WithDistance(null, false)), DesignRules.SmallCraft).Of(CheckKind.FuseDistance);
        Assert.Equal(CheckOutcome.Undetermined, unknown.Outcome);
    }

    [Fact]
    public void ParallelLeadWires_AreHeldToAFaultInOneOfThem()
    {
        CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(2), 6), ReturnPath.Chassis(MilliOhm(0.5)));
        UpstreamProtection main = UpstreamProtection.Fuse(Gg(100)).WithUpstream(ElectricResistance.Zero).WithLead(path);
        Assert.NotNull(CircuitDesigner.Design(Fan(12).WithUpstreamProtection(main), DesignRules.RoadVehicle).Find(CheckKind.FaultInOneParallelLeadWire));
    }

    [Fact]
    public void LeadInHotterAirThanItsInsulation_Fails()
    {
        CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)).WithPlace(new Place { Ambient = C(95) }), ReturnPath.Chassis(MilliOhm(0.5)));
        UpstreamProtection main = UpstreamProtection.Fuse(Gg(63)).WithUpstream(ElectricResistance.Zero).WithLead(path);
        Assert.Equal(CheckOutcome.Fail, CircuitDesigner.Design(Fan(12).WithUpstreamProtection(main), DesignRules.RoadVehicle).Of(CheckKind.LeadTemperature).Outcome);
    }

    [Fact]
    public void Sheet_WithAMainFuse_TellsItsGivensAndItsChecks()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(12).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4)), DesignRules.RoadVehicle);
        string sheet = design.Explain().ToText();
        Assert.Contains("supply lead protected by", sheet, StringComparison.Ordinal);
        Assert.Contains("The supply lead and its main fuse", sheet, StringComparison.Ordinal);
        Assert.Contains("Check: main fuse protects the supply lead", sheet, StringComparison.Ordinal);
        Assert.Contains("Up to 4000 A can flow into a short right behind it", sheet, StringComparison.Ordinal);
    }

    private static TimeCurrentPoint Point(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), Duration.FromSeconds(seconds));
}

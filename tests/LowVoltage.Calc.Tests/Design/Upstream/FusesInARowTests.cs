using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>Several fuses in a row: every stretch is held against the nearest fuse towards the source, every pair is asked for its selectivity.</summary>
public class FusesInARowTests
{
    [Fact]
    public void TwoMainFuses_EachWithItsLead_PassTogether()
    {
        CircuitDesign design = CircuitDesigner.Design(Fan(17, Pack).WithUpstreamProtection(AtThePack(), AtThePanel()), DesignRules.RoadVehicle);
        Assert.True(design.Verdict == Verdict.Pass, string.Join("\n", design.Checks));
        Assert.Equal(design.Checks.Count, design.Checks.Select(check => check.Kind).Distinct().Count());
    }

    [Fact]
    public void SecondLeadTooThinForItsFuse_FailsAndIsNamed()
    {
        CheckResult check = CircuitDesigner.Design(Fan(17, Pack).WithUpstreamProtection(AtThePack(), AtThePanel().WithLead(Lead(1.5, 4))), DesignRules.RoadVehicle).Of(CheckKind.MainFuseProtectsLead);
        Assert.Equal((CheckOutcome.Fail, 25.0), (check.Outcome, check.Value));
        Assert.StartsWith("behind the 25 A", check.Where, StringComparison.Ordinal);
        Assert.Contains("behind the 25 A", check.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void SmallFuseBeforeTheLarge_IsNotSelective()
    {
        // 63 A must be open within 0.1 s at 820 A; 200 A holds 10 s at 610 A and 0.1 s at 1910 A.
        CircuitRequirements asked = Fan(20).WithUpstreamProtection(
            UpstreamProtection.Fuse(Gg(63)).WithUpstream(ElectricResistance.Zero).WithLead(Lead(70, 1)), UpstreamProtection.Fuse(Gg(200)).WithUpstream(MilliOhm(2)).WithLead(Lead(70, 1)));
        CheckResult check = CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Of(CheckKind.SelectivityOfFuses);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Assert.Contains("the 63 A gG fuse-link", check.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void WiringWithoutAFuse_IsProtectedByTheNearestTowardsTheSource()
    {
        CircuitRequirements asked = Fan(12).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4));
        CircuitDesign bare = CircuitDesigner.Verify(Fan(12), RoadVehicle(35), fuse: null, DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, bare.Of(CheckKind.OvercurrentProtection).Outcome);

        CircuitDesign thick = CircuitDesigner.Verify(asked, RoadVehicle(35), fuse: null, DesignRules.RoadVehicle);
        Assert.Null(thick.Fuse);
        Assert.Null(thick.Find(CheckKind.OvercurrentProtection));
        Assert.Null(thick.Find(CheckKind.SelectivityOfFuses));
        Assert.True(thick.Verdict == Verdict.Pass, string.Join("\n", thick.Checks));
        Assert.Equal(63, thick.Of(CheckKind.FuseProtectsWire).Value);
        Assert.Contains(thick.Assumptions, line => line.StartsWith("The circuit has no fuse of its own: the 63 A", StringComparison.Ordinal));

        CircuitDesign thin = CircuitDesigner.Verify(asked, RoadVehicle(0.75), fuse: null, DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, thin.Of(CheckKind.FuseProtectsWire).Outcome);
        Assert.Equal(CheckOutcome.Fail, thin.Of(CheckKind.OverloadTemperature).Outcome);
    }

    [Theory]
    [InlineData(7.5, 63, CheckOutcome.Pass)]
    [InlineData(40, 40, CheckOutcome.Undetermined)]
    [InlineData(2, 63, CheckOutcome.Undetermined)] // no operating times are published for 2 A blades
    public void Selectivity_OfAPair_ByPublishedTimes(double branch, double main, CheckOutcome outcome)
    {
        CircuitRequirements asked = Fan(12).WithUpstreamProtection(OnTerminal(Gg(main), 35, 4));
        CheckResult check = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(branch), DesignRules.RoadVehicle).Of(CheckKind.SelectivityOfFuses);
        Assert.True(check.Outcome == outcome, check.ToString());
        Assert.NotEmpty(check.Note);
    }

    /// <summary>At 2704 A the published least times of a 40 A fuse say nothing; its own melting integral does. A 7.5 A blade lets 0.1 s at 45 A through at most: 202.5 A²s.</summary>
    [Theory]
    [InlineData(null, CheckOutcome.Undetermined)]
    [InlineData(200.0, CheckOutcome.Undetermined)]
    [InlineData(205.0, CheckOutcome.Pass)]
    public void Selectivity_BeyondTheLastPublishedTime_RestsOnTheMeltingIntegral(double? joules, CheckOutcome outcome)
    {
        UpstreamProtection main = OnTerminal(Gg(40), 16, 4).WithUpstream(MilliOhm(0.3)).WithLeastMelting(joules is { } value ? JouleIntegral.FromAmpereSquaredSeconds(value) : null);
        CheckResult check = CircuitDesigner.Verify(Fan(5, Pack).WithUpstreamProtection(main), RoadVehicle(2.5), HighBreakingBlades.SmallestAtLeast(A(7.5)), DesignRules.RoadVehicle).Of(CheckKind.SelectivityOfFuses);
        Assert.True(check.Outcome == outcome, check.ToString());
    }

    [Fact]
    public void Selectivity_SupplyThatGivesLessThanTheMainFuseCarries_Passes()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(3.2)), Source.CurrentLimited(V(12), A(20)), upstreamMilliOhms: 12).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4));
        CheckResult check = CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Of(CheckKind.SelectivityOfFuses);
        Assert.Equal(CheckOutcome.Pass, check.Outcome);
        Assert.Contains("which the 63 A", check.Note, StringComparison.Ordinal);
    }

    // 14.6 V over 0.4 mΩ + 0.3 mΩ of links: 20.9 kA. The melting integrals are those that the standard asks of gG at 0.01 s.
    private static UpstreamProtection AtThePack() => OnTerminal(Gg(100), 70, 1).WithUpstream(MilliOhm(0.3)).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(27_000));

    private static UpstreamProtection AtThePanel() => UpstreamProtection.Fuse(Gg(25)).WithUpstream(MilliOhm(2)).WithLead(Lead(10, 4)).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(1000));
}

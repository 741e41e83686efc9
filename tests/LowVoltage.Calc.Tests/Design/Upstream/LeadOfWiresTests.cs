using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>A supply lead that is stated by its wires: they carry the circuit's current too.</summary>
public class LeadOfWiresTests
{
    // 2 × 8 m of 16 mm², largest resistance 1.16 Ω/km at 20 °C (ISO 6722-1): 18.56 mΩ.
    private const double WiresOhms = 16 * 0.00116;

    // Copper at 70 °C, as hot as PVC allows: 1 + 0.00393 · 50.
    private const double Hot = 1.1965;

    /// <summary>A lead of wires, the whole not stated: counted as nothing, the drop passed with 0.28 V more than it had said.</summary>
    [Fact]
    public void DropOfALeadOfWires_WholeNotStated_Counts()
    {
        CircuitRequirements asked = Pump(null);
        CircuitDesign found = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);
        CircuitDesign stated = CircuitDesigner.Verify(asked.WithUpstream(MilliOhm(1000 * WiresOhms * Hot)), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);

        Assert.Equal(CheckOutcome.Fail, found.Of(CheckKind.VoltageDrop).Outcome);
        Near(stated.Of(CheckKind.VoltageDrop).Value!.Value, found.Of(CheckKind.VoltageDrop).Value, 1e-9);
        Assert.Contains("The supply lead to the fuse was not stated as a whole; what is stated of it has 22.21 mΩ, its wires as hot as their insulation allows, which counts for the drop and for the short circuit at the far end. What stands before it protects it.", found.Assumptions);
    }

    [Fact]
    public void WiresWithMoreThanTheWholeLead_CountForTheDrop()
    {
        CircuitDesign found = CircuitDesigner.Verify(Pump(5), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);
        CircuitDesign without = CircuitDesigner.Verify(Pump(5).WithUpstreamProtection(), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);

        Near(15 * ((WiresOhms * Hot) - 0.005), found.Of(CheckKind.VoltageDrop).Value - without.Of(CheckKind.VoltageDrop).Value, 1e-6);
        Assert.Contains("Supply lead to the fuse 5 mΩ, out and back; its wires have 22.21 mΩ as hot as their insulation allows, which counts for the drop and for the short circuit at the far end. What stands before it protects it.", found.Assumptions);
    }

    [Fact]
    public void WiresWithLessThanTheWholeLead_LeaveItAsStated()
    {
        CircuitDesign found = CircuitDesigner.Verify(Pump(30), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);
        CircuitDesign without = CircuitDesigner.Verify(Pump(30).WithUpstreamProtection(), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);

        Assert.Equal(without.Of(CheckKind.VoltageDrop).Value, found.Of(CheckKind.VoltageDrop).Value);
        Assert.Contains("Supply lead to the fuse 30 mΩ, out and back. What stands before it protects it.", found.Assumptions);
    }

    /// <summary>What a fuse must break goes by the least that the lead may have: less than the standard's largest, so nothing where the whole is not stated.</summary>
    [Fact]
    public void ProspectiveCurrent_WholeNotStated_IsThatOfTheTerminals() =>
        Near(
            ProspectiveCurrent.AtSource(LeadAcid()).Greatest!.Value.Amperes,
            CircuitDesigner.Verify(Pump(null), RoadVehicle(6), Gg(20), DesignRules.RoadVehicle).Of(CheckKind.BreakingCapacity).Value,
            1e-9);

    [Fact]
    public void LeadsInARow_AddUp()
    {
        CircuitRequirements asked = Pump(null).WithUpstreamProtection(
            OnTerminal(Gg(63), 16, 8), UpstreamProtection.Fuse(Gg(40)).WithUpstream(MilliOhm(20)).WithLead(Lead(16, 4)));
        CircuitDesign found = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);
        CircuitDesign plain = CircuitDesigner.Verify(Pump(0).WithUpstreamProtection(), RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);

        // 20 mΩ before the second device, which is more than the first lead's wires, and 8 m of 16 mm² behind it.
        Near(15 * (0.020 + (WiresOhms * Hot / 2)), found.Of(CheckKind.VoltageDrop).Value - plain.Of(CheckKind.VoltageDrop).Value, 1e-6);
    }

    /// <summary>A second main fuse whose place on the lead is not stated: the first lead's wires lie before it all the same. Counted as nothing, a short that it takes 40 s to open was shown as soon open.</summary>
    [Fact]
    public void FaultBehindASecondMainFuse_ItsPlaceNotStated_MeetsTheFirstLeadsWires()
    {
        double first = 2 * 12 * 0.000527 * 1000;
        UpstreamProtection fuse = UpstreamProtection.Fuse(Gg(63)).WithLead(Lead(35, 28));
        CircuitDesign unstated = Behind(fuse), stated = Behind(fuse.WithUpstream(MilliOhm(first * Hot)));

        // 12 V over 1 mΩ, 12.6 mΩ and 29.5 mΩ cold, a fifth more when hot: 236 A to 278 A, where a 63 A gG fuse may take more than 5 s; without the first lead 330 A and more.
        Assert.Equal(CheckOutcome.Fail, unstated.Of(CheckKind.FaultOpensMainFuse).Outcome);
        Near(stated.Of(CheckKind.FaultOpensMainFuse).Value!.Value, unstated.Of(CheckKind.FaultOpensMainFuse).Value, 1e-3);

        static CircuitDesign Behind(UpstreamProtection second) => CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(1)), Source.BehindResistance(V(12), MilliOhm(1)), feed: 1, upstreamMilliOhms: null).WithUpstreamProtection(OnTerminal(Gg(100), 35, 12), second),
            RoadVehicle(2.5), Gg(16), DesignRules.RoadVehicle);
    }

    /// <summary>A lead stated at 150 °C on 70 °C insulation was not asked where the supply gives less than the main fuse may carry: the circuit passed.</summary>
    [Theory]
    [InlineData(16)]
    [InlineData(40)]
    [InlineData(63)]
    public void LeadStatedTooHot_BehindASupplyWeakerThanItsMainFuse_Fails(double amperes)
    {
        Segment hot = Segment.Create(RoadVehicle(16), M(4)).WithTemperature(ConductorTemperature.At(C(150)));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(3)), Source.CurrentLimited(V(12), A(20)), feed: 2, upstreamMilliOhms: 20).WithUpstreamProtection(
            UpstreamProtection.Fuse(Gg(amperes)).WithUpstream(MilliOhm(0)).WithDistance(M(0.1), sheathed: true).WithLead(CircuitPath.Create(hot, ReturnPath.Wire(Segment.Create(RoadVehicle(16), M(4))))));
        CircuitDesign found = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(5), DesignRules.RoadVehicle);

        Assert.Equal(Verdict.Fail, found.Verdict);
        Assert.Equal((CheckOutcome.Fail, 150.0), (found.Of(CheckKind.LeadTemperature).Outcome, found.Of(CheckKind.LeadTemperature).Value));
    }

    /// <summary>The lead's wires counted at 20 °C, the circuit's own as hot as they may be: 20 m of one lead passed where 21 m of one feed did not.</summary>
    [Fact]
    public void FaultBehindALeadOfWires_FindsThemAsHotAsTheRest()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), Source.BehindResistance(V(12), MilliOhm(10)), feed: 1, upstreamMilliOhms: null, insulation: InsulationMaterial.CrossLinkedPolyethylene);
        CircuitDesign lead = CircuitDesigner.Verify(asked.WithUpstreamProtection(OnTerminal(Gg(16), 2.5, 20)), RoadVehicle(2.5), Blade(15), DesignRules.RoadVehicle);
        CircuitDesign feed = CircuitDesigner.Verify(asked.WithFeed(M(21)).WithReturn(ReturnPath.Wire(M(21))).WithUpstream(MilliOhm(0)), RoadVehicle(2.5), Blade(15), DesignRules.RoadVehicle);

        Assert.Equal(CheckOutcome.Fail, feed.Of(CheckKind.FaultOpensFuse).Outcome);
        Assert.Equal(CheckOutcome.Fail, lead.Of(CheckKind.FaultOpensFuse).Outcome);

        // 40 m of 2.5 mm², 7.6 Ω/km (ISO 6722-1), at 90 °C: 1 + 0.00393 · 70.
        Near(40 * 0.0076 * 1.2751, asked.WithUpstreamProtection(OnTerminal(Gg(16), 2.5, 20)).CountedLeadOhms, 1e-6);
    }

    [Fact]
    public void AsAHarness_LosesAsMuch()
    {
        CircuitRequirements asked = Pump(null);
        CircuitDesign circuit = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(20), DesignRules.RoadVehicle);
        HarnessVerification harness = HarnessDesigner.Verify(
            HarnessBuilder.FromCircuit(asked, Blade(20), DesignRules.RoadVehicle, Segment.Create(RoadVehicle(6), M(2))).Build());

        Near(circuit.Of(CheckKind.VoltageDrop).Value!.Value, harness.Find(CheckKind.VoltageDrop, "load")!.Value.Result.Value, 1e-9);
    }

    // A pump of 15 A, 2 m away, behind 8 m of lead.
    private static CircuitRequirements Pump(double? upstreamMilliOhms) =>
        Circuit(Load.ConstantCurrent(A(15)), LeadAcid(), feed: 2, upstreamMilliOhms: upstreamMilliOhms).WithUpstreamProtection(OnTerminal(Gg(63), 16, 8));
}

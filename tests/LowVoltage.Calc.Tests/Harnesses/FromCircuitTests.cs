using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A circuit of unequal wires side by side.</summary>
public class FromCircuitTests
{
    // Largest resistance of ISO 6722 at 20 °C, mΩ/m: 4.71 for 4 mm², 7.60 for 2.5 mm².
    private const double Thick = 4.71, Thin = 7.60;

    private static CircuitRequirements Heater(double amperes) => Circuit(Load.ConstantCurrent(A(amperes)), feed: 3, upstreamMilliOhms: 12, insulation: InsulationMaterial.CrossLinkedPolyethylene)
        .WithPlace(Place.Create(C(30)));

    private static Segment Of(double squareMillimeters, double meters = 3) => Segment.Create(RoadVehicle(squareMillimeters), M(meters));

    private static Harness Unequal(double amperes, double fuse) =>
        HarnessBuilder.FromCircuit(Heater(amperes), Blade(fuse), DesignRules.RoadVehicle, Of(4), Of(2.5)).Build();

    // As cold wires the currents go as 1/4.71 to 1/7.60; the thick one carries more for its surface and gets warmer, which moves a little back.
    [Fact]
    public void Solve_TwoSizesSideBySide_ShareByResistance()
    {
        HarnessSolution solution = Unequal(10, 15).Solve();
        double thick = solution.CurrentOf("feed 1").Amperes, thin = solution.CurrentOf("feed 2").Amperes, cold = 10 * Thin / (Thick + Thin);
        Assert.Equal(10, thick + thin, 9);
        Assert.InRange(thick, 0.98 * cold, 1.02 * cold);
        Assert.Equal(thick, solution.CurrentOf("return 1").Amperes, 6);

        // The same voltage along both: each current times its own warm resistance.
        double along(string wire, double milliohms, double amperes) => amperes * 3 * milliohms / 1000 * (1 + (0.00393 * (solution.TemperatureOf(wire)!.Value.DegreesCelsius - 20)));
        Assert.Equal(1, along("feed 1", Thick, thick) / along("feed 2", Thin, thin), 3);
    }

    [Fact]
    public void Verify_TwoSizesSideBySide_ChecksEachForItsOwnCurrent()
    {
        HarnessVerification verified = HarnessDesigner.Verify(Unequal(10, 15));
        HarnessSolution solution = verified.Harness.Solve();
        foreach (string wire in new[] { "feed 1", "feed 2", "return 1", "return 2" })
        {
            HarnessCheck check = verified.Find(CheckKind.ContinuousCurrent, wire)!.Value;
            Assert.Equal(CheckOutcome.Pass, check.Outcome);
            Assert.Equal(solution.CurrentOf(wire).Amperes, check.Result.Value!.Value, 2);
        }

        Assert.True(verified.Find(CheckKind.ContinuousCurrent, "feed 2")!.Value.Result.Limit < verified.Find(CheckKind.ContinuousCurrent, "feed 1")!.Value.Result.Limit);
    }

    /// <summary>A fuse 2 m from the source passed as a harness: the lead has no resistance, and so was not there. Unknown, it passed too.</summary>
    [Theory]
    [InlineData(2.0, 0.0, CheckOutcome.Fail)]
    [InlineData(2.0, 5.0, CheckOutcome.Fail)]
    [InlineData(0.1, 0.0, CheckOutcome.Pass)]
    [InlineData(0.1, 5.0, CheckOutcome.Pass)]
    [InlineData(0.0, 0.0, CheckOutcome.Pass)]
    [InlineData(null, 0.0, CheckOutcome.Undetermined)]
    [InlineData(null, 5.0, CheckOutcome.Undetermined)]
    public void Verify_DistanceOfTheFuse_IsThatOfTheCircuit(double? meters, double milliohms, CheckOutcome expected)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(5)), feed: 3, upstreamMilliOhms: milliohms, fuseDistance: meters);
        CircuitDesign circuit = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(10), DesignRules.SmallCraft);
        HarnessVerification harness = HarnessDesigner.Verify(HarnessBuilder.FromCircuit(asked, Blade(10), DesignRules.SmallCraft, Of(6)).Build());

        Assert.Equal(expected, circuit.Of(CheckKind.FuseDistance).Outcome);
        Assert.Equal(expected, harness.Find(CheckKind.FuseDistance, "fuse")!.Value.Outcome);
    }

    // Together they carry 40 A; the thin one alone does not: the fuse does not protect it when the other comes loose.
    [Fact]
    public void Verify_AFuseForBothTogether_DoesNotProtectTheThinOne()
    {
        HarnessVerification verified = HarnessDesigner.Verify(HarnessBuilder.FromCircuit(Heater(30), Blade(40), DesignRules.RoadVehicle, Of(4), Of(1)).Build());
        Assert.Equal(Verdict.Fail, verified.Verdict);
        Assert.Contains(verified.Failed, check => check.Wire == "feed 2" && check.Kind == CheckKind.FuseProtectsWire);
        Assert.DoesNotContain(verified.Failed, check => check.Wire == "feed 1" && check.Kind == CheckKind.ContinuousCurrent);
    }

    // Equal wires said so are the segment of two: the same drop and current.
    [Fact]
    public void Solve_TwoEqualWires_IsTheCircuitOfTwoInParallel()
    {
        CircuitRequirements asked = Heater(12);
        double volts = HarnessBuilder.FromCircuit(asked, Blade(15), DesignRules.RoadVehicle, Of(2.5), Of(2.5)).Build().Solve().VoltageAt("load").Volts;
        CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3), 2), ReturnPath.Wire(M(3)));
        Assert.Equal(CircuitDesigner.Verify(asked, path, Blade(15), DesignRules.RoadVehicle).SupplyRange.Nominal.VoltageAtLoad.Volts, volts, 3);
    }

    [Fact]
    public void FromCircuit_WithAllThatRequirementsSay_PutsItInItsPlace()
    {
        FuseRating main = FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(40));
        CircuitRequirements asked = Heater(10).WithJoints(Joint.Create("crimps", MilliOhm(4))).WithReturn(ReturnPath.Chassis(MilliOhm(2)))
            .WithUpstreamProtection(UpstreamProtection.Fuse(main).WithUpstream(MilliOhm(3)));
        Harness harness = HarnessBuilder.FromCircuit(asked, Blade(15), DesignRules.RoadVehicle, Of(4), Of(2.5, 3.5)).Build();
        Assert.Equal(
            ["chassis", "feed 1", "feed 2", "fuse", "joints", "main fuse", "supply lead", "supply lead to main fuse"],
            harness.Branches.Select(branch => branch.Id).Order(StringComparer.Ordinal));
        HarnessSolution solution = harness.Solve();
        Assert.Equal(10 * (0.003 + 0.009 + 0.004 + 0.002), ((double)solution.Lost.Watts / 10) - WireVolts(solution), 3);
    }

    private static double WireVolts(HarnessSolution solution) => (double)(solution.LossOf("feed 1").Watts + solution.LossOf("feed 2").Watts) / 10;

    [Fact]
    public void FromCircuit_WhatItCannotSay_IsRefused()
    {
        Assert.Throws<ArgumentException>("feed", () => HarnessBuilder.FromCircuit(Heater(10), null, DesignRules.RoadVehicle));
        Assert.Throws<ArgumentNullException>("requirements", () => HarnessBuilder.FromCircuit(null!, null, DesignRules.RoadVehicle, Of(4)));
        Assert.Throws<ArgumentException>("requirements", () => HarnessBuilder.FromCircuit(Heater(10).WithReturn(ReturnPath.Shared(MilliOhm(2), A(3))), null, DesignRules.RoadVehicle, Of(4)));
    }

    /// <summary>The wires of a harness are as warm as their current makes them: a stated temperature was dropped, and 150 °C on 70 °C insulation passed.</summary>
    [Fact]
    public void FromCircuit_OfAWireWithAStatedTemperature_IsRefused()
    {
        Segment hot = Of(2.5).WithTemperature(ConductorTemperature.At(C(150)));
        Assert.Throws<ArgumentException>("feed", () => HarnessBuilder.FromCircuit(Heater(5), Blade(7.5), DesignRules.RoadVehicle, hot));
        Assert.Throws<ArgumentException>("requirements", () => HarnessBuilder.FromCircuit(Heater(5).WithReturn(ReturnPath.Wire(hot)), Blade(7.5), DesignRules.RoadVehicle, Of(2.5)));
    }
}

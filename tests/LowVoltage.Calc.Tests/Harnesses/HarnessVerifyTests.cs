using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using UnitsNet;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Checks of a harness where more than one load shares a wire, a fuse or a ground.</summary>
public class HarnessVerifyTests
{
    private static Load Amperes(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    // 5 A and 9 A behind one main fuse: at 80 % loading it must be 14/0.8 = 17.5 A.
    [Fact]
    public void Verify_MainFuse_CarriesTheSum()
    {
        HarnessVerification at = HarnessDesigner.Verify(Vans.Two(Amperes(5), Amperes(9)).Build());
        double share = DesignRules.RoadVehicle.FusePractice.Loading;

        Assert.Equal(14 / share, at.Find(CheckKind.FuseCarriesLoad, "FM")!.Value.Result.Limit!.Value, 1e-6);
        Assert.Equal(5 / share, at.Find(CheckKind.FuseCarriesLoad, "FL")!.Value.Result.Limit!.Value, 1e-6);
        Assert.Equal(14, at.Find(CheckKind.ContinuousCurrent, "main")!.Value.Result.Value!.Value, 1e-9);
        Assert.Equal(9, at.Find(CheckKind.ContinuousCurrent, "right ground")!.Value.Result.Value!.Value, 1e-9);
    }

    // The drop of a load is what its path loses, the others' current in main and chassis counted: Ohm's law by hand, the wires as warm as they are.
    [Fact]
    public void Verify_SharedFeedAndChassis_CountInTheDrop()
    {
        Harness harness = Vans.Two(Amperes(5), Amperes(9)).Build();
        HarnessVerification at = HarnessDesigner.Verify(harness);
        HarnessSolution solved = harness.Solve(SupplyLevel.Nominal);
        double ohms(string wire) => solved.LossOf(wire).Watts is var watts && solved.CurrentOf(wire).Amperes is var i ? (double)watts / i / i : 0;
        double drop = (14 * ohms("main")) + (5 * ohms("left feed")) + (5 * ohms("left ground")) + (14 * 0.002);

        Assert.Equal(drop, at.Find(CheckKind.VoltageDrop, "left")!.Value.Result.Value!.Value, 1e-9);

        // Copper: 10 mm² has at most 1.84 mΩ/m at 20 °C (ISO 6722-1, table of conductor resistances), and some 4 % more ten kelvins above that.
        Assert.Equal(2 * 0.00184, ohms("main"), 0.05 * 2 * 0.00184);
    }

    // Two circuits behind one ground wire: the one sees the other's current there as a circuit does whose return is shared with that current. What the other takes in the source's 10 mΩ, 0.08 V of 8 A, the circuit is told as less voltage.
    [Fact]
    public void Verify_SharedGroundWire_IsTheSharedReturnOfACircuit()
    {
        Conductor feed = Vans.Copper(2.5), ground = Vans.Copper(4);
        Source battery(double least) => Source.BehindResistance(V(least), V(12.4), V(14.4), MilliOhm(4), MilliOhm(10));
        CircuitRequirements asked = new()
        {
            Source = battery(11.5 - 0.08),
            Load = Amperes(6),
            Feed = Length.FromMeters(4),
            Return = ReturnPath.Shared([Segment.Create(ground, Length.FromMeters(2))], ElectricCurrent.FromAmperes(8)),
            Place = Vans.Cabin.WithLoadedConductors(2),
            Insulation = Vans.Vinyl,
            Upstream = ElectricResistance.Zero,
        };
        CircuitDesign circuit = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(feed, Length.FromMeters(4)), asked.Return), Vans.Blade(10), DesignRules.RoadVehicle);
        Place pair = Vans.Cabin.WithLoadedConductors(2);
        Harness harness = new HarnessBuilder("shared ground", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "one fused", "other fused", "one +", "other +").Grounds("stud")
            .Source("battery", "plus", "minus", battery(11.5))
            .Fuse("F1", "plus", "one fused", Vans.Blade(10)).Fuse("F2", "plus", "other fused", Vans.Blade(10))
            .Wire("one feed", "one fused", "one +", feed, Length.FromMeters(4), pair, Vans.Vinyl).Wire("other feed", "other fused", "other +", feed, Length.FromMeters(1), pair, Vans.Vinyl)
            .Wire("ground", "stud", "minus", ground, Length.FromMeters(2), pair, Vans.Vinyl)
            .Load("one", "one +", "stud", Amperes(6)).Load("other", "other +", "stud", Amperes(8))
            .Build();
        HarnessVerification at = HarnessDesigner.Verify(harness);

        foreach (CheckKind kind in new[] { CheckKind.FaultOpensFuse, CheckKind.BreakingCapacity, CheckKind.FuseCarriesLoad, CheckKind.ShortCircuitTemperature, CheckKind.OverloadTemperature })
        {
            CheckResult its = at.Checks.Where(c => c.Kind == kind && c.Place == "F1").OrderBy(c => c.Outcome == CheckOutcome.Pass ? 1 : 0).ThenBy(c => c.Result.Tightness).First().Result, circuits = circuit.Find(kind)!.Value;
            Assert.Equal(circuits.Outcome, its.Outcome);
            Assert.Equal(circuits.Value!.Value, its.Value!.Value, 1e-9 * circuits.Value.Value);
        }

        // The circuit counts the shared wire as hot as it may be; solved, it is as warm as 14 A make it: the drop is no more than the circuit's.
        double drop = at.Find(CheckKind.VoltageDrop, "one")!.Value.Result.Value!.Value, most = circuit.Find(CheckKind.VoltageDrop)!.Value.Value!.Value;
        Assert.InRange(drop, 0.8 * most, most);
    }

    [Fact]
    public void Verify_StartOfOneLoad_IsSeenByTheOther()
    {
        Load radio = Load.ConstantPower(Power.FromWatts(20), minimumVoltage: ElectricPotential.FromVolts(11));
        Load winch = Load.Motor(ElectricCurrent.FromAmperes(8), ElectricCurrent.FromAmperes(60), ElectricCurrent.FromAmperes(60), Duration.FromSeconds(1));
        HarnessCheck check = HarnessDesigner.Verify(Vans.Two(radio, winch).Build()).Find(CheckKind.LoadVoltage, "left")!.Value;

        Assert.Equal("right starts", check.LoadCase);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
    }

    [Fact]
    public void Verify_LoadThatGetsNothing_Fails()
    {
        // 3 kW through 1.5 mm² at 12 V cannot be.
        HarnessVerification at = HarnessDesigner.Verify(Vans.Two(Load.ConstantPower(Power.FromWatts(3000)), Amperes(5)).Build());

        Assert.Equal(Verdict.Fail, at.Verdict);
        Assert.Equal(CheckOutcome.Fail, at.Find(CheckKind.PowerDelivery, "left")!.Value.Outcome);
    }

    [Fact]
    public void Verify_UnfusedCircuit_Fails()
    {
        HarnessBuilder builder = Vans.Two(Amperes(5), Amperes(9)).Remove("FM").Resistance("link", "plus", "main out", ElectricResistance.FromMilliohms(0.1)).Remove("FL")
            .Resistance("bare", "panel", "left fused", ElectricResistance.FromMilliohms(0.1));
        HarnessVerification at = HarnessDesigner.Verify(builder.Build());

        Assert.Equal(CheckOutcome.Fail, at.Find(CheckKind.OvercurrentProtection, "main")!.Value.Outcome);
        Assert.Contains(at.Findings, f => f.Places.Contains("left feed") && f.Severity == FindingSeverity.Warning);
    }

    [Fact]
    public void Verify_MoreThanSixtyVolts_IsRefused()
    {
        Harness harness = new HarnessBuilder("high", DesignRules.Bench).Terminals("plus", "minus")
            .Source("pack", "plus", "minus", Source.Ideal(ElectricPotential.FromVolts(72))).Load("heater", "plus", "minus", Load.Resistance(ElectricResistance.FromOhms(10))).Build();

        ArgumentException refused = Assert.Throws<ArgumentException>(() => HarnessDesigner.Verify(harness));
        Assert.Contains("pack", refused.Message, StringComparison.Ordinal);
        Assert.Contains("72 V", refused.Message, StringComparison.Ordinal);
        Assert.Contains(harness.Solve().Remarks, r => r.Contains("60 V", StringComparison.Ordinal));
    }

    [Fact]
    public void Verify_SwitchedOffInEveryCase_IsNoPass()
    {
        HarnessBuilder builder = Vans.Two(Amperes(5), Amperes(9)).Remove("left feed").Terminals("left switched").AddWire("left feed", "left fused", "left switched", 1.5, 3)
            .Switch("S", "left switched", "left +", ElectricResistance.FromMilliohms(5), isClosed: false);
        HarnessVerification off = HarnessDesigner.Verify(builder.Build()), on = HarnessDesigner.Verify(builder.Add(LoadCase.Create("lit").WithSwitch("S", true)).Build());

        Assert.Contains(off.Findings, f => f.Places.Contains("left") && f.Severity == FindingSeverity.Undetermined);
        Assert.DoesNotContain(on.Findings, f => f.Places.Contains("left") && f.Severity == FindingSeverity.Undetermined);
        Assert.NotNull(on.Find(CheckKind.VoltageDrop, "left"));
    }

    [Fact]
    public void Verify_Twice_SaysTheSame()
    {
        Harness harness = Vans.Two(Amperes(5), Amperes(9)).Build();
        Assert.True(HarnessComparison.Between(HarnessDesigner.Verify(harness), HarnessDesigner.Verify(harness), 0).IsSame);
    }
}

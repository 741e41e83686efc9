using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A branch in which the loads' currents are against each other carries most while one of them pauses; counted with all on, they cancelled.</summary>
public class DutyPausesTests
{
    private static readonly Place Air = new() { Ambient = C(30) };

    private static HarnessVerification Batteries(double share) => HarnessDesigner.Verify(
        new HarnessBuilder("two batteries", DesignRules.Bench).Terminals("a", "b").Busbars("one", "other").Grounds("ground")
            .Source("first", "one", "ground", Source.BehindResistance(V(12.8), MilliOhm(20))).Source("second", "other", "ground", Source.BehindResistance(V(12), MilliOhm(20)))
            .Fuse("fuse one", "one", "a", Blade(10)).Fuse("fuse two", "other", "b", Blade(10)).Wire("tie", "a", "b", RoadVehicle(1.5), M(0.3), Air, InsulationMaterial.PolyvinylChloride)
            .Load("load", "one", "ground", Load.ConstantCurrent(A(55)).WithDutyCycle(DutyCycle.FromFraction(share))).Build());

    /// <summary>
    /// 0.8 V between two batteries drive 0.8/(0.04 + R) through a tie while the load pauses; with the load on 55·0.02/(0.04 + R) less: that they are against each other is no relief to the tie.
    /// </summary>
    [Fact]
    public void TieBetweenBatteries_CarriesMostWhileTheLoadPauses()
    {
        HarnessVerification always = Batteries(1), pausing = Batteries(0.25);
        double cold = 0.3 * RoadVehicle(1.5).OhmsPerMeterAt(20);
        CheckResult tie = pausing.Find(CheckKind.ContinuousCurrent, "tie")!.Value.Result, fuse = pausing.Find(CheckKind.FuseCarriesLoad, "fuse one")!.Value.Result;

        // Warm, the tie has up to a quarter more than at 20 °C.
        Assert.InRange(tie.Value!.Value, 0.8 / (0.04 + (1.25 * cold)), 0.8 / (0.04 + cold));
        Assert.Equal(CheckOutcome.Fail, fuse.Outcome);
        Assert.InRange(fuse.Limit!.Value * DesignRules.Bench.FusePractice.Loading, 0.8 / (0.04 + (1.25 * cold)), 0.8 / (0.04 + cold));
        Assert.InRange(always.Find(CheckKind.ContinuousCurrent, "tie")!.Value.Result.Value!.Value, 0, 0.5 * tie.Value.Value);
    }

    /// <summary>Two loads of 15 A on both sides of a neutral, each on half of the time: with both on nothing flows back, with one on 15 A do.</summary>
    [Fact]
    public void Neutral_CarriesOneLoadWhileTheOtherPauses()
    {
        Load load = Load.ConstantCurrent(A(15)).WithDutyCycle(DutyCycle.FromFraction(0.5));
        Harness lights = new HarnessBuilder("neutral", DesignRules.Bench).Terminals("plus", "minus", "middle", "a", "b", "c", "fused")
            .Source("upper", "plus", "middle", Source.BehindResistance(V(12), MilliOhm(20))).Source("lower", "middle", "minus", Source.BehindResistance(V(12), MilliOhm(20)))
            .Wire("up", "plus", "a", RoadVehicle(2.5), M(1.5), Air, InsulationMaterial.PolyvinylChloride).Wire("down", "minus", "b", RoadVehicle(2.5), M(1.5), Air, InsulationMaterial.PolyvinylChloride)
            .Fuse("fuse", "middle", "fused", Blade(5)).Wire("neutral", "fused", "c", RoadVehicle(0.5), M(1.5), Air, InsulationMaterial.PolyvinylChloride)
            .Load("one", "a", "c", load).Load("two", "c", "b", load).Build();
        HarnessVerification found = HarnessDesigner.Verify(lights);
        CheckResult neutral = found.Find(CheckKind.ContinuousCurrent, "neutral")!.Value.Result, fuse = found.Find(CheckKind.FuseCarriesLoad, "fuse")!.Value.Result;
        Assert.Equal((CheckOutcome.Fail, CheckOutcome.Fail), (neutral.Outcome, fuse.Outcome));

        // √½ of 15 A of each, counted as if they never balanced, and never more than the 15 A of one.
        Assert.InRange(neutral.Value!.Value, 15 * Math.Sqrt(0.5), 15 * (1 + 1e-9));
        Assert.Equal(15 / DesignRules.Bench.FusePractice.Loading, fuse.Limit!.Value, 1e-6);
    }

    /// <summary>Where all of them flow the same way nothing changes: the heat of the mean, as in a circuit.</summary>
    [Fact]
    public void Trunk_OfLoadsThatFlowTheSameWay_IsHeatedByTheirSum()
    {
        Harness van = new HarnessBuilder("van", DesignRules.Bench).Terminals("plus", "fused", "end").Grounds("ground").Source("battery", "plus", "ground", Source.BehindResistance(V(12), MilliOhm(20)))
            .Fuse("fuse", "plus", "fused", Blade(20)).Wire("trunk", "fused", "end", RoadVehicle(2.5), M(1.5), Air, InsulationMaterial.PolyvinylChloride)
            .Load("one", "end", "ground", Load.ConstantCurrent(A(6)).WithDutyCycle(DutyCycle.FromFraction(0.25))).Load("two", "end", "ground", Load.ConstantCurrent(A(4))).Build();
        Assert.Equal((6 * 0.5) + 4, HarnessDesigner.Verify(van).Find(CheckKind.ContinuousCurrent, "trunk")!.Value.Result.Value!.Value, 1e-9);
    }

    /// <summary>A charger at its limit: while its own load pauses all of it goes through the tie, with the load on what is left. The tie was counted with what is left.</summary>
    [Fact]
    public void TieOfAChargerAtItsLimit_CarriesAllOfItWhileItsLoadPauses()
    {
        Harness charged = new HarnessBuilder("charger", DesignRules.Bench).Busbars("battery side", "charger side").Grounds("ground")
            .Source("battery", "battery side", "ground", Source.BehindResistance(V(12.4), MilliOhm(10))).Source("charger", "charger side", "ground", Source.CurrentLimited(V(14.4), A(30)))
            .Wire("tie", "battery side", "charger side", RoadVehicle(1.5), M(1), Air, InsulationMaterial.PolyvinylChloride)
            .Load("load", "charger side", "ground", Load.ConstantCurrent(A(25)).WithDutyCycle(DutyCycle.FromFraction(0.5))).Build();
        CheckResult tie = HarnessDesigner.Verify(charged).Find(CheckKind.ContinuousCurrent, "tie")!.Value.Result;

        // 30 A for half of the time and 5 A for the other half: √((900 + 25)/2) = 21.5 A at least; 30 A at most.
        Assert.Equal(CheckOutcome.Fail, tie.Outcome);
        Assert.InRange(tie.Value!.Value, Math.Sqrt((900 + 25) / 2.0), 30 * (1 + 1e-9));
    }

    /// <summary>A thin wire to a small lamp is none of a pump's whose pulses are stated elsewhere.</summary>
    [Fact]
    public void ThinWire_BesideALoadWithStatedTimes_IsNotUndeterminedForThose()
    {
        Load pump = Load.ConstantCurrent(A(4)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(4)));
        Harness lamps = new HarnessBuilder("lamps", DesignRules.Bench).Terminals("plus", "fused", "pump +", "lamp +").Grounds("ground").Source("battery", "plus", "ground", Source.BehindResistance(V(12), MilliOhm(20)))
            .Fuse("fuse", "plus", "fused", Blade(10)).Wire("to the pump", "fused", "pump +", RoadVehicle(1.5), M(1), Air, InsulationMaterial.PolyvinylChloride).Load("pump", "pump +", "ground", pump)
            .Wire("to the lamp", "fused", "lamp +", Awg(32), M(1), Air, InsulationMaterial.PolyvinylChloride).Load("lamp", "lamp +", "ground", Load.ConstantCurrent(A(0.02))).Build();
        Assert.Equal(CheckOutcome.Pass, HarnessDesigner.Verify(lamps).Find(CheckKind.ContinuousCurrent, "to the lamp")!.Value.Outcome);
    }
}

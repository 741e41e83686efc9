using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Every fuse on the way of a start is asked whether it holds, as the fuse of a circuit is; with rings, busbars, main fuses and fuses in the way back between.</summary>
public class FuseEndsTests
{
    private static readonly Place Air = new() { Ambient = C(25) };
    private static readonly Load Pump = Load.Motor(A(8), A(40), A(40), Duration.FromSeconds(0.4)).WithThermalCutOut();

    private static FuseRating HighBlade(double amperes) => FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(amperes));

    private static HarnessVerification Car(double main, bool ground, DesignRules rules, Load load, double lead = 0)
    {
        HarnessBuilder car = new HarnessBuilder("car", rules).Terminals("plus", "load +", "own").Busbars("bus").Grounds("ground")
            .Source("battery", "plus", "ground", Source.BehindResistance(V(12), MilliOhm(20))).Fuse("own fuse", "bus", "own", HighBlade(20)).Wire("feed", "own", "load +", RoadVehicle(8), M(1), Air, InsulationMaterial.PolyvinylChloride);
        car = lead > 0
            ? car.Terminals("behind the lead").Wire("lead", "plus", "behind the lead", RoadVehicle(8), M(lead), Air, InsulationMaterial.PolyvinylChloride).Fuse("main", "behind the lead", "bus", Blade(main))
            : car.Fuse("main", "plus", "bus", Blade(main));
        car = ground ? car.Load("load", "load +", "ground", load)
            : car.Terminals("load −").Wire("return", "load −", "ground", RoadVehicle(8), M(1), Air, InsulationMaterial.PolyvinylChloride).Load("load", "load +", "load −", load);
        return HarnessDesigner.Verify(car.Build());
    }

    /// <summary>A main fuse between battery and busbar, the chassis as the way back: it has no wire, was not asked, and the car passed.</summary>
    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    public void MainFuseOfABusbar_OnAChassis_IsAskedAsWithAWireBack(double main)
    {
        HarnessCheck chassis = Car(main, ground: true, DesignRules.RoadVehicle, Pump).Find(CheckKind.InrushHeld, "main")!.Value;
        HarnessCheck wire = Car(main, ground: false, DesignRules.RoadVehicle, Pump).Find(CheckKind.InrushHeld, "main")!.Value;
        Assert.Equal((CheckOutcome.Fail, CheckOutcome.Fail), (chassis.Outcome, wire.Outcome));
        Assert.Equal(wire.Result.Value!.Value, chassis.Result.Value!.Value, 1e-9);
    }

    /// <summary>Sized with nothing asked of it, that main fuse was the smallest that carries the running current.</summary>
    [Fact]
    public void MainFuseOfABusbar_LeftToTheSizing_HoldsTheStart()
    {
        Harness car = new HarnessBuilder("car", DesignRules.RoadVehicle).Terminals("plus", "load +", "own").Busbars("bus").Grounds("ground")
            .Source("battery", "plus", "ground", Source.BehindResistance(V(12), MilliOhm(20))).Fuse("main", "plus", "bus", null).Fuse("own fuse", "bus", "own", null)
            .Wire("feed", "own", "load +", null, M(1), Air, InsulationMaterial.PolyvinylChloride).Load("load", "load +", "ground", Pump).Build();
        HarnessDesign sized = HarnessDesigner.Design(car);
        Assert.Equal(Verdict.Pass, sized.Verification.Verdict);
        Assert.Equal(CheckOutcome.Pass, sized.Verification.Find(CheckKind.InrushHeld, "main")!.Value.Outcome);
    }

    /// <summary>33 CFR 183.455: 7 inches. Five metres before the main fuse of a busbar passed, and the fuse behind it said zero.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void MainFuseOfABusbar_IsAskedForItsDistance(bool ground)
    {
        CheckResult distance = Car(30, ground, new DesignRules(DesignRules.RoadVehicle) { FusePractice = DesignRules.SmallCraft.FusePractice }, Load.ConstantCurrent(A(8)), lead: 5)
            .Find(CheckKind.FuseDistance, "main")!.Value.Result;
        Assert.Equal((CheckOutcome.Fail, 5.0), (distance.Outcome, distance.Value));
        Assert.Equal(0.1778, distance.Limit!.Value, 1e-6);
    }

    private static CircuitRequirements Feeds(Load load, double feed, ReturnPath back, DropLimit? drop = null) => new()
    {
        Source = Source.BehindResistance(V(12), MilliOhm(20)), Load = load, Feed = M(feed), Return = back, Place = Air, Insulation = InsulationMaterial.PolyvinylChloride, Upstream = MilliOhm(0),
        FuseDistance = M(0), DropLimit = drop,
    };

    private static HarnessVerification SideBySide(CircuitRequirements asked, FuseRating fuse, double squareMillimeters)
    {
        Segment feed = Segment.Create(RoadVehicle(squareMillimeters), asked.Feed);
        return HarnessDesigner.Verify(HarnessBuilder.FromCircuit(asked, fuse, DesignRules.RoadVehicle, feed, feed).Build());
    }

    /// <summary>Two feeds side by side are a ring: the fuse before it was not asked about the start.</summary>
    [Fact]
    public void FuseBeforeTwoFeeds_IsAskedAboutTheStart_AsWithTwoWiresInParallel()
    {
        CircuitRequirements asked = Feeds(Load.Motor(A(8), A(60), A(60), Duration.FromSeconds(0.4)).WithThermalCutOut(), 1, ReturnPath.Chassis(MilliOhm(1)));
        HarnessCheck start = SideBySide(asked, Blade(15), 6).Find(CheckKind.InrushHeld, "fuse")!.Value;
        CheckResult circuit = CircuitDesigner.Verify(asked.WithParallelWires(ParallelWires.Exactly(2)), RoadVehicle(6), Blade(15), DesignRules.RoadVehicle).Of(CheckKind.InrushHeld);
        Assert.Equal((CheckOutcome.Fail, CheckOutcome.Fail), (circuit.Outcome, start.Outcome));
        Assert.Equal(circuit.Value!.Value, start.Result.Value!.Value, 1e-6 * circuit.Value.Value);
    }

    /// <summary>A short at the end of two feeds of 30 m that opens the fuse too late was not asked about. One feed by itself brings less current than both: never sooner than the circuit says.</summary>
    [Fact]
    public void FuseBeforeTwoFeeds_IsAskedAboutTheFarEnd()
    {
        CircuitRequirements asked = Feeds(Load.ConstantCurrent(A(8)), 30, ReturnPath.Chassis(MilliOhm(200)), DropLimit.Percent(50));
        Assert.Equal(CheckOutcome.Fail, CircuitDesigner.Verify(asked.WithParallelWires(ParallelWires.Exactly(2)), RoadVehicle(2.5), Blade(20), DesignRules.RoadVehicle).Of(CheckKind.FaultOpensFuse).Outcome);
        Assert.Equal(CheckOutcome.Fail, SideBySide(asked, Blade(20), 2.5).Find(CheckKind.FaultOpensFuse, "fuse")!.Value.Outcome);

        CircuitRequirements near = Feeds(Load.ConstantCurrent(A(8)), 2, ReturnPath.Chassis(MilliOhm(1)));
        double circuit = CircuitDesigner.Verify(near.WithParallelWires(ParallelWires.Exactly(2)), RoadVehicle(2.5), Blade(20), DesignRules.RoadVehicle).Of(CheckKind.FaultOpensFuse).Value!.Value;
        CheckResult harness = SideBySide(near, Blade(20), 2.5).Find(CheckKind.FaultOpensFuse, "fuse")!.Value.Result;
        Assert.Equal(CheckOutcome.Pass, harness.Outcome);
        Assert.InRange(harness.Value!.Value, circuit, 5);
    }

    /// <summary>The start at a main fuse was worked out over the way to the next fuse, not to the load: too little for a constant power beside a motor, too much for a capacitor.</summary>
    [Fact]
    public void MainFuse_OfRandomCircuits_HoldsTheStartInTheHarnessAsInTheCircuit()
    {
        int asked = 0, fails = 0;
        for (int n = 0; n < 1500; n++)
        {
            if (OneLoop.Draw(1130, n) is not { } loop || loop.Circuit.Fuse is not { } fuse || !loop.Circuit.Requirements.Load.HasSurge || loop.Circuit.Requirements.Upstream is not { } upstream)
            {
                continue;
            }

            // Smaller than the load needs, so that starts exceed it.
            FuseRating main = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(Math.Min(40, Math.Max(1, fuse.Current.Amperes * (0.3 + (0.1 * (n % 8)))))));
            CircuitRequirements requirements = new(loop.Circuit.Requirements)
            {
                FuseDistance = null, UpstreamProtection = [UpstreamProtection.Fuse(main).WithUpstream(ElectricResistance.FromOhms(0.5 * upstream.Ohms)).WithDistance(M(0), sheathed: false)],
            };
            Segment feed = Segment.Create(loop.Circuit.Wire, requirements.Feed);
            CircuitDesign circuit = CircuitDesigner.Verify(requirements, CircuitPath.Create(feed, requirements.Return).WithFeedJoints([.. requirements.Joints]), fuse, loop.Circuit.Rules);
            HarnessCheck? harness = HarnessDesigner.Verify(HarnessBuilder.FromCircuit(requirements, fuse, loop.Circuit.Rules, feed).Build()).Find(CheckKind.InrushHeld, "main fuse");
            CheckResult? own = circuit.Find(CheckKind.MainFuseHoldsStart);
            if (!circuit.SupplyRange.Exists)
            {
                continue;
            }

            Assert.Equal((n, own?.Outcome), (n, harness?.Outcome));
            if (own is { Value: { } value } && !double.IsInfinity(value))
            {
                Assert.True(Math.Abs(harness!.Value.Result.Value!.Value - value) <= 1e-9 * value, $"{n}: {value} against {harness.Value.Result.Value}");
            }

            asked += own is null ? 0 : 1;
            fails += own?.Outcome == CheckOutcome.Fail ? 1 : 0;
        }

        Assert.True(asked > 100 && fails > 30, $"{asked} asked, {fails} fail");
    }

    [Fact]
    public void FuseInTheWayBack_IsAskedAboutTheStart()
    {
        HarnessBuilder builder = new HarnessBuilder("fuse in the way back", DesignRules.RoadVehicle).Terminals("plus", "minus", "fused", "load +", "load −", "back")
            .Source("battery", "plus", "minus", Source.BehindResistance(V(12), MilliOhm(20))).Fuse("fuse", "plus", "fused", HighBlade(20)).Fuse("fuse back", "back", "minus", Blade(15))
            .Wire("out", "fused", "load +", RoadVehicle(8), M(1), Air, InsulationMaterial.PolyvinylChloride).Wire("home", "load −", "back", RoadVehicle(8), M(1), Air, InsulationMaterial.PolyvinylChloride)
            .Load("load", "load +", "load −", Pump);
        CheckResult start = HarnessDesigner.Verify(builder.Build()).Find(CheckKind.InrushHeld, "fuse back")!.Value.Result;

        // 40 A for 0.4 s, 640 A²s, through 15 A: as the fuse in front would have it.
        Assert.Equal(CheckOutcome.Fail, start.Outcome);
    }

    /// <summary>Fuses between two batteries: how a start divides is not worked out. What holds all of it passes, the rest is undetermined, not a pass.</summary>
    [Theory]
    [InlineData(15, CheckOutcome.Undetermined)]
    [InlineData(40, CheckOutcome.Pass)]
    public void FusesBetweenBatteries_UnderAStart_PassOnlyWhatHoldsAllOfIt(double rating, CheckOutcome outcome)
    {
        FuseRating fuse = rating > 20 ? HighBlade(rating) : Blade(rating);
        Harness two = new HarnessBuilder("two batteries", DesignRules.RoadVehicle).Terminals("one", "other", "load +").Busbars("bus").Grounds("ground")
            .Source("first", "one", "ground", Source.BehindResistance(V(12), MilliOhm(20))).Source("second", "other", "ground", Source.BehindResistance(V(12), MilliOhm(20)))
            .Fuse("fuse one", "one", "bus", fuse).Fuse("fuse two", "other", "bus", fuse).Fuse("own fuse", "bus", "load +", HighBlade(30))
            .Load("load", "load +", "ground", Load.Motor(A(8), A(60), A(60), Duration.FromSeconds(0.4)).WithThermalCutOut()).Build();
        HarnessCheck start = HarnessDesigner.Verify(two).Find(CheckKind.InrushHeld, "fuse one")!.Value;
        Assert.Equal(outcome, start.Outcome);
        Assert.EndsWith("; that is all of the start: what of it passes this fuse and what passes others is not worked out", start.Result.Note, StringComparison.Ordinal);
    }

    private static HarnessBuilder Panel(double main, Source battery) => new HarnessBuilder("panel", DesignRules.Bench).Terminals("plus", "behind").Busbars("bus").Grounds("ground")
        .Source("battery", "plus", "ground", battery).Fuse("main", "plus", "behind", main > 40 ? HighBlade(main) : Blade(main)).Wire("lead", "behind", "bus", RoadVehicle(16), M(0.5), Air, InsulationMaterial.PolyvinylChloride);

    /// <summary>
    /// Two equal circuits that start together are one load behind half the resistance of one wire: counted behind the whole wire of one of them, the main fuse held what it does not.
    /// </summary>
    [Fact]
    public void LoadsThatStartTogether_AreCountedThroughTheWiresOfAll()
    {
        Load Motor(double times) => Load.Motor(A(5 * times), A(20 * times), A(20 * times), Duration.FromSeconds(0.1), V(12)).WithThermalCutOut();
        Source battery = Source.BehindResistance(V(12.6), MilliOhm(20));
        HarnessBuilder two = Panel(25, battery).Terminals("own 0", "own 1", "load 0", "load 1");
        for (int k = 0; k < 2; k++)
        {
            two = two.Fuse($"fuse {k}", "bus", $"own {k}", Blade(20)).Wire($"wire {k}", $"own {k}", $"load {k}", RoadVehicle(4), M(3), Air, InsulationMaterial.PolyvinylChloride).Load($"motor {k}", $"load {k}", "ground", Motor(1));
        }

        CheckResult both = HarnessDesigner.Verify(two.Add(LoadCase.AllOn, LoadCase.Create("both").WithStarting("motor 0", "motor 1")).Build()).Find(CheckKind.InrushHeld, "main")!.Value.Result;
        HarnessBuilder one = Panel(25, battery).Terminals("own", "load +").Fuse("fuse", "bus", "own", HighBlade(40))
            .Wire("wire", "own", "load +", RoadVehicle(4), M(1.5), Air, InsulationMaterial.PolyvinylChloride).Load("motors", "load +", "ground", Motor(2));
        CheckResult same = HarnessDesigner.Verify(one.Build()).Find(CheckKind.InrushHeld, "main")!.Value.Result;
        Assert.Equal((CheckOutcome.Fail, CheckOutcome.Fail), (same.Outcome, both.Outcome));
        Assert.Equal(same.Value!.Value, both.Value!.Value, 1e-6 * same.Value.Value);
    }

    /// <summary>Two fuses side by side protect the wires behind them: the main fuse before them was asked for those too.</summary>
    [Fact]
    public void MainFuseBeforeFusesSideBySide_IsNotAskedToProtectTheirWires()
    {
        HarnessBuilder pair = Panel(60, Source.BehindResistance(V(12.6), MilliOhm(20))).Terminals("one", "other", "load +");
        foreach (string k in new[] { "one", "other" })
        {
            pair = pair.Fuse($"fuse {k}", "bus", k, Blade(15)).Wire($"wire {k}", k, "load +", RoadVehicle(4), M(2), Air, InsulationMaterial.PolyvinylChloride);
        }

        HarnessVerification found = HarnessDesigner.Verify(pair.Load("load", "load +", "ground", Load.ConstantCurrent(A(10))).Build());
        Assert.DoesNotContain(found.Checks, check => check.Outcome == CheckOutcome.Fail);
        Assert.DoesNotContain(found.Checks, check => check.Place == "main" && check.Wire is { } wire && wire.StartsWith("wire", StringComparison.Ordinal));
    }

    /// <summary>All circuits behind a second fuse, each with a wire back: a fault before that fuse does not return through the wire of one load.</summary>
    [Fact]
    public void MainFuseBeforeASecondFuse_IsNotAskedToProtectTheWireBackOfOneLoad()
    {
        HarnessBuilder panel = Panel(60, Source.BehindResistance(V(12.6), MilliOhm(20))).Terminals("behind the second", "one", "one +", "one −", "other", "other +", "other −").Busbars("second bus")
            .Fuse("second", "bus", "behind the second", HighBlade(40)).Wire("feed", "behind the second", "second bus", RoadVehicle(10), M(1), Air, InsulationMaterial.PolyvinylChloride);
        foreach (string k in new[] { "one", "other" })
        {
            panel = panel.Fuse($"fuse {k}", "second bus", k, Blade(10)).Wire($"out {k}", k, $"{k} +", RoadVehicle(1.5), M(2), Air, InsulationMaterial.PolyvinylChloride)
                .Wire($"back {k}", $"{k} −", "ground", RoadVehicle(1.5), M(2), Air, InsulationMaterial.PolyvinylChloride).Load(k, $"{k} +", $"{k} −", Load.ConstantCurrent(A(5)));
        }

        HarnessVerification found = HarnessDesigner.Verify(panel.Build());
        Assert.DoesNotContain(found.Checks, check => check.Outcome == CheckOutcome.Fail);
        Assert.DoesNotContain(found.Checks, check => check.Place == "main" && check.Wire is { } wire && wire.StartsWith("back", StringComparison.Ordinal));
    }

    /// <summary>A charger that holds 20 A behind a fuse of 30 A: no start draws more through that, whatever the battery gives.</summary>
    [Fact]
    public void FuseOfAChargerThatHoldsLess_IsNotAskedAboutStarts()
    {
        HarnessBuilder charged = Panel(60, Source.BehindResistance(V(12.6), MilliOhm(20))).Terminals("charger +", "own", "load +").Source("charger", "charger +", "ground", Source.CurrentLimited(V(14.4), A(20)))
            .Fuse("charger fuse", "charger +", "bus", HighBlade(30)).Fuse("own fuse", "bus", "own", HighBlade(30)).Wire("wire", "own", "load +", RoadVehicle(6), M(2), Air, InsulationMaterial.PolyvinylChloride)
            .Load("load", "load +", "ground", Load.Motor(A(12), A(40), A(40), Duration.FromSeconds(0.3)).WithThermalCutOut());
        HarnessVerification found = HarnessDesigner.Verify(charged.Build());
        Assert.Null(found.Find(CheckKind.InrushHeld, "charger fuse"));
        Assert.DoesNotContain(found.Checks, check => check.Kind == CheckKind.InrushHeld && check.Outcome != CheckOutcome.Pass);
    }
}

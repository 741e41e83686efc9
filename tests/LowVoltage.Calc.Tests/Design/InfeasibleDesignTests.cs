using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Impossible circuits are answers: what stops them, by how much, and what would help.</summary>
public class InfeasibleDesignTests
{
    [Fact]
    public void Design_SeriesWithAndWithoutEnoughBreakingCapacity_TakesTheOneThatBreaksMore()
    {
        // An invented windlass: 1655 A at the fuse. A high-current blade breaks 1000 A, a strip fuse of the same rating 2000 A.
        CircuitRequirements asked = Circuit(
            Load.Motor(A(80), A(200), A(300), UnitsNet.Duration.FromSeconds(0.4)), Battery.LeadAcid(A(800)), feed: 7, upstreamMilliOhms: 6, drop: DropLimit.Percent(10));
        CircuitDesign design = CircuitDesigner.Design(asked, DesignRules.Bench);

        Assert.Equal(Verdict.Undetermined, design.Verdict);
        Assert.Equal(2000, design.Fuse!.BreakingCapacity!.Value.Amperes);
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.BreakingCapacity).Outcome);
    }

    private static readonly DesignRules Bench = DesignRules.Bench;

    [Fact]
    public void ConstantPower_BeyondReach_SaysHowMuchCouldBeDelivered()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantPower(W(50_000)), feed: 10), Bench, CheckKind.PowerDelivery, "a shorter run, a larger wire");

        // No size comes near, so the thinnest that is laid stands for them, without a fuse: 0.5 mm² class 5 (39.0 Ω/km) and the battery at its weakest, cold copper:
        // P = V²/(4R), and less since it heats.
        Assert.Equal("0.5 mm² class 5 copper", design.Wire.Name);
        Assert.Null(design.Fuse);
        double most = 11.89 * 11.89 / (4 * (0.018 + 0.020 + (20 * Plain.PerMeter(39.0, 30))));
        Assert.InRange(design.Governing.Value!.Value, 0.9 * most, most);
        Assert.Equal(50_000, design.Governing.Limit!.Value, 1e-6 * 50_000);
        Assert.Contains("more power than can come through", design.Governing.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.1)]
    public void Load_ThatMeltsTheWireFirst_IsAnAnswerWithANumber(double meters)
    {
        // On a stiff source a short thin wire melts long before the voltage is used up: the largest power is that of the melting current.
        foreach (Load load in new[]
        {
            Load.ConstantPower(W(5e4)), Load.ConstantCurrent(A(5000)), Load.Resistance(MilliOhm(1)), Load.Lamp(W(5e4), V(12)),
            Load.Together(Load.ConstantPower(W(5e3)), Load.Lamp(W(5e3), V(12))), Load.Together(Load.ConstantCurrent(A(400)), Load.Resistance(MilliOhm(30))),
        })
        {
            CircuitRequirements asked = Circuit(load, Source.Ideal(V(12)), feed: meters, back: ReturnPath.Chassis(ElectricResistance.Zero), upstreamMilliOhms: 0);
            CircuitDesign design = CircuitDesigner.Verify(asked, RoadVehicle(0.5), Blade(10), new DesignRules(Bench) { Ampacity = AmpacityBasis.LowerOf(AmpacityBasis.HeatBalance, AmpacityBasis.RoadVehicleTable) });
            Everything.AssertFinite(design);
            CheckResult power = design.Of(CheckKind.PowerDelivery);
            Assert.Equal(CheckOutcome.Fail, power.Outcome);
            Assert.True(power.Value > 0, load + ": " + power);

            // θ = 30 + 40·(I/Ir)² = 1083 °C at 5.13 times the rating.
            AmpacityBasis.HeatBalance.TryRate(RoadVehicle(0.5), asked, out ElectricCurrent rated);
            double melting = rated.Amperes * Math.Sqrt((1083 - 30) / 40.0);

            // The search for the peak stops within 1e-9 of the matched current V/(2R), here up to 2e-5 of the melting current.
            Near(melting * (12 - (melting * meters * Plain.PerMeter(37.1, 1083))), power.Value, 3e-5);
        }
    }

    [Fact]
    public void Place_TooHot_NamesTheReasonOfTheBasis()
    {
        // Air hotter than the insulation may be fails, whatever the current; beyond a table, or at the insulation's very limit, nothing is rated.
        CircuitDesign hot = Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 80), DesignRules.RoadVehicle, CheckKind.ConductorTemperature, "cooler place");
        hot.Is(CheckKind.ConductorTemperature, 80, 70);
        Assert.Contains("at most 70 °C, the air is at 80 °C", hot.Of(CheckKind.ContinuousCurrent).Note, StringComparison.Ordinal);
        Assert.Equal(Verdict.Fail, hot.Verdict);
        CircuitDesign even = Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 70), Bench, CheckKind.ConductorTemperature, "better insulation");
        Assert.Equal("conductor temperature: fail, the air is not cooler than the insulation may be, without any current", even.Governing.ToString());
        Assert.Contains("not below the insulation's limit", even.Of(CheckKind.ContinuousCurrent).Note, StringComparison.Ordinal);
        Assert.Contains("ends at 50 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 60), DesignRules.SmallCraft, CheckKind.ContinuousCurrent, "cooler place").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("up to 70 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 71, insulation: InsulationMaterial.Etfe), DesignRules.LightAircraft, CheckKind.ContinuousCurrent, "cooler place").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("grouping factors end at 20 circuits", Nothing(Circuit(Load.ConstantCurrent(A(5)), conductors: 41), DesignRules.RoadVehicle, CheckKind.ContinuousCurrent, "fewer loaded conductors").Governing.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Place_ThatTheTableDoesNotCover_IsUndeterminedForOneReasonAndOneAdvice()
    {
        // Every check that rests on the rating says so; nothing is said to fail, and nobody is told that the fuse is too large or its data missing.
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 60, insulation: InsulationMaterial.Etfe), new DesignRules(DesignRules.SmallCraft) { Ampacity = AmpacityBasis.SmallCraftTable }, CheckKind.ContinuousCurrent, "cooler place");
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        Assert.Equal(
            [CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature, CheckKind.FuseProtectsWire, CheckKind.ShortCircuitTemperature, CheckKind.OverloadTemperature],
            design.Undetermined.Select(check => check.Kind!));
        Assert.All(design.Undetermined.Skip(1), check => Assert.Equal("the wire is not rated here", check.Note));
        Assert.Equal(["The wire has no rating where it runs: a cooler place, fewer loaded conductors together, better insulation, or rules whose source covers it."], design.Advice);
        Assert.StartsWith($"nothing passes; nearest {design.Wire} with {design.Fuse}: continuous current: undetermined, the table ends at 50 °C", design.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Insulation_BelowEveryColumn_IsNotRated()
    {
        InsulationMaterial weak = InsulationMaterial.Rated("55 °C rated", C(55));
        DesignRules boatTable = new(DesignRules.SmallCraft) { Ampacity = AmpacityBasis.SmallCraftTable };
        Assert.Contains("no column for insulation of 55 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), insulation: weak), boatTable, CheckKind.ContinuousCurrent, "better insulation").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("no column for insulation of 70 °C", Nothing(Circuit(Load.ConstantCurrent(A(5))), DesignRules.LightAircraft, CheckKind.ContinuousCurrent, "better insulation").Governing.Note, StringComparison.Ordinal);

        // The tables of boats and vehicles are silent on it; the heat balance of the same presets is not.
        foreach (DesignRules rules in new[] { DesignRules.RoadVehicle, DesignRules.SmallCraft })
        {
            CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), insulation: weak), rules);
            Assert.Equal((Verdict.Pass, false), (design.Verdict, design.IsNearest));
            Assert.Equal(55, design.Of(CheckKind.ConductorTemperature).Limit);
        }
    }

    [Fact]
    public void Series_TooSmall_NamesWhatStoppedTheLargest()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(300)), feed: 2, insulation: InsulationMaterial.CrossLinkedPolyethylene, conductors: 8), DesignRules.SmallCraft, CheckKind.VoltageDrop, "No wire is thick enough");

        // The largest comes nearest; each smaller one says what stopped it.
        Assert.Equal(DesignRules.SmallCraft.Conductors.Conductors.Count - 1, design.Rejected.Count);
        Assert.Equal(("4/0 AWG stranded copper", "3/0 AWG stranded copper"), (design.Wire.Name, design.Rejected[^1].Conductor.Name));
        Assert.All(design.Rejected, size => Assert.Equal(CheckOutcome.Fail, size.Check.Outcome));

        // 385 A (90 °C) halved for eight together (note 2).
        design.Is(CheckKind.ContinuousCurrent, 300, 385 * 0.5);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.ContinuousCurrent).Outcome);
        Near(4 * Plain.AwgArea(-3) * 1e-6 * 8890, design.ConductorMass.Kilograms, 0.03);
        Assert.Equal(4, design.Path.Feed.Concat(design.Path.Return.Segments).Sum(s => s.Length.Meters), 1e-12);
        Assert.StartsWith("nothing passes; nearest 4/0 AWG stranded copper with 400 A strip fuse (ISO 8820-5 type SF 51): voltage drop ", design.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fuse_NoneLargeEnough_SaysSo()
    {
        DesignRules rules = new(Bench) { Fuses = FuseSeries.RoadVehicleBlade };
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(50)), feed: 0.2, drop: DropLimit.Percent(20)), rules, CheckKind.FuseCarriesLoad, "another series");
        design.Is(CheckKind.FuseCarriesLoad, 40, 62.5);
        Assert.Contains("The load needs a fuse of 62.5 A or more, and the series has none for 14.4 V.", design.Advice);

        // The wire is the smallest that carries the load: it is not blamed for the fuse.
        Assert.Equal("10 mm² class 5 copper", design.Wire.Name);
        Assert.Equal(CheckKind.ContinuousCurrent, design.Rejected[^1].Check.Kind);
    }

    [Fact]
    public void Fuse_OfFortyEightVolts_IsThatForFiftyEight()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), LeadAcid(4), upstreamMilliOhms: 60), Bench);
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.Equal(58, design.Fuse!.VoltageRating!.Value.Volts);
        Assert.Equal(10, design.Fuse.Current.Amperes);

        // A 32 V fuse of the same current stands first in the series; it never hides what really stops a small wire.
        CircuitDesign larger = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(45)), LeadAcid(4), feed: 1, upstreamMilliOhms: 60, drop: DropLimit.Percent(20)), Bench);
        Assert.Equal(60, larger.Fuse!.Current.Amperes);
        Assert.Equal(CheckKind.OverloadTemperature, larger.Governing.Kind);
        Assert.DoesNotContain(larger.Rejected, size => size.Check.Kind == CheckKind.FuseVoltage);

        // Beyond 100 A there are strip fuses of 32 V only.
        CircuitDesign strip = Nothing(Circuit(Load.ConstantCurrent(A(100)), LeadAcid(4), feed: 1, upstreamMilliOhms: 60, drop: DropLimit.Percent(20)), Bench, CheckKind.FuseVoltage, "highest voltage");
        strip.Is(CheckKind.FuseVoltage, 32, 57.6);
        Assert.Equal(125, strip.Fuse!.Current.Amperes);
        Assert.True(strip.Wire.Area.SquareMillimeters <= 70, strip.ToString());

        // 16 lithium cells charge to 58.4 V: above every fuse here. The wire and the rating stay those of the load; the fuse made for the most comes nearest.
        CircuitDesign cells = Nothing(Circuit(Load.ConstantCurrent(A(8)), Battery.LithiumIronPhosphate(16, ElectricCharge.FromAmpereHours(100)), upstreamMilliOhms: 60), Bench, CheckKind.FuseVoltage, "highest voltage");
        cells.Is(CheckKind.FuseVoltage, 58, 58.4);
        Assert.Equal((10, "1 mm² class 5 copper"), (cells.Fuse!.Current.Amperes, cells.Wire.Name));
    }

    [Fact]
    public void Battery_FarTooWeak_FailsOnDelivery()
    {
        Source weak = Source.BehindResistance(V(12), ElectricResistance.FromOhms(5));
        CircuitDesign design = Nothing(Circuit(Load.ConstantPower(W(60)), weak), Bench, CheckKind.PowerDelivery, "a stronger source");
        Assert.True(design.Governing.Value < 12 * 12 / 20.0);
        Nothing(Circuit(Load.ConstantCurrent(A(5)), weak), Bench, CheckKind.PowerDelivery, "a stronger source");
    }

    [Fact]
    public void Load_NeedingMoreThanTheSupplyHas_FailsOnItsVoltage()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(1)).WithMinimumVoltage(V(13))), Bench, CheckKind.LoadVoltage, "The source itself falls to 11.89 V", nearest: false);
        Assert.True(design.Governing.Value < 11.89);
        Assert.Equal(13, design.Governing.Limit);
    }

    [Fact]
    public void SharedReturn_FullOfOthers_HasNoVoltageLeft()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(4)), back: ReturnPath.Shared(MilliOhm(10), A(2000))), Bench, CheckKind.PowerDelivery, "fewer or better joints");
        Assert.Equal(0, design.Governing.Value);
        Assert.Equal(-1, design.Governing.Margin);
    }

    [Fact]
    public void SharedReturn_OverfullWire_FailsOnItsRatingAndTheFuseFindsNoRoom()
    {
        ReturnPath back = ReturnPath.Shared([Segment.Create(RoadVehicle(1), M(1))], A(60));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), back: back), RoadVehicle(1), Blade(5), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.ContinuousCurrent).Outcome);
        CheckResult room = design.Of(CheckKind.FuseProtectsWire);
        Assert.Equal((CheckOutcome.Fail, 0, -1), (room.Outcome, room.Limit, room.Margin));
        Everything.AssertFinite(design);

        // The others alone are too much for it: no feed helps, and behind the smallest fuse an overload melts it. Every answer is about the return.
        CircuitDesign full = Nothing(Circuit(Load.ConstantCurrent(A(4)), back: back), DesignRules.RoadVehicle, CheckKind.OverloadTemperature, "fewer loaded conductors together");
        const string Return = "shared return, 1 m of 1 mm² road-vehicle copper";
        Near(64, full.Of(CheckKind.ContinuousCurrent).Value, 1e-9);
        Assert.All(
            new[] { CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature, CheckKind.FuseProtectsWire, CheckKind.OverloadTemperature },
            kind => Assert.Equal((CheckOutcome.Fail, Return), (full.Of(kind).Outcome, full.Of(kind).Where)));
        Assert.Contains("lets the wire melt", full.Governing.Note, StringComparison.Ordinal);
        Assert.Contains(full.Advice, line => line.EndsWith("This concerns the " + Return + ".", StringComparison.Ordinal));
    }

    [Fact]
    public void SharedReturn_ThinnerThanTheFeed_IsCheckedForTheShortCircuit()
    {
        // The fault passes the 0.35 mm² shared wire, not only the 2.5 mm² feed.
        ReturnPath back = ReturnPath.Shared([Segment.Create(RoadVehicle(0.35), M(0.2))], A(0));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), feed: 1, back: back), RoadVehicle(2.5), Blade(5), Bench);
        double least = 11.89 / (0.038 + Plain.PerMeter(7.60, 70) + (0.2 * Plain.PerMeter(54.4, 70)));
        double joule = Plain.MostJoule(Plain.BladeLongest, 5, least, 14.4 / 0.0236);
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(54.4, 0.35, joule, 70), 160);
    }

    [Fact]
    public void Source_Ideal_LeavesTheBreakingCapacityUndetermined()
    {
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantCurrent(A(4)), Source.Ideal(V(12)), feed: 1, back: ReturnPath.Chassis(ElectricResistance.Zero), upstreamMilliOhms: null), Bench);
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        Assert.Contains("without internal resistance", design.Of(CheckKind.BreakingCapacity).Note, StringComparison.Ordinal);
        Everything.AssertFinite(design);

        // Behind a stated supply lead there is a number: 12 V over 20 mΩ.
        CircuitDesign stated = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4)), Source.Ideal(V(12))), Bench);
        stated.Is(CheckKind.BreakingCapacity, 600, 1000);
    }

    [Fact]
    public void Supply_ThatNeverOpensTheFuse_PassesOnlyIfTheWireCarriesItContinuously()
    {
        // A 12 A limit never opens a 10 A fuse (13.5 A does). 2.5 mm² carries 12 A continuously, 0.5 mm² does not.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(12)), feed: 0.3, upstreamMilliOhms: 0);
        CircuitDesign thick = CircuitDesigner.Verify(asked, Class5(2.5), Blade(10), Bench);
        Assert.Equal(Verdict.Pass, thick.Verdict);
        Assert.Contains("12 A, which the wire carries continuously", thick.Of(CheckKind.FaultOpensFuse).Note, StringComparison.Ordinal);
        CircuitDesign thin = CircuitDesigner.Verify(asked, Class5(0.5), Blade(10), Bench);
        CheckResult never = thin.Of(CheckKind.FaultOpensFuse);
        Assert.Equal((CheckOutcome.Fail, null, null), (never.Outcome, never.Value, never.Margin));
        Assert.Contains("need not open", never.ToString(), StringComparison.Ordinal);
        Assert.Equal(CheckKind.FaultOpensFuse, thin.Governing.Kind);
    }

    [Fact]
    public void Fault_AtTheEndOfALongThinWire_DoesNotCountAsHarmlessBecauseItIsSmall()
    {
        // 60 m of 0.75 mm² out and back: at most 3.3 A at the far end, far below what the wire carries; near the fuse 610 A can flow.
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(0.3)), feed: 60, drop: DropLimit.Percent(20)), Class5(0.75), Blade(3), Bench);
        CheckResult fault = design.Of(CheckKind.FaultOpensFuse);
        double farEnd = 11.89 / (0.038 + (120 * Plain.PerMeter(26.0, 70)));
        Assert.True(farEnd < design.Of(CheckKind.ContinuousCurrent).Limit && farEnd < 1.35 * 3);
        Assert.Equal((CheckOutcome.Fail, null, null), (fault.Outcome, fault.Value, fault.Margin));
        Assert.Contains("the fuse need not open", fault.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void WeakSource_WithoutALeastVoltage_IsACaution()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(3)), Source.BehindResistance(V(12), ElectricResistance.FromOhms(0.9)), upstreamMilliOhms: 0), Bench);

        // 12 V − 3 A · 0.9 Ω = 9.3 V, less what the path drops.
        Assert.Contains(design.Cautions, line => line.StartsWith("At the lowest supply voltage the load gets 9.", StringComparison.Ordinal) && line.Contains("V of 12 V", StringComparison.Ordinal));
        CircuitDesign stated = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(3)).WithMinimumVoltage(V(8)), Source.BehindResistance(V(12), ElectricResistance.FromOhms(0.9)), upstreamMilliOhms: 0), Bench);
        Assert.DoesNotContain(stated.Cautions, line => line.StartsWith("At the lowest supply voltage", StringComparison.Ordinal));
        CircuitDesign stiff = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(3)), Source.BehindResistance(V(12), ElectricResistance.FromOhms(0.1)), upstreamMilliOhms: 0), Bench);
        Assert.DoesNotContain(stiff.Cautions, line => line.StartsWith("At the lowest supply voltage", StringComparison.Ordinal));
    }

    [Fact]
    public void Supply_AtItsLimit_CannotDeliver()
    {
        // 1 Ω takes 12 A and 144 W at 12 V; a supply that holds 5 A leaves it 5 V and 25 W.
        CircuitDesign design = Nothing(Circuit(Load.Resistance(ElectricResistance.FromOhms(1)), Source.CurrentLimited(V(12), A(5)), upstreamMilliOhms: 0), Bench, CheckKind.PowerDelivery, "stronger source");
        design.Is(CheckKind.PowerDelivery, 25, 144, 1e-12);
        Assert.Equal("the load takes more than the source's limit of 5 A", design.Governing.Note);
        Assert.Contains(design.Cautions, line => line.StartsWith("The source is at its current limit: the load gets 5 V at 5 A", StringComparison.Ordinal));
        CircuitDesign beyond = Nothing(Circuit(Load.ConstantCurrent(A(6)), Source.CurrentLimited(V(12), A(5)), upstreamMilliOhms: 0), Bench, CheckKind.PowerDelivery, "smaller load");
        Assert.Contains("limit of 5 A", beyond.Governing.Note, StringComparison.Ordinal);
        CircuitDesign off = Nothing(Circuit(Load.ConstantCurrent(A(14)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(20), A(10))), Bench, CheckKind.PowerDelivery, "smaller load");
        Assert.Contains("disconnects above 10 A", off.Governing.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Source_LimitedWhileTheLoadStarts_StretchesTheSurge()
    {
        // 10 mF behind 12 V and 0.6 m of 0.75 mm² (26.0 Ω/km at 30 °C) beside 2 A running. A supply that holds 30 A charges it with 28 A until the rest of the charge comes with R·C.
        Load load = Load.ConstantCurrent(A(2)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(10_000));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(load, Source.CurrentLimited(V(12), A(30)), feed: 0.3, upstreamMilliOhms: 0), Class5(0.75), Blade(3), Bench);
        double ohms = 0.6 * Plain.PerMeter(26.0, 30), constant = ohms * 0.01, held = (((12 / ohms) - 2) * constant / 28) - constant;

        // The tail from 30 A to the rating: (2 + 28·e^−s)² over s, to where it is at the rating.
        double joule(double rating)
        {
            double left = (rating - 2) / 28;
            return (900 * held) + (constant * ((4 * Math.Log(1 / left)) + (4 * 28 * (1 - left)) + (0.5 * 784 * (1 - (left * left)))));
        }

        // Least I²·t up to 30 A: that of the gate at 350 %, 0.04 s. 10 000 starts: 29 %, 100: 48 %.
        design.Is(CheckKind.InrushHeld, joule(3) / (0.29 * 10.5 * 10.5 * 0.04), 1, 1e-6);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.InrushHeld).Outcome);
        CircuitDesign larger = CircuitDesigner.Verify(new CircuitRequirements(design.Requirements) { Starts = 100 }, Class5(0.75), Blade(5), Bench);
        larger.Is(CheckKind.InrushHeld, joule(5) / (0.48 * 17.5 * 17.5 * 0.04), 1, 1e-6);
        Assert.Equal(CheckOutcome.Pass, larger.Of(CheckKind.InrushHeld).Outcome);
    }

    [Fact]
    public void Start_OfSeveralLoads_AddsUpWhateverTheirOrder()
    {
        Load lamp = Load.Lamp(W(24), V(12)), motor = Load.Motor(A(2), A(12), A(12), Duration.FromSeconds(2));
        foreach (Load load in new[] { Load.Together(lamp, motor), Load.Together(motor, lamp) })
        {
            CircuitDesign design = CircuitDesigner.Verify(Circuit(load), Class5(2.5), Blade(7.5), Bench);
            CheckResult start = design.Of(CheckKind.InrushHeld);
            Assert.Equal(CheckOutcome.Fail, start.Outcome);
            Assert.Contains("mostly by the motor", start.Note, StringComparison.Ordinal);

            // 12 A of the motor for 2 s and the lamp's cold filament, 12 V/2 A/14, which fades with 0.05 s/3 to what it draws beside the 2 A of the motor that runs.
            double path = 0.0036 + 0.020 + (6 * Plain.PerMeter(7.98, 30)), cold = 14.4 / (path + (6.0 / 14)), joule = 0;
            double running = Plain.Settle(14.4, path, _ => 0, u => 2 + (2 * Math.Pow(u / 12, 0.55))).Amperes - 2;

            // Behind the path its current falls later than its conductance.
            double hot = running / (14.4 - (path * (2 + running))), soft = path * ((14.0 / 6) - hot) / (1 + (path * hot));
            for (int k = 0; k < 200_000; k++)
            {
                double left = Math.Exp(-(k + 0.5) * 1e-5 * 3 / 0.05), i = 12 + running + ((cold - running) * left * (1 + soft) / (1 + (soft * left)));
                joule += i * i * 1e-5;
            }

            // The gate at 350 % has the least I²·t up to the peak of 5.4 times: (3.5·7.5)²·0.04; 10 000 starts 29 %.
            Assert.InRange((12 + cold) / 7.5, 5, 6);
            Near(joule / (0.29 * 26.25 * 26.25 * 0.04), start.Value, 1e-3);
            Near(1, start.Limit, 1e-12);
        }
    }

    [Fact]
    public void Start_OfLikeLamps_CountsThemTogether()
    {
        // Four lamps of 12 W switched as one draw the surge of a 48 W lamp.
        Load four = Load.Together([.. Enumerable.Repeat(Load.Lamp(W(12), V(12)), 4)]), one = Load.Lamp(W(48), V(12));
        CircuitDesign a = CircuitDesigner.Verify(Circuit(four), Class5(2.5), Blade(5), Bench), b = CircuitDesigner.Verify(Circuit(one), Class5(2.5), Blade(5), Bench);
        Near(b.Of(CheckKind.InrushHeld).Value, a.Of(CheckKind.InrushHeld).Value, 1e-6);

        // Four filaments of 12 Ω/14 side by side behind the path; least I²·t (3.5·5)²·0.04, 10 000 starts 29 %.
        double path = 0.0036 + 0.020 + (6 * Plain.PerMeter(7.98, 30)), peak = 14.4 / (path + (3.0 / 14));
        double running = Plain.Settle(14.4, path, _ => 0, u => 4 * Math.Pow(u / 12, 0.55)).Amperes;
        (double melting, double joule) = Plain.Fading(Plain.BladeLeast, 5, running, peak, 0.05 / 3, path, 3.0 / 14, (14.4 / running) - path);
        double expected = joule / (0.29 * 17.5 * 17.5 * 0.04);
        Assert.True(expected > melting);
        Near(expected, a.Of(CheckKind.InrushHeld).Value, 1e-3);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(10_000)]
    public void Feed_OfAnyLength_IsAnswered(double meters)
    {
        foreach (DesignRules rules in DesignRules.Presets)
        {
            CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(3)), feed: meters, insulation: InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C)), rules);
            Everything.AssertFinite(design);
            Assert.Equal(meters < 1, design.IsFeasible);
        }
    }

    [Fact]
    public void DutyCycle_VerySmall_IsStillSizedForTheCurrentWhileOn()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(20)).WithDutyCycle(DutyCycle.FromFraction(1e-6)), feed: 0.5, drop: DropLimit.Percent(10)), Bench);
        Assert.Equal(Verdict.Pass, design.Verdict);
        design.Is(CheckKind.FuseCarriesLoad, 25, 25, 1e-8);
        Near(20 * 1e-3, design.Of(CheckKind.ContinuousCurrent).Value, 1e-9);
        Assert.Equal(CheckKind.OverloadTemperature, design.Governing.Kind);
        Assert.True(design.Of(CheckKind.FuseProtectsWire).Limit >= 25);
    }

    /// <summary>A circuit that nothing serves: the nearest wire and fuse, what decides, and what would help. What no size cures leaves the wire that is right otherwise.</summary>
    private static CircuitDesign Nothing(CircuitRequirements asked, DesignRules rules, CheckKind governing, string advice, bool nearest = true)
    {
        CircuitDesign design = CircuitDesigner.Design(asked, rules);
        Assert.Equal(nearest, design.IsNearest);
        Assert.Contains(design.Wire, rules.Conductors.Conductors);
        Assert.NotEqual(Verdict.Pass, design.Verdict);
        Assert.True(governing == design.Governing.Kind, design.ToString());
        Assert.NotEqual(CheckOutcome.Pass, design.Governing.Outcome);
        Assert.Contains(design.Advice, line => line.Contains(advice, StringComparison.Ordinal));
        Assert.Equal(design.Advice.Distinct(), design.Advice);
        Assert.StartsWith(design.Verdict == Verdict.Fail ? "This circuit fails a check" : "Some checks could not be made", design.Cautions[0], StringComparison.Ordinal);
        Assert.Equal(design.Fuse is null, design.Find(CheckKind.PowerDelivery) is not null);
        Everything.AssertFinite(design);
        return design;
    }
}

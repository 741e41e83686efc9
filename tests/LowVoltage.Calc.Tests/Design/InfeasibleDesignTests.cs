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
        CircuitDesign design = Nothing(Circuit(Load.ConstantPower(W(50_000)), feed: 10), Bench, CheckKind.PowerDelivery, "two wires in parallel");

        // 400 mm² class 5 (0.0486 Ω/km) and the battery at its weakest, cold copper: P = V²/(4R), and less since it heats.
        double most = 11.89 * 11.89 / (4 * (0.018 + 0.020 + (20 * Plain.PerMeter(0.0486, 30))));
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
        Assert.Contains("at most 70 °C, the air is at 80 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 80), DesignRules.RoadVehicle, CheckKind.ContinuousCurrent, "cooler place").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("ends at 50 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 60), DesignRules.SmallCraft, CheckKind.ContinuousCurrent, "cooler place").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("not below the insulation's limit", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 70), Bench, CheckKind.ContinuousCurrent, "better insulation").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("up to 70 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), ambient: 71, insulation: InsulationMaterial.Etfe), DesignRules.LightAircraft, CheckKind.ContinuousCurrent, "cooler place").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("grouping factors end at 20 circuits", Nothing(Circuit(Load.ConstantCurrent(A(5)), conductors: 41), DesignRules.RoadVehicle, CheckKind.ContinuousCurrent, "fewer loaded conductors").Governing.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Insulation_BelowEveryColumn_IsNotRated()
    {
        InsulationMaterial weak = InsulationMaterial.Rated("55 °C rated", C(55));
        Assert.Contains("no column for insulation of 55 °C", Nothing(Circuit(Load.ConstantCurrent(A(5)), insulation: weak), DesignRules.SmallCraft, CheckKind.ContinuousCurrent, "better insulation").Governing.Note, StringComparison.Ordinal);
        Assert.Contains("no column for insulation of 70 °C", Nothing(Circuit(Load.ConstantCurrent(A(5))), DesignRules.LightAircraft, CheckKind.ContinuousCurrent, "better insulation").Governing.Note, StringComparison.Ordinal);

        // The road-vehicle table is silent on it; the heat balance of the same preset is not.
        Assert.Equal(Verdict.Pass, CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), insulation: weak), DesignRules.RoadVehicle).Verdict);
    }

    [Fact]
    public void Series_TooSmall_NamesWhatStoppedTheLargest()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(300)), feed: 2, insulation: InsulationMaterial.CrossLinkedPolyethylene, conductors: 8), DesignRules.SmallCraft, CheckKind.VoltageDrop, "two wires in parallel");
        Assert.Equal(DesignRules.SmallCraft.Conductors.Conductors.Count, design.Rejected.Count);
        Assert.Equal("4/0 AWG stranded copper", design.Rejected[^1].Conductor.Name);
        Assert.Equal(0, design.ConductorMass.Kilograms);
        Assert.Null(design.Path);
        Assert.Null(design.SupplyRange);
        Assert.Null(design.Ampacity);
        Assert.StartsWith("no wire of the series fits: voltage drop", design.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fuse_NoneLargeEnough_SaysSo()
    {
        DesignRules rules = new(Bench) { Fuses = FuseSeries.RoadVehicleBlade };
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(50)), feed: 0.2, drop: DropLimit.Percent(20)), rules, CheckKind.FuseCarriesLoad, "another series");
        design.Is(CheckKind.FuseCarriesLoad, 40, 62.5);
        Assert.Contains("no larger fuse", design.Governing.Note, StringComparison.Ordinal);
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
        Nothing(Circuit(Load.ConstantCurrent(A(100)), LeadAcid(4), feed: 1, upstreamMilliOhms: 60, drop: DropLimit.Percent(20)), Bench, CheckKind.FuseVoltage, "highest voltage").Is(CheckKind.FuseVoltage, 32, 57.6);

        // 16 lithium cells charge to 58.4 V: above every fuse here.
        Nothing(Circuit(Load.ConstantCurrent(A(8)), Battery.LithiumIronPhosphate(16, ElectricCharge.FromAmpereHours(100)), upstreamMilliOhms: 60), Bench, CheckKind.FuseVoltage, "highest voltage");
    }

    [Fact]
    public void Battery_FarTooWeak_FailsOnDelivery()
    {
        Source weak = Source.BehindResistance(V(12), ElectricResistance.FromOhms(5));
        CircuitDesign design = Nothing(Circuit(Load.ConstantPower(W(60)), weak), Bench, CheckKind.PowerDelivery, "a source that gives more");
        Assert.True(design.Governing.Value < 12 * 12 / 20.0);
        Nothing(Circuit(Load.ConstantCurrent(A(5)), weak), Bench, CheckKind.PowerDelivery, "a source that gives more");
    }

    [Fact]
    public void Load_NeedingMoreThanTheSupplyHas_FailsOnItsVoltage()
    {
        CircuitDesign design = Nothing(Circuit(Load.ConstantCurrent(A(1)).WithMinimumVoltage(V(13))), Bench, CheckKind.LoadVoltage, "The source itself falls to 11.89 V");
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
        Nothing(Circuit(Load.ConstantCurrent(A(4)), back: back), DesignRules.RoadVehicle, CheckKind.ContinuousCurrent, "fewer loaded conductors together");
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
    public void Source_Ideal_LeavesTheBreakingCapacityOpen()
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
    public void Supply_ThatNeverOpensTheFuse_PassesOnlyIfTheWireCarriesItForEver()
    {
        // A 12 A limit never opens a 10 A fuse (13.5 A does). 2.5 mm² carries 12 A for ever, 0.5 mm² does not.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(12)), feed: 0.3, upstreamMilliOhms: 0);
        CircuitDesign thick = CircuitDesigner.Verify(asked, Class5(2.5), Blade(10), Bench);
        Assert.Equal(Verdict.Pass, thick.Verdict);
        Assert.Contains("12 A, which the wire carries for ever", thick.Of(CheckKind.FaultOpensFuse).Note, StringComparison.Ordinal);
        CircuitDesign thin = CircuitDesigner.Verify(asked, Class5(0.5), Blade(10), Bench);
        CheckResult never = thin.Of(CheckKind.FaultOpensFuse);
        Assert.Equal((CheckOutcome.Fail, -1), (never.Outcome, never.Margin));
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
        Assert.Equal((CheckOutcome.Fail, -1), (fault.Outcome, fault.Margin));
        Assert.Contains("the fuse need not open", fault.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Supply_AtItsLimit_IsACaution()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.Resistance(ElectricResistance.FromOhms(1)), Source.CurrentLimited(V(12), A(5)), upstreamMilliOhms: 0), Bench);
        Assert.StartsWith("The source is at its current limit: the load gets 5 V at 5 A", design.Cautions[0], StringComparison.Ordinal);
        CircuitDesign beyond = Nothing(Circuit(Load.ConstantCurrent(A(6)), Source.CurrentLimited(V(12), A(5)), upstreamMilliOhms: 0), Bench, CheckKind.PowerDelivery, "smaller load");
        Assert.Contains("limit of 5 A", beyond.Governing.Note, StringComparison.Ordinal);
        CircuitDesign off = Nothing(Circuit(Load.ConstantCurrent(A(14)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(20), A(10))), Bench, CheckKind.PowerDelivery, "smaller load");
        Assert.Contains("disconnects above 10 A", off.Governing.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Source_LimitedWhileTheLoadStarts_StretchesTheSurge()
    {
        // 10 mF behind 12 V: 0.12 A·s. At a held 30 A that takes 4 ms, longer than half of R·C (0.1 ms); a 3 A fuse holds 30 A for 0.02·(18/30)² s.
        Load load = Load.ConstantCurrent(A(2)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(10_000));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(load, Source.CurrentLimited(V(12), A(30)), feed: 0.3, upstreamMilliOhms: 0), Class5(0.75), Blade(3), Bench);
        design.Is(CheckKind.InrushHeld, 0.12 / 30, 0.02 * 18 * 18 / (30 * 30.0));
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.InrushHeld).Outcome);
    }

    [Fact]
    public void Start_OfSeveralLoads_TheHardestCountsWhateverItsPlace()
    {
        Load lamp = Load.Lamp(W(24), V(12)), motor = Load.Motor(A(2), A(12), A(12), Duration.FromSeconds(2));
        foreach (Load load in new[] { Load.Together(lamp, motor), Load.Together(motor, lamp) })
        {
            CircuitDesign design = CircuitDesigner.Verify(Circuit(load), Class5(2.5), Blade(7.5), Bench);
            CheckResult start = design.Of(CheckKind.InrushHeld);
            Assert.Equal(CheckOutcome.Fail, start.Outcome);
            Assert.StartsWith("motor draws up to 12 A", start.Note, StringComparison.Ordinal);
            Near(2, start.Value, 1e-12);
            Near(Plain.Time(Plain.BladeLeast, 7.5, 12), start.Limit, 1e-9);
        }
    }

    [Fact]
    public void Start_OfLikeLamps_CountsThemTogether()
    {
        // Four lamps of 12 W switched as one draw the surge of a 48 W lamp.
        Load four = Load.Together([.. Enumerable.Repeat(Load.Lamp(W(12), V(12)), 4)]), one = Load.Lamp(W(48), V(12));
        CircuitDesign a = CircuitDesigner.Verify(Circuit(four), Class5(2.5), Blade(5), Bench), b = CircuitDesigner.Verify(Circuit(one), Class5(2.5), Blade(5), Bench);
        Assert.True(a.Of(CheckKind.InrushHeld).Limit <= b.Of(CheckKind.InrushHeld).Limit);

        // Each lamp alone: 14.4 V behind 12 Ω/14 and the path; four of them.
        double single = 14.4 / (0.0036 + 0.020 + (6 * Plain.PerMeter(7.98, 30)) + (12 / 1.0 / 14));
        Near(Plain.Time(Plain.BladeLeast, 5, 4 * single), a.Of(CheckKind.InrushHeld).Limit, 1e-9);
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

    private static CircuitDesign Nothing(CircuitRequirements asked, DesignRules rules, CheckKind governing, string advice)
    {
        CircuitDesign design = CircuitDesigner.Design(asked, rules);
        Assert.Null(design.Wire);
        Assert.Null(design.Fuse);
        Assert.Equal(Verdict.Fail, design.Verdict);
        Assert.True(governing == design.Governing.Kind, design.ToString());
        Assert.NotEqual(CheckOutcome.Pass, design.Governing.Outcome);
        Assert.Contains(design.Advice, line => line.Contains(advice, StringComparison.Ordinal));
        Assert.Equal(design.Advice.Distinct(), design.Advice);
        Assert.StartsWith("This circuit fails a check", design.Cautions[0], StringComparison.Ordinal);
        Everything.AssertFinite(design);
        return design;
    }
}

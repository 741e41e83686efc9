using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design.Upstream;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>What the checks of main fuse and supply lead say, and which of several devices they speak of.</summary>
public class MainFuseWordsTests
{
    private const string Gg63 = "63 A gG fuse-link (IEC 60269-2 gG, 250 V)";

    [Fact]
    public void CarriesLoad_InAirThatItsReratingCovers_IsOfThisCircuitAlone()
    {
        CircuitDesign design = Of(12, OnTerminal(Gg(63), 35, 4));
        CheckResult result = design.Of(CheckKind.MainFuseCarriesLoad);
        Assert.Equal((CheckOutcome.Pass, "main fuse", "this circuit alone; what other circuits take of the main fuse comes on top"), (result.Outcome, result.Where, result.Note));
        Assert.Equal("The main fuse is too small for this circuit: a larger one, and a supply lead that it protects.", CheckCase.AdviceOf(design, CheckKind.MainFuseCarriesLoad));
    }

    [Fact]
    public void CarriesLoad_InAirBeyondItsRerating_IsUndetermined()
    {
        // The guidance for gG fuse-links ends at 80 °C.
        CircuitDesign design = Of(12, OnTerminal(Gg(63), 35, 4).WithAmbient(C(90)));
        CheckCase.Answers(design, CheckKind.MainFuseCarriesLoad, CheckOutcome.Undetermined, "main fuse", $"the re-rating of the {Gg63} does not cover 90 °C");
        Assert.Equal("Put the main fuse in a cooler place, or get its re-rating with temperature from its maker.", CheckCase.AdviceOf(design, CheckKind.MainFuseCarriesLoad));
    }

    /// <summary>A main fuse that the start melts once passed: it was not asked.</summary>
    [Theory]
    [InlineData(30, CheckOutcome.Fail)]
    [InlineData(80, CheckOutcome.Pass)]
    [InlineData(100, CheckOutcome.Undetermined)]
    public void HoldsStart_OfAMotorBehindABladeFuse_IsAskedAsTheFuseOfTheCircuitIs(double main, CheckOutcome outcome)
    {
        // 120 A for a second: 14 400 A²s. A 30 A blade fuse opens at 6 times its rating within 0.1 s (ISO 8820-3 type C, from memory); a high-current one of 80 A (type E) holds 135 % for a minute at least;
        // at 120 % nothing is published.
        FuseRating fuse = main == 30 ? Blade(30) : MainBlade(main);
        Load motor = Load.Motor(A(10), A(120), A(120), Duration.FromSeconds(1));
        CircuitRequirements asked = Circuit(motor, LeadAcid(), feed: 1, upstreamMilliOhms: 5).WithUpstreamProtection(UpstreamProtection.Fuse(fuse).WithUpstream(MilliOhm(1)));
        CheckResult start = CircuitDesigner.Verify(asked, RoadVehicle(25), MainBlade(100), DesignRules.RoadVehicle).Of(CheckKind.MainFuseHoldsStart);
        Assert.Equal((outcome, "main fuse"), (start.Outcome, start.Where));
        Assert.EndsWith("; this circuit alone, what other circuits take of the main fuse comes on top", start.Note, StringComparison.Ordinal);

        // The same fuse in the circuit, with all that lies before it: the same current flows through both.
        CheckResult own = CircuitDesigner.Verify(asked, RoadVehicle(25), fuse, DesignRules.RoadVehicle).Of(CheckKind.InrushHeld);
        Assert.Equal((own.Outcome, own.Value, own.Limit), (start.Outcome, start.Value, start.Limit));
    }

    private static FuseRating MainBlade(double amperes) => FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(amperes));

    [Fact]
    public void HoldsStart_BehindABreakerWithoutACurve_IsUndeterminedWhereTheStartExceedsIt()
    {
        Load motor = Load.Motor(A(10), A(120), A(120), Duration.FromSeconds(1));
        UpstreamProtection Breaker(double amperes) => UpstreamProtection.Device("breaker", A(amperes), V(32), A(10_000));
        CircuitRequirements asked = Circuit(motor, LeadAcid(), feed: 1, upstreamMilliOhms: 5);
        CircuitDesign small = CircuitDesigner.Verify(asked.WithUpstreamProtection(Breaker(63)), RoadVehicle(25), MainBlade(100), DesignRules.RoadVehicle);
        CircuitDesign large = CircuitDesigner.Verify(asked.WithUpstreamProtection(Breaker(250)), RoadVehicle(25), MainBlade(100), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Undetermined, small.Of(CheckKind.MainFuseHoldsStart).Outcome);
        Assert.Null(large.Find(CheckKind.MainFuseHoldsStart));
    }

    [Fact]
    public void LeadTemperature_AdvisesOfTheLead_OrOfWhatIsNotRated()
    {
        CircuitPath hot = CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4)).WithPlace(new Place { Ambient = C(95) }), ReturnPath.Chassis(MilliOhm(0.5)));
        CircuitDesign fails = Of(12, OnTerminal(Gg(63), 35, 4).WithLead(hot));
        Assert.Equal(CheckOutcome.Fail, fails.Of(CheckKind.LeadTemperature).Outcome);
        Assert.Equal(
            "The supply lead gets too hot when its main fuse carries what it may: a smaller main fuse, a larger lead, a cooler place, or better insulation.",
            CheckCase.AdviceOf(fails, CheckKind.LeadTemperature));
        CircuitPath odd = CircuitPath.Create(Segment.Create(Awg(2), M(4)), ReturnPath.Chassis(MilliOhm(0.5)));
        CircuitRequirements asked = Fan(12).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4).WithLead(odd));
        CircuitDesign unknown = CircuitDesigner.Verify(asked, RoadVehicle(1.5), Blade(5), CheckCase.Table);
        Assert.Equal(CheckOutcome.Undetermined, unknown.Of(CheckKind.LeadTemperature).Outcome);
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(unknown, CheckKind.LeadTemperature), StringComparison.Ordinal);
    }

    [Fact]
    public void BreakingCapacity_AdvisesAnotherFuse_OrToStateTheLead()
    {
        CircuitDesign fails = CircuitDesigner.Design(Fan(15, Pack).WithUpstreamProtection(OnTerminal(Gg(63), 10, 4)), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, fails.Of(CheckKind.MainFuseBreakingCapacity).Outcome);
        Assert.Equal(
            "Choose a main fuse that breaks what the source can drive where it sits. No wire size changes this.", CheckCase.AdviceOf(fails, CheckKind.MainFuseBreakingCapacity));
        CircuitDesign unknown = Of(12, OnTerminal(Gg(63), 35, 4).WithUpstream(null), Pack);
        Assert.Equal((CheckOutcome.Undetermined, "main fuse"), (unknown.Of(CheckKind.MainFuseBreakingCapacity).Outcome, unknown.Of(CheckKind.MainFuseBreakingCapacity).Where));
        Assert.Equal(
            "Get the d.c. breaking capacity of the main fuse from its maker, and state the resistance of the lead between the source and it.",
            CheckCase.AdviceOf(unknown, CheckKind.MainFuseBreakingCapacity));
    }

    [Fact]
    public void Voltage_AtTheRatingItself_Passes_BelowFails_UnknownIsUndetermined()
    {
        // A supply of 32 V at most and a device rated for just that.
        Source supply = Source.BehindResistance(V(24), V(28), V(32), MilliOhm(20), MilliOhm(20));
        CircuitDesign equal = Of(12, Breaker(V(32)), supply);
        equal.Is(CheckKind.MainFuseVoltage, 32, 32, 1e-15);
        Assert.Equal(CheckOutcome.Pass, equal.Of(CheckKind.MainFuseVoltage).Outcome);
        equal.Is(CheckKind.FuseVoltage, 32, 32, 1e-15);
        Assert.Equal(CheckOutcome.Pass, equal.Of(CheckKind.FuseVoltage).Outcome);
        CircuitDesign below = Of(12, Breaker(V(31)), supply);
        Assert.Equal(CheckOutcome.Fail, below.Of(CheckKind.MainFuseVoltage).Outcome);
        Assert.Equal(
            "Choose a main fuse rated for the highest voltage of the supply: for 16 lithium iron phosphate cells more than 58 V.", CheckCase.AdviceOf(below, CheckKind.MainFuseVoltage));
        CircuitDesign unknown = Of(12, Breaker(null), supply);
        Assert.Equal(CheckOutcome.Undetermined, unknown.Of(CheckKind.MainFuseVoltage).Outcome);
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(unknown, CheckKind.MainFuseVoltage), StringComparison.Ordinal);

        static UpstreamProtection Breaker(ElectricPotential? volts) =>
            UpstreamProtection.Device("main breaker", A(63), volts, A(10_000)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
    }

    [Fact]
    public void Selectivity_NotShownByTimes_AsksForTheMeltingIntegral()
    {
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
        CircuitDesign unknown = Of(12, main);
        Assert.Equal(CheckOutcome.Undetermined, unknown.Of(CheckKind.SelectivityOfFuses).Outcome);
        Assert.Equal(
            "Published times do not show that the main fuse stays closed while the fuse behind it clears a fault. Get the melting Joule integral of the main fuse from its maker (UpstreamProtection.WithLeastMelting), or take one with a slower curve.",
            CheckCase.AdviceOf(unknown, CheckKind.SelectivityOfFuses));
        Assert.Equal(
            "The main fuse opens before the fuse behind it: a larger or slower main fuse, or a smaller fuse behind it. Everything on the main fuse goes dark with this circuit.",
            CheckCase.AdviceOf(Of(12, OnTerminal(Gg(63), 35, 4)), CheckKind.SelectivityOfFuses));
    }

    [Theory]
    [InlineData(200, 6, 63, 35, "behind the 200 A gG fuse-link (IEC 60269-2 gG, 250 V)", 200)]
    [InlineData(200, 120, 63, 1, "behind the 63 A gG fuse-link (IEC 60269-2 gG, 250 V)", 63)]
    public void TwoDevicesInARow_TheWorseLeadIsNamed_WhicheverComesFirst(double first, double firstSection, double second, double secondSection, string where, double value)
    {
        // 200 A on 6 mm² and 63 A on 1 mm² are far above what those wires carry; 200 A on 120 mm² and 63 A on 35 mm² are below it.
        UpstreamProtection[] row =
        [
            UpstreamProtection.Fuse(Gg(first)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(firstSection, 1)),
            UpstreamProtection.Fuse(Gg(second)).WithUpstream(MilliOhm(8)).WithLead(Mains.Lead(secondSection, 0.2)),
        ];
        CheckResult worse = CircuitDesigner.Verify(Fan(25).WithUpstreamProtection(row), RoadVehicle(1.5), Blade(5), DesignRules.RoadVehicle).Of(CheckKind.MainFuseProtectsLead);
        Assert.Equal((CheckOutcome.Fail, value), (worse.Outcome, worse.Value));
        Assert.Contains(where, worse.Where, StringComparison.Ordinal);
    }

    [Fact]
    public void LeadWithAChassis_CountsTheMetal()
    {
        // What is stated beyond the lead's wire, holders and joints, is the rest of the 62 mΩ: with more metal there is less rest, and the sum stays.
        BranchState lead = Stage(40), less = Stage(10);
        Near(0.062 - (4 * 0.000527), lead.OwnFixedOhms, 1e-3);
        Near(lead.OwnFixedOhms, less.OwnFixedOhms, 1e-12);

        // Where the whole of the lead is more than what is stated, nothing is taken off it.
        Near(0.100, Stage(100).OwnFixedOhms, 1e-12);

        static BranchState Stage(double milliOhms)
        {
            CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(35), M(4)), ReturnPath.Chassis(MilliOhm(milliOhms)));
            CircuitRequirements asked = Fan(62).WithUpstreamProtection(OnTerminal(Gg(63), 35, 4).WithLead(path));
            return CircuitDesigner.Verify(asked, RoadVehicle(1.5), Blade(5), DesignRules.RoadVehicle).State().Supply[0].At;
        }
    }

    /// <summary>A supply that gives just what the main device carries cannot open it, whatever happens behind.</summary>
    [Theory]
    [InlineData(63, CheckOutcome.Pass)]
    [InlineData(63.5, CheckOutcome.Undetermined)]
    public void Selectivity_OfASupplyAtTheRatingItself_IsGiven(double limit, CheckOutcome outcome)
    {
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(35, 4));
        CheckResult check = Of(12, main, Source.CurrentLimited(V(13), A(limit))).Of(CheckKind.SelectivityOfFuses);
        Assert.Equal(outcome, check.Outcome);
        if (outcome == CheckOutcome.Pass)
        {
            Assert.Equal("the supply gives at most 63 A there, which the 63 A main breaker (as stated) carries", check.Note);
        }
    }

    /// <summary>A circuit without a fuse of its own is protected by the device before it: that one breaks the current itself, with nothing before it that could.</summary>
    [Fact]
    public void BreakingCapacity_OfTheDeviceThatIsTheCircuitsFuse_HasNoneBefore()
    {
        UpstreamProtection main = UpstreamProtection.Device("main device", A(63), V(80), A(1000)).WithUpstream(MilliOhm(0.5)).WithLead(Mains.Lead(35, 2));
        CircuitDesign design = CircuitDesigner.Verify(Fan(5, Pack).WithUpstreamProtection(main), RoadVehicle(35), fuse: null, DesignRules.RoadVehicle);
        CheckResult check = design.Of(CheckKind.BreakingCapacity);
        Assert.Equal((CheckOutcome.Fail, ""), (check.Outcome, check.Note));
        Near(1000, check.Limit, 2e-9);
        Assert.Equal(
            "Choose a fuse with a higher breaking capacity, or fit a main fuse that has one at the source. No wire size changes this.", CheckCase.AdviceOf(design, CheckKind.BreakingCapacity));
    }

    private static CircuitDesign Of(double milliOhms, UpstreamProtection main, Source? source = null) =>
        CircuitDesigner.Verify(Fan(milliOhms, source).WithUpstreamProtection(main), RoadVehicle(1.5), Blade(5), DesignRules.RoadVehicle);
}

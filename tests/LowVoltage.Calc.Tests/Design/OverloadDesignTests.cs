using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The fuse against the wire in a design: every current from the conventional fusing current to the prospective one.</summary>
/// <remarks>
/// Where a table rates a wire below what it carries free in air, the designer cools it so that the rated current brings it to the rated temperature. Its heat then leaves in
/// proportion to its rise, and the whole of an overload is an exponential (<see cref="Plain.Heated"/>): no part of the library is needed to follow it.
/// Allowance 25 K: ISO 6722-1, 240 h ageing, from memory.
/// </remarks>
public class OverloadDesignTests
{
    private static readonly InsulationMaterial Xlpe = InsulationMaterial.CrossLinkedPolyethylene;

    [Theory]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    public void SmallCraft_TwelveGaugeInAnEngineSpace_AsTheExponentialSays(double fuse)
    {
        // 33 CFR 183.425 Table 5, 90 °C, notes 1 and 2: 40 · 0.82 · 0.60 = 19.68 A, in the 50 °C that note 1 is for; the air is at 45 °C. XLPE: 90 °C, short circuit 250 °C.
        DesignRules rules = new(DesignRules.SmallCraft) { Ampacity = AmpacityBasis.SmallCraftTable };
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(6)), feed: 1, ambient: 45, conductors: 5, insulation: Xlpe, engineSpace: true), Awg(12), Blade(fuse), rules);
        Case wire = new(Plain.AwgPerKilometer(12), Plain.AwgArea(12), 45, 40 * 0.82 * 0.60, 90, 90, 250) { RatedAmbient = 50 };
        AssertOverload(design, wire, Plain.BladeLongest, fuse, 14.4 / (0.0036 + 0.020));
    }

    [Theory]
    [InlineData(7.5)]
    [InlineData(10)]
    [InlineData(15)]
    [InlineData(20)]
    [InlineData(30)]
    public void RoadVehicleTable_FourMillimetersInABundle_AsTheExponentialSays(double fuse)
    {
        // 42 A at 30 °C; two together 0.825, FAA AC 43.13-1B figure 11-5; six circuits of two: 0.57, IEC 60364-5-52; PVC 70 °C, short circuit 160 °C.
        DesignRules rules = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable };
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(5)), conductors: 12), RoadVehicle(4), Blade(fuse), rules);
        AssertOverload(design, new(4.71, 4, 30, 42 * 0.825 * 0.57, 70, 70, 160), Plain.BladeLongest, fuse, 14.4 / (0.0036 + 0.020));
    }

    [Fact]
    public void BuildingTable_SlowFuse_TheWeakStretchOfTwoDecides()
    {
        // 10 mm² and two 1.5 mm² side by side, method C at 30 °C, two circuits by the wires laid: 63 and 19.5 A, times 0.80. Each of the two takes half.
        DesignRules rules = new(DesignRules.Bench) { Ampacity = AmpacityBasis.BuildingTable, DropLimit = DropLimit.Percent(10) };
        CircuitPath path = CircuitPath.Create([Segment.Create(Class5(10), M(2)), Segment.Create(Class5(1.5), M(1), 2)], ReturnPath.Chassis(MilliOhm(2)));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(6)), conductors: 4), path, Blade(20), rules);
        Near(2 * 19.5 * 0.80, design.Of(CheckKind.FuseProtectsWire).Limit, 1e-8);
        Case half = new(13.3, 1.5, 30, 19.5 * 0.80, 70, 70, 160) { Share = 0.5 };
        AssertOverload(design, half, Plain.BladeLongest, 20, 14.4 / (0.0036 + 0.020));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Verify_TwoStretchesThatTheFuseLeavesContinuously_TheHotterIsShownWhateverTheirOrder(bool thinFirst)
    {
        // A reviewer's finding: 2.5 mm² and 1.5 mm² behind 20 A, which need not open below 27 A. Table at 30 °C: 24 A for 1.5 mm², never better cooled than free in air.
        DesignRules rules = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable, DropLimit = DropLimit.Percent(20) };
        Segment thin = Segment.Create(RoadVehicle(1.5), M(2)), thick = Segment.Create(RoadVehicle(2.5), M(3));
        CircuitPath path = CircuitPath.Create(thinFirst ? [thin, thick] : [thick, thin], ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(5))));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(8)), conductors: 12);
        CheckResult check = CircuitDesigner.Verify(asked, path, Blade(20), rules).Of(CheckKind.OverloadTemperature);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);

        // Two together 0.825, six circuits 0.57: 24 · 0.825 · 0.57 = 11.29 A.
        Near(Plain.Heated(12.7, 1.5, 30, 24 * 0.825 * 0.57, 70, 70, 27, double.PositiveInfinity), check.Value, 1e-6);
        Assert.Equal("feed, 2 m of 1.5 mm² road-vehicle copper", check.Where);
        ProtectedWire[] wires =
        [
            ProtectedWire.Create(Wire.Create(RoadVehicle(2.5), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.35)), new Surroundings { Ambient = C(30) }),
            ProtectedWire.Create(Wire.Create(RoadVehicle(1.5), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.30)), new Surroundings { Ambient = C(30) }),
        ];
        Assert.Equal(1, FuseAgainstWire.Check(Blade(30), wires, A(500)).WeakestWire);
        Assert.Equal(0, FuseAgainstWire.Check(Blade(30), [wires[1], wires[0]], A(500)).WeakestWire);
    }

    [Fact]
    public void Shared_OthersCurrent_IsTakenFromWhatTheWireCarries()
    {
        // 6 mm² in a bundle of six circuits carries 54 · 0.825 · 0.57 = 25.4 A (road-vehicle table), of which others take 20 A.
        DesignRules rules = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable, DropLimit = DropLimit.Percent(10) };
        CircuitRequirements asked = Circuit(
            Load.ConstantCurrent(A(4)), feed: 1, back: ReturnPath.Shared([Segment.Create(RoadVehicle(6), M(1))], A(20)), conductors: 12);
        CircuitDesign design = CircuitDesigner.Verify(asked, RoadVehicle(6), Blade(7.5), rules);
        AssertOverload(design, new(3.14, 6, 30, (54 * 0.825 * 0.57) - 20, 70, 70, 160), Plain.BladeLongest, 7.5, 14.4 / (0.0036 + 0.020));
    }

    [Fact]
    public void Design_ByDefault_NamesTheAllowanceAndTheCurrent()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8))), DesignRules.RoadVehicle);
        CheckResult check = design.Of(CheckKind.OverloadTemperature);
        Assert.Equal(("overload temperature", "°C", CheckOutcome.Pass, 160.0), (check.Name, check.Unit, check.Outcome, check.Limit));
        Assert.StartsWith("tightest at ", check.Note, StringComparison.Ordinal);
        Assert.Contains("10 A blade fuse (ISO 8820-3 type C) may let pass for", check.Note, StringComparison.Ordinal);
        Assert.Same(OverloadAllowance.Ageing240Hours.Reference, check.Reference);
    }

    [Fact]
    public void Verify_FuseTheWireCannotStandUpTo_FailsWithWhatWouldHelp()
    {
        // 19.5 A · 0.80 = 15.6 A; a 15 A fuse need not open below 20.25 A, which 1.5 mm² does not stand continuously at 70 °C + 25 K:
        // 30 + 40 · (20.25/15.6)² · R(95)/R(70) = 103 °C.
        DesignRules rules = new(DesignRules.Bench) { Ampacity = AmpacityBasis.BuildingTable, DropLimit = DropLimit.Percent(10) };
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(6)), feed: 1, conductors: 4), Class5(1.5), Blade(15), rules);
        CheckResult check = design.Of(CheckKind.OverloadTemperature);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.FuseProtectsWire).Outcome);
        Assert.Contains("tightest up to 20.25 A, at which the 15 A blade fuse", check.Note, StringComparison.Ordinal);
        Near(Plain.Heated(13.3, 1.5, 30, 15.6, 70, 70, 20.25, double.PositiveInfinity), check.Value, 1e-6);
        Assert.Contains(design.Advice, line => line.StartsWith("An overload that the fuse does not interrupt overheats the wire: use a smaller fuse", StringComparison.Ordinal));

        // The designer's own answer to the same duty is named.
        CircuitDesign own = CircuitDesigner.Design(design.Requirements, rules);
        Assert.True(own.IsFeasible);
        Assert.Contains(design.Advice, line => line == $"For this duty the rules would choose {own.Wire} with {own.Fuse}.");
    }

    [Fact]
    public void Design_NoFuseBetweenLoadAndWire_SaysWhichOfTheTwoAndWhatWouldHelp()
    {
        // 15 A load: a fuse of 18.75 A, the next is 20 A. One size only, 1.5 mm²: 19.5 A by method C, two loaded.
        DesignRules rules = new(DesignRules.Bench)
        {
            Conductors = ConductorSeries.Iec60228Class5.Only("one size", ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(1.5))),
            Ampacity = AmpacityBasis.BuildingTable,
            DropLimit = DropLimit.Percent(20),
        };
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(15)), feed: 0.5), rules);
        Assert.True(design.IsNearest);
        Assert.Equal(("1.5 mm² class 5 copper", 20.0), (design.Wire.Name, design.Fuse!.Current.Amperes));
        design.Is(CheckKind.FuseCarriesLoad, 20, 18.75, 1e-8);
        design.Is(CheckKind.FuseProtectsWire, 20, 19.5, 1e-8);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.FuseProtectsWire).Outcome);

        // 20 A need not open below 27 A: the wire settles where 19.5 A bring it to 70 °C.
        design.Is(CheckKind.OverloadTemperature, Plain.Heated(13.3, 1.5, 30, 19.5, 70, 70, 27, double.PositiveInfinity), 95, 1e-6);
        Assert.Equal([CheckKind.FuseProtectsWire, CheckKind.OverloadTemperature], design.Checks.Where(c => c.Outcome == CheckOutcome.Fail).Select(c => c.Kind!));
        Assert.Equal(CheckKind.OverloadTemperature, design.Governing.Kind);
        Assert.Contains(design.Advice, line => line.StartsWith("The fuse is too large for the wire: use a smaller", StringComparison.Ordinal));
        Assert.StartsWith("nothing passes; nearest 1.5 mm² class 5 copper with 20 A blade fuse (ISO 8820-3 type C): overload temperature ", design.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_WithoutAllowance_LeavesTheRuleOnCurrents()
    {
        DesignRules rules = new(DesignRules.Bench) { FusePractice = new FusePractice { Overload = null } };
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(6)), feed: 1), Class5(1.5), Blade(15), rules);
        Assert.Null(design.Find(CheckKind.OverloadTemperature));
        Assert.Same(OverloadAllowance.Ageing240Hours, new FusePractice().Overload);
    }

    [Fact]
    public void Verify_StricterAllowance_LowersTheLimit()
    {
        static CheckResult at(OverloadAllowance allowance) => CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(6)), feed: 1), Class5(0.75), Blade(7.5), new DesignRules(DesignRules.Bench) { FusePractice = new FusePractice { Overload = allowance } })
            .Of(CheckKind.OverloadTemperature);
        Assert.Equal(70, at(OverloadAllowance.None).Limit);
        Assert.Equal(95, at(OverloadAllowance.Ageing240Hours).Limit);
        Assert.Same(OverloadAllowance.None.Reference, at(OverloadAllowance.None).Reference);
    }

    [Fact]
    public void Verify_WeakSupply_CannotOverloadTheWire()
    {
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(5)), feed: 0.5, conductors: 1, upstreamMilliOhms: 0), Class5(0.75), Blade(5), DesignRules.Bench);
        Assert.Null(design.Find(CheckKind.OverloadTemperature));
        Assert.Equal(Verdict.Pass, design.Verdict);
    }

    [Fact]
    public void Verify_WireThatIsNotRated_IsUndetermined()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), ambient: 75), Class5(4), Blade(5), DesignRules.Bench);
        CheckResult check = design.Of(CheckKind.OverloadTemperature);
        Assert.Equal((CheckOutcome.Undetermined, "the wire is not rated here"), (check.Outcome, check.Note));
    }

    [Fact]
    public void Verify_SupplyThatHoldsItsLimit_TakesThatCurrentUntilTheFuseOpens()
    {
        // 24 V behind 40 A limit into 2 m of 2.5 mm²: 40 A is 4 · 10 A; the wire would let far more through. 350 %: 0.5 s, 600 %: 0.1 s.
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(6)), Source.CurrentLimited(V(24), A(40)), feed: 1, upstreamMilliOhms: 5), Class5(2.5), Blade(10), DesignRules.Bench);
        design.Is(CheckKind.FaultOpensFuse, Plain.Time(Plain.BladeLongest, 10, 40), 5);
    }

    [Fact]
    public void Verify_SupplyThatHoldsItsLimitOverALongLead_CountsTheFallBeyondIt()
    {
        // 12 V, 20 A limit, 0.5 mm² class 5 (39 Ω/km), 12.6 m at 70 °C: 12/(12.6·0.0467) = 20.4 A, just above the limit when the fault begins. A 7.5 A fuse takes 1.7 s
        // at 20 A; by then the wire has heated and the current has fallen below the limit: counted as a loop that starts at 20 A, which gives less than the supply does.
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(1)), Source.CurrentLimited(V(12), A(20)), feed: 6.3, upstreamMilliOhms: 0, drop: DropLimit.Percent(50)), Class5(0.5), Blade(7.5), DesignRules.Bench);
        CheckResult check = design.Of(CheckKind.FaultOpensFuse);
        double held = Plain.Time(Plain.BladeLongest, 7.5, 20);
        double behind = (12 / 20.0) - (12.6 * Plain.PerMeter(39, 70));
        (double late, _) = Plain.Clear(Plain.BladeLongest, 7.5, 12, behind, 12.6, 39, 0.5, 70);
        Assert.True(late > 1.05 * held);
        Near(late, check.Value, 1e-5);
    }

    [Fact]
    public void Verify_FaultThatFallsBelowTheFusingCurrentAsTheWireHeats_NeedNotOpenTheFuse()
    {
        // A long thin lead: 33 A at first, 220 % of 15 A, which opens the fuse in 3.5 s if it stays. The wire heats by 33 K in each of them and the current falls, until the
        // fuse takes longer than the wire takes to bring it below 20.25 A.
        Source source = Source.BehindResistance(V(12), V(12), V(12), MilliOhm(1), MilliOhm(1));
        double perMeter = Plain.PerMeter(39, 70);
        double meters = 12 / 33.0 / perMeter / 2;
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(1)), source, feed: meters, upstreamMilliOhms: 0, drop: DropLimit.Percent(50)), Class5(0.5), Blade(15), new DesignRules(DesignRules.Bench) { FusePractice = new FusePractice { Overload = null } });

        double constant = Plain.Time(Plain.BladeLongest, 15, 12 / (0.001 + (2 * meters * perMeter)));
        Assert.InRange(constant, 2, 5);

        // By small steps of the Joule integral, to the melting point or below the fusing current, the fuse never has what it needs.
        double theta = 70, joule = 0, section = Plain.Rho / 0.039 * 1e-6;
        double amperes() => 12 / (0.001 + (2 * meters * Plain.PerMeter(39, theta)));
        while (amperes() >= 1.35 * 15)
        {
            Assert.True(theta < 1083 && joule < amperes() * amperes() * Plain.Time(Plain.BladeLongest, 15, amperes()));
            (theta, joule) = (theta + (Plain.PerMeter(39, theta) / (Plain.HeatCapacity * section)), joule + 1);
        }

        CheckResult check = design.Of(CheckKind.FaultOpensFuse);
        Assert.Equal((CheckOutcome.Fail, null), (check.Outcome, check.Value));
        Assert.Contains("falls as the wire heats: the fuse need not open", check.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void SourceDistance_OfTheCaller_IsHeldTo()
    {
        SourceDistance rule = SourceDistance.Create("house rule", M(0.15), M(0.3), Reference.CommonPractice("house rule"));
        Assert.Equal(("house rule", 0.15, 0.3, "house rule"), (rule.Name, rule.Open.Meters, rule.Sheathed!.Value.Meters, rule.ToString()));
        DesignRules rules = new(DesignRules.Bench) { FusePractice = new FusePractice { Distance = rule } };
        CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4)), fuseDistance: 0.2), Class5(2.5), Blade(5), rules).Is(CheckKind.FuseDistance, 0.2, 0.15, 1e-8);
        DesignRules any = new(DesignRules.Bench) { FusePractice = new FusePractice { Distance = SourceDistance.Iso10133 } };
        CircuitRequirements sheathed = new()
        {
            Source = LeadAcid(), Load = Load.ConstantCurrent(A(4)), Feed = M(2), Return = ReturnPath.Wire(M(2)), Place = new Place { Ambient = C(25) }, Insulation = Xlpe, Upstream = MilliOhm(15),
            FuseDistance = M(7), SheathedToFuse = true,
        };
        Assert.Null(CircuitDesigner.Verify(sheathed, Class5(2.5), Blade(5), any).Find(CheckKind.FuseDistance));
    }

    /// <summary>One stretch: Ω/km, mm², ambient, rated current at a temperature, continuous and short-circuit limit; its share of the fuse's current.</summary>
    private readonly record struct Case(
        double PerKilometer, double Area, double Ambient, double Rated, double RatedCelsius, double Continuous, double ShortCircuit)
    {
        public double Share { get; init; } = 1;

        /// <summary>The air that the rated current is for, where it is not the air around the wire.</summary>
        public double? RatedAmbient { get; init; }

        public double After(double amperes, double seconds) =>
            Plain.Heated(PerKilometer, Area, Ambient, Rated, RatedCelsius, Continuous, amperes * Share, seconds, RatedAmbient);
    }

    private static void AssertOverload(CircuitDesign design, Case wire, (double Multiple, double Seconds)[] gates, double fuse, double prospective)
    {
        CheckResult check = design.Of(CheckKind.OverloadTemperature);

        // By trying many currents: is the wire within its limit whenever the fuse must have opened?
        double fusing = gates[0].Multiple * fuse, overload = Math.Min(wire.Continuous + 25, wire.ShortCircuit);
        bool holds = wire.After(fusing, double.PositiveInfinity) <= overload;
        for (int k = 0; k <= 20_000 && holds; k++)
        {
            double i = fusing * Math.Pow(prospective / fusing, k / 20_000.0), t = Plain.Time(gates, fuse, i);
            holds = wire.After(i, t) <= (t > 5 ? overload : wire.ShortCircuit);
        }

        Assert.True(holds == (check.Outcome == CheckOutcome.Pass), check + ", " + check.Note);

        // The temperature shown is that at the current that is named.
        double at = Number(check.Note, @"tightest (?:at|up to) ([\d.]+) A");
        bool held = check.Note.Contains("need not open", StringComparison.Ordinal);
        double reached = wire.After(at, held ? double.PositiveInfinity : Plain.Time(gates, fuse, at));

        // The note rounds the current to four digits, 0.05 %: 0.1 % of the heat, and up to 0.5 % of a time that falls with the tenth power (50 s to 5 s from 160 % to 200 %).
        Assert.Equal(reached, check.Value!.Value, 0.006 * (reached - wire.Ambient));
        // At 5 s, where the two limits meet, the rounded current may stand on either side.
        double seconds = held ? double.PositiveInfinity : Plain.Time(gates, fuse, at);
        Assert.True(Math.Abs(seconds - 5) < 0.03 || check.Limit.Equals(seconds <= 5 ? wire.ShortCircuit : overload), check + ", " + check.Note);
        Assert.Contains(check.Limit!.Value, new[] { overload, wire.ShortCircuit });
    }

    private static double Number(string text, string pattern) => double.Parse(
        System.Text.RegularExpressions.Regex.Match(text, pattern).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
}

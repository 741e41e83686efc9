using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class DesignWordsTests
{
    private static readonly DesignRules Bench = DesignRules.Bench;

    [Theory]
    [InlineData(nameof(CheckKind.PowerDelivery), "W", true)]
    [InlineData(nameof(CheckKind.MechanicalMinimum), "mm²", true)]
    [InlineData(nameof(CheckKind.VoltageDrop), "V", false)]
    [InlineData(nameof(CheckKind.LoadVoltage), "V", true)]
    [InlineData(nameof(CheckKind.ContinuousCurrent), "A", false)]
    [InlineData(nameof(CheckKind.ConductorTemperature), "°C", false)]
    [InlineData(nameof(CheckKind.FuseCarriesLoad), "A", true)]
    [InlineData(nameof(CheckKind.FuseProtectsWire), "A", false)]
    [InlineData(nameof(CheckKind.FuseVoltage), "V", true)]
    [InlineData(nameof(CheckKind.BreakingCapacity), "A", false)]
    [InlineData(nameof(CheckKind.InrushHeld), "", false)]
    [InlineData(nameof(CheckKind.FaultOpensFuse), "s", false)]
    [InlineData(nameof(CheckKind.ShortCircuitTemperature), "°C", false)]
    [InlineData(nameof(CheckKind.FuseDistance), "m", false)]
    public void Check_OfEveryKind_HasItsUnitAndSense(string id, string unit, bool least)
    {
        CheckKind kind = CheckKind.Find(id)!;
        // A lamp with a minimum voltage of its own on board: every kind but the one of an impossible load.
        CircuitDesign design = kind == CheckKind.PowerDelivery
            ? CircuitDesigner.Verify(Circuit(Load.ConstantPower(W(9000))), Class5(1), Blade(5), Bench)
            : CircuitDesigner.Design(
                Circuit(Load.Lamp(W(24), V(12)).WithMinimumVoltage(V(10)), upstreamMilliOhms: 15, insulation: InsulationMaterial.CrossLinkedPolyethylene), DesignRules.SmallCraft);
        CheckResult check = design.Of(kind);
        Assert.Equal((unit, least), (check.Unit, check.LimitIsLeast));
        Assert.StartsWith(check.Name + " ", check.ToString(), StringComparison.Ordinal);
        Assert.Contains((least ? "at least " : "at most "), check.ToString(), StringComparison.Ordinal);
        Near((least ? check.Value - check.Limit : check.Limit - check.Value) / check.Limit, check.Margin, 1e-12);
    }

    [Fact]
    public void Check_Equality_IsByValue()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(4)));
        CheckResult a = CircuitDesigner.Design(asked, Bench).Of(CheckKind.VoltageDrop), b = CircuitDesigner.Design(asked, Bench).Of(CheckKind.VoltageDrop);
        CheckResult other = CircuitDesigner.Design(asked, Bench).Of(CheckKind.ContinuousCurrent);
        Assert.True(a == b && a.Equals((object)b) && a.GetHashCode() == b.GetHashCode());
        Assert.True(a != other && !a.Equals(other) && !a.Equals("text"));
    }

    [Fact]
    public void Check_ThatNobodyMade_IsUndeterminedAndSaysSo()
    {
        // The zero value once printed "power delivery 0 W, at least 0 W: pass".
        CheckResult none = default;
        Assert.Equal("not evaluated", none.ToString());
        Assert.Equal((CheckOutcome.Undetermined, null, null, null), (none.Outcome, none.Value, none.Limit, none.Margin));
        Assert.Equal((null, null, null, null), (none.Kind, none.Quantity, none.LimitQuantity, none.Level));
        Assert.Equal(("", "", "", false), (none.Where, none.Note, none.Unit, none.LimitIsLeast));
        Assert.NotNull(none.Reference);
        Assert.True(none == default && none.Equals((object)default(CheckResult)));

        // A circuit that was not asked something has no answer to it, not a zero one.
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4))), Bench);
        Assert.Null(design.Find(CheckKind.InrushHeld));
        Assert.NotEqual(none, design.Of(CheckKind.VoltageDrop));
    }

    [Theory]
    [InlineData(1, "of what it stands once, which is")]
    [InlineData(250, "of what it stands 250 times, which is")]
    public void Start_InAClause_BeginsSmallAndCountsItsStarts(int starts, string words)
    {
        CircuitRequirements asked = new(Circuit(Load.Lamp(W(24), V(12)))) { Starts = starts };
        CheckResult start = CircuitDesigner.Verify(asked, Class5(2.5), Blade(5), Bench).Of(CheckKind.InrushHeld);
        Assert.StartsWith("the start peaks at ", start.Note, StringComparison.Ordinal);
        Assert.Contains(words, start.Note, StringComparison.Ordinal);

        // On a fuse of unknown times the check reads as one line.
        CheckResult unknown = CircuitDesigner.Verify(
            new CircuitRequirements(Circuit(Load.Motor(A(60), A(200), A(300), Duration.FromSeconds(0.4)), feed: 0.5)) { Starts = starts }, Class5(50), LowVoltage.Calc.Protection.FuseSeries.RoadVehicleStrip51.SmallestAtLeast(A(80)), Bench)
            .Of(CheckKind.InrushHeld);
        Assert.StartsWith("fuse holds at start, share of what it withstands: undetermined, the start peaks at 200 A and stays above", unknown.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void CheckKind_IsFoundByItsIdAndNothingElse()
    {
        Assert.All(CheckKind.All, kind => Assert.Same(kind, CheckKind.Find(kind.Id)));
        Assert.Equal(CheckKind.All.Count, CheckKind.All.Select(kind => kind.Id).Distinct().Count());
        Assert.Equal(CheckKind.All.Count, CheckKind.All.Select(kind => kind.Name).Distinct().Count());
        Assert.Null(CheckKind.Find("voltagedrop"));
        Assert.Null(CheckKind.Find(""));
    }

    [Fact]
    public void Assumptions_NameTheWayBackOfEveryKind()
    {
        string back(ReturnPath way) => Assert.Single(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), back: way), Bench).Assumptions, line => line.StartsWith("Feed 3 m one way; ", StringComparison.Ordinal));
        Segment wire = Segment.Create(Class5(10), M(2));
        Assert.Contains("return 4 m of the same wire", back(ReturnPath.Wire(M(4))), StringComparison.Ordinal);
        Assert.Contains("return 2 m of given wire", back(ReturnPath.Wire(wire)), StringComparison.Ordinal);
        Assert.Contains("through a chassis of 5 mΩ, whose own rating is not checked", back(ReturnPath.Chassis(MilliOhm(5))), StringComparison.Ordinal);
        Assert.Contains("shared with 3 A of other loads, 5 mΩ, whose own rating is not checked", back(ReturnPath.Shared(MilliOhm(5), A(3))), StringComparison.Ordinal);
        Assert.Contains("shared with 3 A of other loads, 2 m of given wire", back(ReturnPath.Shared([wire], A(3))), StringComparison.Ordinal);
    }

    [Fact]
    public void Mass_CountsOutAndBackButNotWhatIsShared()
    {
        // ASTM B496 density 8890 kg/m³; nominal section.
        double perMeter = 8890 * 0.75e-6;
        CircuitDesign pair = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(2)), feed: 2, back: ReturnPath.Wire(M(3))), Class5(0.75), Blade(3), Bench);
        Near(5 * perMeter, pair.ConductorMass.Kilograms, 1e-12);
        CircuitDesign shared = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(2)), feed: 2, back: ReturnPath.Shared([Segment.Create(Class5(10), M(2))], A(3))), Class5(0.75), Blade(3), Bench);
        Near(2 * perMeter, shared.ConductorMass.Kilograms, 1e-12);

        // 2 m of a pair, 1 m of one, 3 m of a pair back.
        CircuitPath path = CircuitPath.Create([Segment.Create(Class5(0.75), M(2), 2), Segment.Create(Class5(0.75), M(1))], ReturnPath.Wire(Segment.Create(Class5(0.75), M(3), 2)));
        CircuitDesign existing = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(2)), feed: 3, back: ReturnPath.Wire(M(3))), path, Blade(3), Bench);
        Near((4 + 1 + 6) * perMeter, existing.ConductorMass.Kilograms, 1e-12);
    }

    [Fact]
    public void Advice_UndeterminedForWantOfFuseData_DoesNotCallItAFailure()
    {
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(12)), feed: 12), Class5(4), LowVoltage.Calc.Protection.FuseSeries.NationalElectricalCodeFuses.SmallestAtLeast(A(15)), Bench);

        Assert.Equal(Verdict.Fail, design.Verdict);
        Assert.Equal(CheckOutcome.Undetermined, design.Of(CheckKind.FaultOpensFuse).Outcome);
        Assert.Single(design.Advice, line => line.StartsWith("What is undetermined about the fuse: get its d.c. voltage", StringComparison.Ordinal));
        Assert.DoesNotContain(design.Advice, line => line.Contains("too late", StringComparison.Ordinal) || line.Contains("overheats", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_SeveralChecksFail_NamesThemAll()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(12)), feed: 12), RoadVehicle(0.75), Blade(30), DesignRules.RoadVehicle);
        CheckResult[] failed = [.. design.Checks.Where(check => check.Outcome == CheckOutcome.Fail)];
        string verdict = design.Explain().Steps.Single(step => step.Sought == "verdict").Reason;

        Assert.True(failed.Length > 1);
        Assert.All(failed, check => Assert.Contains(check.Name, verdict, StringComparison.Ordinal));
    }

    [Fact]
    public void Assumptions_BoatWireInWarmAirOutsideAnEngineSpace_SayWhichFactorIsTaken() => Assert.Contains(
        CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), ambient: 45, conductors: 2), DesignRules.SmallCraft).Assumptions,
        line => line.Contains("although it was not stated to be an engine space", StringComparison.Ordinal));

    [Fact]
    public void Summary_SaysVerdictAndWhatGoverns()
    {
        CircuitDesign pass = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4))), Bench);
        Assert.EndsWith(": pass, governed by voltage drop", pass.ToString(), StringComparison.Ordinal);
        CircuitDesign open = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4)), upstreamMilliOhms: null), Bench);
        Assert.Contains(": no check fails, 1 undetermined, governed by ", open.ToString(), StringComparison.Ordinal);
        CircuitDesign fail = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(4))), Class5(0.5), Blade(5), Bench);
        Assert.Contains("voltage drop 1.", fail.ToString(), StringComparison.Ordinal);
        Assert.Contains("shorten the run", fail.Advice[0], StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Assumptions_WayBackOfTwoWires_IsAsLongAsBoth()
    {
        Segment wire = Segment.Create(Class5(10), M(2)), longer = Segment.Create(Class5(6), M(3));
        Assert.Contains("Feed 3 m one way; return 5 m of given wire.", CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), back: ReturnPath.Wire(wire, longer)), Bench).Assumptions);
        Assert.Contains(
            "Feed 3 m one way; return shared with 3 A of other loads, 5 m of given wire.", CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)), back: ReturnPath.Shared([wire, longer], A(3))), Bench).Assumptions);
    }

    [Fact]
    public void Assumptions_BehindAMainFuse_SayWhatItsLeadCarries_AndWhatIsLeftOut()
    {
        // 80 % of 63 A.
        const string Main = "63 A gG fuse-link (IEC 60269-2 gG, 250 V)", Carries = $"The supply lead behind the {Main} carries at most 50.4 A continuously, with all that hangs on it.";
        const string Selectivity = "Selectivity counts this circuit's fault alone: what the main fuse carries for other circuits at that moment comes on top.";
        const string Protects = $"The circuit has no fuse of its own: the {Main} protects its wire too.";
        CircuitRequirements asked = Upstream.Mains.Fan(12).WithUpstreamProtection(Upstream.Mains.OnTerminal(Upstream.Mains.Gg(63), 35, 4));
        IReadOnlyList<string> fused = CircuitDesigner.Verify(asked, RoadVehicle(10), Blade(5), DesignRules.RoadVehicle).Assumptions, bare = CircuitDesigner.Verify(asked, RoadVehicle(10), null, DesignRules.RoadVehicle).Assumptions;
        Assert.Equal((1, 1, 0), (fused.Count(line => line == Carries), fused.Count(line => line == Selectivity), fused.Count(line => line == Protects)));
        Assert.Equal((0, 1), (bare.Count(line => line == Selectivity), bare.Count(line => line == Protects)));
    }

    [Fact]
    public void Assumptions_InAnEngineSpace_SayWhetherTheRatingKnowsIt()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), ambient: 45, engineSpace: true);
        Assert.Contains("Air at 45 °C, 2 loaded conductors together, in an engine space.", CircuitDesigner.Design(asked, DesignRules.SmallCraft).Assumptions);
        Assert.Contains(
            "Air at 45 °C, 2 loaded conductors together, in an engine space: this rating knows no such thing and counts the stated air temperature only.", CircuitDesigner.Design(asked, DesignRules.RoadVehicle).Assumptions);
    }

    [Fact]
    public void Cautions_ThatAlwaysHold_AreWholeSentencesOfTheirOwn_AndCloseEveryList()
    {
        // Short circuit, gas, a second source, the place of the fuse, measuring, who is responsible.
        string[] about = ["short circuit", "explosive gas", "far end", "close to the source", "by measurement", "licensed persons"];
        Assert.Equal(about.Length, Cautions.General.Count);
        Assert.All(about.Zip(Cautions.General), pair => Assert.Contains(pair.First, pair.Second, StringComparison.Ordinal));
        Assert.All(Cautions.General, caution => Assert.True(char.IsUpper(caution[0]) && caution[^1] == '.'));
        Assert.Equal(Cautions.General, CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(4))), Bench).Cautions.TakeLast(about.Length));
    }

    [Fact]
    public void Assumptions_OfWiresSideBySide_AndOfTheWireChosen_StandWhereTheyApply()
    {
        const string Share = "Wires in parallel are taken to share the current equally. One fuse over them does not protect a single one when its partner opens.";
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(4)), back: ReturnPath.Chassis(MilliOhm(2)), conductors: 1);
        CircuitDesign chosen = CircuitDesigner.Design(asked, Bench);
        string wire = $"{chosen.Wire}: {chosen.Wire.Reference}.";
        CircuitDesign laid(int wires) => CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(chosen.Wire, M(3), wires), asked.Return), Blade(5), Bench);
        Assert.Equal((false, true), (chosen.Assumptions.Contains(Share), chosen.Assumptions.Contains(wire)));
        Assert.Equal((false, false), (laid(1).Assumptions.Contains(Share), laid(1).Assumptions.Contains(wire)));
        Assert.Contains(Share, laid(2).Assumptions);
    }

    [Fact]
    public void Assumptions_OfADutyCycle_SayWhatItsPulsesAreTakenFor()
    {
        Load load = Load.ConstantCurrent(A(5));
        string[] Lines(Load asked) => [.. CircuitDesigner.Design(Circuit(asked), Bench).Assumptions.Where(line => line.Contains("duty cycle", StringComparison.Ordinal))];
        Assert.Empty(Lines(load));
        Assert.Contains("its pulses are taken to be short", Assert.Single(Lines(load.WithDutyCycle(DutyCycle.FromFraction(0.5)))), StringComparison.Ordinal);
        Assert.Contains(
            "heats as much as the end of a pulse does", Assert.Single(Lines(load.WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(2))))), StringComparison.Ordinal);
    }

    /// <summary>A duty cycle of a load in a group, or before a capacitor, was not told.</summary>
    [Fact]
    public void Assumptions_OfADutyCycleWithinAGroup_AreToldToo()
    {
        DutyCycle share = DutyCycle.FromFraction(0.5), times = DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(12));
        string[] Lines(params Load[] parts) => Told(Load.Together([Load.ConstantCurrent(A(1)), .. parts]));
        Assert.Contains("its pulses are taken to be short", Assert.Single(Lines(Load.ConstantCurrent(A(4)).WithDutyCycle(share))), StringComparison.Ordinal);
        Assert.Contains("as the end of a pulse does", Assert.Single(Lines(Load.ConstantCurrent(A(4)).WithDutyCycle(times))), StringComparison.Ordinal);
        Assert.Equal(2, Lines(Load.ConstantCurrent(A(4)).WithDutyCycle(times), Load.ConstantCurrent(A(2)).WithDutyCycle(share)).Length);
        Assert.Single(Told(Load.ConstantCurrent(A(4)).WithDutyCycle(times).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(10))));
        string[] nested = Told(Load.Together(Load.ConstantCurrent(A(4)).WithDutyCycle(times)).WithDutyCycle(share));
        Assert.Equal("A load with a duty cycle in a group with another heats by the smaller of the two shares: their pulses may coincide.", nested[^1]);
        Assert.Equal(3, nested.Length);
    }

    [Fact]
    public void Assumptions_OfAMotorWithADutyCycle_SayWhetherItsStartsCount()
    {
        Load motor = Load.Motor(A(3), A(6), A(6), Duration.FromSeconds(0.2));
        const string Counted = "A motor starts in every stated period, and its starting current heats the wire for the length of the start.";
        const string Unknown = "Of a motor with a share of the time alone, what its starts heat is not known and not counted: state the time on and the period.";
        IReadOnlyList<string> Lines(Load asked) => CircuitDesigner.Design(Circuit(asked), Bench).Assumptions;
        Assert.DoesNotContain(Lines(motor), line => line is Counted or Unknown);
        Assert.Contains(Unknown, Lines(motor.WithDutyCycle(DutyCycle.FromFraction(0.5))));
        Assert.Contains(Counted, Lines(motor.WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(12)))));
        Assert.DoesNotContain(
            Lines(Load.Motor(A(3), A(3), A(6), Duration.FromSeconds(0.2)).WithDutyCycle(DutyCycle.FromFraction(0.5))), line => line is Counted or Unknown);
    }

    /// <summary>A zero with a sign once printed as "-0 °C" and "-0 mΩ".</summary>
    [Fact]
    public void Assumptions_OfAZeroWithASign_HaveNone()
    {
        CircuitRequirements asked = new(Circuit(Load.ConstantCurrent(A(5)), ambient: -0.0, upstreamMilliOhms: -0.0, joints: Joint.Create("joint", MilliOhm(-0.0)))) { FuseAmbient = C(-0.0) };
        IReadOnlyList<string> lines = CircuitDesigner.Design(asked, Bench).Assumptions;
        Assert.Contains(lines, line => line.StartsWith("Air at 0 °C", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("Supply lead to the fuse 0 mΩ", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("-0 ", StringComparison.Ordinal) || line.Contains("−0 ", StringComparison.Ordinal));
        Assert.Equal(("0", "0"), (LowVoltage.Calc.Quantities.Accept.Text(-0.0), LowVoltage.Calc.Quantities.Accept.Short(-0.0)));
    }

    private static string[] Told(Load load) => [.. CircuitDesigner.Design(Circuit(load), Bench).Assumptions.Where(line => line.Contains("duty cycle", StringComparison.Ordinal))];

    [Fact]
    public void Assumptions_OfExistingWiring_CountItsFeedAndNotTheOneAskedFor()
    {
        CircuitPath laid = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(2)), Segment.Create(RoadVehicle(4), M(1.5))], ReturnPath.Chassis(MilliOhm(1)));
        Assert.Contains(
            CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(5))), laid, Blade(10), Bench).Assumptions, line => line.StartsWith("Feed 3.5 m one way; ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1, "Air at 30 °C, one loaded conductor alone.")]
    [InlineData(3, "Air at 30 °C, 3 loaded conductors together.")]
    public void Assumptions_CountLoadedConductors_OneAlone(int count, string line) =>
        Assert.Contains(line, CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), back: ReturnPath.Chassis(MilliOhm(1)), conductors: count), Bench).Assumptions);

    [Fact]
    public void Assumptions_WithoutASupplyLead_SayThatItCountsAsNothing()
    {
        string[] lead = [.. CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), upstreamMilliOhms: null), Bench).Assumptions.Where(line => line.StartsWith("The supply lead", StringComparison.Ordinal))];
        Assert.Equal(["The supply lead to the fuse was not stated; it is counted as nothing, for the drop and for the short circuit at the far end."], lead);
    }

    [Fact]
    public void Sheet_OfAnEngineSpace_StatesIt_AndHeadsWhatIsUndetermined()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), upstreamMilliOhms: null, engineSpace: true, insulation: InsulationMaterial.CrossLinkedPolyethylene), DesignRules.SmallCraft);
        WorkedSolution sheet = design.Explain();
        Assert.Contains(sheet.Givens, given => given.Meaning == "place" && given.Value == "engine space");
        Assert.NotEmpty(design.Undetermined);
        Assert.Equal(
            design.Undetermined.Select(check => check.ToString()), Assert.Single(sheet.Notes, note => note.Heading == "Undetermined: not passed, to be settled before building").Lines);
    }
}

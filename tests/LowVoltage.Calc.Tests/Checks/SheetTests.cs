using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>The letters of a sheet: of stretches in places and insulations of their own, of stated temperatures, of numbers that no step gives.</summary>
public class SheetTests
{
    [Fact]
    public void StretchInItsOwnPlaceAndInsulation_HasItsOwnLetters()
    {
        // 1 m of the same wire by the engine: 80 °C, XLPE 90 °C; the rest as ever. By the heat balance, which rates both.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(10)));
        Wire hot = Wire.Create(RoadVehicle(2.5), InsulationMaterial.CrossLinkedPolyethylene, Length.FromMillimeters(0.5));
        Segment engine = Segment.Create(hot, M(1)).WithPlace(new Place { Ambient = C(80), LoadedConductors = 1 });
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(2)), engine, Segment.Create(RoadVehicle(2.5), M(1))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(15), new DesignRules(CheckCase.Table) { Ampacity = AmpacityBasis.HeatBalance });
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_h ≤ θ_c2");
        SolutionStep air = sheet.Steps.First(s => s.Symbol?.Spec == "θ_a2"), limit = sheet.Steps.First(s => s.Symbol?.Spec == "θ_c2");
        Assert.Equal(("temperature of the air around the stretch of 1 m of 2.5 mm² road-vehicle copper", 80.0, "°C", "As stated for this stretch."), (air.Sought, air.Result!.Value, air.Unit, air.Reason));
        Assert.Equal(("temperature that the insulation of the stretch of 1 m of 2.5 mm² road-vehicle copper stands continuously", 90.0, "°C"), (limit.Sought, limit.Result!.Value, limit.Unit));
        Assert.Equal(InsulationMaterial.CrossLinkedPolyethylene.Reference, limit.Source);

        // One rating for the two stretches alike, one for the other, whose section says where.
        Assert.Single(sheet.Steps, s => s.Symbol?.Spec == "I_z" && s.Kind != StepKind.Comparison);
        SolutionStep own = Assert.Single(sheet.Steps, s => s.Symbol?.Spec == "I_zp2" && s.Kind != StepKind.Comparison);
        Assert.Equal($"What 2.5 mm² road-vehicle copper in {engine.Place} carries continuously", own.Section);
        Assert.Equal(design.Of(CheckKind.ContinuousCurrent).Limit, own.Result);
        Assert.Equal("feed, 1 m of 2.5 mm² road-vehicle copper", design.Of(CheckKind.ContinuousCurrent).Where);
    }

    [Fact]
    public void StretchAtAStatedTemperature_IsComparedAsStated()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(2)));
        Segment warm = Segment.Create(RoadVehicle(2.5), M(3)).WithTemperature(ConductorTemperature.At(C(65)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(warm, asked.Return), Blade(5), CheckCase.Table);
        design.Is(CheckKind.ConductorTemperature, 65, 70, 1e-12);
        SolutionStep stated = CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_h ≤ θ_c").Steps.First(s => s.Symbol?.Spec == "θ_h");
        Assert.Equal(("conductor temperature in service", "°C", "As stated for this stretch, or hotter by its rating."), (stated.Sought, stated.Unit, stated.Reason));
        design.Is(CheckKind.VoltageDrop, 2 * (CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(65)), 0.36, 1e-9);
    }

    [Fact]
    public void StatedRiseOfParallelWires_GoesWithTheShareOfEach()
    {
        // Two of 1.5 mm², 20 °C and 80 °C at 10 A each. 12 A run: 6 A each, 41.6 °C; at start the same.
        CircuitRequirements asked = CheckCase.Asked(Load.Motor(A(12), A(20), A(20), Duration.FromSeconds(0.1)).WithMinimumVoltage(V(9)));
        Segment two = Segment.Create(RoadVehicle(1.5), M(3), 2).WithTemperature(ConductorTemperature.SelfHeated(C(20), A(10), C(80)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(two, asked.Return), Blade(20), CheckCase.Table);
        double ohms = CheckCase.Lead + CheckCase.Chassis + (1.5 * Plain.PerMeter(12.7, 20 + (60 * 0.36)));
        design.Is(CheckKind.VoltageDrop, 12 * ohms, 0.36, 1e-9);
        Near(11.89 - (20 * (0.018 + ohms)), design.Of(CheckKind.StartVoltage).Value, 1e-9);
    }

    [Fact]
    public void NumberThatNoStepGives_HasALetterOfTheCheck()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(400)), Blade(10));
        SolutionStep step = CheckCase.Steps(design, CheckKind.PowerDelivery, "P_del ≥ P_want").Steps.Single(s => s.Sought == "check: power delivery");
        Assert.Equal(("least allowed: power delivery", "W"), (step.Limit!.Meaning, step.Limit.Unit));
        SolutionStep most = CheckCase.Verify(Load.Lamp(W(60), V(12)), Blade(10)).Explain().Steps.Single(s => s.Sought == "check: fuse holds at start, share of what it withstands");
        Assert.Equal("most allowed: fuse holds at start, share of what it withstands", most.Limit!.Meaning);
    }

    [Fact]
    public void DutyCycleOnAWireThatIsNotRated_StillShowsItsRootMeanSquare()
    {
        // A supply that does not change: one point, one letter. 2 Ω for a quarter of the time.
        CircuitRequirements asked = CheckCase.Asked(Load.Resistance(ElectricResistance.FromOhms(2)).WithDutyCycle(DutyCycle.FromFraction(0.25)), Source.BehindResistance(V(12), MilliOhm(20)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(10), CheckCase.Table);
        SolutionStep rms = Assert.Single(design.Explain().Steps, s => s.Symbol?.Spec == "I_rms");
        double ohms = 0.020 + CheckCase.Lead + CheckCase.Chassis + (3 * Plain.PerMeter(Plain.AwgPerKilometer(2), 70));
        Near(0.5 * 12 / (2 + ohms), rms.Result, 1e-9);
        Assert.Equal("A", rms.Unit);
        Assert.Equal("Heat goes with the square of the current: over many short pulses the mean of the squares counts, over longer ones the end of a pulse.", rms.Reason);
    }

    [Fact]
    public void WiresSideBySide_CarryAnEqualPartEach()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(30)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3), 2), asked.Return), Blade(40), CheckCase.Table);
        SolutionStep all = Assert.Single(design.Explain().Steps, s => s.Symbol?.Spec == "I_zn1");
        Assert.Equal(("A", "Side by side they share the current, an equal part each."), (all.Unit, all.Reason));

        // Two loaded conductors of the bundle: 0.825 of 32 A each.
        Near(2 * 0.825 * 32, all.Result, 1e-9);
    }

    [Fact]
    public void ShortCircuitOfASupplyAtItsLimit_IsTheSmallerOfTwo()
    {
        // A supply of 24 V that holds 30 A: through 20 mΩ of lead a short would draw 1200 A of a stiff one.
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: Source.CurrentLimited(V(24), A(30)));
        design.Is(CheckKind.BreakingCapacity, 30, 1000, 1e-8);
        SolutionStep flows = CheckCase.Steps(design, CheckKind.BreakingCapacity, "I_k ≤ I_c").Steps.First(s => s.Symbol?.Spec == "I_k");
        Assert.Equal((StepKind.Calculation, "A", "The source holds its limit: the smaller of the two."), (flows.Kind, flows.Unit, flows.Reason));
    }

    [Fact]
    public void LevelsOfOneVoltageBehindDifferentResistances_AreNotCalledTheSame()
    {
        Source source = Source.BehindResistance(V(24), V(24), V(24), MilliOhm(20), MilliOhm(60));
        WorkedSolution sheet = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: source).Explain();
        Assert.DoesNotContain(sheet.Steps, s => s.Reason.StartsWith("The same as at", StringComparison.Ordinal));
        Assert.Equal(3, sheet.Steps.Select(s => s.Section).Where(s => s.StartsWith("Operating point", StringComparison.Ordinal)).Distinct().Count());
    }

    [Fact]
    public void LevelThatRepeatsAnother_IsStatedAsThatOperatingPoint()
    {
        WorkedSolution sheet = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: Source.BehindResistance(V(24), V(24), V(28), MilliOhm(30), MilliOhm(30))).Explain();
        SolutionStep same = Assert.Single(sheet.Steps, s => s.Reason.StartsWith("The same as at", StringComparison.Ordinal));
        Assert.Equal(
            ("Operating point at the nominal supply voltage", "operating point", "The same as at the least supply voltage, number for number."), (same.Section, same.Sought, same.Reason));
    }

    [Fact]
    public void LoadThatGetsLeastAtOneLevel_NamesTheLowestOfThePoints()
    {
        WorkedSolution sheet = CheckCase.Verify(Load.ConstantPower(W(50), 1, V(9)), Blade(10)).Explain();
        Assert.Contains(sheet.Steps, s => s.Kind == StepKind.Calculation && s.Unit == "A" && s.Reason == "The largest of the operating points.");
        Assert.Contains(sheet.Steps, s => s.Kind == StepKind.Calculation && s.Unit == "V" && s.Reason == "The lowest of the operating points.");
    }

    [Fact]
    public void SourceWithoutResistance_HasNoneInItsPoints()
    {
        WorkedSolution sheet = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: Source.Ideal(V(12), V(13), V(14))).Explain();
        SolutionStep[] points = [.. sheet.Steps.Where(s => s.Section.StartsWith("Operating point", StringComparison.Ordinal))];
        Assert.NotEmpty(points);
        Assert.DoesNotContain(points, s => s.InNumbers.Replace('\u00A0', ' ').Contains(" 0 Ω", StringComparison.Ordinal) || s.InNumbers.Replace('\u00A0', ' ').Contains("(0 Ω", StringComparison.Ordinal));
    }

    [Fact]
    public void PointThatDoesNotExist_IsStated()
    {
        // 5 kW of 12 V through 0.2 Ω: none of the three levels has a point; the worst gives the number, the others say so.
        WorkedSolution sheet = CheckCase.Verify(CheckCase.Asked(Load.ConstantPower(W(5000)), feed: 30), Blade(10)).Explain();
        SolutionStep[] none = [.. sheet.Steps.Where(s => s.Sought == "operating point")];
        Assert.NotEmpty(none);
        Assert.All(none, s => Assert.Equal(StepKind.Statement, s.Kind));
        Assert.All(none, s => Assert.StartsWith("Operating point at the ", s.Section, StringComparison.Ordinal));
        Assert.All(none, s => Assert.NotEqual("", s.Reason));
    }

    [Fact]
    public void SharedReturnInAFault_HasTheOthersCurrentOnTop()
    {
        // (I + 6 A)² at most: with the least current of the fault, by the same step that a reader can make.
        ReturnPath back = ReturnPath.Shared([Segment.Create(RoadVehicle(1), M(1))], A(6));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(5)), feed: 1, back: back, conductors: 1);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(1)), back), Blade(10), CheckCase.Table);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.ShortCircuitTemperature, "θ_f ≤ θ_sc");
        SolutionStep more = Assert.Single(sheet.Steps, s => s.Symbol?.Spec == "I²t_o");
        Assert.Equal(
            ("the same with the other circuits' current at most", "A²·s", "(I + Iₒ)² is at most I²·(1 + Iₒ/I)² with the least I."), (more.Sought, more.Unit, more.Reason));
        Near(CheckCase.Number(sheet, "I²t") * Math.Pow(1 + (6 / CheckCase.Number(sheet, "I_low")), 2), more.Result, 1e-9);
    }

    [Fact]
    public void Givens_NameAltitudeBundleAndWall()
    {
        CircuitRequirements asked = new(CheckCase.Asked(Load.ConstantCurrent(A(5))))
        {
            Place = new Place { Ambient = C(30), LoadedConductors = 4, BundleLoading = 0.5, Altitude = M(1500) }, Wall = Length.FromMillimeters(0.6),
        };
        string[] given = [.. CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), DesignRules.RoadVehicle).Explain().Givens.Select(g => g.ToString()!.Replace('\u00A0', ' '))];
        Assert.Contains(given, line => line.Contains("altitude above sea level", StringComparison.Ordinal) && line.Contains("H = 1500 m", StringComparison.Ordinal));
        Assert.Contains(given, line => line.Contains("share of the bundle's capacity in use", StringComparison.Ordinal) && line.Contains("50 %", StringComparison.Ordinal));
        Assert.Contains(given, line => line.Contains("wall of the insulation", StringComparison.Ordinal) && line.Contains("0.6 mm", StringComparison.Ordinal));
    }

    /// <summary>The spread of a lithium pack once had the letter of the share of a wire's surface that sees out, and the step with that share was written with the spread.</summary>
    [Fact]
    public void LithiumPackOnTwoWiresByHeatBalance_SpreadAndShareHaveLettersOfTheirOwn()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(5)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200)));
        WorkedSolution sheet = CircuitDesigner.Design(asked, new DesignRules(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.HeatBalance }).Explain();
        SolutionStep spread = Assert.Single(sheet.Steps, s => s.Sought == "spread either way between packs, temperatures and ages");
        SolutionStep share = Assert.Single(sheet.Steps, s => s.Sought == "share of a wire's surface that sees out");
        Assert.NotEqual(spread.Symbol!.Spec, share.Symbol!.Spec);

        // Two wires that touch under a tight string: (π + 2)/(2·π) of each is seen.
        Near((Math.PI + 2) / (2 * Math.PI), share.Result, 1e-12);
        SolutionStep inside = Assert.Single(sheet.Steps, s => s.Sought == "thermal resistance inside, for the heat of all wires");
        SolutionStep own = Assert.Single(sheet.Steps, s => s.Sought == "thermal resistance of a wire's insulation");
        Near(own.Result!.Value / (2 * share.Result!.Value), inside.Result, 1e-12);
        Near(inside.Result!.Value, inside.Formula!.Evaluate(), 1e-12);
    }

    /// <summary>Each way to make a source, under every preset and by the heat balance alone: each step gives its number, reads back, and has letters of one meaning.</summary>
    [Fact]
    public void SourcesOfEachKind_UnderEveryPreset_HaveASheetThatCanBeWorkedOut()
    {
        Source[] sources =
        [
            LeadAcid(), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100)), Source.CurrentLimited(V(13), A(60)), Source.Ideal(V(12), V(13), V(14)),
            Source.BehindResistance(V(12), MilliOhm(20)), Source.InSeries(LeadAcid(), Source.CurrentLimited(V(12), A(60))), Source.InParallel(LeadAcid(), LeadAcid()), Source.Alternator(V(14.4), A(90)),
            Source.InSeries(Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100))),
        ];
        DesignRules[] presets =
        [
            DesignRules.RoadVehicle, DesignRules.SmallCraft, DesignRules.SmallCraftTinned, DesignRules.LightAircraft, DesignRules.Bench,
            new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.HeatBalance },
        ];
        foreach (Source source in sources)
        {
            foreach (DesignRules rules in presets)
            {
                CircuitRequirements asked = Circuit(Load.ConstantPower(W(40)), source, feed: 2);
                WorkedSolution sheet = CircuitDesigner.Design(asked, rules).Explain();
                string name = $"{source}, {rules.Ampacity}";
                LowVoltage.Calc.Tests.Working.ExplanationProperties.AssertEvaluates(sheet, name);
                LowVoltage.Calc.Tests.Working.ExplanationProperties.AssertReadsBack(sheet, name, engineering: true);
                LowVoltage.Calc.Tests.Working.ExplanationProperties.AssertOneMeaning(sheet, name);
            }
        }
    }
}

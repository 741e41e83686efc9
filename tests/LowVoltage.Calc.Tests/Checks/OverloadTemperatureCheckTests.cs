using FsCheck.Xunit;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>The bundle of <see cref="StalledMotorCheckTests"/>: 15.05 A. More circuits, worked out whole, are in <see cref="OverloadDesignTests"/>.</summary>
public class OverloadTemperatureCheckTests
{
    [Fact]
    public void WireThatStartsAboveItsLimit_TheSheetShowsThatTemperature()
    {
        // No short-circuit limit is published for this insulation, so the overload finds the wire as hot as its load makes it; a small fuse lets it cool from there.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(25)), insulation: InsulationMaterial.Rated("own", C(105)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Class5(0.75), M(1)), asked.Return), Blade(5), DesignRules.Bench);
        CheckResult overload = design.Of(CheckKind.OverloadTemperature), service = design.Of(CheckKind.ConductorTemperature);
        Assert.Equal((CheckOutcome.Fail, service.Value), (overload.Outcome, overload.Value));
        SolutionStep compared = Assert.Single(design.Explain().Steps, s => s.Sought == "check: " + CheckKind.OverloadTemperature.Name);
        Assert.Equal((overload.Value!.Value, overload.Limit!.Value), (compared.Symbol!.Value, compared.Limit!.Value));
    }

    private const double Bundled = 32 * 0.825 * 0.57;
    private static readonly Load Load = Load.ConstantCurrent(A(3));

    [Theory]
    [InlineData(0.001, CheckOutcome.Pass)]
    [InlineData(-0.001, CheckOutcome.Fail)]
    public void SettledTemperature_AroundTheAllowance(double more, CheckOutcome expected)
    {
        // 15 A need not open below 20.25 A.
        double settled = Plain.Heated(7.60, 2.5, 30, Bundled, 70, 70, 20.25, double.PositiveInfinity);
        OverloadAllowance own = OverloadAllowance.Create(
            "own", TemperatureDelta.FromKelvins(settled - 70 + more), TemperatureDelta.FromKelvins(90), References.Reference.CommonPractice("made up for a test"));
        CircuitDesign design = Laid(Blade(15), own);
        design.Is(CheckKind.OverloadTemperature, settled, settled + more, 1e-6);
        CheckCase.Answers(design, CheckKind.OverloadTemperature, expected, "wire", $"tightest up to 20.25 A, at which the 15 A {CheckCase.TypeC} need not open");
        Assert.Same(own.Reference, design.Of(CheckKind.OverloadTemperature).Reference);
        Assert.Equal(
            "An overload that the fuse does not interrupt overheats the wire: use a smaller fuse, a larger wire, a cooler place, fewer conductors together, or better insulation.",
            CheckCase.AdviceOf(design, CheckKind.OverloadTemperature));
        Assert.Equal(expected == CheckOutcome.Pass, design.Explain().Steps.Single(s => s.Sought == "check: overload temperature").Holds);
    }

    /// <summary>
    /// Six wires together in air of 16.6 °C: the table says the lower current (42 A · 0.825 · 0.7 = 24.26 A), but for air of 30 °C; the heat balance says 24.38 A in the air
    /// where they run, which stands for less cooling. Worked by hand with that: by the time a 20 A fuse must open 32 A the wire is above 95 °C.
    /// </summary>
    [Fact]
    public void LowerCurrentButBetterCooling_TheOtherBasisCounts()
    {
        CircuitDesign both = Six(DesignRules.RoadVehicle, 16.6, 6, 0.8), balance = Six(new DesignRules(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.HeatBalance }, 16.6, 6, 0.8);
        double rated = balance.Of(CheckKind.ContinuousCurrent).Limit!.Value;
        FuseRating fuse = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(20));
        double reached = Plain.Heated(4.71, 4, 16.6, rated, 70, 70, 32, fuse.OperatingTime(A(32)).Longest.Seconds);
        Assert.InRange(reached, 96, 160);
        Assert.Equal(CheckOutcome.Fail, both.Of(CheckKind.OverloadTemperature).Outcome);
        both.Is(CheckKind.OverloadTemperature, balance.Of(CheckKind.OverloadTemperature).Value!.Value, 95, 1e-12);
        Assert.Contains(both.Explain().Steps, step => step.Sought == "check: overload temperature" && step.Holds == false);
    }

    [Property(MaxTest = 300)]
    public void LowerOfTwoBases_IsNeverCoolerThanEither(byte air, byte loaded, byte way)
    {
        double ambient = air % 65, metres = 0.5 + (way / 20.0);
        int n = 1 + (loaded % 20);
        CheckResult At(AmpacityBasis basis) => Six(new DesignRules(DesignRules.RoadVehicle) { Ampacity = basis }, ambient, n, metres).Of(CheckKind.OverloadTemperature);
        CheckResult one = At(AmpacityBasis.RoadVehicleTable), other = At(AmpacityBasis.HeatBalance), both = At(DesignRules.RoadVehicle.Ampacity);
        string all = $"{ambient} °C, {n} together: {both}; by the table {one}; by the balance {other}";
        foreach (CheckResult single in new[] { one, other }.Where(result => result.HasNumbers))
        {
            Assert.True(single.Outcome != CheckOutcome.Fail || both.Outcome == CheckOutcome.Fail, all);

            // Of a fail the current with the least time to spare is shown, which need not be the hottest.
            Assert.True(both.Outcome == CheckOutcome.Fail || single.Limit != both.Limit || both.Value >= single.Value - 1e-9, all);
        }
    }

    [Fact]
    public void WireThatMelts_ShowsItsMeltingPoint()
    {
        CircuitRequirements asked = Asked(0.1);
        CircuitDesign design = CircuitDesigner.Verify(
            asked, CircuitPath.Create(Segment.Create(RoadVehicle(1), M(0.1)), asked.Return), FaultOpensFuseCheckTests.OwnFuse(5, [(1.35, 3600), (10, 3599)]), CheckCase.Overloads);
        CheckResult result = design.Of(CheckKind.OverloadTemperature);
        Assert.Equal(CheckOutcome.Fail, result.Outcome);
        Assert.EndsWith("where the 5 A fuse (own list) lets the wire melt; its melting point is shown", result.Note, StringComparison.Ordinal);
        Near(ConductorMaterial.Copper.MeltingPoint.DegreesCelsius, result.Value, 1e-12);
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndetermined()
    {
        CircuitDesign design = Laid(CheckCase.Nameless, OverloadAllowance.Ageing240Hours);
        CheckCase.Answers(design, CheckKind.OverloadTemperature, CheckOutcome.Undetermined, "wire", "no operating times are published for the 10 A fuse (own list)");
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.OverloadTemperature), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.OverloadTemperature);
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = Asked(3);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(15), CheckCase.Overloads);
        CheckCase.Answers(design, CheckKind.OverloadTemperature, CheckOutcome.Undetermined, "wire", "the wire is not rated here");
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(design, CheckKind.OverloadTemperature), StringComparison.Ordinal);
    }

    [Fact]
    public void NoFuse_OrTheRuleOnCurrentsAlone_OrASupplyThatCannot_IsNotAsked()
    {
        Assert.Null(Laid(null, OverloadAllowance.Ageing240Hours).Find(CheckKind.OverloadTemperature));
        Assert.Null(Laid(Blade(15), null).Find(CheckKind.OverloadTemperature));
        Assert.Null(CheckCase.Verify(Load, Blade(30), CheckCase.Overloads, Source.CurrentLimited(V(12), A(32))).Find(CheckKind.OverloadTemperature));
        Assert.NotNull(CheckCase.Verify(Load, Blade(30), CheckCase.Overloads, Source.CurrentLimited(V(12), A(33))).Find(CheckKind.OverloadTemperature));
    }

    [Fact]
    public void Sheet_ComparesTheNumbersOfTheCheck()
    {
        foreach (double fuse in new[] { 7.5, 15, 30 })
        {
            CircuitDesign design = Laid(Blade(fuse), OverloadAllowance.Ageing240Hours);
            SolutionStep step = design.Explain().Steps.Single(s => s.Sought == "check: overload temperature");
            CheckCase.Steps(design, CheckKind.OverloadTemperature, $"{step.Symbol!.Spec} ≤ {step.Limit!.Spec}");
            Assert.Contains(design.Explain().Steps, s => s.Kind != StepKind.Comparison && s.Symbol?.Spec == step.Symbol.Spec);
        }
    }

    private static CircuitRequirements Asked(double feed) => Circuit(Load, feed: feed, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(20));

    private static CircuitDesign Laid(FuseRating? fuse, OverloadAllowance? allowance)
    {
        CircuitRequirements asked = Asked(3);
        DesignRules rules = new(CheckCase.Overloads) { FusePractice = new FusePractice { Overload = allowance } };
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), fuse, rules);
    }

    private static CircuitDesign Six(DesignRules rules, double ambient, int loaded, double metres)
    {
        CircuitRequirements asked = new()
        {
            Source = Battery.LeadAcid(A(600), blocksInSeries: 1, stringsInParallel: 1),
            Load = Load.ConstantCurrent(A(6)),
            Feed = M(metres),
            Return = ReturnPath.Wire(M(metres)),
            Place = new Place { Ambient = C(ambient), LoadedConductors = loaded },
            Insulation = InsulationMaterial.PolyvinylChloride,
            Upstream = MilliOhm(20),
        };
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(4), M(metres)), asked.Return), FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(20)), rules);
    }
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>
/// 2.5 mm² in a bundle of six circuits: 32 · 0.825 · 0.57 = 15.05 A, so far below free air that its heat leaves in proportion to its rise (<see cref="Plain.Heated"/>).
/// A motor without a rated voltage draws its stated stall current. Allowance 25 K for as long as it lasts: ISO 6722-1, from memory.
/// </summary>
public class StalledMotorCheckTests
{
    private const double Bundled = 32 * 0.825 * 0.57;

    [Fact]
    public void StallThatTheFuseNeedNotOpen_NeedsACutOut()
    {
        CircuitDesign design = Laid(Motor(16), Blade(15));
        CheckCase.Answers(
            design, CheckKind.StalledMotor, CheckOutcome.Undetermined, "wire",
            $"at the 16 A of the stalled motor the 15 A {CheckCase.TypeC} need not open, and the wire bears it: the motor itself needs a thermal cut-out");
        Assert.Equal(
            "Fit a motor with a thermal cut-out of its own, or one that bears its stall, and say so of the load; a fuse alone does not protect this motor.", CheckCase.AdviceOf(design, CheckKind.StalledMotor));
        CheckCase.Stated(design, CheckKind.StalledMotor);
    }

    [Theory]
    [InlineData(17, CheckOutcome.Pass)]
    [InlineData(19, CheckOutcome.Fail)]
    public void WithACutOut_TheWireMustBearIt(double stall, CheckOutcome expected)
    {
        // 95 °C settled: 15.05·√((65/40)·R(70)/R(95)) = 18.45 A.
        double settled = Plain.Heated(7.60, 2.5, 30, Bundled, 70, 70, stall, double.PositiveInfinity);
        CircuitDesign design = Laid(Motor(stall).WithThermalCutOut(), Blade(15));
        design.Is(CheckKind.StalledMotor, settled, 95, 1e-6);
        CheckCase.Answers(
            design, CheckKind.StalledMotor, expected, "wire", expected == CheckOutcome.Pass
                ? $"at {stall} A, at which the 15 A {CheckCase.TypeC} need not open; the motor was stated to have a thermal cut-out or to bear it"
                : $"at {stall} A, until the 15 A {CheckCase.TypeC} opens");
        Assert.Equal(
            "A stalled motor overheats the wire before the fuse opens: use a larger wire, a smaller fuse, or a thermal cut-out in the motor.", CheckCase.AdviceOf(design, CheckKind.StalledMotor));
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.StalledMotor, "θ_sv ≤ θ_sl");
        Near(stall, CheckCase.Number(sheet, "I_lr"), 1e-9);
        Near(stall, CheckCase.Number(sheet, "I_lrg"), 1e-9);
        Assert.Equal("temperature that the wire reaches there", sheet.Steps.First(s => s.Symbol?.Spec == "θ_sv").Sought);
    }

    [Fact]
    public void StallThatOpensTheFuse_HeatsTheWireUntilThen()
    {
        // 40 A through 10 A: 0.5 s at 350 %, constant Joule integral between gates by the line.
        double seconds = Plain.Time(Plain.BladeLongest, 10, 40);
        CircuitDesign design = Laid(Motor(40), Blade(10));
        CheckCase.Answers(design, CheckKind.StalledMotor, CheckOutcome.Pass, "wire", $"at 40 A, until the 10 A {CheckCase.TypeC} opens");
        design.Is(CheckKind.StalledMotor, Plain.Heated(7.60, 2.5, 30, Bundled, 70, 70, 40, seconds), 160, 1e-2);
    }

    [Fact]
    public void MotorOfARatedVoltage_IsAResistanceOverTheSupplyRange()
    {
        // 12 V, 40 A at standstill: 0.3 Ω. Least through the warm path at 11.89 V, greatest through the cool one at 14.4 V.
        CircuitDesign design = Laid(Load.Motor(A(3), A(40), A(40), Duration.FromSeconds(0.1), V(12)), Blade(10));
        double @fixed = CheckCase.Lead + CheckCase.Chassis, warm = 3 * Plain.PerMeter(7.60, Plain.Warm(30, 70, design.Of(CheckKind.ContinuousCurrent).Value!.Value, Bundled));
        WorkedSolution sheet = design.Explain();
        Near(11.89 / (0.3 + 0.018 + @fixed + warm), CheckCase.Number(sheet, "I_lr"), 1e-9);

        // What it draws with 14.4 V at its terminals, no more than the path gives.
        Near(14.4 / 0.3, CheckCase.Number(sheet, "I_lrg"), 1e-9);
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndeterminedWhereTheWireDoesNotCarryTheStall()
    {
        // It passed once: at 97.9 °C, where 95 °C are allowed.
        CircuitDesign design = Laid(Motor(19).WithThermalCutOut(), CheckCase.Nameless);
        CheckCase.Answers(design, CheckKind.StalledMotor, CheckOutcome.Undetermined, "wire", "no operating times are published for the 10 A fuse (own list)");
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.StalledMotor), StringComparison.Ordinal);
        Assert.Equal(CheckOutcome.Pass, Laid(Motor(17).WithThermalCutOut(), CheckCase.Nameless).Of(CheckKind.StalledMotor).Outcome);
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Motor(16));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(15), CheckCase.Overloads);
        CheckCase.Answers(design, CheckKind.StalledMotor, CheckOutcome.Undetermined, "wire", "the wire is not rated here");
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(design, CheckKind.StalledMotor), StringComparison.Ordinal);
    }

    [Fact]
    public void WireThatMelts_ShowsItsMeltingPoint()
    {
        // 100 A on a fuse that takes an hour: nothing but the melting of 1 mm² ends it.
        CircuitRequirements asked = Circuit(Motor(100), feed: 0.1, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(60));
        CircuitDesign design = CircuitDesigner.Verify(
            asked, CircuitPath.Create(Segment.Create(RoadVehicle(1), M(0.1)), asked.Return), FaultOpensFuseCheckTests.OwnFuse(15, [(1.35, 3600), (10, 3599)]), CheckCase.Overloads);
        CheckCase.Answers(design, CheckKind.StalledMotor, CheckOutcome.Fail, "wire", "at 100 A the 15 A fuse (own list) lets the wire melt; its melting point is shown");
        Near(ConductorMaterial.Copper.MeltingPoint.DegreesCelsius, design.Of(CheckKind.StalledMotor).Value, 1e-12);
        Assert.Equal("melting point of the metal, which is reached", CheckCase.Steps(design, CheckKind.StalledMotor, "θ_sv ≤ θ_sl").Steps.First(s => s.Symbol?.Spec == "θ_sv").Sought);
    }

    [Fact]
    public void SeveralStretches_TheWeakestIsNamed()
    {
        CircuitRequirements asked = Circuit(Motor(16).WithThermalCutOut(), feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(2.5), M(1)), Segment.Create(RoadVehicle(6), M(1))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(15), CheckCase.Overloads);
        design.Is(CheckKind.StalledMotor, Plain.Heated(7.60, 2.5, 30, Bundled, 70, 70, 16, double.PositiveInfinity), 95, 1e-6);
        Assert.Equal("feed, 1 m of 2.5 mm² road-vehicle copper", design.Of(CheckKind.StalledMotor).Where);
        Assert.Contains(CheckCase.Steps(design, CheckKind.StalledMotor, "θ_sv ≤ θ_sl").Steps, s => s.Sought == "stretch that a stalled motor is hardest on");
    }

    [Fact]
    public void MotorOfNearlyNoResistance_GetsWhatThePathGives()
    {
        // 12 mΩ at standstill would draw 1200 A at 14.4 V: no more flows than into a short at its terminals, the path as cool as the air.
        CircuitDesign design = Laid(Load.Motor(A(3), A(1000), A(1000), Duration.FromSeconds(0.1), V(12)).WithThermalCutOut(), Blade(10));
        double most = 14.4 / (0.0036 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(30));
        SolutionStep step = design.Explain().Steps.First(s => s.Symbol?.Spec == "I_lrg");
        Near(most, step.Result, 1e-9);
        Assert.Equal(("greatest current of the stalled motor", "A", "At the highest supply voltage, the path as cool as the air."), (step.Sought, step.Unit, step.Reason));
    }

    [Fact]
    public void MotorThatAsksForMoreThanThePathGives_GetsWhatItGives()
    {
        // 1000 A whatever the voltage: through the hot path at the lowest voltage, through the cool one at the highest.
        CircuitDesign design = Laid(Motor(1000).WithThermalCutOut(), Blade(10));
        WorkedSolution sheet = design.Explain();
        Near(11.89 / (0.018 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(70)), CheckCase.Number(sheet, "I_lr"), 1e-9);
        Near(14.4 / (0.0036 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(30)), CheckCase.Number(sheet, "I_lrg"), 1e-9);
    }

    [Fact]
    public void SupplyThatHoldsItsLimit_GivesNoMore()
    {
        // 16 A stalled on a supply of 10 A: the wire settles at the 10 A that flow, its rating 15.05 A.
        CircuitRequirements asked = Circuit(
            Motor(16).WithThermalCutOut(), Source.CurrentLimited(V(12), A(10)), feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(20));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), Blade(15), CheckCase.Overloads);
        design.Is(CheckKind.StalledMotor, Plain.Heated(7.60, 2.5, 30, Bundled, 70, 70, 10, double.PositiveInfinity), 95, 1e-6);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.StalledMotor, "θ_sv ≤ θ_sl");
        Assert.Equal((10.0, 10.0), (CheckCase.Number(sheet, "I_lr"), CheckCase.Number(sheet, "I_lrg")));
        Assert.Equal("°C", sheet.Steps.First(s => s.Symbol?.Spec == "θ_sl").Unit);
        Assert.Equal("°C", sheet.Steps.First(s => s.Symbol?.Spec == "θ_sv").Unit);
    }

    [Theory]
    [InlineData(16, 15, false, CheckOutcome.Undetermined)]
    [InlineData(16, 15, true, CheckOutcome.Pass)]
    [InlineData(19, 15, false, CheckOutcome.Fail)]
    [InlineData(19, 15, true, CheckOutcome.Fail)]
    [InlineData(40, 10, false, CheckOutcome.Pass)]
    [InlineData(40, 10, true, CheckOutcome.Pass)]
    public void VerdictAlone_IsThatOfTheWholeAnswer(double stall, double fuse, bool cutOut, CheckOutcome expected)
    {
        // What the search asks first. 16 A the wire bears and the fuse need not open; 19 A overheat it; at 40 A a 10 A fuse opens in time.
        CircuitDesign design = Laid(cutOut ? Motor(stall).WithThermalCutOut() : Motor(stall), Blade(fuse));
        Assert.Equal(expected, design.Of(CheckKind.StalledMotor).Outcome);
        BranchState at = design.State();
        at.AskedFor = AskedFor.Verdict;
        Assert.True(((Check)CheckKind.StalledMotor).TryAsk(at, out CheckResult alone));
        Assert.Equal(expected, alone.Outcome);
    }

    [Fact]
    public void NothingThatCanStall_OrNoFuse_OrTheRuleOnCurrentsAlone_IsNotAsked()
    {
        Assert.Null(Laid(Load.ConstantCurrent(A(3)), Blade(15)).Find(CheckKind.StalledMotor));
        Assert.Null(Laid(Motor(16), null).Find(CheckKind.StalledMotor));
        Assert.Null(CheckCase.Verify(Motor(16), Blade(15)).Find(CheckKind.StalledMotor));
        Assert.Null(Laid(Load.Together(Motor(16), Load.ConstantPower(W(5000))), Blade(15)).Find(CheckKind.StalledMotor));
    }

    private static CircuitDesign Laid(Load load, FuseRating? fuse)
    {
        CircuitRequirements asked = Circuit(load, feed: 3, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 12, drop: DropLimit.Percent(20));
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), fuse, CheckCase.Overloads);
    }

    private static Load Motor(double stall) => Load.Motor(A(3), A(stall), A(stall), Duration.FromSeconds(0.1));
}

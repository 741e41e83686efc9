using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class FaultOpensFuseCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    // The weakest source, 11.89 V behind 18 mΩ, lead and chassis; the wire at the 70 °C that PVC stands.
    private const double Fixed = 0.018 + CheckCase.Lead + CheckCase.Chassis;
    private static readonly double First = 11.89 / (Fixed + CheckCase.WireOhmsAt(70));

    [Fact]
    public void FaultThatOpens_TakesWhatStepsOfTheJouleIntegralGive()
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(30));
        (double seconds, double last) = Plain.Clear(Plain.BladeLongest, 30, 11.89, Fixed, CheckCase.Meters, CheckCase.PerKilometer, 2.5, 70);
        design.Is(CheckKind.FaultOpensFuse, seconds, 5, 1e-6);
        CheckCase.Answers(design, CheckKind.FaultOpensFuse, CheckOutcome.Pass, "far end", $"least prospective current at the far end {CheckCase.Short(First)} A");
        Assert.Equal(SupplyLevel.Minimum, design.Of(CheckKind.FaultOpensFuse).Level);
        Assert.Equal("A short at the far end opens the fuse too late or not at all: use a larger wire, a shorter run, or a smaller fuse.", CheckCase.AdviceOf(design, CheckKind.FaultOpensFuse));
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
        Near(First, CheckCase.Number(sheet, "I_f"), 1e-9);
        Near(last, CheckCase.Number(sheet, "I_e"), 1e-4);
    }

    [Theory]
    [InlineData(1.0001, CheckOutcome.Pass)]
    [InlineData(0.9999, CheckOutcome.Fail)]
    public void AroundTheLimit_PassesAndFails(double share, CheckOutcome expected)
    {
        double seconds = Plain.Clear(Plain.BladeLongest, 30, 11.89, Fixed, CheckCase.Meters, CheckCase.PerKilometer, 2.5, 70).Seconds;
        DesignRules rules = new(CheckCase.Table) { FusePractice = new FusePractice { Overload = null, FaultTime = Duration.FromSeconds(seconds * share) } };
        CircuitDesign design = CheckCase.Verify(Load, Blade(30), rules);
        design.Is(CheckKind.FaultOpensFuse, seconds, seconds * share, 1e-6);
        CheckCase.Answers(design, CheckKind.FaultOpensFuse, expected, "far end", $"least prospective current at the far end {CheckCase.Short(First)} A");

        // A fault that lasts too long is not looked at for its heat: it fails already.
        Assert.Equal(expected == CheckOutcome.Pass, design.Find(CheckKind.ShortCircuitTemperature) is not null);
    }

    [Fact]
    public void CurrentThatOpensTooLateFromTheStart_FailsWithTheTimeAtThatCurrent()
    {
        // 40 A type E: at 3.5 times 7 s.
        double feed = 3, first = 11.89 / (Fixed + CheckCase.WireOhmsAt(70, feed));
        FuseRating fuse = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60));
        double seconds = Plain.Time(Plain.HighCurrentLongest, 60, first);
        Assert.True(seconds > 5);
        CircuitDesign design = CheckCase.Verify(Load, fuse);
        design.Is(CheckKind.FaultOpensFuse, seconds, 5, 1e-9);
        CheckCase.Answers(design, CheckKind.FaultOpensFuse, CheckOutcome.Fail, "far end", $"least prospective current at the far end {CheckCase.Short(First)} A");
        CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
    }

    [Theory]
    [InlineData(0.999, CheckOutcome.Fail)]
    [InlineData(1.3, CheckOutcome.Pass)]
    public void CurrentAroundTheFusingCurrent_NeedNotOpenAndOpens(double share, CheckOutcome expected)
    {
        // A source so weak that its first current is this share of 1.35 · 10 A; the 5 s are stretched by a source that is nearly constant.
        double ohms = (12 / (share * 1.35 * 10)) - CheckCase.Lead - CheckCase.Chassis - CheckCase.WireOhmsAt(70);
        FuseRating fuse = OwnFuse(10, [(1.35, 4), (6, 0.1)]);
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(1)), fuse, CheckCase.Table, Source.BehindResistance(V(12), V(12), V(14), MilliOhm(5), MilliOhm(1000 * ohms)));
        Assert.Equal(expected, design.Of(CheckKind.FaultOpensFuse).Outcome);
        if (expected == CheckOutcome.Fail)
        {
            CheckCase.Answers(design, CheckKind.FaultOpensFuse, CheckOutcome.Fail, "far end", "least prospective current at the far end 13.49 A: the fuse need not open");
            CheckCase.Stated(design, CheckKind.FaultOpensFuse);
            SolutionStep must = Assert.Single(design.Explain().Steps, s => s.Sought == "must the fuse open");
            Assert.Equal(("I_f", false, "Least prospective current at the far end 13.49 A: the fuse need not open."), (must.Symbol!.Spec, must.Holds, must.Reason));
        }
    }

    [Fact]
    public void CurrentThatFallsBelowTheFusingCurrent_SaysSo()
    {
        // First just above 1.35 · 30 A, and the fuse takes 4 s there: the wire heats and the current is below it before.
        double ohms = (12 / (1.0005 * 1.35 * 30)) - CheckCase.Lead - CheckCase.Chassis - CheckCase.WireOhmsAt(70, 20);
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(1)), Source.BehindResistance(V(12), V(12), V(14), MilliOhm(5), MilliOhm(1000 * ohms)), feed: 20);
        CircuitDesign design = CheckCase.Verify(asked, OwnFuse(30, [(1.35, 4.9), (6, 0.1)]));
        CheckCase.Answers(
            design, CheckKind.FaultOpensFuse, CheckOutcome.Fail, "far end",
            "least prospective current at the far end 40.52 A, which falls as the wire heats: the fuse need not open");
        SolutionStep must = Assert.Single(design.Explain().Steps, s => s.Sought == "must the fuse open");
        Assert.True(must.Holds);
    }

    [Fact]
    public void WireThatMeltsFirst_SaysSo()
    {
        // 0.35 mm² over 10 cm on a fuse that lets 60 000 A²s through; copper of that section stands some 9 000.
        Assert.True(Plain.Adiabatic(54.4, 0.35, 60_000, 70) > 1083);
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, feed: 0.1), OwnFuse(30, [(1.35, 60), (6, 60_000 / (180.0 * 180))]), squareMillimeters: 0.35);
        double first = 11.89 / (Fixed + (0.1 * Plain.PerMeter(54.4, 70)));
        CheckCase.Answers(
            design, CheckKind.FaultOpensFuse, CheckOutcome.Fail, "far end", $"least prospective current at the far end {CheckCase.Short(first)} A: the wire melts before the fuse has opened");
        Assert.Null(design.Find(CheckKind.ShortCircuitTemperature));
    }

    [Theory]
    [InlineData(32, true)]
    [InlineData(32.001, false)]
    public void SupplyThatCannotOverloadTheWire_NeedsNothingToOpen(double amperes, bool weak)
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(30), source: Source.CurrentLimited(V(12), A(amperes)));
        Assert.Equal(weak ? CheckOutcome.Pass : CheckOutcome.Fail, design.Of(CheckKind.FaultOpensFuse).Outcome);
        if (weak)
        {
            CheckCase.Answers(
                design, CheckKind.FaultOpensFuse, CheckOutcome.Pass, "far end", "nothing has to open, the supply gives at most 32 A, which the wire carries continuously");
            Assert.Null(design.Of(CheckKind.FaultOpensFuse).Value);
            CheckCase.Stated(design, CheckKind.FaultOpensFuse);
        }
    }

    [Fact]
    public void SupplyThatHoldsItsLimit_OpensAtThatCurrent()
    {
        // 60 A through 15 A, 400 %: the supply still holds it when the wire is hot.
        CircuitDesign design = CheckCase.Verify(Load, Blade(15), source: Source.CurrentLimited(V(24), A(60)));
        double seconds = Plain.Time(Plain.BladeLongest, 15, 60);
        double hot = Plain.Adiabatic(CheckCase.PerKilometer, 2.5, 60 * 60 * seconds, 70);
        Assert.True(24 / (CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(hot)) > 60);
        design.Is(CheckKind.FaultOpensFuse, seconds, 5, 1e-9);
        CheckCase.Steps(design, CheckKind.FaultOpensFuse, "t_c ≤ t_lim");
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndetermined()
    {
        CircuitDesign design = CheckCase.Verify(Load, CheckCase.Nameless);
        CheckCase.Answers(design, CheckKind.FaultOpensFuse, CheckOutcome.Undetermined, "far end", "no operating times are published for the 10 A fuse (own list)");
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.FaultOpensFuse), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.FaultOpensFuse);
        Near(First, CheckCase.Number(design.Explain(), "I_f"), 1e-9);
    }

    [Fact]
    public void NoFuse_IsNotAsked() => Assert.Null(CheckCase.Verify(Load, null).Find(CheckKind.FaultOpensFuse));

    internal static FuseRating OwnFuse(double amperes, (double Multiple, double Seconds)[] longest) => FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "own list", Kind = "fuse", Reference = References.Reference.CommonPractice("made up for a test"), Ratings = [A(amperes)],
        Curves = [TimeCurrentCurve.Create([], [.. longest.Select(g => new TimeCurrentPoint(g.Multiple * amperes, g.Seconds))])],
    }).SmallestAtLeast(A(1));
}

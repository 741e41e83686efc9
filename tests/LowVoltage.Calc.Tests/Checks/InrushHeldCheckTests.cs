using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>20 A through 15 A is 133 %: below the first gate of type C, 135 %, its least time 0.75 s holds already. 10 000 starts: 29 % of the least Joule integral.</summary>
public class InrushHeldCheckTests
{
    [Theory]
    [InlineData(0.2174, CheckOutcome.Pass)]
    [InlineData(0.2176, CheckOutcome.Fail)]
    public void ManyStarts_AroundTheLimit(double seconds, CheckOutcome expected)
    {
        // 0.29 · 0.75 s = 0.2175 s.
        CircuitDesign design = Started(Motor(seconds), null, Blade(15));
        design.Is(CheckKind.InrushHeld, seconds / 0.2175, 1, 1e-9);
        CheckResult result = design.Of(CheckKind.InrushHeld);
        Assert.Equal((expected, "fuse"), (result.Outcome, result.Where));
        Assert.Equal("a fuse must not open while its load starts", result.Reference.Title);
        Assert.StartsWith("the start peaks at 20 A", result.Note, StringComparison.Ordinal);
        Assert.False(result.Note.EndsWith('.'));
        Assert.Equal(
            "The fuse may open at start: use a slower type, use a larger rating with a larger wire, limit the starting current, or allow for fewer starts.", CheckCase.AdviceOf(design, CheckKind.InrushHeld));
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.InrushHeld, "s_i ≤ s_l");
        Near(20, CheckCase.Number(sheet, "I_s"), 1e-12);
        Near(seconds, CheckCase.Number(sheet, "t_s"), 1e-9);
        Near(seconds / 0.75, CheckCase.Number(sheet, "s_1"), 1e-9);
        Near(400 * seconds, CheckCase.Number(sheet, "J_s"), 1e-9);
        Near(0.29 * 400 * 0.75, CheckCase.Number(sheet, "J_al"), 1e-9);
        Near(0.0036 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(30), CheckCase.Number(sheet, "R_st"), 1e-12);
        Assert.Contains(sheet.Steps, s => s.Sought == "surge of the motor" && s.Reason.EndsWith(" above its running current.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.3599, CheckOutcome.Pass)]
    [InlineData(0.3601, CheckOutcome.Fail)]
    public void OneStart_IsHeldToTheShareOfTheFewest(double seconds, CheckOutcome expected)
    {
        // Up to 100 starts: 48 %.
        CircuitDesign design = Started(Motor(seconds), 1, Blade(15));
        design.Is(CheckKind.InrushHeld, seconds / (0.48 * 0.75), 1, 1e-9);
        Assert.Equal(expected, design.Of(CheckKind.InrushHeld).Outcome);
    }

    [Fact]
    public void StartAboveTheRatingAtTheHighestVoltageOnly_IsAsked()
    {
        // A motor of 12 V/8 A = 1.5 Ω at standstill beside 12 W: at 14.4 V 9.6 A less the path and 0.83 A are above 10 A, at 11.89 V 7.93 A and 1.01 A are not.
        Load load = Load.Together(Load.Motor(A(2), A(8), A(8), Duration.FromSeconds(0.1), V(12)), Load.ConstantPower(W(12)));
        double path = 0.0036 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(30);
        Assert.True((14.4 / (1.5 + path)) + (12 / 14.4) > 10);
        Assert.True((11.89 / 1.5) + (12 / 11.0) < 10);
        Assert.Equal(CheckOutcome.Pass, CheckCase.Verify(load, Blade(10)).Of(CheckKind.InrushHeld).Outcome);
    }

    [Fact]
    public void StartWithinTheRating_OrALoadWithoutOne_IsNotAsked()
    {
        Assert.Null(Started(Motor(1), null, Blade(20)).Find(CheckKind.InrushHeld));
        Assert.Null(Started(Load.ConstantCurrent(A(5)), null, Blade(15)).Find(CheckKind.InrushHeld));
        Assert.Null(Started(Motor(1), null, null).Find(CheckKind.InrushHeld));
        Assert.Null(Started(Load.Together(Motor(1), Load.ConstantPower(W(5000))), null, Blade(15)).Find(CheckKind.InrushHeld));
    }

    [Fact]
    public void RunningCurrentAboveTheRating_FailsInWords()
    {
        CircuitDesign design = Started(Motor(0.1), null, Blade(5));
        CheckResult result = design.Of(CheckKind.InrushHeld);
        Assert.Equal((CheckOutcome.Fail, null), (result.Outcome, result.Value));
        CheckCase.Stated(design, CheckKind.InrushHeld);
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndetermined()
    {
        CircuitDesign design = Started(Motor(0.1), null, CheckCase.Nameless);
        CheckResult result = design.Of(CheckKind.InrushHeld);
        Assert.Equal((CheckOutcome.Undetermined, null, null), (result.Outcome, result.Value, result.Limit));
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.InrushHeld), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.InrushHeld);
    }

    [Fact]
    public void ConstantPowerBesideAMotor_CountsAtTheLowestVoltage()
    {
        // 60 W draw more at 11.89 V than at 14.4 V; the motor's surge is the same at both.
        CircuitDesign design = Started(Load.Together(Motor(0.1), Load.ConstantPower(W(60))), 1, Blade(15));
        double path = 0.018 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhmsAt(30);
        double running = Plain.Settle(11.89, path, _ => 0, u => 6 + (60 / u)).Amperes, peak = running + 14;
        Assert.True(peak > 1.35 * 15 && peak < 2 * 15);
        design.Is(CheckKind.InrushHeld, 0.1 / (0.48 * Plain.Time(Plain.BladeLeast, 15, peak)), 1, 1e-5);
        Assert.StartsWith("the start peaks at " + CheckCase.Short(peak)[..2], design.Of(CheckKind.InrushHeld).Note, StringComparison.Ordinal);
    }

    /// <summary>What a fuse withstands is published for pulses at least 10 s apart: a start every second had passed.</summary>
    [Theory]
    [InlineData(9.99, CheckOutcome.Undetermined)]
    [InlineData(10, CheckOutcome.Pass)]
    public void StartsOfAStatedPeriod_CloserThanTenSeconds_AreUndetermined(double period, CheckOutcome expected)
    {
        DutyCycle times = DutyCycle.FromTimes(Duration.FromSeconds(0.5), Duration.FromSeconds(period));
        foreach (Load load in new[] { Motor(0.1).WithDutyCycle(times), Load.Together(Motor(0.1), Load.ConstantCurrent(A(0.1))).WithDutyCycle(times), Load.Together(Motor(0.1).WithDutyCycle(times)) })
        {
            CircuitRequirements asked = CheckCase.Asked(load).WithUpstreamProtection(UpstreamProtection.Fuse(Blade(15)).WithUpstream(MilliOhm(1)));
            CircuitDesign design = CheckCase.Verify(asked, Blade(15));
            Assert.Equal((expected, expected), (design.Of(CheckKind.InrushHeld).Outcome, design.Of(CheckKind.MainFuseHoldsStart).Outcome));
            if (expected == CheckOutcome.Undetermined)
            {
                const string Note = "it starts every 9.99 s above the rating of the fuse; what a fuse withstands is known for starts at least 10 s apart";
                CheckCase.Answers(design, CheckKind.InrushHeld, CheckOutcome.Undetermined, "fuse", Note);
                Assert.StartsWith(Note, design.Of(CheckKind.MainFuseHoldsStart).Note, StringComparison.Ordinal);
                Assert.StartsWith("A fuse whose rating is not below the starting current", CheckCase.AdviceOf(design, CheckKind.InrushHeld), StringComparison.Ordinal);
                Assert.StartsWith("A fuse whose rating is not below the starting current", CheckCase.AdviceOf(design, CheckKind.MainFuseHoldsStart), StringComparison.Ordinal);
                CheckCase.Stated(design, CheckKind.InrushHeld);
            }
        }
    }

    [Fact]
    public void StartsCloserThanTenSeconds_OfALoadWithoutASurge_OrOneThatMelts_AreWhatTheyWere()
    {
        DutyCycle times = DutyCycle.FromTimes(Duration.FromSeconds(0.5), Duration.FromSeconds(2));
        Assert.Equal(CheckOutcome.Fail, Started(Motor(1).WithDutyCycle(times), null, Blade(15)).Of(CheckKind.InrushHeld).Outcome);
        Assert.Equal(CheckOutcome.Pass, Started(Load.Together(Motor(0.1), Load.ConstantCurrent(A(0.1)).WithDutyCycle(times)), null, Blade(15)).Of(CheckKind.InrushHeld).Outcome);
        Assert.Null(Started(Motor(0.1).WithDutyCycle(times), null, Blade(20)).Find(CheckKind.InrushHeld));
    }

    private static CircuitDesign Started(Load load, int? starts, FuseRating? fuse) => CheckCase.Verify(new CircuitRequirements(CheckCase.Asked(load)) { Starts = starts }, fuse);

    private static Load Motor(double seconds) => Load.Motor(A(6), A(20), A(20), Duration.FromSeconds(seconds));
}

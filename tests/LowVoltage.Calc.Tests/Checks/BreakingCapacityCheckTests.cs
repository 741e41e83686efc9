using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class BreakingCapacityCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Fact]
    public void StrongestSourceThroughTheLead_ByOhmsLaw()
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(10));
        design.Is(CheckKind.BreakingCapacity, 14.4 / (0.0036 + CheckCase.Lead), 1000, 2e-9);
        CheckCase.Answers(design, CheckKind.BreakingCapacity, CheckOutcome.Pass, "fuse", "");
        Assert.Equal(SupplyLevel.Maximum, design.Of(CheckKind.BreakingCapacity).Level);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.BreakingCapacity, "I_k ≤ I_c");
        Assert.Equal("As stated.", sheet.Steps.First(s => s.Symbol?.Spec == "R_u").Reason);
    }

    [Theory]
    [InlineData(10.8, CheckOutcome.Pass)]
    [InlineData(10.799, CheckOutcome.Fail)]
    public void AroundTheCapacity_PassesAndFails(double milliohms, CheckOutcome expected)
    {
        // 14.4 V over 3.6 and 10.8 mΩ is 1000 A.
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, upstreamMilliOhms: milliohms), Blade(10));
        CheckCase.Answers(design, CheckKind.BreakingCapacity, expected, "fuse", "");
        Assert.Equal(
            "Choose a fuse with a higher breaking capacity, or fit a main fuse that has one at the source. No wire size changes this.", CheckCase.AdviceOf(design, CheckKind.BreakingCapacity));
        Assert.False(CheckCase.IsCured(design, CheckKind.BreakingCapacity));
        CheckCase.Steps(design, CheckKind.BreakingCapacity, "I_k ≤ I_c");
    }

    [Fact]
    public void LeadNotStated_IsUndeterminedWhereTheTerminalsGiveMore()
    {
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, upstreamMilliOhms: null), Blade(10));
        CheckCase.Answers(
            design, CheckKind.BreakingCapacity, CheckOutcome.Undetermined, "fuse",
            "up to 4000 A at the source's terminals, the fuse breaks 1000 A: state the resistance of the supply lead to the fuse, or protect the lead by a main fuse at the source that can break that current");
        Near(14.4 / 0.0036, design.Of(CheckKind.BreakingCapacity).Value, 1e-12);
        Assert.Equal("Choose a fuse with a higher breaking capacity, fit a main fuse that has one at the source, or state the resistance of the supply lead.", CheckCase.AdviceOf(design, CheckKind.BreakingCapacity));
        Assert.Equal("Not stated, counted as nothing: on the safe side here.", design.Explain().Steps.First(s => s.Symbol?.Spec == "R_u").Reason);
    }

    [Fact]
    public void LeadNotStated_PassesWhereTheTerminalsGiveJustThat()
    {
        // 14.4 V behind 14.4 mΩ.
        Source source = Source.BehindResistance(V(14.4), MilliOhm(14.4));
        Assert.Equal(CheckOutcome.Pass, CheckCase.Verify(CheckCase.Asked(Load, source, upstreamMilliOhms: null), Blade(10)).Of(CheckKind.BreakingCapacity).Outcome);
        Source stronger = Source.BehindResistance(V(14.4), MilliOhm(14.39));
        Assert.Equal(CheckOutcome.Undetermined, CheckCase.Verify(CheckCase.Asked(Load, stronger, upstreamMilliOhms: null), Blade(10)).Of(CheckKind.BreakingCapacity).Outcome);
    }

    [Fact]
    public void SourceWithoutResistance_IsUndetermined()
    {
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, Source.Ideal(V(12)), upstreamMilliOhms: null), Blade(10));
        CheckCase.Answers(
            design, CheckKind.BreakingCapacity, CheckOutcome.Undetermined, "fuse", "the source is given without internal resistance, so its short-circuit current is not known");
        Assert.Null(design.Of(CheckKind.BreakingCapacity).Value);
        CheckCase.Stated(design, CheckKind.BreakingCapacity);
        Assert.DoesNotContain(design.Explain().Steps, s => s.Symbol?.Spec == "R_u");
    }

    [Fact]
    public void NoCapacityForDirectCurrent_IsUndetermined()
    {
        foreach (FuseRating fuse in new[] { CheckCase.Nameless, FuseSeries.Iec60127Sheet1.SmallestAtLeast(A(6.3)) })
        {
            CircuitDesign design = CheckCase.Verify(Load, fuse);
            CheckCase.Answers(design, CheckKind.BreakingCapacity, CheckOutcome.Undetermined, "fuse", $"no d.c. breaking capacity is published for the {fuse}");
            Near(14.4 / (0.0036 + CheckCase.Lead), design.Of(CheckKind.BreakingCapacity).Value, 1e-12);
            Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.BreakingCapacity), StringComparison.Ordinal);
            CheckCase.Stated(design, CheckKind.BreakingCapacity);
        }
    }

    [Fact]
    public void SupplyThatHoldsItsLimit_GivesThat()
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(10), source: Source.CurrentLimited(V(12), A(20)));
        design.Is(CheckKind.BreakingCapacity, 20, 1000, 2e-9);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.BreakingCapacity, "I_k ≤ I_c");
        Assert.Equal("The source holds its limit: the smaller of the two.", sheet.Steps.First(s => s.Symbol?.Spec == "I_k").Reason);
        CircuitDesign bare = CheckCase.Verify(CheckCase.Asked(Load, Source.CurrentLimited(V(12), A(20)), upstreamMilliOhms: null), Blade(10));
        Assert.Equal("The source holds its limit.", CheckCase.Steps(bare, CheckKind.BreakingCapacity, "I_k ≤ I_c").Steps.First(s => s.Symbol?.Spec == "I_k").Reason);
    }

    [Fact]
    public void NoFuse_IsNotAsked() => Assert.Null(CheckCase.Verify(Load, null).Find(CheckKind.BreakingCapacity));
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class OvercurrentProtectionCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Theory]
    [InlineData(31.999, CheckOutcome.Pass)]
    [InlineData(32, CheckOutcome.Pass)]
    [InlineData(32.001, CheckOutcome.Fail)]
    public void SupplyAroundTheWiresCurrent_PassesAndFails(double amperes, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Load, null, source: Source.CurrentLimited(V(12), A(amperes)));
        design.Is(CheckKind.OvercurrentProtection, amperes, 32, 1e-12);
        CheckCase.Answers(
            design, CheckKind.OvercurrentProtection, expected, "wire",
            expected == CheckOutcome.Pass ? "no fuse is needed: the supply cannot overload the wire" : "no fuse or breaker protects this wire, and the supply can overload it");
        Assert.Equal(
            "Fit a fuse or breaker at the source that the wire's current allows, or a supply that cannot give more than the wire carries.",
            CheckCase.AdviceOf(design, CheckKind.OvercurrentProtection));
        Assert.Equal("Supply lead 20 mΩ.", CheckCase.Steps(design, CheckKind.OvercurrentProtection, "I_k ≤ I_z").Steps.First(s => s.Symbol?.Spec == "I_k").Reason);
    }

    [Theory]
    [InlineData(0.999, CheckOutcome.Pass)]
    [InlineData(1.001, CheckOutcome.Fail)]
    [InlineData(1.9, CheckOutcome.Fail)]
    public void WiresInParallel_OneOfThemCarriesAllThatTheSupplyGives(double wires, CheckOutcome expected)
    {
        // A fault in one of two wires draws all of it through that one; what both carry together is no measure.
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitPath path = CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3), 2), asked.Return);
        double both = CircuitDesigner.Verify(asked, path, Blade(10), CheckCase.Table).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        CircuitDesign design = CircuitDesigner.Verify(asked.WithSource(Source.CurrentLimited(V(12), A(wires * both / 2))), path, null, CheckCase.Table);
        Assert.Equal(expected, design.Of(CheckKind.OvercurrentProtection).Outcome);
        if (expected == CheckOutcome.Fail)
        {
            design.Is(CheckKind.OvercurrentProtection, wires * both / 2, both / 2, 1e-12);
            CheckCase.Answers(design, CheckKind.OvercurrentProtection, expected, "wire", "a fault in one of the parallel wires draws all of it through that one");
            _ = CheckCase.Steps(design, CheckKind.OvercurrentProtection, "I_k ≤ I_z1");
        }
    }

    [Fact]
    public void BatteryThroughItsLead_ByOhmsLaw()
    {
        CircuitDesign design = CheckCase.Verify(Load, null);
        design.Is(CheckKind.OvercurrentProtection, 14.4 / (0.0036 + CheckCase.Lead), 32, 1e-12);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.OvercurrentProtection).Outcome);
    }

    [Fact]
    public void SourceWithoutResistance_FailsInWords()
    {
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, Source.Ideal(V(12)), upstreamMilliOhms: null), null);
        CheckCase.Answers(design, CheckKind.OvercurrentProtection, CheckOutcome.Fail, "wire", "no fuse or breaker protects this wire, and the supply can overload it");
        Assert.Null(design.Of(CheckKind.OvercurrentProtection).Value);
        CheckCase.Stated(design, CheckKind.OvercurrentProtection);
    }

    [Fact]
    public void SeveralStretches_TheWeakestIsNamed()
    {
        CircuitRequirements asked = CheckCase.Asked(Load, Source.CurrentLimited(V(12), A(20)));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(2)), Segment.Create(RoadVehicle(1), M(0.2))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, null, CheckCase.Table);
        design.Is(CheckKind.OvercurrentProtection, 20, 19, 1e-12);
        Assert.Equal("feed, 0.2 m of 1 mm² road-vehicle copper", design.Of(CheckKind.OvercurrentProtection).Where);
        CircuitDesign ideal = CircuitDesigner.Verify(CheckCase.Asked(Load, Source.Ideal(V(12)), upstreamMilliOhms: null), path, null, CheckCase.Table);
        Assert.Equal("feed, 0.2 m of 1 mm² road-vehicle copper", ideal.Of(CheckKind.OvercurrentProtection).Where);
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), null, CheckCase.Table);
        CheckCase.Answers(design, CheckKind.OvercurrentProtection, CheckOutcome.Undetermined, "wire", "the wire is not rated here, and no fuse protects it");
        CheckCase.Stated(design, CheckKind.OvercurrentProtection);
    }

    [Theory]
    [InlineData(0, CheckOutcome.Pass, "no fuse is needed: the supply cannot overload the wire")]
    [InlineData(0, CheckOutcome.Fail, "no fuse or breaker protects this wire, and the supply can overload it")]
    [InlineData(1, CheckOutcome.Undetermined, "the wire is not rated here, and no fuse protects it")]
    [InlineData(2, CheckOutcome.Undetermined, "current reaches this wire from several sides, through fuses of which none protects it alone")]
    [InlineData(3, CheckOutcome.Pass, "the fuses and limited supplies at its ends let no more through")]
    [InlineData(4, CheckOutcome.Undetermined, "a fault in one of the parallel wires draws all of it through that one")]
    public void Note_OfEachAnswer_IsItsSentence(int which, CheckOutcome outcome, string note)
    {
        Check check = (Check)CheckKind.OvercurrentProtection;
        CheckResult result = new(check, double.NaN, double.NaN, outcome, References.Reference.CommonPractice("made up for a test"), CheckSubject.Of((byte)which));
        Assert.Equal(note, check.Note(result));
        Assert.Equal(
            which == 2
                ? "Read the fault audit of the harness for this wire, or give it a fuse at each end that feeds it."
                : which == 4
                ? "Use one thicker wire, a fuse for each of the parallel wires at both ends, or a supply that cannot give more than one of them carries."
                : "Fit a fuse or breaker at the source that the wire's current allows, or a supply that cannot give more than the wire carries.",
            check.Advice(result, CheckCase.Verify(Load, null).State()));
    }

    [Fact]
    public void WithAFuse_IsNotAsked() => Assert.Null(CheckCase.Verify(Load, Blade(10)).Find(CheckKind.OvercurrentProtection));
}

using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>IEC 60364-4-43, 433.1, from memory: rating at most the wire's current, conventional fusing current at most 1.45 times that.</summary>
public class FuseProtectsWireCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(8));

    [Fact]
    public void TypeC_TheRatingDecides()
    {
        // A type C fuse opens from 135 %: 1.45/1.35 is more than 1.
        CircuitDesign design = CheckCase.Verify(Load, Blade(30));
        design.Is(CheckKind.FuseProtectsWire, 30, 32, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseProtectsWire, CheckOutcome.Pass, "wire", "");
        CheckCase.Steps(design, CheckKind.FuseProtectsWire, "I_n ≤ I_w");
    }

    [Theory]
    [InlineData(32, CheckOutcome.Pass)]
    [InlineData(32.001, CheckOutcome.Fail)]
    public void RatingAroundTheWiresCurrent_PassesAndFails(double amperes, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Load, OfRating(amperes));
        CheckCase.Answers(design, CheckKind.FuseProtectsWire, expected, "wire", "");
        Assert.Same(CheckCase.Table.FusePractice.ShareReference, design.Of(CheckKind.FuseProtectsWire).Reference);
        Assert.Equal(
            "The fuse is too large for the wire: use a smaller fuse if it still carries the load, a larger wire, a cooler place, fewer conductors together, or a fuse series with finer steps.",
            CheckCase.AdviceOf(design, CheckKind.FuseProtectsWire));
    }

    [Fact]
    public void Gg_TheFusingCurrentDecides()
    {
        // gG from 16 A: 1.6 In, so at most 1.45·32/1.6 = 29 A.
        CircuitDesign design = CheckCase.Verify(Load, FuseSeries.IndustrialGg.SmallestAtLeast(A(32)));
        design.Is(CheckKind.FuseProtectsWire, 32, 29, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseProtectsWire, CheckOutcome.Fail, "wire", "");
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FuseProtectsWire, "I_n ≤ I_w");
        Assert.Equal(
            "Both halves of the rule: the rating against the wire's current, and the conventional fusing current against 1.45 times that.", sheet.Steps.First(s => s.Symbol?.Spec == "I_w").Reason);
        Assert.Equal(CheckOutcome.Pass, CheckCase.Verify(Load, FuseSeries.IndustrialGg.SmallestAtLeast(A(25))).Of(CheckKind.FuseProtectsWire).Outcome);
    }

    [Theory]
    [InlineData(1.5, 48)]
    [InlineData(1.001, 32.032)]
    [InlineData(1, 29)]
    [InlineData(0.5, 16)]
    public void LawThatAllowsMoreThanTheWiresCurrent_SetsTheFusingHalfAside(double share, double most)
    {
        DesignRules rules = new(CheckCase.Table) { FusePractice = new FusePractice { Overload = null, ShareOfAmpacity = share } };
        CircuitDesign design = CheckCase.Verify(Load, FuseSeries.IndustrialGg.SmallestAtLeast(A(32)), rules);
        design.Is(CheckKind.FuseProtectsWire, 32, most, 2e-9);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FuseProtectsWire, "I_n ≤ I_w");
        Assert.Equal(share != 1, sheet.Steps.Any(s => s.Symbol?.Spec == "k_z" && s.Result!.Value.Equals(share)));
    }

    [Fact]
    public void SeveralStretches_TheWeakestIsNamed()
    {
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(2)), Segment.Create(RoadVehicle(1), M(0.2)), Segment.Create(RoadVehicle(2.5), M(1))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(20), CheckCase.Table);

        // 19 A by the table.
        design.Is(CheckKind.FuseProtectsWire, 20, 19, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseProtectsWire, CheckOutcome.Fail, "feed, 0.2 m of 1 mm² road-vehicle copper", "");
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FuseProtectsWire, "I_n ≤ I_w");
        Assert.Contains(sheet.Steps, s => s.Sought == "stretch that the fuse is held against" && s.Reason == "The stretch of 0.2 m of 1 mm² road-vehicle copper.");
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(10), CheckCase.Table);
        CheckCase.Answers(design, CheckKind.FuseProtectsWire, CheckOutcome.Undetermined, "wire", "the wire is not rated here");
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(design, CheckKind.FuseProtectsWire), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.FuseProtectsWire);
    }

    [Fact]
    public void NoFuse_IsNotAsked() => Assert.Null(CheckCase.Verify(Load, null).Find(CheckKind.FuseProtectsWire));

    private static FuseRating OfRating(double amperes) => FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "own list", Kind = "fuse", Reference = References.Reference.CommonPractice("made up for a test"), Ratings = [A(amperes)],
    }).SmallestAtLeast(A(1));
}

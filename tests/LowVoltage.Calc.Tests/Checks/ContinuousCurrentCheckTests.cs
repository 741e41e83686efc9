using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class ContinuousCurrentCheckTests
{
    private const string Unrated = "The wire has no rating where it runs: a cooler place, fewer loaded conductors together, better insulation, or rules whose source covers it.";

    [Theory]
    [InlineData(31.999, CheckOutcome.Pass)]
    [InlineData(32, CheckOutcome.Pass)]
    [InlineData(32.001, CheckOutcome.Fail)]
    public void AroundTheRating_PassesAndFails(double amperes, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(amperes)), Blade(40));
        design.Is(CheckKind.ContinuousCurrent, amperes, CheckCase.Rated, 1e-12);
        CheckCase.Answers(design, CheckKind.ContinuousCurrent, expected, "wire", "");
        Assert.Equal(RoadVehicleSingleCore.Reference, design.Of(CheckKind.ContinuousCurrent).Reference);
        Assert.Equal(
            "The wire carries too much current where it runs: use a cooler place, fewer loaded conductors together, better insulation, or a larger wire.",
            CheckCase.AdviceOf(design, CheckKind.ContinuousCurrent));
        CheckCase.Steps(design, CheckKind.ContinuousCurrent, "I_L ≤ I_z");
    }

    [Fact]
    public void DutyCycle_CountsByItsRootMeanSquare()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(40)).WithDutyCycle(DutyCycle.FromFraction(0.25)), Blade(40));
        design.Is(CheckKind.ContinuousCurrent, 20, CheckCase.Rated, 1e-9);
    }

    [Fact]
    public void SeveralStretches_TheOneWithTheLeastToSpare_WithTheOthersCurrent()
    {
        // 4 mm² 42 A, 2.5 mm² 32 A, shared 6 mm² 54 A that carries 45 A of others: 53/54 is tighter than 8/32.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(8)), back: ReturnPath.Shared([Segment.Create(RoadVehicle(6), M(1))], A(45)), conductors: 1, drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(2.5), M(1))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(10), CheckCase.Table);
        const double Pair = 0.825;
        design.Is(CheckKind.ContinuousCurrent, 53, 54 * Pair, 1e-9);
        Assert.Equal("shared return, 1 m of 6 mm² road-vehicle copper", design.Of(CheckKind.ContinuousCurrent).Where);
        CheckCase.Steps(design, CheckKind.ContinuousCurrent, "I_sh ≤ I_z3");
    }

    [Fact]
    public void ConductorThatTheTableDoesNotHave_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(8)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(1)), Segment.Create(Awg(2), M(2))], asked.Return), Blade(10), CheckCase.Table);
        CheckCase.Answers(
            design, CheckKind.ContinuousCurrent, CheckOutcome.Undetermined, "feed, 2 m of 2 AWG stranded copper",
            "road-vehicle single-core table does not cover 2 AWG stranded copper under these conditions");
        Assert.Equal(Unrated, CheckCase.AdviceOf(design, CheckKind.ContinuousCurrent));
        CheckCase.Stated(design, CheckKind.ContinuousCurrent);
    }

    [Fact]
    public void AirTooHotForTheTable_IsUndeterminedAndSaysWhy()
    {
        // Insulation of 75 °C counts as the table's 70 °C, which air of 72 °C leaves nothing of.
        CircuitDesign design = CheckCase.Verify(
            CheckCase.Asked(Load.ConstantCurrent(A(8)), ambient: 72, insulation: InsulationMaterial.Rated("own", C(75), C(160))), Blade(10));
        CheckCase.Answers(design, CheckKind.ContinuousCurrent, CheckOutcome.Undetermined, "wire", "the table is for a conductor of at most 70 °C, the air is at 72 °C");
    }

    [Fact]
    public void LoadWithoutAnOperatingPoint_IsNotAsked() => Assert.Null(CheckCase.Verify(Load.ConstantPower(W(5000)), Blade(10)).Find(CheckKind.ContinuousCurrent));
}

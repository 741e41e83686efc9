using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class MechanicalMinimumCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(1));

    [Fact]
    public void AtTheLimit_Passes()
    {
        CircuitDesign design = CheckCase.Verify(Load, Blade(3), squareMillimeters: 0.5);
        design.Is(CheckKind.MechanicalMinimum, 0.5, 0.5, 2e-9);
        CheckCase.Answers(design, CheckKind.MechanicalMinimum, CheckOutcome.Pass, "wire", "");
        Assert.Same(DesignRules.RoadVehicle.MinimumSectionReference, design.Of(CheckKind.MechanicalMinimum).Reference);
        Assert.Contains(CheckCase.Steps(design, CheckKind.MechanicalMinimum, "A_w ≥ A_min").Steps, s => s.Sought == "section of 0.5 mm² road-vehicle copper");
    }

    [Fact]
    public void JustBelowTheLimit_Fails()
    {
        DesignRules rules = new(CheckCase.Table) { MinimumSection = UnitsNet.Area.FromSquareMillimeters(0.5 * 1.000_001) };
        CircuitDesign design = CheckCase.Verify(Load, Blade(3), rules, squareMillimeters: 0.5);
        CheckCase.Answers(design, CheckKind.MechanicalMinimum, CheckOutcome.Fail, "wire", "");
        Assert.Equal("Use a larger size, or state why the mechanical minimum does not apply.", CheckCase.AdviceOf(design, CheckKind.MechanicalMinimum));
        Assert.True(CheckCase.IsCured(design, CheckKind.MechanicalMinimum));
    }

    [Fact]
    public void OfSeveralStretches_TheThinnestCounts_NotTheReturnThatOthersShare()
    {
        CircuitRequirements asked = Circuit(Load, feed: 3, back: ReturnPath.Shared([Segment.Create(RoadVehicle(0.35), M(1))], A(0.5)), drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(1), M(1)), Segment.Create(RoadVehicle(0.75), M(0.5)), Segment.Create(RoadVehicle(1.5), M(1.5))], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(3), CheckCase.Table);
        design.Is(CheckKind.MechanicalMinimum, 0.75, 0.5, 2e-9);
        CheckCase.Answers(design, CheckKind.MechanicalMinimum, CheckOutcome.Pass, "feed, 0.5 m of 0.75 mm² road-vehicle copper", "");
        Assert.Contains(CheckCase.Steps(design, CheckKind.MechanicalMinimum, "A_w ≥ A_min").Steps, s => s.Sought == "section of the thinnest conductor");
    }
}

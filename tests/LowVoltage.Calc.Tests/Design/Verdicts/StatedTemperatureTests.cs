using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>What is stated of a stretch's temperature counts in its drop and against its insulation.</summary>
public class StatedTemperatureTests
{
    [Fact]
    public void Verify_StretchStatedHotterThanItsInsulation_Fails()
    {
        CircuitDesign design = Laid(120);
        CheckResult check = design.Of(CheckKind.ConductorTemperature);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
        Near(120, check.Value, 1e-9);
        Assert.Equal(Verdict.Fail, design.Verdict);
    }

    [Fact]
    public void Verify_StretchStatedWarm_DropsByItsResistanceThere() =>
        Near(2 * ((2 * Plain.PerMeter(12.7, 60)) + 0.022), Laid(60).Of(CheckKind.VoltageDrop).Value, 1e-6);

    private static CircuitDesign Laid(double celsius)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), feed: 2, back: ReturnPath.Chassis(MilliOhm(2)));
        Segment warm = Segment.Create(RoadVehicle(1.5), M(2)).WithTemperature(ConductorTemperature.At(C(celsius)));
        return CircuitDesigner.Verify(asked, CircuitPath.Create(warm, asked.Return), Blade(5), DesignRules.RoadVehicle);
    }
}

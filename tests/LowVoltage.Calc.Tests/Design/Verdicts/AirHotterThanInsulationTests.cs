using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>Insulation in air hotter than its limit fails, whatever the current; nothing in it is colder than the air.</summary>
public class AirHotterThanInsulationTests
{
    private static readonly CircuitRequirements Hot = Circuit(Load.ConstantCurrent(A(2)), ambient: 100);

    [Fact]
    public void Verify_PvcInAirOf100_Fails()
    {
        CircuitDesign design = CircuitDesigner.Verify(Hot, RoadVehicle(2.5), Blade(5), DesignRules.RoadVehicle);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.ConductorTemperature).Outcome);
        Assert.Equal(Verdict.Fail, design.Verdict);
    }

    [Fact]
    public void Design_PvcInAirOf100_Fails() => Assert.Equal(Verdict.Fail, CircuitDesigner.Design(Hot, DesignRules.RoadVehicle).Verdict);

    [Fact]
    public void Verify_PvcInAirOf100_ShortCircuitIsNoColderThanTheAir()
    {
        CircuitDesign design = CircuitDesigner.Verify(Hot, RoadVehicle(2.5), Blade(5), DesignRules.RoadVehicle);
        if (design.Find(CheckKind.ShortCircuitTemperature) is { } check)
        {
            Assert.True(check.Value >= 100, check.ToString());
        }
    }
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A fuse carries the sum of all that starts together and of what runs meanwhile.</summary>
public class StartOfSeveralLoadsTests
{
    [Fact]
    public void Design_CapacitorSaidInFourParts_TakesTheSameFuse()
    {
        Load whole = Load.ConstantPower(W(80)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(40));
        Load part = Load.ConstantPower(W(20)).WithInputCapacitor(ElectricCapacitance.FromMillifarads(10));
        CircuitDesign one = CircuitDesigner.Design(Circuit(whole), DesignRules.RoadVehicle), four = CircuitDesigner.Design(Circuit(Load.Together(part, part, part, part)), DesignRules.RoadVehicle);
        Assert.Equal((one.Wire, one.Fuse), (four.Wire, four.Fuse));
    }

    [Fact]
    public void Verify_TwoMotorsOfUnlikeStartsAndARunningLoad_DoesNotHold()
    {
        // 4.5 + 4.5 + 1.5 A for one second through 5 A, which may open at 210 % after 0.13 s.
        Assert.InRange(Plain.Time(Plain.BladeLeast, 5, 10.5), 0.12, 0.14);
        Load load = Load.Together(Motor(1, 4.5, 1), Motor(1.2, 4.5, 1.1), Load.ConstantCurrent(A(1.5)));
        Assert.Equal(CheckOutcome.Fail, Verified(load, 2.5, 5).Of(CheckKind.InrushHeld).Outcome);
    }

    [Fact]
    public void Verify_MotorStartingBesideALoadThatRuns_DoesNotHold()
    {
        // 22 + 9 A for 0.4 s through 15 A, which may open at 207 % after 0.14 s.
        Assert.InRange(Plain.Time(Plain.BladeLeast, 15, 31), 0.13, 0.15);
        Assert.Equal(CheckOutcome.Fail, Verified(Load.Together(Motor(3, 22, 0.4), Load.ConstantCurrent(A(9))), 4, 15).Of(CheckKind.InrushHeld).Outcome);
    }

    private static Load Motor(double running, double peak, double seconds) => Load.Motor(A(running), A(peak), A(peak), Duration.FromSeconds(seconds));

    private static CircuitDesign Verified(Load load, double squareMillimeters, double fuse) =>
        CircuitDesigner.Verify(Circuit(load, drop: DropLimit.Percent(10)), RoadVehicle(squareMillimeters), Blade(fuse), DesignRules.RoadVehicle);
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class VoltageDropCheckTests
{
    // 8 A through lead, chassis and the wire as warm as they make it.
    private static readonly double Drop = 8 * (CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(8));

    [Fact]
    public void WithinTheAllowance_Passes()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(8)), Blade(10), Rules(3));
        design.Is(CheckKind.VoltageDrop, Drop, 0.36, 1e-9);
        CheckCase.Answers(design, CheckKind.VoltageDrop, CheckOutcome.Pass, "way out and back", "");
        Worked(design);
    }

    [Theory]
    [InlineData(1e-6, CheckOutcome.Pass)]
    [InlineData(-1e-6, CheckOutcome.Fail)]
    public void AroundTheLimit_PassesAndFails(double more, CheckOutcome expected)
    {
        DesignRules rules = new(CheckCase.Table) { DropLimit = DropLimit.Volts(V(Drop * (1 + more))) };
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(8)), Blade(10), rules);
        CheckCase.Answers(design, CheckKind.VoltageDrop, expected, "way out and back", "");
        Assert.Equal(
            "Shorten the run, use a larger wire, better joints and a better supply lead, a higher supply voltage, or allow more drop.", CheckCase.AdviceOf(design, CheckKind.VoltageDrop));
        CheckCase.Steps(design, CheckKind.VoltageDrop, "ΔV ≤ ΔV_max");
    }

    [Fact]
    public void Level_IsWhereMostIsLost()
    {
        // A constant power draws most at the lowest voltage, a resistance at the highest.
        Assert.Equal(SupplyLevel.Minimum, CheckCase.Verify(Load.ConstantPower(W(60)), Blade(10)).Of(CheckKind.VoltageDrop).Level);
        CircuitDesign heater = CheckCase.Verify(Load.Resistance(ElectricResistance.FromOhms(2)), Blade(10));
        Assert.Equal(SupplyLevel.Maximum, heater.Of(CheckKind.VoltageDrop).Level);
        (double amperes, _, double ohms) = Plain.Settle(14.4, 0.0036 + CheckCase.Lead + CheckCase.Chassis, i => CheckCase.WireOhms(i), u => u / 2);
        Near(amperes * (ohms - 0.0036), heater.Of(CheckKind.VoltageDrop).Value, 1e-9);
    }

    [Fact]
    public void SharedReturn_CountsWhatTheOthersDropThere()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(8)), feed: CheckCase.Meters, back: ReturnPath.Shared(MilliOhm(2), A(30)), conductors: 1);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), asked.Return), Blade(10), CheckCase.Table);
        Near((8 * (CheckCase.Lead + 0.002 + CheckCase.WireOhms(8))) + (30 * 0.002), design.Of(CheckKind.VoltageDrop).Value, 1e-9);
    }

    [Fact]
    public void AllowanceThatDoesNotCoverTheVoltage_IsUndetermined()
    {
        // FAA AC 43.13-1B Table 11-6 has 14 V and 28 V, which batteries of 12 V and 24 V stand on.
        DesignRules rules = new(CheckCase.Table) { DropLimit = DropLimit.AircraftTable };
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(8)), Blade(10), rules, Source.BehindResistance(V(18), MilliOhm(18)));
        CheckCase.Answers(design, CheckKind.VoltageDrop, CheckOutcome.Undetermined, "way out and back", "the allowance does not cover a nominal 18 V; state one");
        Near(Drop, design.Of(CheckKind.VoltageDrop).Value, 1e-9);
        Assert.Equal("State the drop that this circuit may have.", CheckCase.AdviceOf(design, CheckKind.VoltageDrop));
        CheckCase.Stated(design, CheckKind.VoltageDrop);
    }

    private static void Worked(CircuitDesign design)
    {
        // The allowance was stated as a share: the sheet works the volts out.
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.VoltageDrop, "ΔV ≤ ΔV_max");
        Near(100 * Drop / 12, CheckCase.Number(sheet, "p_b"), 1e-9);
        Near(0.36, CheckCase.Number(sheet, "ΔV_max"), 1e-12);
    }

    private static DesignRules Rules(double percent) => new(CheckCase.Table) { DropLimit = DropLimit.Percent(percent) };
}

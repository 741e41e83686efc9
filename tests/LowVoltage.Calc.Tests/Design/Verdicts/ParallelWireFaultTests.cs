using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A fault in one of several parallel wires flows through the section of that one (IEC 60364-4-43, 434.4, from memory).</summary>
public class ParallelWireFaultTests
{
    [Fact]
    public void Verify_OneOfTwelveThinWiresWouldMelt_DoesNotPass()
    {
        // Just behind the near end of one wire: 14.4 V behind 3.6 mΩ of battery and 20 mΩ of lead, beyond 600 % of the 60 A fuse, where it lets 360²·1 s through.
        double amperes = 14.4 / (5.4 / 600 / 2.5 + 0.020), joule = 360 * 360 * 1.0;
        Assert.True(amperes > 360);
        Assert.True(Plain.Adiabatic(12.7, 1.5, joule, 70) > 900);

        CircuitDesign design = Laid(1.5, 12, FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60)));
        Assert.NotEqual(Verdict.Pass, design.Verdict);
        Assert.NotEqual(CheckOutcome.Pass, design.Of(CheckKind.FaultInOneParallelWire).Outcome);
    }

    [Fact]
    public void Verify_OneWireStandsTheWholeFault_Passes()
    {
        // 15 A type C: at most 90²·0.1 s beyond 600 %, and no more than the 15·2 A at 5 s before: 4500 A²s, 4 K in 6 mm².
        Assert.True(Plain.Adiabatic(3.14, 6, 4500, 70) < 80);
        CircuitDesign design = Laid(6, 2, Blade(15));
        Assert.Equal(Verdict.Pass, design.Verdict);
    }

    private static CircuitDesign Laid(double squareMillimeters, int wires, FuseRating fuse)
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(10)), feed: 1, back: ReturnPath.Chassis(MilliOhm(1)), drop: DropLimit.Percent(10));
        return CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(squareMillimeters), M(1), wires), asked.Return), fuse, DesignRules.RoadVehicle);
    }
}

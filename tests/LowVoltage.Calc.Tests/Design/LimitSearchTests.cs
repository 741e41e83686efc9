using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

public class LimitSearchTests
{
    [Fact]
    public void Find_WhereTheMarginIsStraight_AsksFarLessThanHalvingWould()
    {
        // 5 A may drop 3 % of 12 V: 0.36 V = 5·(0.021 Ω + l·R′), about 6.5 m; straight in the length.
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(5)));
        double expected = ((0.36 / 5) - CheckCase.Lead - CheckCase.Chassis) / CheckCase.WireOhms(5, 1);
        BranchState at = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(10), CheckCase.Table).State();
        int questions = 0;
        BranchState lay(double meters)
        {
            questions++;
            return at.WithMeters(meters, 0);
        }

        DesignLimit<double> found = LimitSearch.Find(
            1e-3, 1e4, 1e-6, lay, meters => CircuitDesigner.Verify(CheckCase.Asked(Load.ConstantCurrent(A(5)), feed: meters), RoadVehicle(2.5), Blade(10), CheckCase.Table), meters => meters, "a feed", "m");
        Assert.InRange(found.Value!.Value, expected - 2e-6, expected + 1e-7);
        Assert.Equal(CheckKind.VoltageDrop, found.Governing!.Value.Kind);

        // Seven decades in 24 strides: 14 of them go past 6.5 m, and leave metres, which halving would bring to a micrometre in 22 more.
        int strides = (int)Math.Ceiling(Math.Log(expected / 1e-3) / Math.Log(1e7) * 24);
        Assert.Equal(14, strides);
        Assert.InRange(questions, strides + 2, strides + 15);
    }
}

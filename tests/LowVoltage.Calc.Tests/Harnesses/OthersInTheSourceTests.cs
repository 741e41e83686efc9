using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>What other loads draw takes voltage in the resistance of the source too: the least current of a stall or a far fault was found without it, and a fuse that need not open passed.</summary>
public class OthersInTheSourceTests
{
    // 4.6 A at 12 V is 4.22 A at 11 V, and a 3 A blade fuse must open from 4.05 A; 30 A through 50 mOhm leave 9.5 V, at which it is 3.64 A.
    [Fact]
    public void StalledMotor_WhileOthersDrawFromAWeakBattery_NeedNotOpenItsFuse()
    {
        Assert.Equal(CheckOutcome.Pass, Stall(1));
        Assert.Equal(CheckOutcome.Undetermined, Stall(30));
    }

    private static CheckOutcome Stall(double others)
    {
        Source battery = Source.BehindResistance(V(11), V(12), V(13), MilliOhm(20), MilliOhm(50));
        Harness harness = new HarnessBuilder("weak battery", DesignRules.RoadVehicle).Terminals("plus", "minus", "fused", "motor +", "other fused", "other +")
            .Source("battery", "plus", "minus", battery)
            .Fuse("fuse", "plus", "fused", Vans.Blade(3)).AddWire("wire", "fused", "motor +", 1, 1)
            .Load("motor", "motor +", "minus", Load.Motor(A(2), A(4.2), A(4.6), UnitsNet.Duration.FromSeconds(0.1), V(12)))
            .Fuse("other fuse", "plus", "other fused", Vans.Blade(40)).AddWire("other wire", "other fused", "other +", 10, 1)
            .Load("other", "other +", "minus", Load.ConstantCurrent(A(others))).Build();
        return HarnessDesigner.Verify(harness).Find(CheckKind.StalledMotor, "fuse")!.Value.Outcome;
    }
}

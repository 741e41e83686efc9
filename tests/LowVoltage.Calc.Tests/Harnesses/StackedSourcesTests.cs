using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Two batteries one on top of the other, each a source of its own.</summary>
public class StackedSourcesTests
{
    /// <summary>The drop was counted from the upper battery's own voltage: less than nothing at any load across both, so that every wire passed.</summary>
    [Fact]
    public void DropAcrossBoth_IsThatOfTheSeriesCircuit()
    {
        Source block = Source.BehindResistance(V(12), MilliOhm(10));
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(10)), Source.InSeries(block, block), feed: 12, upstreamMilliOhms: 0).WithPlace(Place.Create(C(30)));
        CheckResult circuit = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Gg(16), DesignRules.RoadVehicle).Of(CheckKind.VoltageDrop);
        CheckResult harness = HarnessDesigner.Verify(Stack(block, 12)).Find(CheckKind.VoltageDrop, "load")!.Value.Result;

        // 24 m of 7.60 mΩ/m at 20 °C, some kelvins above 30 °C.
        Assert.InRange(harness.Value!.Value, 10 * 24 * 0.0076 * 1.039, 10 * 24 * 0.0076 * 1.08);
        Assert.Equal(circuit.Value!.Value, harness.Value!.Value, 4);
        Assert.Equal(CheckOutcome.Fail, harness.Outcome);
    }

    /// <summary>Each source was held against 60 V by itself: 84 V passed.</summary>
    [Fact]
    public void TogetherAbove60Volts_AreRefused()
    {
        Harness harness = Stack(Source.BehindResistance(V(36), V(36), V(42), MilliOhm(10), MilliOhm(20)), 1);
        Assert.Contains("84 V", Assert.Throws<ArgumentException>("harness", () => HarnessDesigner.Verify(harness)).Message, StringComparison.Ordinal);
        Assert.True(harness.Solve().Exists);
    }

    private static Harness Stack(Source block, double meters)
    {
        Place place = Place.Create(C(30));
        return new HarnessBuilder("stack", DesignRules.RoadVehicle).Terminals("plus", "middle", "minus", "fused", "load +", "load -")
            .Source("lower", "middle", "minus", block).Source("upper", "plus", "middle", block).Fuse("fuse", "plus", "fused", Gg(16))
            .Wire("out", "fused", "load +", RoadVehicle(2.5), M(meters), place, InsulationMaterial.PolyvinylChloride)
            .Wire("home", "load -", "minus", RoadVehicle(2.5), M(meters), place, InsulationMaterial.PolyvinylChloride)
            .Load("load", "load +", "load -", Load.ConstantCurrent(A(10))).Build();
    }

    private static FuseRating Gg(double amperes) => FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(amperes));
}

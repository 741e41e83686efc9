using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Two motors that start in every period, one from each half of a supply, with a neutral that carries their difference.</summary>
public class PulsedNeutralTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Neutral_OfMotorsThatStartWhileTheOtherPauses_CountsTheStartsOfBoth(bool ofAVoltage)
    {
        Duration start = Duration.FromSeconds(0.5);
        Load motor = (ofAVoltage ? Load.Motor(A(2), A(12), A(12), start, V(12)) : Load.Motor(A(2), A(12), A(12), start)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(3), Duration.FromSeconds(12)));
        Place place = Place.Create(C(30));
        Harness harness = new HarnessBuilder("halves", DesignRules.Bench).Terminals("plus", "middle", "minus", "above", "below", "between")
            .Source("upper", "plus", "middle", Source.BehindResistance(V(12), MilliOhm(10))).Source("lower", "middle", "minus", Source.BehindResistance(V(12), MilliOhm(10)))
            .Wire("out", "plus", "above", RoadVehicle(2.5), M(1), place, InsulationMaterial.PolyvinylChloride).Wire("back", "below", "minus", RoadVehicle(2.5), M(1), place, InsulationMaterial.PolyvinylChloride)
            .Wire("neutral", "between", "middle", RoadVehicle(2.5), M(1), place, InsulationMaterial.PolyvinylChloride)
            .Load("one", "above", "between", motor).Load("other", "between", "below", motor).Build();
        double own = Value(harness, "out"), both = Value(harness, "neutral");
        Assert.True(own > 3, $"{own} A");

        // One after the other: the mean of the squares is that of both.
        Assert.True(both >= own * Math.Sqrt(2), $"{both} A beside {own} A");
    }

    private static double Value(Harness harness, string wire) => HarnessDesigner.Verify(harness).Find(CheckKind.ContinuousCurrent, wire)!.Value.Result.Value!.Value;
}

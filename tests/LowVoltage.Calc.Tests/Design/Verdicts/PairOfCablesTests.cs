using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>The road-vehicle table is for one cable; the grouping factors begin at a pair. The step from one to two is a step.</summary>
public class PairOfCablesTests
{
    [Fact]
    public void RoadVehicleTable_TwoCablesTogether_RatedBelowOneAlone()
    {
        Load load = Load.ConstantCurrent(A(5));
        Assert.True(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(2.5), Circuit(load, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 1), out ElectricCurrent alone));
        Assert.True(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(2.5), Circuit(load, conductors: 2), out ElectricCurrent pair));
        Assert.Equal(32, alone.Amperes, 9);

        // FAA figure 11-5, two wires at full load: 0.825. IEC 60364-5-52, touching against spaced: 0.83 to 0.87. With 4 A of either to spare.
        Assert.InRange(pair.Amperes, 0.75 * 32, 0.9 * 32);
    }
}

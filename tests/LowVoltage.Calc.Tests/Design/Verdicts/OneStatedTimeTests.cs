using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>Of gG fuses below 16 A and of glass fuses the conventional currents alone are carried: one time, of an hour or so. A fault is judged by no line drawn from it.</summary>
public class OneStatedTimeTests
{
    private static readonly FuseRating Ten = FuseSeries.IndustrialGg.SmallestAtLeast(A(10)), Sixteen = FuseSeries.IndustrialGg.SmallestAtLeast(A(16));

    [Fact]
    public void Verify_BehindAFuseWithOneStatedTime_LeavesWhatRestsOnAFaultUndetermined()
    {
        CircuitRequirements lamp = Circuit(Load.ConstantCurrent(A(5)));
        CircuitDesign ten = CircuitDesigner.Verify(lamp, RoadVehicle(2.5), Ten, DesignRules.RoadVehicle), sixteen = CircuitDesigner.Verify(lamp, RoadVehicle(2.5), Sixteen, DesignRules.RoadVehicle);
        foreach (CheckKind kind in new[] { CheckKind.ShortCircuitTemperature, CheckKind.FaultOpensFuse, CheckKind.OverloadTemperature })
        {
            Assert.Equal(CheckOutcome.Undetermined, ten.Find(kind)!.Value.Outcome);
            Assert.Contains("above its conventional fusing current of 19 A", ten.Find(kind)!.Value.ToString(), StringComparison.Ordinal);
            Assert.NotEqual(CheckOutcome.Undetermined, sixteen.Find(kind)!.Value.Outcome);
        }

        // What the conventional currents do say stays said: I2 = 1.9 In.
        Assert.Equal(CheckOutcome.Pass, ten.Find(CheckKind.FuseProtectsWire)!.Value.Outcome);
        Assert.Equal(19, Ten.Curve!.FusingCurrent.Amperes, 1e-12);
    }

    [Fact]
    public void Protection_ByAFuseWithOneStatedTime_IsNotProven()
    {
        ProtectedWire wire = ProtectedWire.Create(Wire.Create(RoadVehicle(2.5), InsulationMaterial.PolyvinylChloride), Surroundings.Create(C(30)));
        Assert.Contains("above its conventional fusing current", FuseAgainstWire.Check(Ten, wire, A(500)).Reason, StringComparison.Ordinal);
        Assert.NotEqual(ProtectionVerdict.Protected, FuseAgainstWire.Check(Ten, wire, A(500)).Verdict);
        Assert.Equal(Selectivity.NotProven, FuseAgainstFuse.Check(FuseSeries.IndustrialGg.SmallestAtLeast(A(100)), Ten, A(500)).Verdict);
    }

    // Elsewhere a second time is stated, so that the rule speaks of these ratings alone.
    [Fact]
    public void OneStatedTime_IsThatOfGgBelowSixteenAmperesAndOfGlass()
    {
        FuseSeries[] timed = [FuseSeries.IndustrialGg, FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleSmallBlade, FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.RoadVehicleGlass, FuseSeries.Iec60127Sheet1, FuseSeries.Iec60127Sheet2, FuseSeries.Iec60127Sheet3, FuseSeries.Iec60127Sheet5];
        double[] one = [.. timed.SelectMany(series => series.Ratings).Where(fuse => fuse.Curve is not null && fuse.FaultCurve is null).Select(fuse => fuse.Current.Amperes)];
        Assert.Equal(FuseSeries.IndustrialGg.Ratings.Where(fuse => fuse.Current.Amperes < 16).Concat(FuseSeries.RoadVehicleGlass.Ratings).Select(fuse => fuse.Current.Amperes), one);
    }
}

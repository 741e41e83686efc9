using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

public class VoltageDropAllowanceTests
{
    [Fact]
    public void Limit_OfAShare_IsThatShareOfTheVoltage()
    {
        Assert.Equal(0.36, SmallCraftVoltageDrop.AbycCritical.Limit(V(12)).Volts, 12);
        Assert.Equal(AllowanceBase.NominalVoltage, SmallCraftVoltageDrop.AbycCritical.Base);
        Assert.Equal(AllowanceStatus.Standard, SmallCraftVoltageDrop.IsoOther.Status);
        Assert.Equal(AllowancePath.OutAndBack, SmallCraftVoltageDrop.IsoOther.Path);
        Assert.Equal(0.56, FaaVoltageDrop.MainPower.Limit(V(28)).Volts, 12);
        Assert.Equal(AllowanceBase.RegulatedVoltage, FaaVoltageDrop.MainPower.Base);
        Assert.Equal(AllowancePath.SourceToBus, FaaVoltageDrop.MainPower.Path);
        Assert.Equal(AllowancePath.OriginToLoad, BuildingVoltageDrop.IecPublicOther.Path);
        Assert.Contains("3 %", SmallCraftVoltageDrop.AbycCritical.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Limit_InVolts_BelongsToItsNominalVoltageOnly()
    {
        Assert.Equal(0.5, FaaVoltageDrop.Continuous14.Limit(V(14)).Volts);
        Assert.False(FaaVoltageDrop.Continuous14.TryLimit(V(12), out ElectricPotential none));
        Assert.Equal(0, none.Volts);
        OutsidePublishedRangeException exception = Assert.Throws<OutsidePublishedRangeException>(() => FaaVoltageDrop.Continuous14.Limit(V(12)));
        Assert.Equal("baseVoltage", exception.ParamName);
        Assert.Contains("14 V", exception.Covers, StringComparison.Ordinal);
        Assert.Contains("0.5 V at 14 V", FaaVoltageDrop.Continuous14.ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("baseVoltage", () => FaaVoltageDrop.Continuous14.TryLimit(V(0), out _));
    }

    [Fact]
    public void RoadVehicle_OtherVoltageOrCircuit_IsRefused()
    {
        Assert.False(RoadVehicleVoltageDrop.TryAllowance(RoadVehicleCircuit.Charging, V(48), out VoltageDropAllowance? none));
        Assert.Null(none);
        Assert.Throws<OutsidePublishedRangeException>(() => RoadVehicleVoltageDrop.Allowance(RoadVehicleCircuit.Charging, V(48)));
        Assert.Throws<ArgumentOutOfRangeException>("circuit", () => RoadVehicleVoltageDrop.Allowance((RoadVehicleCircuit)9, V(12)));
        Assert.Throws<ArgumentOutOfRangeException>("circuit", () => RoadVehicleVoltageDrop.Allowance((RoadVehicleCircuit)(-1), V(12)));
        Assert.Equal(9, RoadVehicleVoltageDrop.All.Select(a => a.Circuit).Distinct().Count());
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(100, 0)]
    [InlineData(150, 0.25)]
    [InlineData(200, 0.5)]
    [InlineData(1000, 0.5)]
    public void IecSupplement_GrowsBeyond100MetresToHalfAPercent(double meters, double percent) =>
        Assert.Equal(percent, BuildingVoltageDrop.IecSupplement(Length.FromMeters(meters)).Percent, 12);
}

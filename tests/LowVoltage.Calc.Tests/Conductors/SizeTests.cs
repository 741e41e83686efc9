using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Conductors;

public class SizeTests
{
    [Fact]
    public void Awg_Order_IsByCopper()
    {
        AwgSize forty = AwgSize.Parse("40");
        AwgSize fourteen = AwgSize.Parse("14");
        AwgSize fourOught = AwgSize.Parse("4/0");
        Assert.True(forty < fourteen && fourteen < fourOught && fourOught > forty && forty <= fourteen && fourOught >= fourteen);
        Assert.True(fourteen <= AwgSize.FromNumber(14) && fourteen >= AwgSize.FromNumber(14) && fourteen == AwgSize.FromNumber(14) && fourteen != forty);
        Assert.Equal(44, AwgSize.All.Count);
        Assert.Equal(forty, AwgSize.All[0]);
        Assert.Equal(fourOught, AwgSize.All[43]);
        Assert.Equal(AwgSize.All, AwgSize.All.OrderBy(size => size.Area.SquareMillimeters));
        Assert.Equal(AwgSize.All, AwgSize.All.Order());
        Assert.True(fourteen.Equals((object)AwgSize.FromNumber(14)));
        Assert.False(fourteen.Equals("14 AWG"));
    }

    [Fact]
    public void Awg_Neighbours_EndAtTheEnds()
    {
        Assert.True(AwgSize.FromNumber(1).TryNextLarger(out AwgSize larger));
        Assert.Equal(0, larger.Number);
        Assert.True(AwgSize.FromNumber(0).TryNextSmaller(out AwgSize smaller));
        Assert.Equal(1, smaller.Number);
        Assert.False(AwgSize.FromNumber(-3).TryNextLarger(out larger));
        Assert.Equal(-3, larger.Number);
        Assert.False(AwgSize.FromNumber(40).TryNextSmaller(out smaller));
        Assert.Equal(40, smaller.Number);
    }

    [Theory]
    [InlineData(-4)]
    [InlineData(41)]
    public void Awg_NumberOutside_IsRefused(int number) =>
        Assert.Contains("from -3 to 40", Assert.Throws<ArgumentOutOfRangeException>(nameof(number), () => AwgSize.FromNumber(number)).Message, StringComparison.Ordinal);

    // ASTM B258: 39 steps between 36 and 4/0 make a ratio of 92, so six steps make about 2.005.
    [Fact]
    public void Awg_SixSteps_DoubleTheDiameter() => Assert.All(
        AwgSize.All.Where(size => size.Number >= 3),
        size => Assert.Equal(Math.Pow(92, 6.0 / 39), AwgSize.FromNumber(size.Number - 6).Diameter.Mils / size.Diameter.Mils, 1e-12));

    [Theory]
    [InlineData(211.6)]
    [InlineData(1_000_001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Kcmil_Outside_IsRefused(double value) => Assert.Contains(
        "above 211.6 kcmil (4/0 AWG)", Assert.Throws<ArgumentOutOfRangeException>(nameof(value), () => KcmilSize.FromKcmil(value)).Message, StringComparison.Ordinal);

    [Fact]
    public void Kcmil_Series_IsOrdered()
    {
        Assert.Equal([250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000], KcmilSize.All.Select(size => size.Kcmil));
        Assert.Equal(250_000, KcmilSize.All[0].CircularMils);
        Assert.Equal(126.677, KcmilSize.All[0].Area.SquareMillimeters, 5e-4); // NEC chapter 9 table 8: 127 mm²
        Assert.True(KcmilSize.All[0] < KcmilSize.All[1] && KcmilSize.FromKcmil(250) == KcmilSize.All[0] && KcmilSize.All[1].GetHashCode() == KcmilSize.FromKcmil(300).GetHashCode());
    }

    [Fact]
    public void Metric_Series_SayWhatTheyHold()
    {
        Assert.Equal(20, MetricSize.Iec60228Series.Count);
        Assert.Equal(28, MetricSize.RoadVehicleSeries.Count);
        Assert.Equal(MetricSize.Iec60228Series, MetricSize.Iec60228Series.Order());
        Assert.Equal(MetricSize.RoadVehicleSeries, MetricSize.RoadVehicleSeries.Order());
        Assert.True(MetricSize.FromSquareMillimeters(2.5) is { IsIec60228: true, IsRoadVehicle: true });
        Assert.True(MetricSize.FromSquareMillimeters(1.25) is { IsIec60228: false, IsRoadVehicle: true });
        Assert.True(MetricSize.FromSquareMillimeters(400) is { IsIec60228: true, IsRoadVehicle: false });
        Assert.True(MetricSize.FromSquareMillimeters(2.6) is { IsIec60228: false, IsRoadVehicle: false });
        Assert.Throws<ArgumentOutOfRangeException>("value", () => MetricSize.FromSquareMillimeters(0));
        Assert.Throws<ArgumentOutOfRangeException>("value", () => MetricSize.FromSquareMillimeters(double.NaN));
    }

    [Fact]
    public void Gauges_NotInTheTable_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("number", () => VehicleGaugeSize.FromNumber(22));
        Assert.Throws<ArgumentOutOfRangeException>("number", () => AircraftWireSize.FromNumber(26));
        Assert.Equal(VehicleGaugeSize.All, VehicleGaugeSize.All.OrderBy(size => size.Area.SquareMillimeters));
        Assert.Equal(AircraftWireSize.All, AircraftWireSize.All.Order());
    }

    [Fact]
    public void ConductorSize_EqualNumbersOfDifferentSystems_AreNeverEqual()
    {
        ConductorSize awg = AwgSize.FromNumber(14);
        ConductorSize vehicle = VehicleGaugeSize.FromNumber(14);
        ConductorSize aircraft = AircraftWireSize.FromNumber(14);
        Assert.True(awg != vehicle && vehicle != aircraft && awg == ConductorSize.FromAwg(AwgSize.FromNumber(14)));
        Assert.True(awg.TryGetAwg(out AwgSize back) && back.Number == 14);
        Assert.False(awg.TryGetVehicleGauge(out _) || awg.TryGetAircraft(out _) || awg.TryGetMetric(out _) || awg.TryGetKcmil(out _));
        Assert.True(vehicle.TryGetVehicleGauge(out VehicleGaugeSize gauge) && gauge.Number == 14);
        Assert.True(aircraft.TryGetAircraft(out AircraftWireSize wire) && wire.Number == 14);
        Assert.True(ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(4)).TryGetMetric(out MetricSize metric) && metric.IsIec60228);
        Assert.True(ConductorSize.FromKcmil(KcmilSize.FromKcmil(250)).TryGetKcmil(out KcmilSize kcmil) && kcmil.Kcmil == 250);
        Assert.Equal(2.081, awg.NominalArea.SquareMillimeters, 5e-4); // 14 AWG
        Assert.Equal(1.85, vehicle.NominalArea.SquareMillimeters); // SAE J1128, from memory
        Assert.False(awg.Equals((object)"14 AWG"));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorSize.FromMetric(default));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorSize.FromKcmil(default));
    }

    [Fact]
    public void CircularMil_Conversions_AreInverse()
    {
        Assert.Equal(1, CircularMil.FromDiameter(Length.FromMils(1)), 1e-12);
        Assert.Equal(5.067075e-4, CircularMil.ToArea(1).SquareMillimeters, 5e-11);
        Assert.Equal(4107, CircularMil.FromArea(CircularMil.ToArea(4107)), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>("circularMils", () => CircularMil.ToArea(0));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => CircularMil.FromArea(Area.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => CircularMil.MilsOf(Length.Zero));
    }
}

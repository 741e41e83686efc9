using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>
/// One stretch by itself. Air of 30 °C, PVC 70 °C; road-vehicle table: 32 A for 2.5 mm² alone, and a rise of 40 K with it (handbook). 2.5 mm² 7.60 mΩ/m, 1.5 mm² 12.7 mΩ/m (ISO 6722, from
/// memory).
/// </summary>
public class SegmentStateTests
{
    [Fact]
    public void Rate_TwoWires_CarryTwiceAsMuchWithTheRiseOfOne()
    {
        SegmentState two = Of(RoadVehicle(2.5), parallel: 2);
        Assert.True(two.IsRated);
        Assert.Equal((64.0, 40.0, 30.0), (two.RatedAmperes, two.RiseKelvins, two.BaseCelsius));
        Assert.Equal(64, two.LeftAmperes);

        // 32 A are half of it: a quarter of the rise.
        Near(40, two.CelsiusAt(32), 1e-12);
        (double cool, double slope) = two.Law();
        Near(3 * Plain.PerMeter(7.60, 30) / 2, cool, 1e-12);
        Near(0.00760 * 3 / 2 * Plain.Alpha * 40 / (64 * 64), slope, 1e-12);
        Near(64 * Math.Sqrt((ConductorMaterial.Copper.MeltingPoint.DegreesCelsius - 30) / 40), two.MeltingAmperes(), 1e-12);
    }

    [Fact]
    public void Rate_ConductorThatTheTableDoesNotHave_StaysAsHotAsItsInsulationAllows()
    {
        SegmentState odd = Of(Awg(2));
        Assert.False(odd.IsRated);
        Assert.Equal((0.0, 0.0, 70.0), (odd.RatedAmperes, odd.RiseKelvins, odd.BaseCelsius));
        Assert.Equal(70, odd.CelsiusAt(100));
        (double ohms, double slope) = odd.Law();
        Near(3 * Plain.PerMeter(Plain.AwgPerKilometer(2), 70), ohms, 1e-9);
        Assert.Equal(0, slope);
        Assert.Equal(double.PositiveInfinity, odd.MeltingAmperes());
    }

    [Fact]
    public void Rate_AnotherCandidate_ReadsItsOwnRating()
    {
        SegmentState s = Of(RoadVehicle(2.5));
        s.Conductor = Awg(2);
        s.Rate();
        Assert.False(s.IsRated);
        s.Conductor = RoadVehicle(2.5);
        s.Rate();
        Assert.Equal(32, s.RatedAmperes);
    }

    [Fact]
    public void StatedRise_OfTwoWires_GoesWithTheCurrentOfEach()
    {
        // 20 °C without current, 80 °C at 10 A in each.
        SegmentState two = Of(RoadVehicle(1.5), parallel: 2, stated: ConductorTemperature.SelfHeated(C(20), A(10), C(80)));
        Near(20 + 60, two.CelsiusAt(20), 1e-12);
        (double cool, double slope) = two.Law();
        Near(3 * 0.0127 / 2, cool, 1e-12);
        Near(3 * 0.0127 / 2 * Plain.Alpha * 60 / (20 * 20), slope, 1e-12);
        Near(20 * Math.Sqrt((ConductorMaterial.Copper.MeltingPoint.DegreesCelsius - 20) / 60), two.MeltingAmperes(), 1e-12);

        // 24 A are 12 A each: 1.44 of the rise.
        Near(20 + (60 * 1.44), two.HotCelsius(24), 1e-12);
        Assert.Equal(20, two.CoolCelsius);
    }

    [Fact]
    public void StatedTemperature_CountsCoolAndHot()
    {
        SegmentState warm = Of(RoadVehicle(2.5), stated: ConductorTemperature.At(C(65)));
        Assert.Equal(65, warm.CoolCelsius);
        Assert.Equal(65, warm.CelsiusAt(20));
        Assert.Equal(0, warm.Law().PerSquareAmpere);
        Assert.Equal(double.PositiveInfinity, warm.MeltingAmperes());

        // A fault may find it as hot as the insulation allows, or as hot as stated where that is more.
        Assert.Equal(70, warm.HotCelsius(20));
        Assert.Equal(90, Of(RoadVehicle(2.5), stated: ConductorTemperature.At(C(90))).HotCelsius(20));
        Assert.Equal((30.0, 70.0), (Of(RoadVehicle(2.5)).CoolCelsius, Of(RoadVehicle(2.5)).HotCelsius(20)));
    }

    [Fact]
    public void TrySteadyCelsius_IsTheHotterOfRatingAndStatement()
    {
        // 16 A in each of two: a quarter of the rise.
        Assert.True(Of(RoadVehicle(2.5), parallel: 2).TrySteadyCelsius(32, out double own));
        Near(40, own, 1e-12);
        Assert.True(Of(RoadVehicle(2.5), parallel: 2, stated: ConductorTemperature.At(C(65))).TrySteadyCelsius(32, out double hotter));
        Assert.Equal(65, hotter);
        Assert.True(Of(RoadVehicle(2.5), parallel: 2, stated: ConductorTemperature.At(C(35))).TrySteadyCelsius(32, out double cooler));
        Near(40, cooler, 1e-12);
    }

    [Theory]
    [InlineData(0, 32)]
    [InlineData(5, 27)]
    [InlineData(40, 0)]
    public void LeftAmperes_IsWhatTheOthersLeave(double others, double left)
    {
        SegmentState s = Of(RoadVehicle(2.5));
        s.OtherAmperes = others;
        Assert.Equal(left, s.LeftAmperes);
        (double cooling, PreparedRating basis) = s.Cooling();
        Assert.Equal(left, cooling);
        Assert.Same(s.Site.Rating, basis);
    }

    private static SegmentState Of(Conductor conductor, int parallel = 1, ConductorTemperature? stated = null)
    {
        Site site = new Site(new Place { Ambient = C(30), LoadedConductors = 1 }, InsulationMaterial.PolyvinylChloride, null, 1, 12).RatedBy(AmpacityBasis.RoadVehicleTable);
        SegmentState s = new() { Conductor = conductor, Meters = 3, Parallel = parallel, Stated = stated, Site = site, Name = StretchName.Return };
        s.Rate();
        return s;
    }
}

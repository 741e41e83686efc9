using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A thicker wire never carries less: 60 mm², which has no row in the road-vehicle table, was rated 212 A by the heat balance alone, above the 202 A of 70 mm².</summary>
public class SizeBetweenRowsTests
{
    [Theory]
    [InlineData(20, 1)]
    [InlineData(30, 2)]
    [InlineData(50, 2)]
    [InlineData(50, 6)]
    [InlineData(60, 12)]
    public void RoadVehiclePreset_AThickerWire_CarriesMore(double celsius, int conductors)
    {
        double before = 0;
        foreach (Conductor wire in ConductorSeries.RoadVehicle.Conductors)
        {
            Place place = Place.Create(C(celsius)).WithLoadedConductors(conductors);
            Assert.True(DesignRules.RoadVehicle.Ampacity.TryRate(wire, InsulationMaterial.PolyvinylChloride, place, out ElectricCurrent current));
            Assert.True(current.Amperes > before, $"{wire}: {current.Amperes} A after {before} A");
            before = current.Amperes;
        }
    }

    [Fact]
    public void RoadVehicleTable_SixtySquareMillimetres_StandsOnTheLineBetweenItsNeighbours()
    {
        Assert.True(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(60), InsulationMaterial.PolyvinylChloride, Place.Create(C(30)).WithLoadedConductors(1), out ElectricCurrent current));

        // 198 A at 50 mm², 245 A at 70 mm²: 198 · (245/198)^(ln 1.2/ln 1.4) = 222.2 A.
        Assert.Equal(222.2, current.Amperes, 0.05);
        DeratedAmpacity? steps = AmpacityBasis.RoadVehicleTable.Derate(RoadVehicle(60), InsulationMaterial.PolyvinylChloride, Place.Create(C(30)).WithLoadedConductors(1));
        Assert.Equal("60 mm², between 50 mm² and 70 mm²", steps!.Rating.Size);
    }

    [Fact]
    public void RoadVehicleTable_BelowItsFirstRow_RatesNothing()
    {
        Assert.False(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(0.75), InsulationMaterial.PolyvinylChloride, Place.Create(C(30)), out _));
        Assert.False(RoadVehicleSingleCore.Ambient30.TryRating(MetricSize.FromSquareMillimeters(60), C(70), out _));
    }

    // One reading of the table, whichever way a design comes to it.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void RoadVehicleTable_AsBasisOrFromTable_IsReadAlike(int conductors)
    {
        Place place = Place.Create(C(40)).WithLoadedConductors(conductors);
        Assert.True(AmpacityBasis.RoadVehicleTable.TryRate(RoadVehicle(10), InsulationMaterial.PolyvinylChloride, place, out ElectricCurrent one));
        Assert.True(AmpacityBasis.FromTable(RoadVehicleSingleCore.Ambient30).TryRate(RoadVehicle(10), InsulationMaterial.PolyvinylChloride, place, out ElectricCurrent other));
        Assert.Equal(one.Amperes, other.Amperes, 1e-12);
    }
}

using System.Globalization;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Conductors;

public class SizeOrderTests
{
    [Fact]
    public void Operators_OfEverySystem_AgreeWithTheMetal()
    {
        (VehicleGaugeSize sae14, VehicleGaugeSize sae12) = (VehicleGaugeSize.FromNumber(14), VehicleGaugeSize.FromNumber(12));
        Assert.True(sae14 < sae12 && sae12 > sae14 && sae14 <= sae12 && sae12 >= sae14 && sae14 != sae12 && !(sae14 == sae12));
        Assert.True(sae14.Equals((object)VehicleGaugeSize.Parse("14 SAE", CultureInfo.InvariantCulture)) && sae14.GetHashCode() == VehicleGaugeSize.Parse("14 SAE").GetHashCode());

        (AircraftWireSize air20, AircraftWireSize air18) = (AircraftWireSize.FromNumber(20), AircraftWireSize.FromNumber(18));
        Assert.True(air20 < air18 && air18 > air20 && air20 <= air18 && air18 >= air20 && air20 != air18 && !(air20 == air18));
        Assert.True(air20.Equals((object)AircraftWireSize.FromNumber(20)) && air20.GetHashCode() == AircraftWireSize.FromNumber(20).GetHashCode());

        (MetricSize small, MetricSize large) = (MetricSize.FromSquareMillimeters(2.5), MetricSize.FromSquareMillimeters(4));
        Assert.True(small < large && large > small && small <= large && large >= small && small != large && !(small == large));
        Assert.True(small.Equals((object)MetricSize.Parse("2.5 mm²")) && small.GetHashCode() == MetricSize.Parse("2.5 mm²").GetHashCode());

        (KcmilSize k250, KcmilSize k300) = (KcmilSize.FromKcmil(250), KcmilSize.FromKcmil(300));
        Assert.True(k250 < k300 && k300 > k250 && k250 <= k300 && k300 >= k250 && k250 != k300 && !(k250 == k300));
        Assert.True(k250.Equals((object)KcmilSize.FromKcmil(250)));
        Assert.False(k250.Equals("250 kcmil"));
        Assert.NotEqual(AwgSize.FromNumber(14).GetHashCode(), AwgSize.FromNumber(12).GetHashCode());
    }

    [Fact]
    public void TryFormat_EverySystem_WritesTheDesignation()
    {
        Span<char> buffer = stackalloc char[16];
        Assert.True(KcmilSize.FromKcmil(250).TryFormat(buffer, out int written, "F1", null));
        Assert.Equal("250.0 kcmil", buffer[..written].ToString());
        Assert.True(MetricSize.FromSquareMillimeters(2.5).TryFormat(buffer, out written, "", CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal("2,5 mm²", buffer[..written].ToString());
        Assert.True(AircraftWireSize.FromNumber(20).TryFormat(buffer, out written, "N", null));
        Assert.Equal("20", buffer[..written].ToString());
        Assert.True(ConductorSize.FromVehicleGauge(VehicleGaugeSize.FromNumber(0)).TryFormat(buffer, out written, "", null));
        Assert.Equal("1/0 SAE", buffer[..written].ToString());
    }

    // By the definition R = ρL/A with round numbers: 2e-8 Ω·m, 10 m, 2 mm² make 0.1 Ω.
    [Fact]
    public void BarResistance_AllFour_AreInverse()
    {
        ElectricResistivity rho = ElectricResistivity.FromOhmMeters(2e-8);
        Area area = Area.FromSquareMillimeters(2);
        Length length = Length.FromMeters(10);
        ElectricResistance resistance = BarResistance.Resistance(rho, length, area);
        Assert.Equal(0.1, resistance.Ohms, 1e-15);
        Assert.Equal(2e-8, BarResistance.Resistivity(resistance, length, area).OhmMeters, 1e-20);
        Assert.Equal(2, BarResistance.AreaFor(rho, length, resistance).SquareMillimeters, 1e-12);
        Assert.Equal(10, BarResistance.LengthFor(rho, area, resistance).Meters, 1e-12);
        Assert.Equal(0.05, BarResistance.FieldStrength(rho, ElectricCurrent.FromAmperes(5), area).VoltsPerMeter, 1e-15);
        Assert.Throws<ArgumentOutOfRangeException>("resistivity", () => BarResistance.Resistance(ElectricResistivity.Zero, length, area));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => BarResistance.Resistance(rho, length, Area.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => BarResistance.Resistivity(resistance, Length.Zero, area));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => BarResistance.LengthFor(rho, area, ElectricResistance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => BarResistance.FieldStrength(rho, ElectricCurrent.FromAmperes(-1), area));
    }
}

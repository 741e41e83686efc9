using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>Found by the fuzzer: where UnitsNet could not convert a number, its own exception came out, for a parameter that the caller never wrote.</summary>
public class HugeQuantityTests
{
    [Fact]
    public void Quantity_TooLargeToConvert_IsRefusedByItsOwnName()
    {
        ElectricPotential volts = ElectricPotential.FromMegavolts(1e308);
        Assert.Throws<ArgumentOutOfRangeException>("voltage", () => Source.Ideal(volts));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => Load.ConstantCurrent(ElectricCurrent.FromMegaamperes(1e308)));
        Assert.Throws<ArgumentOutOfRangeException>("resistance", () => Load.Resistance(ElectricResistance.FromGigaohms(-1e308)));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => ReturnPath.Wire(Length.FromMiles(1e308)));
        Assert.Throws<ArgumentOutOfRangeException>("area", () => Conductor.OfArea(Area.FromSquareMiles(1e308), ConductorMaterial.Copper));
        Assert.Throws<ArgumentOutOfRangeException>("capacitance", () => Load.ConstantCurrent(ElectricCurrent.FromAmperes(1)).WithInputCapacitor(ElectricCapacitance.FromMegafarads(1e308)));
        Assert.Throws<ArgumentOutOfRangeException>("pressure", () => AirProperties.At(Temperature.FromKelvins(300), Pressure.FromMetersOfElevation(-1e200)));
    }

    [Fact]
    public void Power_DecimalTooLargeInWatts_IsRefusedByItsOwnName() =>
        // 1e20 GW is 1e29 W, above the largest decimal, 7.9e28.
        Assert.Throws<ArgumentOutOfRangeException>("power", () => Load.ConstantPower(Power.FromGigawatts(1e20)));

    [Fact]
    public void Power_LargeNumberOfASmallUnit_IsTheSameAsInWatts()
    {
        // 6e16 fW are 60 W; the decimal is long, the power is not.
        ElectricPotential volts = ElectricPotential.FromVolts(12);
        double amperes = Load.ConstantPower(Power.FromFemtowatts(6e16)).CurrentAt(volts, LoadState.Running).Amperes;
        Assert.Equal(5, amperes, 12);
    }

    [Fact]
    public void TryMethods_NumberTooLargeToConvert_TreatItAsAnyOtherAbsurdOne()
    {
        Assert.False(LeadAcidCharge.TryStateOfChargeAt(ElectricPotential.FromMegavolts(1e308), Temperature.FromDegreesCelsius(20), out _));
        Assert.Throws<ArgumentOutOfRangeException>("altitude", () => FaaAltitude.TryFactor(Length.FromMiles(1e308), out _));
        Assert.Throws<ArgumentOutOfRangeException>("loading", () => FaaBundle.TryFactor(3, Ratio.FromDecimalFractions(1e308), out _));
    }
}

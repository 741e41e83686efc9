using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class BundleHeatTests
{
    private static readonly Wire One = Solid(1.628, 0.6);

    [Fact]
    public void CurrentFor_OneWire_IsTheHeatBalance()
    {
        WireBundle alone = WireBundle.Create(One, 1, 1);
        Assert.Equal(1, alone.Fill);
        Assert.Equal(HeatBalance.CurrentFor(One, Air(30), C(70)).Amperes, BundleHeat.CurrentFor(alone, Air(30), C(70)).Amperes, 12);
        Assert.Equal(1, BundleHeat.Factor(alone, Air(30), C(70))!.Value, 12);
    }

    /// <summary>The interior written out again: evenly spread heat around the centre wire's own cell.</summary>
    [Fact]
    public void StateAt_SevenWires_DropsAsWrittenOut()
    {
        WireBundle bundle = WireBundle.Create(One, 7, 5, 0.7);
        HeatBalanceState? state = BundleHeat.StateAt(bundle, Air(30), A(15));
        Assert.NotNull(state);
        double ka = AirProperties.At(C(30), Pressure.FromAtmospheres(1)).ThermalConductivity.WattsPerMeterKelvin;
        double d = 1.628, outer = 2.828, metal = d / outer * (d / outer);
        double kw = (1 + metal) / (1 - metal) / 5.0, beta = (kw - ka) / (kw + ka);
        double k = ka * (1 + (0.7 * beta)) / (1 - (0.7 * beta));
        double hot = state.ConductorTemperature.DegreesCelsius, q = 15 * 15 * One.Conductor.OhmsPerMeterAt(hot);
        double drop = (5 * q * (1 - (1 / 7.0)) / (4 * Math.PI * k))
            + (q * ((5.0 * Math.Log(outer / d)) + (Math.Log(1 / Math.Sqrt(0.7)) / ka)) / (2 * Math.PI));
        Assert.Equal(5 * q, state.HeatPerLength.WattsPerMeter, 8);
        Assert.Equal(drop, hot - state.SurfaceTemperature.DegreesCelsius, 8);
        Assert.Equal(2.828 * Math.Sqrt(10), bundle.Diameter.Millimeters, 9);
        Assert.Equal(hot, BundleHeat.TemperatureAt(bundle, Air(30), A(15)).DegreesCelsius);
    }

    [Fact]
    public void CurrentFor_BareWires_IsFinite()
    {
        double current = BundleHeat.CurrentFor(WireBundle.Create(Solid(1, 0), 7, 7), Air(30), C(70)).Amperes;
        Assert.InRange(current, 0.1, HeatBalance.CurrentFor(Solid(1, 0), Air(30), C(70)).Amperes);
    }

    [Fact]
    public void TemperatureAt_TooMuchCurrent_SaysSo()
    {
        WireBundle bundle = WireBundle.Create(One, 40, 40);
        Assert.Null(BundleHeat.StateAt(bundle, Air(30), A(500)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => BundleHeat.TemperatureAt(bundle, Air(30), A(500)));
        Assert.Null(BundleHeat.Factor(bundle, Air(30), C(30)));
    }

    [Fact]
    public void Create_OutOfRange_NamesTheParameter()
    {
        Assert.Throws<ArgumentNullException>("wire", () => WireBundle.Create(null!, 2, 1));
        Assert.Throws<ArgumentOutOfRangeException>("wires", () => WireBundle.Create(One, 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>("wires", () => WireBundle.Create(One, 10_001, 1));
        Assert.Throws<ArgumentOutOfRangeException>("loaded", () => WireBundle.Create(One, 2, 3));
        Assert.Throws<ArgumentOutOfRangeException>("loaded", () => WireBundle.Create(One, 2, 0));
        Assert.Throws<ArgumentOutOfRangeException>("fill", () => WireBundle.Create(One, 2, 1, 0.499));
        Assert.Throws<ArgumentOutOfRangeException>("fill", () => WireBundle.Create(One, 2, 1, 0.91));
        Assert.Throws<ArgumentNullException>("bundle", () => BundleHeat.CurrentFor(null!, Air(), C(70)));
        Assert.Throws<ArgumentNullException>("surroundings", () => BundleHeat.CurrentFor(WireBundle.Create(One, 2, 1), null!, C(70)));
        Assert.Contains("Rayleigh", BundleHeat.Reference.Title, StringComparison.Ordinal);
    }
}

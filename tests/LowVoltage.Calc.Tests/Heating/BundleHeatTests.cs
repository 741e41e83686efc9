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

    /// <summary>The interior written out again, all seven loaded: film, middle and radiation between the wires.</summary>
    [Fact]
    public void StateAt_SevenWires_DropsAsWrittenOut()
    {
        WireBundle bundle = WireBundle.Create(One, 7, 7, 0.7);
        HeatBalanceState? state = BundleHeat.StateAt(bundle, Air(30, 0, 0.8), A(15));
        Assert.NotNull(state);
        double ka = AirProperties.At(C(30), Pressure.FromAtmospheres(1)).ThermalConductivity.WattsPerMeterKelvin;
        double d = 1.628, outer = 2.828, metal = d / outer * (d / outer);
        double kw = (1 + metal) / (1 - metal) / 5.0, beta = (kw - ka) / (kw + ka);
        double radiation = 4 * 5.670374419e-8 * Math.Pow(303.15, 3) * 2.828e-3 * 0.8 / 1.2;
        double k = (ka * (1 + (0.7 * beta)) / (1 - (0.7 * beta))) + radiation;
        double hot = state.ConductorTemperature.DegreesCelsius, q = 15 * 15 * One.Conductor.OhmsPerMeterAt(hot);
        double drop = q * ((5.0 * Math.Log(outer / d) / (2 * Math.PI) / ((Math.PI + 3) / (3 * Math.PI)))
            + ((Math.Log(1 / 0.7) - 0.3) / (4 * Math.PI * ka))
            + (7 * (1 - Math.Sqrt(0.1)) / (4 * Math.PI * k)));
        Assert.Equal(7 * q, state.HeatPerLength.WattsPerMeter, 8);
        Assert.Equal(drop, hot - state.SurfaceTemperature.DegreesCelsius, 8);
        Assert.Equal(2.828 * Math.Sqrt(10), bundle.Diameter.Millimeters, 9);
        Assert.Equal(hot, BundleHeat.TemperatureAt(bundle, Air(30, 0, 0.8), A(15)).DegreesCelsius);
    }

    /// <summary>Two and three wires under a given coefficient: everything in closed form.</summary>
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 3)]
    public void CurrentFor_TouchingWiresUnderACoefficient_IsTheClosedForm(int wires, double excess)
    {
        double around = (Math.PI + excess) * 2.828e-3, share = around / (wires * Math.PI * 2.828e-3);
        double outside = 1 / (20 * around), inside = 5.0 * Math.Log(2.828 / 1.628) / (2 * Math.PI) / share / wires;
        double hot = One.Conductor.OhmsPerMeterAt(70);
        double expected = Math.Sqrt(40 / (outside + inside) / (wires * hot));
        Assert.Equal(expected, BundleHeat.CurrentFor(WireBundle.Create(One, wires, wires), Given(30, 20), C(70)).Amperes, 9);
    }

    /// <summary>Without convection only the string radiates: ε′ by hand, 0.6/(0.6 + s·0.4), with s = (π + 2)/(2π).</summary>
    [Fact]
    public void StateAt_Pair_RadiatesFromTheStringWithDarkerGrooves()
    {
        WireBundle pair = WireBundle.Pair(Solid(5, 0));
        HeatBalanceState state = BundleHeat.StateAt(pair, Air(30, 0, 0.6), A(40))!;
        double share = (Math.PI + 2) / (2 * Math.PI), kelvin = state.SurfaceTemperature.DegreesCelsius + 273.15;
        double expected = (Math.PI + 2) * 5e-3 * (0.6 / (0.6 + (share * 0.4))) * 5.670374419e-8 * (Math.Pow(kelvin, 4) - Math.Pow(303.15, 4));
        Assert.Equal(expected, state.Radiation.WattsPerMeter, 9);
        Assert.Equal(0, BundleHeat.StateAt(pair, Air(30, 0, 0), A(40))!.Radiation.WattsPerMeter);
    }

    /// <summary>Two line sources in a cylinder held at one temperature: the drop at a conductor by the method of images, written out.</summary>
    [Fact]
    public void StateAt_TwinCable_DropsAsTwoLineSourcesAndTheirImages()
    {
        WireBundle twin = WireBundle.TwinCable(One, Length.FromMillimeters(8));
        HeatBalanceState state = BundleHeat.StateAt(twin, Air(30), A(15))!;
        double a = 1.414, ro = 4, image = ro * ro / a, q = 15 * 15 * One.Conductor.OhmsPerMeterAt(state.ConductorTemperature.DegreesCelsius);
        double own = Math.Log((image - a) * a / ro / 0.814), other = Math.Log((image + a) * a / ro / (2 * a));
        Assert.Equal(q * 5.0 / (2 * Math.PI) * (own + other), state.ConductorTemperature.DegreesCelsius - state.SurfaceTemperature.DegreesCelsius, 8);
        Assert.Equal(2 * q, state.HeatPerLength.WattsPerMeter, 8);
    }

    /// <summary>A sleeve drawn tight is the cylinder itself; in a wide one the heat crosses what two cylinders in air conduct and radiate, by their own temperatures.</summary>
    [Fact]
    public void StateAt_InSleeve_DropsThroughTheAirBetween()
    {
        WireBundle pair = WireBundle.Pair(One), wide = pair.InSleeve(2 * pair.Diameter);
        HeatBalanceState state = BundleHeat.StateAt(wide, Air(30), A(12))!;
        double share = (Math.PI + 2) / (2 * Math.PI), heat = state.HeatPerLength.WattsPerMeter, sleeve = state.SurfaceTemperature.DegreesCelsius;
        double wires = state.ConductorTemperature.DegreesCelsius - (heat * 5.0 * Math.Log(2.828 / 1.628) / (2 * Math.PI) / share / 2);
        double ka = AirProperties.At(C(0.5 * (wires + sleeve)), Pressure.FromAtmospheres(1)).ThermalConductivity.WattsPerMeterKelvin;
        double grooves = 0.9 / (0.9 + (share * 0.1)), exchange = 1 / ((1 / grooves) + (0.5 * ((1 / 0.9) - 1)));
        double radiation = (Math.PI + 2) * 2.828e-3 * 5.670374419e-8 * exchange * (Math.Pow(wires + 273.15, 4) - Math.Pow(sleeve + 273.15, 4));
        Assert.Equal(heat, (2 * Math.PI * ka * (wires - sleeve) / Math.Log(2)) + radiation, 6);
        Assert.Equal(2 * 144 * One.Conductor.OhmsPerMeterAt(state.ConductorTemperature.DegreesCelsius), heat, 6);
        WireBundle seven = WireBundle.Create(One, 7, 7);
        double free = BundleHeat.CurrentFor(seven, Air(30), C(70)).Amperes;
        Assert.Equal(free, BundleHeat.CurrentFor(seven.InSleeve(seven.Diameter), Air(30), C(70)).Amperes, 9);
        Assert.Equal(30, BundleHeat.TemperatureAt(wide, Air(30), A(0)).DegreesCelsius);
        Assert.Null(BundleHeat.StateAt(wide, Air(30), A(500)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => BundleHeat.TemperatureAt(wide, Air(30), A(500)));
    }

    [Fact]
    public void CurrentFor_IdleWires_AreHeldToTheLoadedOnesAlone()
    {
        WireBundle idle = WireBundle.Create(One, 20, 7), loaded = WireBundle.Create(One, 7, 7);
        Assert.Equal(BundleHeat.CurrentFor(loaded, Air(30), C(70)), BundleHeat.CurrentFor(idle, Air(30), C(70)));
        HeatBalanceState held = BundleHeat.StateAt(idle, Air(30), A(9))!;
        Assert.Equal(BundleHeat.StateAt(loaded, Air(30), A(9))!.SurfaceTemperature, held.SurfaceTemperature);
        Assert.Throws<ArgumentOutOfRangeException>("current", () => BundleHeat.TemperatureAt(idle, Air(30), A(500)));
        Assert.Null(BundleHeat.StateAt(idle, Air(30), A(500)));
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
        Assert.Contains("Hottel", BundleHeat.CrossedStringsReference.Title, StringComparison.Ordinal);
    }
}

using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>A load of several parts as elements of a network: 21 W lamp of 12 V, 24 W at any voltage, 6 Ω and 2 A, each counted once.</summary>
public class LoadElementsTests
{
    // 1.75 A at 12 V, I ∝ U^0.55.
    private static double Lamp(double volts) => 1.75 * Math.Pow(volts / 12, 0.55);

    [Theory]
    [InlineData(12)]
    [InlineData(6)]
    [InlineData(0.25)]
    [InlineData(-6)]
    public void Add_EveryPart_IsCountedOnce(double volts)
    {
        List<Element> elements = Of(Load.Together(Load.Lamp(W(21), V(12)), Load.Resistance(ElectricResistance.FromOhms(6)), Load.ConstantPower(W(24)), Load.ConstantCurrent(A(2))));
        Assert.Equal([ElementLaw.Line, ElementLaw.Steady, ElementLaw.Power, ElementLaw.Other], elements.Select(element => element.Law));
        Near(volts / 6, ElementCurrent.At(elements[0], volts, 0, 0.012, out double _), 1e-12);
        Near(2 * Math.Tanh(volts / 0.1), ElementCurrent.At(elements[1], volts, 0, 0.012, out double _), 1e-12);
        Near(Math.Sign(volts) * Lamp(Math.Abs(volts)), ElementCurrent.At(elements[3], volts, 0, 0.012, out double slope), 1e-12);

        // The slope of the lamp alone, the same either way: 0.55·I/U.
        Near(0.55 * Lamp(Math.Abs(volts)) / Math.Abs(volts), slope, 1e-9);
        if (volts > 0)
        {
            Near(24 / volts, ElementCurrent.At(elements[2], volts, 0, 0.012, out double _), 1e-12);
        }
    }

    /// <summary>Below a millivolt a lamp is the resistance that it is there; at a millivolt itself it is a lamp.</summary>
    [Fact]
    public void Add_LampBelowAMillivolt_IsAResistance()
    {
        Element lamp = Of(Load.Together(Load.Lamp(W(21), V(12)), Load.Resistance(ElectricResistance.FromOhms(6)), Load.ConstantPower(W(24))))[2];
        double siemens = Lamp(0.001) / 0.001;
        foreach (double volts in new[] { 0.0005, -0.0005 })
        {
            Near(siemens * volts, ElementCurrent.At(lamp, volts, 0, 0, out double slope), 1e-6);
            Near(siemens, slope, 1e-6);
        }

        Assert.Equal(0, ElementCurrent.At(lamp, 0, 0, 0, out double _));
        Near(Lamp(0.001), ElementCurrent.At(lamp, 0.001, 0, 0, out double own), 1e-6);
        Near(0.55 * siemens, own, 1e-6);
    }

    /// <summary>A power with a least voltage cuts out there in a network; a check that counts it on below says so.</summary>
    [Fact]
    public void Add_PowerOfALeastVoltage_CutsOutThere_OrStaysOn()
    {
        Load load = Load.ConstantPower(W(24), 1, V(9));
        Assert.Equal((24.0, 9.0), (Of(load)[0].A, Of(load)[0].B));
        List<Element> stays = [];
        LoadElements.Add(stays, 1, 0, load, LoadState.Running, staysOn: true);
        Assert.Equal((24.0, 0.0), (stays[0].A, stays[0].B));
        Assert.Equal(0, Of(Load.ConstantPower(W(24)))[0].B);
    }

    private static List<Element> Of(Load load)
    {
        List<Element> elements = [];
        LoadElements.Add(elements, 1, 0, load, LoadState.Running);
        return elements;
    }
}

using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>Each law of an element by its own formula: current, slope, and the straight line that stands for it in the first step.</summary>
public class ElementCurrentTests
{
    // A panel of 5 A and 20 V open: 2 V·ln(1 + 5/I₀) = 20 V.
    private static readonly double Saturation = 5 / (Math.Exp(10) - 1);

    [Fact]
    public void Line_IsAVoltageBehindAResistance()
    {
        Element battery = Element.Battery(1, 0, 12, 0.5);
        Is(battery, 11, -2, 2);
        Is(battery, 13, 2, 2);
        Starts(battery, -24, 2);
        Assert.Equal(12, ElementCurrent.OpenVolts(battery));
    }

    [Fact]
    public void Cubic_DropsBySelfHeating()
    {
        // 5 A: 0.02·5 + 1e-5·125 V, dV/dI = 0.02 + 3e-5·25.
        Element wire = Element.Wire(1, 0, 0.02, 1e-5);
        Is(wire, 0.10125, 5, 1 / 0.02075);
        Starts(wire, 0, 50);
    }

    [Fact]
    public void Runaway_DropsByMoreThanTheCube()
    {
        // V = R·I/(1 − k·I²): 10 A through 20 mΩ with k = 0.001/A², dV/dI = R·(1 + k·I²)/(1 − k·I²)².
        Element wire = Element.RunawayWire(1, 0, 0.02, 0.001);
        Is(wire, 0.2 / 0.9, 10, 0.81 / 0.022);
        Starts(wire, 0, 50);
    }

    [Fact]
    public void Supply_HoldsItsVoltageThenItsLimit_AndNeverTakes()
    {
        Element supply = Element.Supply(1, 0, 14.4, 20, 0.1);
        Is(supply, 13.4, -10, 10);
        Is(supply, 10, -20, 0);
        Is(supply, 15, 0, 0);
        Starts(supply, -144, 10);
        Assert.Equal((0.1, 14.4), (ElementCurrent.SupplyOhms(supply), ElementCurrent.OpenVolts(supply)));
    }

    [Fact]
    public void Supply_WithoutResistance_IsCountedBehindALittle_WhichItsHeldCurrentMakesUp()
    {
        // A ten-thousandth of 14.4 V at 20 A: 72 µΩ.
        Element supply = Element.Supply(1, 0, 14.4, 20);
        Assert.Equal(7.2e-5, ElementCurrent.SupplyOhms(supply), 1e-18);
        Is(supply, 14.4, -7, 1 / 7.2e-5, held: 7);
        Is(supply, 14.4 - 7.2e-5, -8, 1 / 7.2e-5, held: 7);
        Starts(supply, -200_000, 1 / 7.2e-5);
    }

    [Fact]
    public void Solar_GivesItsPhotocurrentLessTheDiodes()
    {
        Element panel = Element.Solar(1, 0, 5, Saturation, 2);
        Assert.Equal(20, ElementCurrent.OpenVolts(panel), 1e-12);
        Is(panel, 0, -5, Saturation / 2);
        Is(panel, 18, -(5 + Saturation - (Saturation * Math.Exp(9))), Saturation * Math.Exp(9) / 2);
        Is(panel, 25, 0, 0);

        // The chord from short to open.
        Starts(panel, -5, 0.25);
    }

    [Fact]
    public void CurrentsAndPowers_DrawWhatTheyDo()
    {
        Is(Element.Drawn(1, 0, 3), -4, 3, 0);
        Starts(Element.Drawn(1, 0, 3), 3, 0);
        Element steady = Element.Steady(1, 0, 3, 0.1);
        double bent = Math.Tanh(1);
        Is(steady, 0.1, 3 * bent, 30 * (1 - (bent * bent)));
        Starts(steady, 0, 0.25);
        Element power = Element.Power(1, 0, 36, 9);
        Is(power, 12, 3, -0.25);
        Is(power, 9, 4, -4.0 / 9);

        // Below its cut-out the resistance that it is there.
        Is(power, 6, 36.0 / 81 * 6, 36.0 / 81);
        Starts(power, 0, 0.25);

        // Without one, below the floor.
        Is(Element.Power(1, 0, 36, 0), 0.5, 72, -144, floor: 0.5);
        Is(Element.Power(1, 0, 36, 0), 0.25, 36, 144, floor: 0.5);
    }

    [Fact]
    public void Lamp_DrawsByThePowerOfTheVoltage_EitherWay()
    {
        Element lamp = Element.Lamp(1, 0, 1.75, 12);
        double half = 1.75 * Math.Pow(0.5, 0.55);
        Is(lamp, 12, 1.75, 0.55 * 1.75 / 12);
        Is(lamp, 6, half, 0.55 * half / 6);
        Is(lamp, -6, -half, 0.55 * half / 6);

        // Below a thousandth of its voltage the resistance that it is there: at a thousandth 1.75 A·0.001^0.55.
        double least = 1.75 * Math.Pow(0.001, 0.55) / 0.012;
        Is(lamp, 0.006, 0.006 * least, least);
        Is(lamp, -0.006, -0.006 * least, least);
        Is(lamp, 0.012, 0.012 * least, 0.55 * least);
        Starts(lamp, 0, 1.75 / 12);
        Assert.Equal(0, ElementCurrent.OpenVolts(lamp));
    }

    [Fact]
    public void OtherLaw_IsAsked_AndStartsAsItSays()
    {
        Element other = Element.Of(1, 0, new Square(), 1, 2);
        Is(other, 3, 9, 6);
        Starts(other, 1, 2);
    }

    private static void Is(in Element element, double volts, double amperes, double siemens, double held = 0, double floor = 0)
    {
        Close(amperes, ElementCurrent.At(element, volts, held, floor, out double slope));
        Close(siemens, slope);
    }

    // With 12 V as the highest voltage about.
    private static void Starts(in Element element, double amperes, double siemens)
    {
        (double first, double slope) = ElementCurrent.Start(element, 12);
        Close(amperes, first);
        Close(siemens, slope);
    }

    private static void Close(double expected, double actual) => Assert.Equal(expected, actual, 1e-9 * Math.Max(1, Math.Abs(expected)));

    private sealed class Square : ICurrentLaw
    {
        public double CurrentAt(double volts, out double slope)
        {
            slope = 2 * volts;
            return volts * volts;
        }
    }
}

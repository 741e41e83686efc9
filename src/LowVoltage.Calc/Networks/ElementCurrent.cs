using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Networks;

/// <summary>Current and slope of an element at a voltage across it, on doubles.</summary>
internal static class ElementCurrent
{
    // Below this share of its rated voltage a lamp is counted as a resistance: the slope of U^0.55 has no end at zero.
    private const double LeastLamp = 1e-3;

    /// <param name="element">The element.</param>
    /// <param name="volts">Voltage across it.</param>
    /// <param name="held">What a supply without resistance gave in the step before, A.</param>
    /// <param name="floor">Voltage below which a power without a cut-out is counted as a resistance.</param>
    /// <param name="slope">dI/dU, A/V.</param>
    internal static double At(in Element element, double volts, double held, double floor, out double slope)
    {
        switch (element.Law)
        {
            case ElementLaw.Line:
                slope = element.B;
                return (volts - element.A) * element.B;
            case ElementLaw.Cubic:
                return CubicLine.At(volts, element.A, element.B, out slope);
            case ElementLaw.Runaway:
                return Runaway(element, volts, out slope);
            case ElementLaw.Supply:
                return Supply(element, volts, held, out slope);
            case ElementLaw.Solar:
                return Solar(element, volts, out slope);
            case ElementLaw.Drawn:
                slope = 0;
                return element.A;
            case ElementLaw.Steady:
                double bent = Math.Tanh(volts / element.B);
                slope = element.A / element.B * (1 - (bent * bent));
                return element.A * bent;
            case ElementLaw.Power:
                return Power(element, volts, floor, out slope);
            case ElementLaw.Lamp:
                return Lamp(element, volts, out slope);
            default:
                return element.Other!.CurrentAt(volts, out slope);
        }
    }

    /// <summary>The straight line that stands for an element in the first step: amperes + siemens·U.</summary>
    internal static (double Amperes, double Siemens) Start(in Element element, double referenceVolts)
    {
        switch (element.Law)
        {
            case ElementLaw.Line:
                return (-element.A * element.B, element.B);
            case ElementLaw.Cubic:
            case ElementLaw.Runaway:
                return (0, 1 / element.A);
            case ElementLaw.Supply:
                double ohms = SupplyOhms(element);
                return (-element.A / ohms, 1 / ohms);
            case ElementLaw.Solar:
                return (-element.A, element.A / OpenVolts(element));
            case ElementLaw.Drawn:
                return (element.A, 0);
            case ElementLaw.Steady:
                return (0, element.A / referenceVolts);
            case ElementLaw.Power:
                return (0, element.A / (referenceVolts * referenceVolts));
            case ElementLaw.Lamp:
                return (0, element.A / element.B);
            default:
                return (element.A, element.B);
        }
    }

    /// <summary>Voltage of a source without load; 0 for what is none.</summary>
    internal static double OpenVolts(in Element element) => element.Law switch
    {
        ElementLaw.Line or ElementLaw.Supply => element.A,
        ElementLaw.Solar => element.C * Math.Log(1 + (element.A / element.B)),
        _ => 0,
    };

    /// <summary>Resistance behind which a supply is counted. Without one of its own it gets a little, whose drop is added to its voltage step by step.</summary>
    internal static double SupplyOhms(in Element element) => element.C > 0 ? element.C : 1e-4 * element.A / element.B;

    private static double Supply(in Element element, double volts, double held, out double slope)
    {
        double ohms = SupplyOhms(element), given = held + ((element.A - volts) / ohms);
        slope = given > 0 && given < element.B ? 1 / ohms : 0;
        return -Math.Min(Math.Max(given, 0), element.B);
    }

    private static double Runaway(in Element element, double volts, out double slope)
    {
        double root = Math.Sqrt((element.A * element.A) + (4 * element.B * volts * volts)), sum = element.A + root;
        slope = 2 * element.A / (sum * root);
        return 2 * volts / sum;
    }

    private static double Solar(in Element element, double volts, out double slope)
    {
        double lost = element.B * Math.Exp(Math.Min(volts / element.C, 700));
        double given = Math.Max(0, element.A + element.B - lost);
        slope = given > 0 ? lost / element.C : 0;
        return 0 - given;
    }

    private static double Power(in Element element, double volts, double floor, out double slope)
    {
        double least = element.B > 0 ? element.B : floor;
        if (volts >= least)
        {
            double amperes = element.A / volts;
            slope = -amperes / volts;
            return amperes;
        }

        slope = element.A / (least * least);
        return slope * volts;
    }

    private static double Lamp(in Element element, double volts, out double slope)
    {
        double share = Math.Abs(volts) / element.B;
        if (share < LeastLamp)
        {
            slope = element.A / element.B * Math.Pow(LeastLamp, LampLoad.Exponent - 1);
            return slope * volts;
        }

        double amperes = element.A * Math.Pow(share, LampLoad.Exponent);
        slope = LampLoad.Exponent * amperes / Math.Abs(volts);
        return Math.Sign(volts) * amperes;
    }
}

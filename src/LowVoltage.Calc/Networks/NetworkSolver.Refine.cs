namespace LowVoltage.Calc.Networks;

/// <content>The last digits of the currents.</content>
internal sealed partial class NetworkSolver
{
    /// <summary>What the double that stands for each voltage leaves of it.</summary>
    private readonly double[] rest;

    // A current through milliohms is the difference of two voltages that agree in most digits: rounded to a double each, they leave some 1e-12 of it. So the voltages are
    // carried on in two doubles, and the balance that is left is solved for once more with the matrix at hand (iterative refinement).
    private void Refine()
    {
        Array.Clear(rest, 0, rest.Length);
        _ = Direction();
        for (int k = 0; k < x.Length; k++)
        {
            double sum = x[k] + step[k];
            rest[k] = step[k] - (sum - x[k]);
            x[k] = sum;
        }

        Array.Clear(f, 0, f.Length);
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsOut(k))
            {
                continue;
            }

            double amperes = FineCurrent(k);
            f[positive[k]] += amperes;
            f[negative[k]] -= amperes;
            Amperes[k] = amperes;
        }

        f[f.Length - 1] = 0;
    }

    private double FineCurrent(int k)
    {
        double a = x[positive[k]], b = x[negative[k]], between = a - b, volts = between + across[k];
        double low = Lost(a, -b, between) + Lost(between, across[k], volts) + (rest[positive[k]] - rest[negative[k]]);
        ref readonly Element element = ref Elements[k];
        if (element.Law == ElementLaw.Line)
        {
            slope[k] = element.B;
            return (volts - element.A + low) * element.B;
        }

        double amperes = ElementCurrent.At(element, volts, held[k], floor, out slope[k]);
        return amperes + (slope[k] * low);
    }

    // What rounding took from a sum of two (Knuth).
    private static double Lost(double a, double b, double sum)
    {
        double part = sum - a;
        return (a - (sum - part)) + (b - part);
    }
}

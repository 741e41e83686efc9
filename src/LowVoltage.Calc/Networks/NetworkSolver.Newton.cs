using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Networks;

/// <content>The iteration.</content>
internal sealed partial class NetworkSolver
{
    private const int MostSteps = 200;
    private const int MostHalvings = 40;

    /// <summary>Solves from the voltages at hand.</summary>
    /// <param name="near">Whether the start is next to the solution, so that a pivot below zero on the way means that there is none near.</param>
    /// <returns>False where the method does not end, or ends at a point that does not stand.</returns>
    private bool Newton(bool near = false)
    {
        double before = double.PositiveInfinity;
        Evaluate();
        for (int n = 0; n < MostSteps; n++)
        {
            Steps++;
            double most = Fill(clipped: false);
            bool clipped = factor.Factor() >= 0;
            if (clipped && near)
            {
                return false;
            }

            if (clipped)
            {
                most = Fill(clipped: true);
                _ = factor.Factor();
            }

            double length = Direction();
            bool whole = Walk(length);
            double gap = HoldSupplies();
            scale = Math.Max(scale, Largest(x));
            Balance = Largest(f);
            double left = whole && before < double.PositiveInfinity && length < before ? length * (length / before) * (length / before) : length;
            if (whole && left <= 1e-14 * scale && length <= 1e-6 * scale && gap <= 1e-13 * scale
                && (Balance <= Math.Max(1e-13 * Largest(Amperes), 16 * Rounding * most * scale) || length <= 1e-14 * scale))
            {
                return !clipped;
            }

            before = length;
        }

        return false;
    }

    // Δx = −J⁻¹·F; returns its largest part.
    private double Direction()
    {
        for (int k = 0; k < step.Length - 1; k++)
        {
            step[k] = -f[k];
        }

        step[step.Length - 1] = 0;
        factor.Solve(step);
        return Largest(step);
    }

    // Goes along the step; back by a half or a chord as long as the balance pushes back. Whether the whole step was taken.
    private bool Walk(double length)
    {
        double push = -Along(), at = 1;
        Move(1);
        Evaluate();
        if (length <= 1e-9 * scale)
        {
            return true;
        }

        double back = Along();
        for (int n = 0; n < MostHalvings && !(back <= 0.1 * push); n++)
        {
            double shorter = at * Math.Max(0.1, Math.Min(0.5, push / (push + back)));
            Move(shorter - at);
            at = shorter;
            Evaluate();
            back = Along();
        }

        return at == 1;
    }

    // F·Δx: the slope of the co-content along the step.
    private double Along()
    {
        double sum = 0;
        for (int k = 0; k < f.Length; k++)
        {
            sum += f[k] * step[k];
        }

        return sum;
    }

    private void Move(double share)
    {
        for (int k = 0; k < x.Length; k++)
        {
            x[k] += share * step[k];
        }
    }

    // A supply without resistance: what it gave is kept, so that in the end it gives that at its own voltage, its little resistance without part in it.
    // Returns by how much such a voltage is still missed.
    private double HoldSupplies()
    {
        double gap = 0;
        for (int k = 0; k < Elements.Length; k++)
        {
            ref readonly Element element = ref Elements[k];
            if (element.Law != ElementLaw.Supply || element.C > 0 || IsOut(k))
            {
                continue;
            }

            held[k] = -Amperes[k];
            double amperes = ElementCurrent.At(element, Across(k), held[k], floor, out slope[k]);
            if (held[k] > 0 && held[k] < element.B)
            {
                // The voltage has not followed yet: what it gives is below its limit, though for this one moment the sum may not be.
                slope[k] = 1 / ElementCurrent.SupplyOhms(element);
                amperes = -(held[k] + ((element.A - Across(k)) * slope[k]));
            }

            f[positive[k]] += amperes - Amperes[k];
            f[negative[k]] -= amperes - Amperes[k];
            Amperes[k] = amperes;
            f[f.Length - 1] = 0;
            gap = held[k] > 0 && held[k] < element.B ? Math.Max(gap, Math.Abs(element.A - Across(k))) : gap;
        }

        return gap;
    }

    internal static double Largest(double[] values)
    {
        double most = 0;
        foreach (double value in values)
        {
            most = Math.Max(most, Math.Abs(value));
        }

        return most;
    }
}

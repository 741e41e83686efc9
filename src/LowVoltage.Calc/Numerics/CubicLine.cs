namespace LowVoltage.Calc.Numerics;

/// <summary>The straight line bent by a cube, V = A·I + B·I³, read backwards: the current at a voltage, and its slope.</summary>
/// <remarks>
/// <code>I = (2/s)·sinh(⅓·asinh(3·s·V/(2·A))), s = √(3·B/A)    dI/dV = 1/(A + 3·B·I²)</code>
/// <para>That closed form is not what runs: with y = A·I/V and c = B·V²/A³ it is y + c·y³ = 1, which Halley's rule solves to the last bits in one to three
/// steps, faster and also where B is nearly nothing. A positive, B zero or greater.</para>
/// </remarks>
internal static class CubicLine
{
    /// <summary>The current at a voltage of either sign.</summary>
    internal static double At(double volts, double a, double b, out double slope)
    {
        double line = volts / a;
        if (b == 0)
        {
            slope = 1 / a;
            return line;
        }

        double bend = b * line * line / a;
        double y = Root(bend);
        slope = 1 / (a * (1 + (3 * bend * y * y)));
        return line * y;
    }

    /// <summary>The root of y + c·y³ = 1, c zero or greater.</summary>
    private static double Root(double c)
    {
        // Newton's first step from y = 1, or the cube alone where it rules; each Halley step cubes what is missing.
        double y = c < 2 ? (1 + (2 * c)) / (1 + (3 * c)) : Math.Pow(c, -1.0 / 3);
        for (int i = 0; i < 8; i++)
        {
            double bend = c * y * y, h = y + (bend * y) - 1, slope = 1 + (3 * bend);
            double step = h * slope / ((slope * slope) - (3 * h * c * y));
            y -= step;
            if (Math.Abs(step) <= 1e-6 * y)
            {
                break;
            }
        }

        return y;
    }
}

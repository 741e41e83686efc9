namespace LowVoltage.Calc.Tests.Protection;

/// <summary>Doubles that stand exactly at a limit which is written as a product or a quotient.</summary>
internal static class Edges
{
    /// <summary>The x with x·factor equal to a value to the last bit.</summary>
    public static double Times(double value, double factor) => Near(value / factor, x => x * factor == value);

    /// <summary>The x with x/divisor equal to a value to the last bit.</summary>
    public static double Over(double value, double divisor) => Near(value * divisor, x => x / divisor == value);

    private static double Near(double guess, Func<double, bool> exact)
    {
        double below = guess, above = guess;
        for (int i = 0; i < 50; i++)
        {
            if (exact(below) || exact(above))
            {
                return exact(below) ? below : above;
            }

            (below, above) = (Math.BitDecrement(below), Math.BitIncrement(above));
        }

        throw new InvalidOperationException("No double stands exactly there; take another value.");
    }
}

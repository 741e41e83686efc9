namespace LowVoltage.Calc.Teaching;

/// <summary>Computed numbers as the decimals that a statement prints.</summary>
internal static class Rounding
{
    /// <summary>To so many significant figures, without zeros at the end of the fraction.</summary>
    internal static decimal Figures(double value, int figures)
    {
        decimal size = Math.Abs((decimal)value), unit = 1;
        if (size == 0)
        {
            return 0;
        }

        int decimals = figures - 1;
        while (size >= 10 * unit)
        {
            unit *= 10;
            decimals--;
        }

        while (size < unit)
        {
            unit /= 10;
            decimals++;
        }

        decimal rounded = decimals >= 0
            ? Math.Round((decimal)value, Math.Min(28, decimals), MidpointRounding.AwayFromZero)
            : Math.Round((decimal)value / Power(-decimals), 0, MidpointRounding.AwayFromZero) * Power(-decimals);
        return Trimmed(rounded);
    }

    /// <summary>Whether somebody who rounds to three figures on the way could choose another standard value.</summary>
    internal static bool IsTooNear(double value, double standard) => Math.Abs((value / standard) - 1) < 0.005;

    internal static decimal Trimmed(decimal value) => value / 1.000000000000000000000000000000m;

    private static decimal Power(int exponent)
    {
        decimal power = 1;
        for (int i = 0; i < exponent; i++)
        {
            power *= 10;
        }

        return power;
    }
}

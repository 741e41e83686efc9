using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>The numbers that count as one answer: from a least to a most, both included, as decimals that every reader takes alike.</summary>
internal readonly record struct QtiRange(decimal Least, decimal Most)
{
    private const int Digits = 12;

    internal string LeastText => Least.ToString(CultureInfo.InvariantCulture);

    internal string MostText => Most.ToString(CultureInfo.InvariantCulture);

    /// <summary>Around a value: so far below and above, rounded outwards to twelve digits.</summary>
    internal static QtiRange Around(double value, double tolerance) => new(Outwards(value - tolerance, -1), Outwards(value + tolerance, 1));

    /// <summary>The same numbers times a power of ten, or with the other sign.</summary>
    internal QtiRange Times(decimal factor) => factor > 0 ? new(Trim(Least * factor), Trim(Most * factor)) : new(Trim(Most * factor), Trim(Least * factor));

    private static decimal Outwards(double value, int direction)
    {
        decimal exact = (decimal)value, step = 1, size = Math.Abs(exact);
        if (size == 0)
        {
            return 0;
        }

        for (decimal most = Power(Digits); size / step >= most; step *= 10)
        {
        }

        for (decimal least = Power(Digits - 1); size / step < least && step > 1e-26m; step /= 10)
        {
        }

        decimal steps = exact / step;
        return Trim((direction < 0 ? Math.Floor(steps) : Math.Ceiling(steps)) * step);
    }

    private static decimal Power(int exponent)
    {
        decimal power = 1;
        for (int i = 0; i < exponent; i++)
        {
            power *= 10;
        }

        return power;
    }

    private static decimal Trim(decimal value) => value / 1.000000000000000000000000000000m;
}

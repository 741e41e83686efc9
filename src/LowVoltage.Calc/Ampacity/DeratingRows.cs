using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The rows of a derating that the caller states: what they are for rises, the first factor is 1, and no factor rises.</summary>
internal static class DeratingRows
{
    internal static string Named(string name) => string.IsNullOrWhiteSpace(name ?? throw new ArgumentNullException(nameof(name)))
        ? throw new ArgumentException("A name is needed; it was empty.", nameof(name))
        : name;

    /// <summary>What the rows are for, checked one by one.</summary>
    internal static double[] Rising(double[] keys, double least, double most, Func<double, string> text, string name)
    {
        for (int i = 0; i < keys.Length; i++)
        {
            if (!(keys[i] >= least && keys[i] <= most))
            {
                throw new ArgumentOutOfRangeException(name, keys[i], $"{name}[{Accept.Text(i)}] must be from {Accept.Text(least)} to {text(most)}; it was {text(keys[i])}.");
            }

            if (i > 0 && keys[i] <= keys[i - 1])
            {
                throw new ArgumentException($"{name}[{Accept.Text(i)}] is {text(keys[i])}, which is not above the {text(keys[i - 1])} before it.", name);
            }
        }

        return keys.Length > 0 ? keys : throw new ArgumentException("At least one row is needed; there was none.", name);
    }

    /// <summary>Their factors: from 1, never rising.</summary>
    internal static double[] Falling(IReadOnlyList<double> factors, double[] keys, Func<double, string> text)
    {
        _ = factors ?? throw new ArgumentNullException(nameof(factors));
        if (factors.Count != keys.Length)
        {
            throw new ArgumentException($"factors must be one for each row; there are {Accept.Text(factors.Count)} for {Accept.Text(keys.Length)} rows.", nameof(factors));
        }

        double[] own = new double[keys.Length];
        for (int i = 0; i < own.Length; i++)
        {
            string row = $"factors[{Accept.Text(i)}], for {text(keys[i])},";
            own[i] = factors[i] >= Accept.Least && factors[i] <= 1
                ? factors[i]
                : throw new ArgumentOutOfRangeException(nameof(factors), factors[i], $"{row} must be from {Accept.Text(Accept.Least)} to 1; it was {Accept.Text(factors[i])}.");
            if (i == 0 && own[0] < 1)
            {
                throw new ArgumentException($"{row} must be 1, because the first row stands for the table's own currents; it was {Accept.Text(own[0])}.", nameof(factors));
            }

            if (i > 0 && own[i] > own[i - 1])
            {
                throw new ArgumentException($"{row} is {Accept.Text(own[i])}, which is above the {Accept.Text(own[i - 1])} of the row before it; no factor rises.", nameof(factors));
            }
        }

        return own;
    }
}

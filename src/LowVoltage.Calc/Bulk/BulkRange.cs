using System.Numerics;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Bulk;

/// <summary>What every value of an input must be: from a least to a most, in a unit. The same ranges as those of the typed calls.</summary>
internal readonly struct BulkRange(double least, double most, string unit, bool belowMost = false)
{
    internal static BulkRange Amperes => Positive(Accept.MostAmperes, "A");

    internal static BulkRange AmperesOrZero => OrZero(Accept.MostAmperes, "A");

    internal static BulkRange Volts => Positive(Accept.MostVolts, "V");

    internal static BulkRange Ohms => Positive(Accept.MostOhms, "Ω");

    internal static BulkRange OhmsOrZero => OrZero(Accept.MostOhms, "Ω");

    internal static BulkRange OhmsPerMeterOrZero => OrZero(Accept.MostOhms, "Ω/m");

    internal static BulkRange Watts => Positive(Accept.MostWatts, "W");

    internal static BulkRange Meters => Positive(Accept.MostMeters, "m");

    internal static BulkRange MetersOrZero => OrZero(Accept.MostMeters, "m");

    internal static BulkRange SquareMillimeters => Positive(Accept.MostSquareMillimeters, "mm²");

    internal double Least => least;

    internal double Most => most;

    internal static BulkRange Seconds(double most) => Positive(most, "s");

    internal static BulkRange Celsius(double least, double most) => new(least, most, "°C");

    internal static BulkRange CelsiusBelow(double least, double limit) => new(least, limit, "°C", belowMost: true);

    internal bool Holds(double value) => value >= least && (belowMost ? most - value >= Accept.Least : value <= most);

    /// <summary>Whether every lane is surely inside; one at the most, or next to one that is excluded, is asked by itself.</summary>
    internal bool HoldsAll(Vector<double> values) =>
        Vector.GreaterThanOrEqualAll(values, new Vector<double>(least)) && Vector.LessThanAll(values, new Vector<double>(belowMost ? most - (2 * Accept.Least) : most));

    /// <summary>Throws for a value of an input that is outside; the message names parameter, index, value, unit and range.</summary>
    internal ArgumentOutOfRangeException Refusal(string name, int index, double value) => new(
        name, value, $"{name}[{index}] must be {Accepted(value)}; it was {Accept.Text(value)} {unit}.");

    private static BulkRange Positive(double most, string unit) => new(Accept.Least, most, unit);

    private static BulkRange OrZero(double most, string unit) => new(0, most, unit);

    private string Accepted(double value)
    {
        string upTo = $"{Accept.Text(most)} {unit}";
        return least == 0 ? $"zero or greater and at most {upTo}"
            : belowMost ? $"from {Accept.Text(least)} {unit} to below {upTo}{(value < most && value >= least ? $" by at least {Accept.Text(Accept.Least)} {unit}" : "")}"
            : least != Accept.Least ? $"from {Accept.Text(least)} {unit} to {upTo}"
            : value > 0 && value < least ? $"at least {Accept.Text(least)} {unit}"
            : $"greater than zero and at most {upTo}";
    }
}

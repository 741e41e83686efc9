using System.Globalization;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <summary>The words of an answer: written only when asked for.</summary>
internal static class CheckWords
{
    private const int MostDigits = 15;
    private const double FarOffPercent = 1000;

    // A margin of a temperature in °C is in kelvins.
    private const string Kelvins = "°C";

    internal static string Line(in CheckResult result, bool named)
    {
        if (result.Kind is null)
        {
            return "not evaluated";
        }

        string outcome = result.Outcome switch { CheckOutcome.Pass => "pass", CheckOutcome.Fail => "fail", _ => "undetermined" };
        string where = named ? $", {result.Where}" : "";
        if (!result.HasNumbers)
        {
            return $"{result.Name}{where}: {outcome}, {result.Note}";
        }

        (string value, string limit) = Numbers(result);
        string unit = result.Unit.Length == 0 ? "" : " " + result.Unit;
        return $"{result.Name} {value}{unit}, {(result.LimitIsLeast ? "at least" : "at most")} {limit}{unit}{where}: {outcome}";
    }

    /// <summary>The margin in words: <c>Margin 9.1 %</c>; kelvins for a temperature, plain words beyond ten times the limit.</summary>
    internal static string Margin(in CheckResult result) =>
        IsFarOff(result) ? result.LimitIsLeast ? "More than ten times what is needed" : "More than ten times what is allowed"
        : (result.Outcome == CheckOutcome.Pass ? "Margin " : "Beyond the limit by ") + Room(result);

    /// <summary>The margin for a table: <c>9.1 %</c>, with a minus beyond the limit.</summary>
    internal static string ShortMargin(in CheckResult result) =>
        IsFarOff(result) ? result.Outcome == CheckOutcome.Fail ? "beyond 10 times" : "over 10 times"
        : (result.Outcome == CheckOutcome.Fail ? "−" : "") + Room(result);

    private static bool IsFarOff(in CheckResult result) => result.Unit != Kelvins && 100 * Math.Abs(result.Margin!.Value) > FarOffPercent;

    private static string Room(in CheckResult result) => result.Unit == Kelvins
        ? Three(Math.Abs(result.Limit!.Value - result.Value!.Value)) + " K"
        : Three(100 * Math.Abs(result.Margin!.Value)) + " %";

    /// <summary>Value and limit: four digits, or as many as it takes to show that a failure is beyond its limit.</summary>
    internal static (string Value, string Limit) Numbers(in CheckResult result)
    {
        double value = result.Value!.Value, limit = result.Limit!.Value;
        string one = Accept.Short(value), other = Accept.Short(limit);
        for (int digits = 5; one == other && result.Outcome == CheckOutcome.Fail && !value.Equals(limit) && digits <= MostDigits; digits++)
        {
            string format = "G" + digits.ToString(CultureInfo.InvariantCulture);
            one = value.ToString(format, CultureInfo.InvariantCulture);
            other = limit.ToString(format, CultureInfo.InvariantCulture);
        }

        return (one, other);
    }

    private static string Three(double value) => value is > 0 and < 0.01 ? "under 0.01" : value >= 999.5
        ? value.ToString("0", CultureInfo.InvariantCulture)
        : value.ToString("G3", CultureInfo.InvariantCulture);
}

using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;

namespace CircuitPage;

/// <summary>One check as words: what the circuit has, what is allowed, by how much, where. The figures are those of the library's calculation sheet.</summary>
internal sealed class CheckRow
{
    private const int MostDigits = 15;
    private const double FarOffPercent = 1000;
    private const string Celsius = "°C";

    public CheckRow(in CheckResult check, PageUnits units)
    {
        Outcome = check.Outcome;
        Name = Sentences.Capital(check.Name);
        Where = check.Level is { } level ? $"{check.Where}, {Spoken(level)} supply voltage" : check.Where;
        if (check is { Value: { } value, Limit: { } limit })
        {
            (Value, Limit) = Figures(check, value, limit, units);
            Margin = MarginOf(check, value, limit, units);
        }
        else
        {
            Value = check.Value is { } alone ? NumberWords.Short(alone) + (check.Unit.Length > 0 ? NumberWords.Thin + check.Unit : "") : "none";
            Note = Sentences.Capital(check.Note);
        }
    }

    public CheckOutcome Outcome { get; }

    /// <summary>The word of the outcome; what does not pass is in capitals or says that it is not settled.</summary>
    public string Verdict => Outcome switch { CheckOutcome.Pass => "pass", CheckOutcome.Fail => "FAIL", _ => "undetermined" };

    public string Name { get; }

    public string Value { get; }

    public string Limit { get; } = "none";

    public string Margin { get; } = "none";

    public string Where { get; }

    /// <summary>What is said where there are no numbers to compare; empty otherwise.</summary>
    public string Note { get; } = "";

    private static (string Value, string Limit) Figures(in CheckResult check, double value, double limit, PageUnits units)
    {
        string unit = check.Unit;
        if (units == PageUnits.Us && MeasureOf(unit) is var measure && measure != Measure.Same)
        {
            (value, limit, unit) = (UnitText.FromMetric(value, measure, units), UnitText.FromMetric(limit, measure, units), measure == Measure.Length ? "ft" : "°F");
        }

        (string one, string other) = Apart(value, limit, check.Outcome == CheckOutcome.Fail);
        string behind = unit.Length == 0 ? "" : NumberWords.Thin + unit;
        return (EngineeringWords.Of(value, limit, unit) ?? one + behind, (check.LimitIsLeast ? "≥" : "≤") + NumberWords.Thin + other + behind);
    }

    // Four figures, or as many as it takes to show that a failure is beyond its limit.
    private static (string Value, string Limit) Apart(double value, double limit, bool fails)
    {
        string one = NumberWords.Short(value), other = NumberWords.Short(limit);
        for (int digits = 5; one == other && fails && !value.Equals(limit) && digits <= MostDigits; digits++)
        {
            string format = "G" + digits.ToString(CultureInfo.InvariantCulture);
            (one, other) = (value.ToString(format, CultureInfo.InvariantCulture), limit.ToString(format, CultureInfo.InvariantCulture));
        }

        return (one, other);
    }

    internal static string MarginOf(in CheckResult check, double value, double limit, PageUnits units)
    {
        bool fails = check.Outcome == CheckOutcome.Fail;
        double percent = 100 * Math.Abs(check.Margin!.Value);
        if (check.Unit != Celsius && percent > FarOffPercent)
        {
            return fails ? "beyond 10 times" : "over 10 times";
        }

        double kelvins = Math.Abs(limit - value);
        string room = check.Unit != Celsius ? NumberWords.Three(percent) + " %" : units == PageUnits.Us ? NumberWords.Three(1.8 * kelvins) + " °F" : NumberWords.Three(kelvins) + " K";
        return (fails ? "−" : "") + room;
    }

    private static Measure MeasureOf(string unit) => unit switch { Celsius => Measure.Temperature, "m" => Measure.Length, _ => Measure.Same };

    private static string Spoken(SupplyLevel level) => level switch { SupplyLevel.Minimum => "least", SupplyLevel.Maximum => "greatest", _ => "nominal" };
}

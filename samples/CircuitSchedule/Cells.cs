using LowVoltage.Calc.Checks;

namespace CircuitSchedule;

/// <summary>One row of the schedule as words, the same on the screen and on the page.</summary>
internal static class Cells
{
    public static IReadOnlyList<string> Titles { get; } = ["Circuit", "Load current", "Wire", "Fuse", "Largest drop", "Governed by", "Verdict"];

    public static string[] Of(ScheduleEntry entry)
    {
        if (entry.Answer is not { } answer)
        {
            return [entry.Circuit, "-", "-", "-", "-", "-", "BAD ROW"];
        }

        return [entry.Circuit, Currents(answer), answer.IsNearest ? "nearest: " + answer.Wire : answer.Wire, Fuse(answer), Drop(answer), answer.GovernedBy, Word(answer.Verdict)];
    }

    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.Undetermined => "undetermined",
        _ => "FAIL",
    };

    private static string Fuse(CircuitAnswer answer) => answer.FuseAmperes is { } amperes
        ? $"{Numbers.Six(amperes)} A {answer.FuseKind}, {answer.FuseSeries}"
        : "none";

    private static string Drop(CircuitAnswer answer) => (answer.DropVolts, answer.DropPercent) is ({ } volts, { } percent)
        ? $"{Numbers.Short(volts)} V\n{Numbers.Short(percent)} %"
        : "-";

    // Least and most over the supply range.
    private static string Currents(CircuitAnswer answer)
    {
        if ((answer.MinimumAmperes, answer.NominalAmperes, answer.MaximumAmperes) is not ({ } minimum, { } nominal, { } maximum))
        {
            return "-";
        }

        string low = Numbers.Short(Math.Min(minimum, Math.Min(nominal, maximum))), high = Numbers.Short(Math.Max(minimum, Math.Max(nominal, maximum)));
        return low == high ? $"{high} A" : $"{low} to {high} A";
    }
}

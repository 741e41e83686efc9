using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>What page 1 of a calculation sheet says, in words, whatever it is written in.</summary>
internal sealed class SheetFacts
{
    internal static readonly string[] CheckHeads = ["check", "value", "limit", "margin", "where", "verdict", "step"];

    internal SheetFacts(CircuitDesign design)
    {
        Design = design;
        Circuit = [.. CircuitRows(design)];
        Answer = [.. AnswerRows(design)];
    }

    internal CircuitDesign Design { get; }

    /// <summary>One word.</summary>
    internal string Verdict => Design.Verdict switch { Checks.Verdict.Pass => "Pass", Checks.Verdict.Fail => "Fail", _ => "Undetermined" };

    /// <summary>What the word rests on.</summary>
    internal string Because
    {
        get
        {
            int all = Design.Checks.Count, failed = Design.Checks.Count(check => check.Outcome == CheckOutcome.Fail), unknown = Design.Undetermined.Count;
            return failed > 0 ? $"{Counted(failed, all)} {(failed == 1 ? "fails" : "fail")}: {Names(CheckOutcome.Fail)}. Do not build it as it stands."
                : unknown > 0 ? $"No check fails, {Counted(unknown, all)} {(unknown == 1 ? "is" : "are")} undetermined: {Names(CheckOutcome.Undetermined)}. To be settled before building."
                : $"All {Accept.Text(all)} checks pass. {Least()}";
        }
    }

    internal IReadOnlyList<(string Label, string Value)> Circuit { get; }

    internal IReadOnlyList<(string Label, string Value)> Answer { get; }

    /// <summary>The cells of a check, but for the step, and what is said of it where it has no numbers.</summary>
    internal static (string[] Cells, string Note) Row(in CheckResult check)
    {
        string unit = check.Unit.Length == 0 ? "" : NumberText.Thin + check.Unit;
        (string value, string limit) = check.HasNumbers ? CheckWords.Numbers(check) : (check.HasValue ? Accept.Short(check.Value!.Value) : "", "");
        string shown = check.HasNumbers && check.Value < check.Limit && EngineeringUnit.Of(check.Value!.Value, check.Unit) is var (small, prefixed) && prefixed != check.Unit
            ? Accept.Short(small) + NumberText.Thin + prefixed : value + unit;
        return (
            [
                SolutionText.Sentence(check.Name),
                value.Length == 0 ? "none" : shown,
                limit.Length == 0 ? "none" : (check.LimitIsLeast ? "≥" : "≤") + NumberText.Thin + limit + unit,
                check.HasNumbers ? CheckWords.ShortMargin(check) : "none",
                Where(check),
                check.Outcome switch { CheckOutcome.Pass => "pass", CheckOutcome.Fail => "FAIL", _ => "undetermined" },
            ],
            check.HasNumbers ? "" : SolutionText.Sentence(check.Note));
    }

    private static string Where(in CheckResult check) => check.Level is { } level ? $"{check.Where}, {Words(level)} supply voltage" : check.Where;

    private static string Words(SupplyLevel level) => level switch { SupplyLevel.Minimum => "least", SupplyLevel.Maximum => "greatest", _ => "nominal" };

    private static string Counted(int some, int all) => $"{Accept.Text(some)} of {Accept.Text(all)} checks";

    private string Names(CheckOutcome outcome) => string.Join(", ", Design.Checks.Where(check => check.Outcome == outcome).Select(check => check.Name).Distinct());

    private string Least()
    {
        CheckResult tightest = default;
        foreach (CheckResult check in Design.Checks)
        {
            tightest = check.HasNumbers && (tightest.Kind is null || check.IsTighterThan(tightest)) ? check : tightest;
        }

        return tightest.Kind is null ? "" : $"Least margin: {tightest.Name}, {CheckWords.ShortMargin(tightest)}.";
    }

    private static IEnumerable<(string Label, string Value)> CircuitRows(CircuitDesign design)
    {
        CircuitRequirements asked = design.Requirements;
        yield return ("Circuit", asked.Name.Length > 0 ? asked.Name : "not named");
        yield return ("Source", Source(asked.Source));
        yield return ("Load", Load(asked));
        yield return ("Way", SolutionText.Sentence(DesignText.WayInWords(design, remarks: false)));
        yield return ("Place", SolutionText.Sentence(asked.Place.ToString()));
        yield return ("Rules", SolutionText.Sentence(design.Rules.Name));
    }

    private static IEnumerable<(string Label, string Value)> AnswerRows(CircuitDesign design)
    {
        string nearest = design.IsNearest ? ", the nearest: none passes" : "";
        bool mixed = design.Existing is not null && design.State().Several;
        yield return ("Wire", (mixed ? string.Join("; ", design.Path.Feed.Select(segment => segment.ToString())) : $"{DesignText.WireInWords(design)}, {design.Requirements.Insulation.Name}") + nearest);
        yield return ("Fuse", design.Fuse is { } fuse ? $"{fuse}{Limits(fuse)}{nearest}" : "none");
        SupplyRange range = design.SupplyRange;
        if (range.Exists)
        {
            yield return ("Current", Span(range, point => point.Amperes, "A"));
            yield return ("At the load", Span(range, point => point.LoadVolts, "V"));
        }
    }

    private static string Limits(FuseRating fuse) =>
        (fuse.Series.Volts is { } volts ? $", up to {Short(volts, "V")}" : "") + (fuse.BreakingAmperes is { } amperes ? $", breaks up to {Short(amperes, "A")}" : "");

    private static string Span(SupplyRange range, Func<OperatingPoint, double> of, string unit)
    {
        double[] all = [of(range.Minimum), of(range.Nominal), of(range.Maximum)];
        return Range(all.Min(), all.Max(), unit);
    }

    private static string Source(Source source)
    {
        SolutionBuilder board = new("");
        source.Basis?.Give(board);
        SourceNumbers n = source.Numbers;
        string[] stated =
        [
            .. board.Build("").Givens.Where(given => given.Symbol is { Value: not 1 }).Select(given => $"{given.Meaning} {given.Value}"),
            Range(n.MinimumVolts, n.MaximumVolts, "V"),
            .. n.GreatestOhms > 0 ? [Range(n.LeastOhms * 1000, n.GreatestOhms * 1000, "mΩ") + " inside"] : Array.Empty<string>(),
            .. n.Action == LimitAction.None ? [] : new[] { (n.Action == LimitAction.Holds ? "holds a limit of " : "disconnects at ") + Short(n.LimitAmperes, "A") },
        ];
        return SolutionText.Sentence($"{source.Name}: {string.Join(", ", stated)}");
    }

    private static string Load(CircuitRequirements asked)
    {
        SolutionBuilder board = new("") { Engineering = true };
        asked.Load.Describe(new LoadSymbols(board));
        string least = asked.Load.MinimumVolts is { } volts ? $"; works from {Short(volts, "V")}" : "";
        return SolutionText.Sentence($"{asked.Load.Name}: {string.Join(", ", board.Build("").Givens.Select(given => $"{given.Meaning} {given.Value}"))}{least}");
    }

    private static string Range(double from, double to, string unit) => Short(from, unit) is var least && Short(to, unit) is var most && least == most ? least : $"{least} to {most}";

    private static string Short(double value, string unit) => Accept.Short(value) + NumberText.Thin + unit;
}

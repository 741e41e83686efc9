using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <summary>A calculation sheet in the making: the letters that the steps share, and the checks, each written in its section.</summary>
/// <remarks>One letter stands for one quantity on the whole sheet, and reads the same wherever it is met.</remarks>
internal sealed partial class Sheet
{
    private readonly Dictionary<CheckKind, Symbol> values = [];
    private readonly Dictionary<CheckKind, Symbol> limits = [];

    /// <summary>A sheet for a circuit whose state stands as it was when the results were found.</summary>
    internal Sheet(SolutionBuilder board, BranchState at, Source source, CircuitPath path, IEnumerable<CheckResult> results)
    {
        Board = board;
        At = at;
        Supply = source;
        Path = path;
        Results = [.. results];
    }

    internal SolutionBuilder Board { get; }

    internal BranchState At { get; }

    internal Source Supply { get; }

    /// <summary>The way out and back, supply lead included, each stretch with the temperature model that its rating gives.</summary>
    internal CircuitPath Path { get; }

    internal IReadOnlyList<CheckResult> Results { get; }

    internal ConductorMarks Marks { get; } = new();

    internal required SourceSymbols Source { get; init; }

    internal required LoadSymbols Load { get; init; }

    /// <summary>The air where the circuit runs.</summary>
    internal required Symbol Ambient { get; init; }

    /// <summary>What the circuit's insulation stands continuously.</summary>
    internal required Symbol Continuous { get; init; }

    /// <summary>Why this fuse: chosen, verified, or the nearest.</summary>
    internal required (string Label, string Why) FuseWords { get; init; }

    internal bool Has(CheckKind kind) => Find(kind) is not null;

    internal CheckResult? Find(CheckKind kind)
    {
        foreach (CheckResult result in Results)
        {
            if (ReferenceEquals(result.Kind, kind))
            {
                return result;
            }
        }

        return null;
    }

    /// <summary>The steps have given what a check compares.</summary>
    internal void Value(CheckKind kind, Symbol symbol) => values[kind] = symbol;

    internal void Limit(CheckKind kind, Symbol symbol) => limits[kind] = symbol;

    /// <summary>Writes the checks of one section: of each its steps, then its comparison.</summary>
    internal void Write(SheetSection section)
    {
        foreach (Check check in CheckKind.Catalogue)
        {
            if (check.Section == section)
            {
                Write(check);
            }
        }
    }

    private void Write(Check check)
    {
        if (Find(check) is { } result)
        {
            check.Explain(this, result);
            Compare(check, result);
        }
    }

    private void Compare(Check check, in CheckResult result)
    {
        Relation relation = check.LimitIsLeast ? Relation.AtLeast : Relation.AtMost;
        bool pass = result.Outcome == CheckOutcome.Pass;
        if (!result.HasNumbers || (Differs(result) && RelationWords.Holds(result.Value!.Value, relation, result.Limit!.Value) != pass))
        {
            Board.State($"check: {check.Name}", result.ToString() + ".", result.Reference);
            return;
        }

        string note = result.Note.Length == 0 ? "" : SolutionText.Sentence(result.Note) + ".";
        Board.Compare(
            $"check: {check.Name}",
            values.TryGetValue(check, out Symbol? value) ? value : new Symbol(check.Letters.Value, result.Value!.Value, check.Unit, check.Name),
            relation,
            limits.TryGetValue(check, out Symbol? limit) ? limit : new Symbol(
                check.Letters.Limit, result.Limit!.Value, check.Unit, $"{(check.LimitIsLeast ? "least" : "most")} allowed: {check.Name}"),
            result.Reference,
            note.Length == 0 ? CheckWords.Margin(result) + "." : $"{CheckWords.Margin(result)}. {note}",
            pass);
    }

    // Beyond the billionth of play that a check has: then the comparison of the two numbers shown would contradict the verdict.
    private static bool Differs(in CheckResult result) =>
        Math.Abs(result.Value!.Value - result.Limit!.Value) > 1e-6 * Math.Abs(result.Limit.Value);

    /// <summary>Says which of several stretches the next steps are about.</summary>
    internal void Tell(int stretch, string which)
    {
        if (At.Several)
        {
            Board.State(which, SolutionText.Sentence(LongName(stretch)) + ".");
        }
    }

    internal string LongName(int stretch)
    {
        ref readonly SegmentState s = ref At.Stretches[stretch];
        return $"the stretch of {StretchName.Text(s.Meters, s.Parallel, s.Conductor)}";
    }

    /// <summary>The air of a stretch: the circuit's, or its own.</summary>
    internal Symbol AmbientOf(int stretch)
    {
        Site site = At.Stretches[stretch].Site;
        return site.AmbientCelsius.Equals(Ambient.Value)
            ? Ambient
            : Board.LookUp($"temperature of the air around {LongName(stretch)}", "θ_a" + Text(stretch), site.AmbientCelsius, "°C", null, "As stated for this stretch.");
    }

    /// <summary>What the insulation of a stretch stands continuously: the circuit's, or its own.</summary>
    internal Symbol ContinuousOf(int stretch)
    {
        InsulationMaterial insulation = At.Stretches[stretch].Site.Insulation;
        return insulation.ContinuousCelsius.Equals(Continuous.Value)
            ? Continuous
            : Board.LookUp($"temperature that the insulation of {LongName(stretch)} stands continuously", "θ_c" + Text(stretch), insulation.ContinuousCelsius, "°C", insulation.Reference);
    }

    private static string Text(int stretch) => Quantities.Accept.Text(stretch + 1);
}

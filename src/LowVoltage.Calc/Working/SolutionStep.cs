using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Working;

/// <summary>One step of a worked solution: what is sought, the formula, the numbers put in, the result, where it comes from and why.</summary>
/// <remarks>
/// The numbers put in are shown with as many digits as it takes for whoever works them out to get the result that is shown. Immutable and thread-safe.
/// </remarks>
public sealed class SolutionStep
{
    private const int FewestDigits = 5;
    private const int MostDigits = 17;
    private const int AllDigits = 16;

    internal SolutionStep(StepKind kind, string sought, Symbol? symbol, string reason)
    {
        Kind = kind;
        Sought = sought;
        Symbol = symbol;
        Reason = reason;
    }

    /// <summary>What the step does.</summary>
    public StepKind Kind { get; }

    /// <summary>The part of the solution that the step belongs to; empty when it has no parts.</summary>
    public string Section { get; internal init; } = "";

    /// <summary>What is sought, in words.</summary>
    public string Sought { get; }

    /// <summary>The quantity that comes out, or that is compared, with its value unrounded; null for a statement.</summary>
    public Symbol? Symbol { get; }

    /// <summary>The formula; null when the step is no calculation.</summary>
    public Formula? Formula { get; internal init; }

    /// <summary>The result, not rounded, in <see cref="Unit"/>; null for a statement.</summary>
    public double? Result => Symbol?.Value;

    /// <summary>The unit of the result; empty for a pure number and a statement.</summary>
    public string Unit => Symbol?.Unit ?? "";

    /// <summary>Significant digits of the result as shown.</summary>
    public int Digits { get; internal init; } = NumberText.Shown;

    /// <summary>Which way the shown result is rounded.</summary>
    public RoundingDirection Rounding { get; internal init; }

    /// <summary>The result as shown, in <see cref="Unit"/>: what <see cref="Rounded"/> reads, which may write it with a milli or micro.</summary>
    public double? Shown => Result is { } result ? NumberText.Round(result, ShownDigits, Rounding) : null;

    /// <summary>How the result must stand to <see cref="Limit"/>; null when the step is no comparison.</summary>
    public Relation? Relation { get; internal init; }

    /// <summary>What the result is held against; null when the step is no comparison.</summary>
    public Symbol? Limit { get; internal init; }

    /// <summary>Whether the comparison holds; null when the step is none.</summary>
    /// <remarks>The verdict is the calculation's own: a difference of rounding alone (1e-9) may be forgiven.</remarks>
    public bool? Holds { get; internal init; }

    /// <summary>Which way the limit is rounded: as in the step that gave it, so that a reader meets one number.</summary>
    internal RoundingDirection LimitRounding { get; init; }

    /// <summary>Digits of the limit: those of the step that gave it.</summary>
    internal int LimitDigits { get; init; } = NumberText.Shown;

    /// <summary>Where the formula or the value comes from; null when the step needs no source.</summary>
    public Reference? Source { get; internal init; }

    /// <summary>Why the step is taken, in a sentence; for a statement what it says. May be empty.</summary>
    public string Reason { get; }

    /// <summary>The result with its unit, rounded: <c>0.04557 Ω</c>. Empty for a statement.</summary>
    public string Rounded => Symbol is null ? "" : NumberText.WithUnit(Shown!.Value, AsShown, Unit);

    /// <summary>The reason, and that the result is not rounded to the nearest where a reader who does that would get another number.</summary>
    internal string ReasonAndRounding =>
        Kind != StepKind.Calculation || Rounding == RoundingDirection.Nearest || NumberText.Round(Result!.Value, ShownDigits) == Shown
            ? Reason
            : $"{Reason}{(Reason.Length > 0 ? " " : "")}Rounded {(Rounding == RoundingDirection.Down ? "down" : "up")}, to the safe side.";

    /// <summary>The step in symbols: <c>R = ρ·L/A</c>. Empty for a statement.</summary>
    public string InSymbols => Kind switch
    {
        StepKind.Calculation => $"{Symbol!.Name} = {Formula}",
        StepKind.LookUp => Symbol!.Name,
        StepKind.Comparison => $"{Symbol!.Name} {RelationWords.Sign(Relation!.Value)} {Limit!.Name}",
        _ => "",
    };

    /// <summary>The step with numbers and units put in: <c>R = 0.017241 Ω·mm²/m · 5.5 m / 2.0809 mm² = 0.04557 Ω</c>. Empty for a statement.</summary>
    public string InNumbers => Kind switch
    {
        StepKind.Calculation => $"{Symbol!.Name} = {FormulaText.Write(Formula!, Operands)} = {Rounded}",
        StepKind.LookUp => $"{Symbol!.Name} = {Rounded}",
        StepKind.Comparison => $"{NumberText.WithUnit(ComparedShown, AsShown, Unit)} {RelationWords.Sign(Relation!.Value)} "
            + $"{NumberText.WithUnit(LimitShown, AsShown, Limit!.Unit)}: {Verdict}",
        _ => "",
    };

    /// <summary>The step in LaTeX: symbols, numbers and result in one line, without the dollar signs. Empty for a statement.</summary>
    public string InLatex => Kind switch
    {
        StepKind.Calculation => $"{Symbol!.Latex} = {Formula!.ToLatex()} = {FormulaLatex.Write(Formula, Operands)} = {FormulaLatex.WithUnit(Shown!.Value, AsShown, Unit)}",
        StepKind.LookUp => $"{Symbol!.Latex} = {FormulaLatex.WithUnit(Shown!.Value, AsShown, Unit)}",
        StepKind.Comparison => $"{Symbol!.Latex} = {FormulaLatex.WithUnit(ComparedShown, AsShown, Unit)} {RelationWords.LatexSign(Relation!.Value, Holds!.Value)} "
            + $"{FormulaLatex.WithUnit(LimitShown, AsShown, Limit!.Unit)} = {Limit.Latex}",
        _ => "",
    };

    /// <summary>Whether small quantities are written with their milli or micro.</summary>
    internal bool Engineering { get; init; }

    /// <summary>Of numbers that are rounded already.</summary>
    internal NumberStyle AsShown => new(AllDigits, Engineering);

    /// <summary>Of the numbers put in.</summary>
    internal NumberStyle Operands => new(OperandDigits, Engineering);

    internal string Verdict => Holds == true ? "holds" : "does not hold";

    /// <summary>Digits of a value that a table gives: all it has, in reason.</summary>
    internal int ShownDigits => Kind == StepKind.LookUp ? Math.Max(Digits, FewestDigits) : Digits;

    /// <summary>The fewest digits of the numbers put in that give the result as shown.</summary>
    internal int OperandDigits
    {
        get
        {
            for (int digits = FewestDigits; digits < MostDigits; digits++)
            {
                if (NumberText.Round(Formula!.Evaluate(NumberText.Round, digits), ShownDigits, Rounding) == Shown)
                {
                    return digits;
                }
            }

            return MostDigits;
        }
    }

    /// <summary>The compared value as shown: as the step that gave it has it, with more digits only where those would belie the verdict.</summary>
    internal double ComparedShown => LeftAt(MoreDigits);

    /// <summary>The limit as shown.</summary>
    internal double LimitShown => LimitAt(MoreDigits);

    /// <summary>The step in one line: what is sought and the numbers.</summary>
    public override string ToString() => Kind == StepKind.Statement ? $"{Sought}: {Reason}" : $"{Sought}: {InNumbers}";

    // The fewest digits beyond the usual ones that show the two sides standing to each other as the verdict says.
    private int MoreDigits
    {
        get
        {
            int more = 0;
            while (Digits + more < MostDigits && RelationWords.Holds(LeftAt(more), Relation!.Value, LimitAt(more)) != Holds)
            {
                more++;
            }

            return more;
        }
    }

    private double LeftAt(int more) => NumberText.Round(Symbol!.Value, Digits + more, Rounding);

    private double LimitAt(int more) => NumberText.Round(Limit!.Value, LimitDigits + more, LimitRounding);
}

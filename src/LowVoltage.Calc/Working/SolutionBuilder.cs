using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Working;

/// <summary>Writes a worked solution down as it is told: givens, then steps, then the answer.</summary>
/// <remarks>
/// The result of a step is what the calculation itself computed; the formula only shows how, and the tests hold the two together.
/// Not thread-safe; lives for one explanation.
/// </remarks>
internal sealed class SolutionBuilder(string title)
{
    internal const int GivenDigits = 6;

    private readonly List<SolutionGiven> givens = [];
    private readonly List<SolutionStep> steps = [];
    private readonly List<SolutionNotes> notes = [];
    private readonly List<string> cautions = [];
    private string section = "";

    /// <summary>Write nothing twice: a value that is given or stands in a step already, under the same letter, is that symbol.</summary>
    internal bool Once { get; init; }

    /// <summary>One rounding for all steps, so that a quantity that is met several times reads the same everywhere; null leaves each step its own.</summary>
    internal RoundingDirection? Rounding { get; init; }

    /// <summary>Write small quantities with their milli or micro: 13.28 mm, not 0.01328 m.</summary>
    internal bool Engineering { get; init; }

    /// <summary>The symbol of the last step; for the answer.</summary>
    internal SolutionStep Last => steps[steps.Count - 1];

    internal int Count => steps.Count;

    internal Symbol Given(string meaning, string name, double value, string unit)
    {
        Symbol symbol = new(name, value, unit, meaning);
        givens.Add(new SolutionGiven(meaning, symbol) { Style = new NumberStyle(GivenDigits, Engineering) });
        return symbol;
    }

    internal void Given(string meaning, string words) => givens.Add(new SolutionGiven(meaning, words));

    /// <summary>Steps from here on belong to a part of this name.</summary>
    internal void Section(string name) => section = name;

    /// <summary>A symbol that stands here by its letter; null when there is none.</summary>
    internal Symbol? Find(string name) =>
        givens.Find(given => given.Symbol?.Spec == name)?.Symbol ?? steps.Find(step => Gives(step) && step.Symbol!.Spec == name)?.Symbol;

    internal Symbol LookUp(string sought, string name, double value, string unit, Reference? source, string reason = "")
    {
        if (Once && Find(name) is { } known && known.Value.Equals(value) && known.Unit == unit)
        {
            return known;
        }

        Symbol symbol = new(name, value, unit, sought);
        steps.Add(new SolutionStep(StepKind.LookUp, sought, symbol, reason) { Section = section, Engineering = Engineering, Source = source });
        return symbol;
    }

    /// <summary>A calculation. The result is the calculation's own, in the unit shown.</summary>
    internal Symbol Step(
        string sought, string name, Formula formula, double result, string unit, Reference? source, string reason = "", RoundingDirection rounding = RoundingDirection.Nearest)
    {
        Symbol symbol = new(name, result, unit, sought);
        SolutionStep step = new(StepKind.Calculation, sought, symbol, reason) { Section = section, Engineering = Engineering, Source = source, Formula = formula, Rounding = Rounding ?? rounding };
        if (Once && steps.Find(known => IsSame(known, step)) is { } same)
        {
            return same.Symbol!;
        }

        steps.Add(step);
        return symbol;
    }

    /// <summary>A comparison. The verdict is the calculation's own where it has one; both sides are shown as in the steps that gave them.</summary>
    internal bool Compare(
        string sought, Symbol left, Relation relation, Symbol limit, Reference? source, string reason = "", bool? verdict = null, RoundingDirection? limitRounding = null)
    {
        SolutionStep? from = Giving(left), bound = Giving(limit);
        bool holds = verdict ?? RelationWords.Holds(left.Value, relation, limit.Value);
        steps.Add(new SolutionStep(StepKind.Comparison, sought, left, reason)
        {
            Section = section,
            Engineering = Engineering,
            Source = source,
            Relation = relation,
            Limit = limit,
            Digits = DigitsOf(left, from),
            Rounding = from?.Rounding ?? RoundingDirection.Nearest,
            LimitDigits = DigitsOf(limit, bound),
            LimitRounding = Rounding ?? bound?.Rounding ?? limitRounding ?? RoundingDirection.Nearest,
            Holds = holds,
        });
        return holds;
    }

    internal void State(string sought, string words, Reference? source = null) =>
        steps.Add(new SolutionStep(StepKind.Statement, sought, null, words) { Section = section, Engineering = Engineering, Source = source });

    internal void Note(string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            notes.Add(new SolutionNotes(heading, lines));
        }
    }

    /// <summary>Cautions; one that stands here already is not repeated.</summary>
    internal void Caution(params string[] lines) => cautions.AddRange(lines.Where(line => !cautions.Contains(line)));

    internal WorkedSolution Build(string answer) => new(
        title,
        Array.AsReadOnly(givens.ToArray()),
        Array.AsReadOnly(steps.ToArray()),
        answer,
        Array.AsReadOnly(notes.ToArray()),
        Array.AsReadOnly(cautions.ToArray()));

    /// <summary>The answer is what the last step says: <c>voltage drop: ΔV = 0.2412 V</c>.</summary>
    internal WorkedSolution Build()
    {
        SolutionStep last = Last;
        return Build(last.Symbol is null ? last.Reason : $"{last.Symbol.Meaning}: {last.Symbol.Name} = {last.Rounded}");
    }

    private static bool Gives(SolutionStep step) => step.Kind is StepKind.LookUp or StepKind.Calculation;

    private static bool IsSame(SolutionStep known, SolutionStep step) =>
        Gives(known) && known.Kind == step.Kind && known.Sought == step.Sought && known.Result.Equals(step.Result)
        && known.Symbol!.Name == step.Symbol!.Name && known.Formula?.ToString() == step.Formula?.ToString();

    // The first step that gave a quantity, by its letter.
    private SolutionStep? Giving(Symbol symbol) => steps.Find(step => Gives(step) && step.Symbol!.Spec == symbol.Spec);

    private int DigitsOf(Symbol symbol, SolutionStep? step) =>
        step?.ShownDigits ?? (givens.Exists(given => given.Symbol?.Spec == symbol.Spec) ? GivenDigits : NumberText.Shown);
}

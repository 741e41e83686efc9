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

    /// <summary>The symbol of the last step; for the answer.</summary>
    internal SolutionStep Last => steps[steps.Count - 1];

    internal int Count => steps.Count;

    internal Symbol Given(string meaning, string name, double value, string unit)
    {
        Symbol symbol = new(name, value, unit, meaning);
        givens.Add(new SolutionGiven(meaning, symbol));
        return symbol;
    }

    internal void Given(string meaning, string words) => givens.Add(new SolutionGiven(meaning, words));

    /// <summary>Steps from here on belong to a part of this name.</summary>
    internal void Section(string name) => section = name;

    internal Symbol LookUp(string sought, string name, double value, string unit, Reference? source, string reason = "")
    {
        Symbol symbol = new(name, value, unit, sought);
        steps.Add(new SolutionStep(StepKind.LookUp, sought, symbol, reason) { Section = section, Source = source });
        return symbol;
    }

    /// <summary>A calculation. The result is the calculation's own, in the unit shown.</summary>
    internal Symbol Step(
        string sought, string name, Formula formula, double result, string unit, Reference? source, string reason = "", RoundingDirection rounding = RoundingDirection.Nearest)
    {
        Symbol symbol = new(name, result, unit, sought);
        steps.Add(new SolutionStep(StepKind.Calculation, sought, symbol, reason) { Section = section, Source = source, Formula = formula, Rounding = rounding });
        return symbol;
    }

    /// <summary>A comparison. The verdict is the calculation's own where it has one; the limit is rounded as in the step that gave it, where there is one.</summary>
    internal bool Compare(
        string sought, Symbol left, Relation relation, Symbol limit, Reference? source, string reason = "", bool? verdict = null, RoundingDirection? limitRounding = null)
    {
        RoundingDirection rounding = limitRounding ?? steps.Find(step => ReferenceEquals(step.Symbol, limit))?.Rounding ?? RoundingDirection.Nearest;
        bool holds = verdict ?? RelationWords.Holds(left.Value, relation, limit.Value);
        steps.Add(new SolutionStep(StepKind.Comparison, sought, left, reason) { Section = section, Source = source, Relation = relation, Limit = limit, LimitRounding = rounding, Holds = holds });
        return holds;
    }

    internal void State(string sought, string words, Reference? source = null) =>
        steps.Add(new SolutionStep(StepKind.Statement, sought, null, words) { Section = section, Source = source });

    /// <summary>The steps of another explanation, as a part of this one. Its cautions are not taken: the whole has its own.</summary>
    /// <param name="onlyNew">Leave out what stands here already, letter for letter and to the last bit.</param>
    internal void Include(WorkedSolution other, bool onlyNew = false)
    {
        foreach (SolutionStep step in other.Steps)
        {
            if (!onlyNew || !steps.Exists(known => IsSame(known, step)))
            {
                steps.Add(step.In(section.Length == 0 ? step.Section : section));
            }
        }
    }

    private static bool IsSame(SolutionStep known, SolutionStep step) =>
        known.Kind is StepKind.LookUp or StepKind.Calculation && known.Kind == step.Kind && known.Sought == step.Sought && known.Result.Equals(step.Result)
        && known.Symbol!.Name == step.Symbol!.Name && known.Formula?.ToString() == step.Formula?.ToString();

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
}

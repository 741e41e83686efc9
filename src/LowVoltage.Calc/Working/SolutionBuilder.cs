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

    internal bool Compare(string sought, Symbol left, Relation relation, Symbol limit, Reference? source, string reason = "")
    {
        SolutionStep step = new(StepKind.Comparison, sought, left, reason) { Section = section, Source = source, Relation = relation, Limit = limit };
        steps.Add(step);
        return step.Holds!.Value;
    }

    internal void State(string sought, string words, Reference? source = null) =>
        steps.Add(new SolutionStep(StepKind.Statement, sought, null, words) { Section = section, Source = source });

    /// <summary>The steps of another explanation, as a part of this one; its givens are taken too where they are not there yet.</summary>
    internal void Include(WorkedSolution other, bool withGivens = false)
    {
        foreach (SolutionStep step in other.Steps)
        {
            steps.Add(new SolutionStep(step.Kind, step.Sought, step.Symbol, step.Reason)
            {
                Section = step.Section.Length > 0 && section.Length > 0 ? section + ": " + step.Section : section + step.Section,
                Formula = step.Formula,
                Digits = step.Digits,
                Rounding = step.Rounding,
                Relation = step.Relation,
                Limit = step.Limit,
                Source = step.Source,
            });
        }

        if (withGivens)
        {
            givens.AddRange(other.Givens.Where(g => !givens.Exists(own => own.ToString() == g.ToString())));
        }

        Caution([.. other.Cautions.Where(c => !cautions.Contains(c))]);
    }

    internal void Note(string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            notes.Add(new SolutionNotes(heading, lines));
        }
    }

    internal void Caution(params string[] lines) => cautions.AddRange(lines);

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

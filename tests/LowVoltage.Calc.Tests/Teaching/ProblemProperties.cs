using System.Globalization;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>What holds for every problem, over more than twenty thousand of them.</summary>
public class ProblemProperties(ManyProblems many) : IClassFixture<ManyProblems>
{
    // Two routes of double arithmetic and one numerical integration.
    private const double Arithmetic = 1e-9;

    // Numbers that belong to arithmetic and not to the problem: halves, squares, minutes, per cent, thousandths, a circle, the base of a logarithm.
    private static readonly double[] Plain = [1, 2, 4, 10, 60, 100, 1000];

    // The most that a plausible answer may be, by unit; the least is above zero throughout.
    private static readonly Dictionary<string, double> Most = new(StringComparer.Ordinal)
    {
        ["V"] = 60, ["mV"] = 1000, ["A"] = 5000, ["W"] = 500, ["Ω"] = 500, ["mΩ"] = 800, ["mm²"] = 50, ["cmil"] = 110_000, ["AWG"] = 20,
        ["°C"] = 400, ["°F"] = 752, ["cmil/A"] = 20_000, ["s"] = 60, ["h"] = 150, ["Ah"] = 80, ["Wh"] = 300, ["A/mm²"] = 8, ["%"] = 5.0001,
    };

    // Counts, shares, factors, exponents and multiples: they have no unit.
    private static readonly HashSet<string> PureNumbers = new(StringComparer.Ordinal) { "n", "k", "f", "f_1", "f_2", "x", "m", "m_1", "m_2" };

    [Fact]
    public void Answer_IsWhatAnIndependentRouteGivesFromThePrintedText()
    {
        Assert.True(many.All.Count >= 20_000, $"{many.All.Count}");
        Holds(problem => Math.Abs((IndependentSolver.Solve(problem) / problem.Answer.Value) - 1) <= Arithmetic);
    }

    [Fact]
    public void Answer_IsTheLastStepOfTheSolution() => Holds(problem =>
        problem.Solution.Steps[^1] is { Result: { } result } last && result == problem.Answer.Value && last.Unit == problem.Answer.Unit
        && problem.Solution.Answer.Contains(problem.Answer.Text, StringComparison.Ordinal));

    [Fact]
    public void Steps_SatisfyTheirOwnFormula() => Holds(problem => problem.Solution.Steps.Where(step => step.Formula is not null)
        .All(step => Math.Abs(step.Formula!.Evaluate() - step.Result!.Value) <= 1e-9 * Math.Abs(step.Result.Value)));

    [Fact]
    public void Comparisons_Hold() => Holds(problem => problem.Solution.Steps.All(step => step.Holds != false));

    [Fact]
    public void Answer_IsPlausible() => Holds(problem =>
        (problem.Answer.Value > 0 || problem.Answer.Unit == "AWG") && problem.Answer.Value <= Most[problem.Answer.Unit]);

    [Fact]
    public void Statement_HoldsEveryGivenThatTheSolutionUses_AndEveryGivenIsUsed() => Holds(problem =>
    {
        HashSet<string> used = [.. Leaves(problem).OfType<Symbol>().Select(symbol => symbol.Spec)];
        return problem.Givens.All(given => used.Contains(given.Symbol) && PrintedProblem.Prints(problem.Statement, given.Text))
            && problem.Givens.Select(given => given.Symbol).Distinct().Count() == problem.Givens.Count
            && problem.Givens.Select(given => given.Symbol).SequenceEqual(problem.Solution.Givens.Where(given => given.Symbol is not null).Select(given => given.Symbol!.Spec));
    });

    [Fact]
    public void Solution_NeedsNothingThatTheStatementDoesNotSay() => Holds(problem =>
    {
        HashSet<Symbol> known = [.. problem.Solution.Givens.Select(given => given.Symbol).OfType<Symbol>()];
        foreach (SolutionStep step in problem.Solution.Steps)
        {
            if (step.Kind == StepKind.LookUp && !Says(problem, step.Result!.Value))
            {
                return false;
            }

            if (step.Formula is not null && !Leaves(step.Formula).All(leaf => leaf is Symbol symbol ? known.Contains(symbol) || (symbol.Spec == "π" && symbol.Value == Math.PI) : Plain.Contains(leaf.Number) || Says(problem, leaf.Number)))
            {
                return false;
            }

            known.Add(step.Symbol!);
        }

        return true;
    });

    [Fact]
    public void WrongAnswers_AreThree_ApartFromTheRightOneAndFromEachOther() => Holds(problem =>
    {
        double[] values = [problem.Answer.Value, .. problem.WrongAnswers.Select(wrong => wrong.Value)];
        string[] texts = [problem.Answer.Text, .. problem.WrongAnswers.Select(wrong => wrong.Text)];
        bool standard = problem.Answer.SignificantFigures == 0;
        double share = standard ? 0.01 : problem.Answer.Tolerance / problem.Answer.Value;
        return problem.WrongAnswers.Count == 3 && texts.Distinct().Count() == 4 && problem.WrongAnswers.Select(wrong => wrong.Mistake).Distinct().Count() == 3
            && Pairs(values).All(pair => standard ? pair.One != pair.Other : Math.Abs(pair.One - pair.Other) > Math.Max(problem.Answer.Tolerance, share * Math.Min(Math.Abs(pair.One), Math.Abs(pair.Other))));
    });

    [Fact]
    public void Texts_HaveTheirUnits() => Holds(problem =>
    {
        string unit = problem.Answer.Unit;
        return problem.WrongAnswers.Select(wrong => wrong.Text).Append(problem.Answer.Text).All(text => text.EndsWith(unit, StringComparison.Ordinal) && text.Length > unit.Length)
            && problem.Givens.All(given => given.Text.EndsWith(given.Unit.Replace(' ', '\u00A0'), StringComparison.Ordinal) && (given.Unit.Length > 0 || PureNumbers.Contains(given.Symbol)))
            && problem.Solution.Steps.Where(step => step.Result is not null).All(step => step.Unit.Length > 0 || PureNumbers.Contains(step.Symbol!.Spec))
            && (unit.Length == 0 || problem.Form != ProblemForm.Numeric || problem.Answer.SignificantFigures == 0 || problem.Statement.Contains($"in {unit} to", StringComparison.Ordinal));
    });

    [Fact]
    public void Grade_OfThePrintedAnswer_IsRight() => Holds(problem =>
        problem.Grade(problem.Answer.Text).Outcome == (problem.Form == ProblemForm.FindTheMistake ? GradingOutcome.MistakeNotNamed : GradingOutcome.Correct));

    [Fact]
    public void Grade_OfEveryKnownMistake_NamesIt() => Holds(problem => problem.KnownMistakes.All(wrong =>
        problem.Grade(wrong.Text) is { Outcome: GradingOutcome.KnownMistake } verdict && verdict.LikelyMistakes.Contains(wrong.Mistake)
        && verdict.Message.Contains(wrong.Mistake.Explanation, StringComparison.Ordinal)));

    [Fact]
    public void Grade_InGermanWithACommaAndWithoutAUnit() => Holds(problem =>
    {
        CultureInfo german = CultureInfo.GetCultureInfo("de-DE");
        string number = problem.Answer.Unit == "AWG" ? problem.Answer.Text.Split(' ', '\u00A0')[0] : problem.Answer.Text.Split('\u00A0')[0];
        return problem.Grade(problem.Answer.Text.Replace('.', ','), german).Value is { } value
            && Math.Abs(value - problem.Answer.Value) <= Math.Max(problem.Answer.Tolerance, 1e-6)
            && problem.Grade(number).Outcome == GradingOutcome.MissingUnit;
    });

    [Fact]
    public void Choices_AreFour_OneOfThemRight_AndGradedByTheirLetter() => Holds(problem => problem.Form == ProblemForm.Numeric
        ? problem.Choices.Count == 0
        : problem.Choices.Select(choice => choice.Letter).SequenceEqual("ABCD") && problem.Choices.Count(choice => choice.IsRight) == 1
            && problem.Choices.All(choice => problem.Grade($" {char.ToLowerInvariant(choice.Letter)}) ").IsCorrect == choice.IsRight)
            && problem.Choices.All(choice => problem.Statement.Contains($"{choice.Letter}) {choice.Text}", StringComparison.Ordinal)));

    [Fact]
    public void Caution_StandsWhereShortsAndBatteriesOccur() => Holds(problem =>
        problem.Topic is not (ProblemTopic.ProspectiveCurrent or ProblemTopic.AdiabaticHeating or ProblemTopic.FuseOpeningTime or ProblemTopic.BatteryResistance)
        || (problem.Caution.Length > 0 && problem.Solution.Cautions.Contains(problem.Caution)));

    [Fact]
    public void EveryMistakeOfTheCatalogue_IsUsed()
    {
        // The two that grading adds by itself.
        string[] ofGrading = ["decimal point out of place", "sign"];
        HashSet<Mistake> used = [.. many.All.SelectMany(problem => problem.WrongAnswers).Select(wrong => wrong.Mistake)];
        Assert.Empty(Mistake.All.Where(mistake => !used.Contains(mistake) && !ofGrading.Contains(mistake.Name)).Select(mistake => mistake.Name));
        Assert.Equal(Mistake.All.Count, Mistake.All.Select(mistake => mistake.Name).Distinct().Count());
        Assert.All(Mistake.All, mistake => Assert.EndsWith(".", mistake.Explanation, StringComparison.Ordinal));
    }

    [Fact]
    public void Settings_AllOccur_AndChoicesAreSpread()
    {
        Assert.Equal(Enum.GetValues<ProblemSetting>(), many.All.Select(problem => problem.Setting).Distinct().Order());
        int[] places = [.. many.All.Where(problem => problem.Form == ProblemForm.MultipleChoice).GroupBy(problem => problem.Choices.Single(choice => choice.IsRight).Letter).Select(group => group.Count())];
        // Four equal places; six standard deviations of a fair draw around a quarter.
        double mean = places.Sum() / 4.0;
        Assert.Equal(4, places.Length);
        Assert.All(places, count => Assert.InRange(count, mean - (6 * Math.Sqrt(mean)), mean + (6 * Math.Sqrt(mean))));
    }

    private static bool Says(Problem problem, double value) => PrintedProblem.Numbers(problem.Statement).Contains(value);

    private static IEnumerable<Formula> Leaves(Problem problem) => problem.Solution.Steps.SelectMany(step => step.Kind == StepKind.Comparison
        ? [step.Symbol!, step.Limit!]
        : step.Formula is null ? Enumerable.Empty<Formula>() : Leaves(step.Formula));

    private static IEnumerable<Formula> Leaves(Formula formula) => formula.Operands.Count == 0 ? [formula] : formula.Operands.SelectMany(Leaves);

    private static IEnumerable<(double One, double Other)> Pairs(double[] values) =>
        from i in Enumerable.Range(0, values.Length) from j in Enumerable.Range(0, i) select (values[i], values[j]);

    private void Holds(Func<Problem, bool> property)
    {
        string[] wrong = [.. many.All.AsParallel().Where(problem => !property(problem)).Take(3).Select(problem =>
            $"seed {problem.Seed}, {problem.Topic}, {problem.Difficulty}, {problem.Units}, {problem.Form}: {problem.Statement} -> {problem.Answer} | {string.Join(" | ", problem.WrongAnswers)}\n{problem.Solution}")];
        Assert.Empty(wrong);
    }
}

using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>Problems of every topic, with all that they carry, and what grading says to all sorts of answers, as text that a person reads when it changes.</summary>
/// <remarks>
/// Whether the numbers are right is tested elsewhere, by solving the printed text again. To renew after a change that is meant: run with the environment variable
/// <c>APPROVE_PROBLEMS</c> set to 1, read the difference, commit it, and note it in the changelog under "Results changed".
/// </remarks>
public class ProblemSnapshotTests
{
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    private static readonly string[] Typed =
    [
        "", "perhaps", "A", "b", "(C)", "D)", "E", "0", "-1", "NaN", "1e400", "1/3", "3 1/2", "14 AWG", "2/0", "41 AWG", "2.5 mm²", "3 ohms", "2 kV", "5 s", "7 %", "1.2.3", "1,234", "12 bananas",
    ];

    [Fact]
    public void Problems_AreThoseThatWereReviewed()
    {
        StringBuilder all = new();
        foreach (Problem problem in Problems(seeds: 3))
        {
            Write(all, problem);
        }

        ApprovedText.Check("problems.txt", all.ToString(), "APPROVE_PROBLEMS");
    }

    [Fact]
    public void Grades_AreThoseThatWereReviewed()
    {
        StringBuilder all = new();
        foreach (Problem problem in Problems(seeds: 3).Where(problem => problem.Units == (problem.Topic < ProblemTopic.AmpacityDerating ? ProblemUnits.UsCustomary : ProblemUnits.Metric)))
        {
            all.Append("### ").Append(Name(problem)).Append(", ").Append(problem.Answer.Text).Append('\n');
            foreach (string answer in Answers(problem))
            {
                GradingResult result = problem.Grade(answer);
                all.Append(answer).Append(" -> ").Append(result).Append(Numbers(result)).Append('\n');
            }

            string comma = problem.Answer.Text.Replace('.', ',');
            all.Append("de: ").Append(comma).Append(" -> ").Append(problem.Grade(comma, German)).Append('\n')
                .Append("de: ").Append(problem.Answer.Text).Append(" -> ").Append(problem.Grade(problem.Answer.Text, German)).Append("\n\n");
        }

        ApprovedText.Check("grades.txt", all.ToString(), "APPROVE_PROBLEMS");
    }

    private static IEnumerable<Problem> Problems(int seeds) =>
        from topic in Enum.GetValues<ProblemTopic>()
        from difficulty in Enum.GetValues<Difficulty>()
        from units in Enum.GetValues<ProblemUnits>()
        from seed in Enumerable.Range(0, seeds)
        select ProblemGenerator.Create(seed, topic, difficulty, units, (ProblemForm)(seed % 3));

    // The right answer and each expected wrong one, by number and by name, and what people write by slips of the pen.
    private static IEnumerable<string> Answers(Problem problem)
    {
        ProblemAnswer right = problem.Answer;
        IEnumerable<double> values = [right.Value * 1000, right.Value / 10, -right.Value, right.Value * 1.37, right.Value / 1.37];
        return
        [
            right.Text,
            right.Value.ToString("G2", CultureInfo.InvariantCulture) + " " + right.Unit,
            right.Value.ToString("G12", CultureInfo.InvariantCulture) + " " + right.Unit,
            right.Value.ToString("G4", CultureInfo.InvariantCulture),
            .. values.Select(value => value.ToString("G4", CultureInfo.InvariantCulture) + " " + right.Unit),
            .. problem.WrongAnswers.Select(wrong => wrong.Text),
            .. problem.WrongAnswers.Select(wrong => wrong.Value.ToString("G4", CultureInfo.InvariantCulture)),
            .. problem.Choices.Select(choice => choice.Text),
            .. problem.Difficulty == Difficulty.OneStep ? Typed : [],
        ];
    }

    private static string Numbers(GradingResult result) =>
        $" [{result.Value?.ToString("G10", CultureInfo.InvariantCulture)}; {result.SignificantFigures?.ToString(CultureInfo.InvariantCulture)}; {result.LikelyMistake?.Name}]";

    private static string Name(Problem problem) => $"{problem.Topic}, {problem.Difficulty}, {problem.Units}, {problem.Form}, {problem.Setting}, seed {problem.Seed}";

    private static void Write(StringBuilder all, Problem problem)
    {
        all.Append("### ").Append(Name(problem)).Append("\n\n").Append(problem.Statement).Append("\n\n");
        foreach (ProblemGiven given in problem.Givens)
        {
            all.Append(given).Append(": ").Append(given.Meaning).Append('\n');
        }

        ProblemAnswer answer = problem.Answer;
        all.Append("answer: ").Append(answer.Quantity).Append(" = ").Append(answer.Text).Append(", within ").Append(answer.Tolerance.ToString("G6", CultureInfo.InvariantCulture)).Append('\n');
        foreach (WrongAnswer wrong in problem.WrongAnswers)
        {
            all.Append("wrong: ").Append(wrong).Append(": ").Append(wrong.Mistake.Explanation).Append('\n');
        }

        foreach (ProblemChoice choice in problem.Choices.Where(choice => choice.IsRight))
        {
            all.Append("right: ").Append(choice).Append('\n');
        }

        all.Append("caution: ").Append(problem.Caution).Append('\n');
        if (problem.Form == ProblemForm.Numeric && problem.Units != ProblemUnits.Mixed)
        {
            all.Append('\n').Append(problem.Solution.ToText().TrimEnd()).Append('\n');
        }

        all.Append('\n');
    }
}

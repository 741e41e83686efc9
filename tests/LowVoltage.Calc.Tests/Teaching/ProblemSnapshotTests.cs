using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>One problem of every topic and difficulty, with all that it carries and what grading says to some answers: a file each, short enough that a person reads it when it changes.</summary>
/// <remarks>
/// Unit systems and forms take turns, so that each topic and each difficulty has all of them. Whether the numbers are right is tested elsewhere, by solving the printed text again. To renew
/// after a change that is meant: run with the environment variable <c>APPROVE_PROBLEMS</c> set to 1, read the difference, commit it, and note it in the changelog under "Results changed".
/// </remarks>
public class ProblemSnapshotTests
{
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    private static readonly string[] Typed =
    [
        "", "perhaps", "A", "b", "(C)", "D)", "E", "0", "-1", "NaN", "1e400", "1/3", "3 1/2", "14 AWG", "2/0", "41 AWG", "2.5 mm²", "3 ohms", "2 kV", "5 s", "7 %", "1.2.3", "1,234", "12 bananas",
    ];

    public static TheoryData<ProblemTopic, Difficulty> Cases
    {
        get
        {
            TheoryData<ProblemTopic, Difficulty> cases = [];
            foreach (ProblemTopic topic in Enum.GetValues<ProblemTopic>())
            {
                foreach (Difficulty difficulty in Enum.GetValues<Difficulty>())
                {
                    cases.Add(topic, difficulty);
                }
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Problem_IsTheOneThatWasReviewed(ProblemTopic topic, Difficulty difficulty)
    {
        Problem problem = ProblemGenerator.Create(1, topic, difficulty, (ProblemUnits)(((int)topic + (int)difficulty) % 3), (ProblemForm)((int)topic / 3 % 3));
        StringBuilder text = new();
        Write(text, problem);
        foreach (string answer in Answers(problem))
        {
            text.Append(answer).Append(" -> ").Append(Shown(problem.Grade(answer))).Append('\n');
        }

        string comma = problem.Answer.Text.Replace('.', ',');
        text.Append("de: ").Append(comma).Append(" -> ").Append(Shown(problem.Grade(comma, German))).Append('\n');
        ApprovedText.Check($"problem-{topic}-{difficulty}.txt", text.ToString(), "APPROVE_PROBLEMS");
    }

    [Fact]
    public void GradesOfOddAnswers_AreThoseThatWereReviewed()
    {
        Problem[] problems =
        [
            ProblemGenerator.Create(1, ProblemTopic.VoltageDrop, Difficulty.OneStep),
            ProblemGenerator.Create(1, ProblemTopic.SmallestSize, Difficulty.SeveralSteps, ProblemUnits.UsCustomary),
            ProblemGenerator.Create(1, ProblemTopic.Power, Difficulty.SeveralSteps, ProblemUnits.Metric, ProblemForm.MultipleChoice),
            ProblemGenerator.Create(1, ProblemTopic.JointDrop, Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.FindTheMistake),
        ];
        StringBuilder text = new();
        foreach (Problem problem in problems)
        {
            text.Append("### ").Append(Name(problem)).Append(", ").Append(problem.Answer.Text).Append('\n');
            foreach (string answer in Typed)
            {
                text.Append(answer).Append(" -> ").Append(Shown(problem.Grade(answer))).Append('\n');
            }

            text.Append('\n');
        }

        ApprovedText.Check("odd-answers.txt", text.ToString(), "APPROVE_PROBLEMS");
    }

    [Fact]
    public void Mistakes_AreWordedAsReviewed() =>
        ApprovedText.Check("mistakes.txt", string.Concat(Mistake.All.Select(mistake => $"{mistake.Name}: {mistake.Explanation}\n")), "APPROVE_PROBLEMS");

    // The right answer and the known mistakes, and what people write by slips of the pen.
    private static IEnumerable<string> Answers(Problem problem)
    {
        ProblemAnswer right = problem.Answer;
        return
        [
            right.Text,
            right.Value.ToString("G2", CultureInfo.InvariantCulture) + " " + right.Unit,
            right.Value.ToString("G4", CultureInfo.InvariantCulture),
            (right.Value * 1000).ToString("G4", CultureInfo.InvariantCulture) + " " + right.Unit,
            (right.Value * 1.37).ToString("G4", CultureInfo.InvariantCulture) + " " + right.Unit,
            problem.KnownMistakes[0].Text,
            .. problem.Choices.Take(2).Select(choice => choice.Text),
        ];
    }

    private static string Shown(GradingResult result) =>
        $"{result} [{result.Value?.ToString("G10", CultureInfo.InvariantCulture)}; {result.SignificantFigures?.ToString(CultureInfo.InvariantCulture)}]";

    private static string Name(Problem problem) => $"{problem.Topic}, {problem.Difficulty}, {problem.Units}, {problem.Form}, {problem.Setting}, seed {problem.Seed}";

    private static void Write(StringBuilder text, Problem problem)
    {
        text.Append("### ").Append(Name(problem)).Append("\n\n").Append(problem.Statement).Append("\n\n");
        foreach (ProblemGiven given in problem.Givens)
        {
            text.Append(given).Append(": ").Append(given.Meaning).Append('\n');
        }

        ProblemAnswer answer = problem.Answer;
        text.Append("answer: ").Append(answer.Quantity).Append(" = ").Append(answer.Text).Append(", within ").Append(answer.Tolerance.ToString("G6", CultureInfo.InvariantCulture)).Append('\n');
        foreach (WrongAnswer wrong in problem.KnownMistakes)
        {
            text.Append(problem.WrongAnswers.Any(drawn => drawn.Mistake == wrong.Mistake) ? "wrong, drawn: " : "wrong: ").Append(wrong).Append('\n');
        }

        foreach (ProblemChoice choice in problem.Choices.Where(choice => choice.IsRight))
        {
            text.Append("right: ").Append(choice).Append('\n');
        }

        text.Append(problem.Caution.Length > 0 ? $"caution: {problem.Caution}\n" : "").Append(problem.Diagram is { } diagram ? diagram.Description + "\n" : "");
        // The steps of every topic stand in the keys of the reviewed sheets, or here.
        text.Append(problem.Form == ProblemForm.Numeric && problem.Difficulty != Difficulty.Design ? $"\n{problem.Solution.ToText().TrimEnd()}\n\n" : "\n");
    }
}

using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Tests.Working;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>One problem of every topic and difficulty in words, and what grading says to some answers: a file each, short enough that a person reads it when it changes.</summary>
/// <remarks>
/// Unit systems and forms take turns, so that each topic and each difficulty has all of them. Lines that a reviewed sheet or an earlier problem has, numbers aside, are left out; a digest stands for the whole.
/// Whether the numbers are right is tested elsewhere, by solving the printed text again. To renew after a change that is meant: <c>bash .ci/approve</c>, read the difference, commit it, and
/// note it in the changelog under "Results changed".
/// </remarks>
public class ProblemSnapshotTests
{
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    private static readonly string[] Typed =
    [
        "", "perhaps", "A", "b", "(C)", "D)", "E", "0", "-1", "NaN", "1e400", "1/3", "3 1/2", "14 AWG", "2/0", "41 AWG", "2.5 mm²", "3 ohms", "2 kV", "5 s", "7 %", "1.2.3", "1,234", "12 bananas",
    ];

    private static readonly Lazy<Dictionary<(ProblemTopic, Difficulty), string>> Written = new(Write);

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
    public void Problem_IsTheOneThatWasReviewed(ProblemTopic topic, Difficulty difficulty) => ApprovedText.Check($"problem-{topic}-{difficulty}.txt", Written.Value[(topic, difficulty)]);

    /// <summary>No text depends on what was asked before. A run of mutants, in one process, notices a changed text by this.</summary>
    [Fact]
    public void Problems_WrittenAgain_AreTheSame() => Assert.Equal(Written.Value, Write());

    private static Dictionary<(ProblemTopic, Difficulty), string> Write()
    {
        News news = new();
        SheetSnapshotTests.Sheets.Keys.ToList().ForEach(sheet => news.Of(SheetSnapshotTests.Text(sheet)));
        return (from topic in Enum.GetValues<ProblemTopic>() from difficulty in Enum.GetValues<Difficulty>() select (topic, difficulty)).ToDictionary(key => key, key => Text(news, key.topic, key.difficulty));
    }

    // What is read is the problem with its steps; what is given, the known mistakes and the grades stand in the digest.
    private static string Text(News news, ProblemTopic topic, Difficulty difficulty)
    {
        Problem problem = ProblemGenerator.Create(1, topic, difficulty, (ProblemUnits)(((int)topic + (int)difficulty) % 3), (ProblemForm)((int)topic / 3 % 3));
        string read = Words(problem);
        StringBuilder rest = new(read);
        rest.AppendJoin('\n', problem.Givens.Select(given => $"{given}: {given.Meaning}")).Append(problem.Answer.Tolerance.ToString("G6", CultureInfo.InvariantCulture));
        rest.AppendJoin('\n', problem.KnownMistakes.Select(wrong => $"{wrong} {problem.WrongAnswers.Any(drawn => drawn.Mistake == wrong.Mistake)}")).AppendJoin('\n', problem.Choices);
        rest.AppendJoin('\n', Answers(problem).Select(answer => Shown(problem.Grade(answer)))).Append(Shown(problem.Grade(problem.Answer.Text.Replace('.', ','), German)));
        return $"whole: {ApprovedText.Digest(rest.ToString())}\n{news.Of(read)}".TrimEnd() + "\n";
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
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach (Problem problem in problems)
        {
            text.Append("### ").Append(Name(problem)).Append(", ").Append(problem.Answer.Text).Append('\n');
            foreach (IGrouping<GradingOutcome, string> answers in Typed.Concat(Answers(problem)).GroupBy(answer => problem.Grade(answer).Outcome))
            {
                // What is said is written where it is said first.
                text.Append(answers.Key).Append(": ").AppendJoin(" | ", answers).Append('\n');
                foreach (string message in answers.Select(answer => problem.Grade(answer).Message).Where(message => said.Add(News.Alike(message))))
                {
                    text.Append("  ").Append(message).Append('\n');
                }
            }

            text.Append('\n');
        }

        // A decimal comma that reads as the separator of thousands.
        Problem resistance = Enumerable.Range(1, 50).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.OhmsLaw, Difficulty.OneStep)).First(problem => problem.Answer.Value is >= 1 and < 100);
        string comma = resistance.Answer.Value.ToString("0.000", CultureInfo.InvariantCulture).Replace('.', ',') + " " + resistance.Answer.Unit;
        text.Append(resistance.Grade(comma).Outcome).Append(": ").Append(comma).Append("\n  ").Append(resistance.Grade(comma).Message).Append('\n');
        ApprovedText.Check("odd-answers.txt", text.ToString());
    }

    // In words they stand in the source.
    [Fact]
    public void Mistakes_AreWordedAsReviewed() =>
        ApprovedText.Check("mistakes.txt", string.Concat(Mistake.All.Select(mistake => $"{ApprovedText.Digest(mistake.Name + mistake.Explanation)}\n")));

    // The right answer and the known mistakes, and what people write by slips of the pen.
    private static IEnumerable<string> Answers(Problem problem)
    {
        ProblemAnswer right = problem.Answer;
        return
        [
            right.Text,
            right.Value.ToString("G1", CultureInfo.InvariantCulture) + " " + right.Unit,
            right.Value.ToString("G2", CultureInfo.InvariantCulture) + " " + right.Unit,
            right.Value.ToString("G4", CultureInfo.InvariantCulture),
            (right.Value * 1000).ToString("G4", CultureInfo.InvariantCulture) + " " + right.Unit,
            (right.Value * 1.37).ToString("G4", CultureInfo.InvariantCulture) + " " + right.Unit,
            problem.KnownMistakes[0].Text,
            .. problem.Choices.Take(2).Select(choice => choice.Text),
        ];
    }

    // Mistakes are explained in a file of their own.
    private static string Shown(GradingResult result) =>
        $"{result.Outcome}: {result.LikelyMistakes.Aggregate(result.Message, (message, mistake) => message.Replace(mistake.Explanation, "…", StringComparison.Ordinal))} [{result.Value?.ToString("G10", CultureInfo.InvariantCulture)}; {result.SignificantFigures?.ToString(CultureInfo.InvariantCulture)}]";

    private static string Name(Problem problem) => $"{problem.Topic}, {problem.Difficulty}, {problem.Units}, {problem.Form}, {problem.Setting}, seed {problem.Seed}";

    private static string Words(Problem problem)
    {
        // The steps of every topic stand in the keys of the reviewed sheets, or here.
        bool hasSteps = problem.Form == ProblemForm.Numeric && problem.Difficulty != Difficulty.Design;
        string drawn = problem.Difficulty == Difficulty.OneStep && problem.Diagram is { } diagram ? diagram.Description : "";
        return $"### {problem.Units}, {problem.Form}, {problem.Setting}, seed {problem.Seed}\n{BySentences(problem.Statement)}\n{problem.Caution}\n{drawn}\n{(hasSteps ? SolutionWords.Of(problem.Solution, withGivens: false) : $"Answer: {problem.Answer.Quantity}: {problem.Answer.Text}")}";
    }

    // A sentence a line: of those that many problems have, each is read once.
    private static string BySentences(string statement) => statement.Replace(". ", ".\n", StringComparison.Ordinal).Replace("? ", "?\n", StringComparison.Ordinal);
}

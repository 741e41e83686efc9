using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That grading knows every mistake that a problem names, and accuses nobody of one that he did not make.</summary>
public class KnownMistakesTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    [Fact]
    public void Grade_RecognisesEveryMistakeThatIsNamed_InEveryTopic()
    {
        foreach (IGrouping<ProblemTopic, Problem> topic in many.All.GroupBy(problem => problem.Topic))
        {
            (Problem Problem, WrongAnswer Wrong)[] named = [.. topic.SelectMany(problem => problem.KnownMistakes.Select(wrong => (problem, wrong)))];
            int recognised = named.AsParallel().Count(pair => pair.Problem.Grade(pair.Wrong.Text).LikelyMistakes.Contains(pair.Wrong.Mistake));

            // More of them than the three that a choice draws.
            Assert.True(named.Length > 3 * topic.Count(), $"{topic.Key}: {named.Length}");
            Assert.Equal(named.Length, recognised);
        }
    }

    [Fact]
    public void Grade_AMistakeThatWasNotDrawn_IsNamedToo()
    {
        Problem problem = ProblemGenerator.Create(42, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps);
        WrongAnswer[] others = [.. problem.KnownMistakes.Where(wrong => !problem.WrongAnswers.Select(drawn => drawn.Mistake).Contains(wrong.Mistake))];

        Assert.NotEmpty(others);
        Assert.All(others, wrong => Assert.Equal(GradingOutcome.KnownMistake, problem.Grade(wrong.Text).Outcome));
        Assert.All(problem.WrongAnswers, drawn => Assert.Contains(problem.KnownMistakes, wrong => wrong.Mistake == drawn.Mistake && wrong.Value == drawn.Value));
    }

    [Fact]
    public void Grade_TwoMistakesWithOneNumber_SaysBoth()
    {
        (Problem Problem, WrongAnswer[] Same)[] pairs = [.. many.All.Where(problem => problem.Form == ProblemForm.Numeric).SelectMany(problem =>
            problem.KnownMistakes.GroupBy(wrong => wrong.Value).Where(group => group.Select(wrong => wrong.Mistake).Distinct().Count() > 1).Select(group => (problem, group.ToArray())))];

        Assert.True(pairs.Length > 100, $"{pairs.Length}");
        Assert.All(pairs, pair =>
        {
            GradingResult verdict = pair.Problem.Grade(pair.Same[0].Text);
            Assert.True(verdict.LikelyMistakes.Count >= 2);
            Assert.Contains("mistakes give this number", verdict.Message, StringComparison.Ordinal);
            Assert.All(pair.Same, wrong => Assert.Contains(wrong.Mistake.Explanation, verdict.Message, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void Grade_ARightAnswer_IsNeverCalledAMistake()
    {
        // Over the whole tolerance, in the unit of the answer and a thousand times smaller, with the unit and without.
        string[] wrong = [.. many.All.Where(problem => problem.Answer.SignificantFigures > 0 && problem.Form == ProblemForm.Numeric).AsParallel().SelectMany(problem =>
            new[] { -0.999, -0.5, 0, 0.5, 0.999 }.SelectMany(share =>
            {
                string number = (problem.Answer.Value + (share * problem.Answer.Tolerance)).ToString("R", CultureInfo.InvariantCulture);
                GradingResult full = problem.Grade($"{number} {problem.Answer.Unit}"), bare = problem.Grade(number);
                return full.IsCorrect && bare.Outcome == GradingOutcome.MissingUnit && full.LikelyMistakes.Count + bare.LikelyMistakes.Count == 0 ? [] : new[] { $"{problem.Statement}: {number} -> {full}; {bare}" };
            })).Take(3)];

        Assert.Empty(wrong);
    }

    [Fact]
    public void KnownMistakes_AreApartFromTheRightAnswer() => Assert.All(many.All, problem => Assert.All(problem.KnownMistakes, known =>
        Assert.True(Math.Abs(known.Value - problem.Answer.Value) > problem.Answer.Tolerance, $"{problem.Statement}: {known}")));
}

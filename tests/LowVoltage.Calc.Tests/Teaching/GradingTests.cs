using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class GradingTests
{
    private static readonly Problem Drop = ProblemGenerator.Create(seed: 42, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps);

    private static readonly Problem Size = ProblemGenerator.Create(7, ProblemTopic.SmallestSize, Difficulty.SeveralSteps, ProblemUnits.UsCustomary);

    private static readonly Problem Fuse = ProblemGenerator.Create(7, ProblemTopic.FuseChoice, Difficulty.OneStep);

    [Fact]
    public void Grade_AnyUnitOfTheRightKind_Converts()
    {
        Assert.Equal(GradingOutcome.Correct, Drop.Grade(Text(Drop.Answer.Value) + " V").Outcome);
        GradingResult verdict = Drop.Grade(Text(Drop.Answer.Value * 1000) + " mV");

        Assert.True(verdict.IsCorrect);
        Assert.Equal(Drop.Answer.Value, verdict.Value!.Value, Drop.Answer.Tolerance);
        Assert.Null(verdict.LikelyMistake);
    }

    [Fact]
    public void Grade_AtTheEdgeOfTheTolerance()
    {
        double inside = Drop.Answer.Value + (0.99 * Drop.Answer.Tolerance), outside = Drop.Answer.Value + (1.01 * Drop.Answer.Tolerance);

        Assert.Equal(GradingOutcome.Correct, Drop.Grade(inside.ToString("F8", CultureInfo.InvariantCulture) + " V").Outcome);
        GradingResult wrong = Drop.Grade(outside.ToString("F8", CultureInfo.InvariantCulture) + " V");
        Assert.Equal(GradingOutcome.WrongValue, wrong.Outcome);
        Assert.Contains("too large", wrong.Message, StringComparison.Ordinal);
        Assert.Contains("too small", Drop.Grade(Text(Drop.Answer.Value * 0.93) + " V").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_WithoutUnit_SaysSo()
    {
        GradingResult verdict = Drop.Grade(Text(Drop.Answer.Value));

        Assert.Equal(GradingOutcome.MissingUnit, verdict.Outcome);
        Assert.False(verdict.IsCorrect);
        Assert.Contains("1.23 V", verdict.Message, StringComparison.Ordinal);
        GradingResult both = Drop.Grade(Text(Drop.WrongAnswers[0].Value));
        Assert.Same(Drop.WrongAnswers[0].Mistake, both.LikelyMistake);
        Assert.Contains("unit is missing", both.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_OfAnotherKind_NamesBoth()
    {
        GradingResult verdict = Drop.Grade("2.4 A");

        Assert.Equal(GradingOutcome.WrongQuantity, verdict.Outcome);
        Assert.Contains("a current", verdict.Message, StringComparison.Ordinal);
        Assert.Contains("a voltage", verdict.Message, StringComparison.Ordinal);
        Assert.Null(verdict.Value);
    }

    [Fact]
    public void Grade_RoundedTooMuch_AsksForMoreFigures()
    {
        // One figure of an answer whose second is not 0: off by more than the tolerance, but not wrong.
        Problem problem = Enumerable.Range(0, 100).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.VoltageDrop, Difficulty.OneStep))
            .First(p => p.Answer.Value is > 0.24 and < 0.245 or > 0.34 and < 0.345 or > 0.43 and < 0.445 or > 0.53 and < 0.545);
        GradingResult verdict = problem.Grade(problem.Answer.Value.ToString("F1", CultureInfo.InvariantCulture) + " V");

        Assert.Equal(GradingOutcome.TooFewFigures, verdict.Outcome);
        Assert.Equal(1, verdict.SignificantFigures);
        Assert.Contains("3 significant figures", verdict.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_DecimalPointOutOfPlace_AndSign_AreNamed()
    {
        Assert.Equal("decimal point out of place", Drop.Grade(Text(Drop.Answer.Value * 10) + " V").LikelyMistake!.Name);
        Assert.Equal("decimal point out of place", Drop.Grade(Text(Drop.Answer.Value / 100) + " V").LikelyMistake!.Name);
        Assert.Equal("sign", Drop.Grade("−" + Text(Drop.Answer.Value) + " V").LikelyMistake!.Name);
    }

    [Fact]
    public void Grade_Size_TakesGaugeAndSection()
    {
        string number = Size.Answer.Text.Split(' ', '\u00A0')[0];
        double area = Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - Size.Answer.Value) / 39), 2);

        Assert.True(Size.Grade($"AWG {number}").IsCorrect);
        Assert.True(Size.Grade($"#{number}").IsCorrect);
        Assert.True(Size.Grade(area.ToString("F3", CultureInfo.InvariantCulture) + " mm²").IsCorrect);
        Assert.False(Size.Grade($"{Size.Answer.Value + 1} AWG").IsCorrect);
        Assert.Equal(GradingOutcome.WrongQuantity, Size.Grade("3 V").Outcome);
        Assert.Contains("14 AWG", Size.Grade("thick").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_Fuse_IsRightOrWrong()
    {
        Assert.True(Fuse.Grade(Fuse.Answer.Text).IsCorrect);
        Assert.False(Fuse.Grade(Text(Fuse.Answer.Value * 1.05) + " A").IsCorrect);
    }

    [Fact]
    public void Grade_FindTheMistake_TakesLetterOrName_AndAsksForTheNameWhenGivenTheValue()
    {
        Problem problem = ProblemGenerator.Create(3, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps, ProblemUnits.Metric, ProblemForm.FindTheMistake);
        ProblemChoice right = problem.Choices.Single(choice => choice.IsRight);

        Assert.Same(problem.WrongAnswers[0].Mistake, right.Mistake);
        Assert.Contains(problem.WrongAnswers[0].Text, problem.Statement, StringComparison.Ordinal);
        Assert.True(problem.Grade(right.Letter.ToString()).IsCorrect);
        Assert.True(problem.Grade(right.Text.ToUpperInvariant()).IsCorrect);
        Assert.Same(right.Mistake, problem.Grade(right.Text).LikelyMistake);
        Assert.Equal(GradingOutcome.MistakeNotNamed, problem.Grade(problem.Answer.Text).Outcome);
        Assert.Equal(GradingOutcome.WrongValue, problem.Grade(problem.Choices.First(choice => !choice.IsRight).Text).Outcome);
    }

    [Fact]
    public void Grade_MultipleChoice_NamesTheMistakeBehindAWrongLetter()
    {
        Problem problem = ProblemGenerator.Create(3, ProblemTopic.Power, Difficulty.SeveralSteps, ProblemUnits.Metric, ProblemForm.MultipleChoice);
        ProblemChoice wrong = problem.Choices.First(choice => !choice.IsRight);
        GradingResult verdict = problem.Grade($"({wrong.Letter})");

        Assert.Equal(GradingOutcome.KnownMistake, verdict.Outcome);
        Assert.Same(wrong.Mistake, verdict.LikelyMistake);
        Assert.Contains(wrong.Mistake!.Explanation, verdict.Message, StringComparison.Ordinal);
        Assert.Contains("a letter", problem.Grade("no idea").Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void GenerateAndGrade_DoNotDependOnTheCultureOfTheThread(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Problem again = ProblemGenerator.Create(seed: 42, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps);
            Assert.Equal(Drop.Statement, again.Statement);
            Assert.Equal(Drop.Solution.ToText(), again.Solution.ToText());
            Assert.True(again.Grade(again.Answer.Text).IsCorrect);
            Assert.True(again.Grade(again.Answer.Text, CultureInfo.GetCultureInfo(culture)).IsCorrect);
            Assert.Equal(SheetSnapshotTests.Sheets["steps-metric"]().ToMarkdown(SheetPart.Both), SheetSnapshotTests.Approved("steps-metric"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("\0\u0001\u001F")]
    [InlineData("🔥🔥🔥")]
    [InlineData("\uD83D")]
    [InlineData("مرحبا")]
    [InlineData("\u202Eabc")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("no idea")]
    public void Grade_WhatIsNoAnswer_SaysWhatIsAccepted(string? text)
    {
        GradingResult verdict = Drop.Grade(text);

        Assert.Equal(GradingOutcome.Unreadable, verdict.Outcome);
        Assert.False(verdict.IsCorrect);
        Assert.Contains("such as 1.23 V", verdict.Message, StringComparison.Ordinal);
        Assert.Null(verdict.Value);
    }

    [Fact]
    public void Grade_TenMegabytes_IsRefusedAtOnce() =>
        Assert.All(["1", " ", "e", "\u0660"], piece => Assert.Equal(GradingOutcome.Unreadable, Drop.Grade(new StringBuilder().Insert(0, piece, 10_000_000).ToString()).Outcome));

    [Fact]
    public void Grade_Fuzz_NeverThrowsAndAlwaysSaysSomething()
    {
        // Every seed of the fuzz is fixed: the texts are the same each run.
        Random random = new(20_261_125);
        string[] pieces = ["1", "2", "0", "9", ".", ",", " ", "-", "−", "e", "E", "×10", "^", "/", "A", "V", "mΩ", "Ω/m", "AWG", "#", "/0", "°", "C", "F", "%", "²", "⁻³", "'", "=", "\u200F", "\u0663", "\0", "\uDC00", "🔥", "kft", "1000 ft", "µ", "10", "mm2", "("];
        CultureInfo[] cultures = [CultureInfo.InvariantCulture, CultureInfo.GetCultureInfo("de-DE"), CultureInfo.GetCultureInfo("ar-SA"), CultureInfo.GetCultureInfo("tr-TR"), CultureInfo.GetCultureInfo("fa-IR")];
        Problem[] problems = [Drop, Size, Fuse, ProblemGenerator.Create(3, ProblemTopic.Power, Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.MultipleChoice),
            ProblemGenerator.Create(3, ProblemTopic.AdiabaticHeating, Difficulty.SeveralSteps, ProblemUnits.Mixed, ProblemForm.FindTheMistake)];
        for (int i = 0; i < 60_000; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(9)).Select(_ => random.Next(5) == 0 ? ((char)random.Next(0x10000)).ToString() : pieces[random.Next(pieces.Length)]));
            GradingResult verdict = problems[i % problems.Length].Grade(text, cultures[i % cultures.Length]);
            Assert.False(string.IsNullOrWhiteSpace(verdict.Message));
            Assert.True(verdict.Value is null || double.IsFinite(verdict.Value.Value));
        }
    }

    private static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}

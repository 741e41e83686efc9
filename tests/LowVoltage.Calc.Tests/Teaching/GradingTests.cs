using System.Globalization;
using System.Text;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class GradingTests
{
    private static readonly Problem Drop = ProblemGenerator.Create(seed: 42, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps);

    private static readonly Problem Size = ProblemGenerator.Create(7, ProblemTopic.SmallestSize, Difficulty.SeveralSteps, ProblemUnits.UsCustomary);

    private static readonly Problem Fuse = ProblemGenerator.Create(7, ProblemTopic.FuseChoice, Difficulty.OneStep);

    private static Problem First(Func<Problem, bool> wanted) => (
        from seed in Enumerable.Range(0, 40)
        from topic in Enum.GetValues<ProblemTopic>()
        from difficulty in Enum.GetValues<Difficulty>()
        from units in Enum.GetValues<ProblemUnits>()
        let problem = ProblemGenerator.Create(seed, topic, difficulty, units)
        where wanted(problem)
        select problem).First();

    /// <summary>What was read is told in the unit of the answer: °F by the definition of the scale, mm² by that of the gauge (36 AWG is 0.127 mm, 39 steps to a factor of 92).</summary>
    [Fact]
    public void Grade_InAnotherUnit_TellsTheValueInThatOfTheAnswer()
    {
        Problem hot = First(problem => problem.Answer.Unit == "°C"), size = First(problem => problem.Answer.Unit == "AWG");
        GradingResult fahrenheit = hot.Grade(((hot.Answer.Value * 1.8) + 32).ToString("R", CultureInfo.InvariantCulture) + " °F");
        double diameter = 0.127 * Math.Pow(92, (36 - size.Answer.Value) / 39);
        GradingResult metric = size.Grade((Math.PI / 4 * diameter * diameter).ToString("R", CultureInfo.InvariantCulture) + " mm²");

        Assert.Equal(hot.Answer.Value, fahrenheit.Value!.Value, 1e-9);
        Assert.Equal(size.Answer.Value, metric.Value!.Value, 1e-9);
    }

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

    [Theory]
    [InlineData(3600, "C")]
    [InlineData(3600, "As")]
    [InlineData(3.6, "kilocoulombs")]
    [InlineData(1, "Ah")]
    public void Grade_ACharge_InCoulombsToo(double perAmpereHour, string unit)
    {
        Problem charge = ProblemGenerator.Create(302115, ProblemTopic.BatteryEnergy, Difficulty.OneStep, ProblemUnits.Mixed);

        Assert.Equal("Ah", charge.Answer.Unit);
        Assert.Equal(GradingOutcome.Correct, charge.Grade($"{Text(charge.Answer.Value * perAmpereHour)} {unit}").Outcome);
    }

    [Fact]
    public void Grade_ChoiceCopiedWithItsLetter_IsRead()
    {
        Problem choice = ProblemGenerator.Create(7, ProblemTopic.SmallestSize, Difficulty.SeveralSteps, ProblemUnits.UsCustomary, ProblemForm.MultipleChoice);
        ProblemChoice right = choice.Choices.Single(c => c.IsRight), wrong = choice.Choices.First(c => !c.IsRight);

        Assert.True(choice.Grade($"{right.Letter}) {right.Text}").IsCorrect);
        Assert.Same(wrong.Mistake, choice.Grade($"{char.ToLowerInvariant(wrong.Letter)}. {wrong.Text}").LikelyMistake);
        Assert.Equal(GradingOutcome.Unreadable, choice.Grade($"{right.Letter}) {wrong.Text}").Outcome);
    }

    [Fact]
    public void Grade_NoneChosen_IsNotCalledAMistake()
    {
        Problem find = ProblemGenerator.Create(664082, ProblemTopic.ParallelResistance, Difficulty.OneStep, ProblemUnits.Mixed, ProblemForm.FindTheMistake);
        string message = find.Grade(find.Choices.Single(c => c.Mistake is null).Letter.ToString()).Message;

        Assert.Contains("that answer is wrong", message, StringComparison.Ordinal);
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
        Assert.True(Size.Grade($"size {number}").IsCorrect);
        Assert.True(Size.Grade($"{number} ga").IsCorrect);
        Assert.Equal(GradingOutcome.MissingUnit, Size.Grade(number).Outcome);
    }

    [Theory]
    [InlineData("99 AWG")]
    [InlineData("-14 AWG")]
    [InlineData("size 99")]
    [InlineData("99")]
    [InlineData("14.5")]
    public void Grade_GaugeThatDoesNotExist_SaysSo(string text)
    {
        GradingResult verdict = Size.Grade(text);

        Assert.Equal(GradingOutcome.NoSuchSize, verdict.Outcome);
        Assert.Contains("no such gauge", verdict.Message, StringComparison.Ordinal);
        Assert.Null(verdict.Value);
    }

    [Theory]
    [InlineData("de-DE", 2.5, "2.500 A", GradingOutcome.WrongDecimalMark, "The point was read as the separator of thousands: 2500. If you mean the decimal comma, write 2,5.")]
    [InlineData("de-DE", 2500, "2.500 A", GradingOutcome.Correct, "Right.")]
    [InlineData("de-DE", 2.5, "2,500 A", GradingOutcome.Correct, "Right.")]
    [InlineData("en-US", 2.5, "2,500 A", GradingOutcome.WrongDecimalMark, "The comma was read as the separator of thousands: 2500. If you mean the decimal point, write 2.5.")]
    [InlineData("en-US", 2500, "2,500 A", GradingOutcome.Correct, "Right.")]
    [InlineData("fr-CH", 2.5, "2.5 A", GradingOutcome.Correct, "Right.")]
    [InlineData("de-DE", 2.5, "25,00 A", GradingOutcome.KnownMistake, "decimal point out of place")]
    public void Grade_PointOrCommaOfAnotherCountry_IsNoMistakeOfThought(string culture, double right, string text, GradingOutcome outcome, string message)
    {
        // A problem whose answer is that number, to the tolerance of one per cent.
        Problem problem = Enumerable.Range(0, 20_000).Select(seed => ProblemGenerator.Create(
                seed, right > 100 ? ProblemTopic.ProspectiveCurrent : ProblemTopic.OhmsLaw, right > 100 ? Difficulty.OneStep : Difficulty.SeveralSteps))
            .First(p => Math.Abs((p.Answer.Value / right) - 1) < 0.002);
        GradingResult verdict = problem.Grade(text, CultureInfo.GetCultureInfo(culture));

        Assert.Equal(outcome, verdict.Outcome);
        Assert.Contains(message, verdict.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_Fraction_IsExact()
    {
        Problem half = Enumerable.Range(0, 100_000).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.Power, Difficulty.OneStep)).First(p => p.Answer.Unit == "A" && p.Answer.Value == 0.5);

        Assert.Equal("Right.", half.Grade("1/2 A").Message);
        Assert.Equal(15, half.Grade("½ A").SignificantFigures);
        Assert.Equal(GradingOutcome.WrongValue, half.Grade("1/3 A").Outcome);
    }

    [Fact]
    public void Grade_SignificantFigures_AreHeldAgainstTheTolerance()
    {
        // 0.750 A: two figures of it are the same number, so that nothing is wrong; many more say more than is known.
        Problem problem = Enumerable.Range(0, 100_000).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.Power, Difficulty.OneStep)).First(p => p.Answer.Unit == "A" && p.Answer.Value == 0.75);

        Assert.Equal("Right.", problem.Grade("0.750 A").Message);
        Assert.Equal("Right.", problem.Grade("0.75 A").Message);
        Assert.Equal("Right.", problem.Grade("750.00 mA").Message);
        Assert.Contains("3 are enough", problem.Grade("0.750000 A").Message, StringComparison.Ordinal);
        Assert.Equal(GradingOutcome.TooFewFigures, problem.Grade("0.8 A").Outcome);
        // Right to the tolerance, though one figure of four is missing.
        Problem drop = Enumerable.Range(0, 2000).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.VoltageAtLoad, Difficulty.OneStep)).First(p => p.Answer.Text.StartsWith("11.32", StringComparison.Ordinal));
        GradingResult three = drop.Grade("11.3 V");
        Assert.True(three.Outcome is GradingOutcome.TooFewFigures or GradingOutcome.Correct);
        Assert.Contains("4 significant figures", three.Message, StringComparison.Ordinal);
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
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            string sheet = SheetSnapshotTests.Text("one-step-metric");
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Problem again = ProblemGenerator.Create(seed: 42, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps);
            Assert.Equal(Drop.Statement, again.Statement);
            Assert.Equal(Drop.Solution.ToText(), again.Solution.ToText());
            Assert.True(again.Grade(again.Answer.Text).IsCorrect);
            Assert.True(again.Grade(again.Answer.Text, CultureInfo.GetCultureInfo(culture)).IsCorrect);
            Assert.Equal(sheet, SheetSnapshotTests.Text("one-step-metric"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
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

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" \u00A0\t")]
    [InlineData("\u200F\u200E")]
    [InlineData("\0\u0001\u001F")]
    public void Grade_NothingWritten_SaysThatNoAnswerWasGiven(string? text)
    {
        GradingResult verdict = Drop.Grade(text);

        Assert.Equal(GradingOutcome.NoAnswer, verdict.Outcome);
        Assert.StartsWith("No answer was given.", verdict.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_TenMegabytes_IsRefusedAtOnce() =>
        Assert.All(["1", " ", "e", "\u0660", "\uD835"], piece => Assert.Equal(GradingOutcome.Unreadable, Drop.Grade(new StringBuilder().Insert(0, piece, 10_000_000).ToString()).Outcome));

    [Fact]
    public void Grade_Fuzz_NeverThrowsAndAlwaysSaysSomething()
    {
        // Every seed of the fuzz is fixed: the texts are the same each run.
        Random random = new(20_261_125);
        string[] pieces = ["1", "2", "0", "9", ".", ",", " ", "-", "−", "e", "E", "×10", "^", "/", "A", "V", "mΩ", "Ω/m", "AWG", "#", "/0", "°", "C", "F", "%", "²", "⁻³", "'", "=", "\u200F", "\u0663", "\0", "\uDC00", "🔥", "kft", "1000 ft", "µ", "10", "mm2", "(", "½", "\uD835\uDFD0", "approx ", "size ", "No. ", "ga", ":", "≈", "×", "\u202E", "\u2067", "१", "۵", "߁"];
        CultureInfo[] cultures = [CultureInfo.InvariantCulture, CultureInfo.GetCultureInfo("de-DE"), CultureInfo.GetCultureInfo("ar-SA"), CultureInfo.GetCultureInfo("tr-TR"), CultureInfo.GetCultureInfo("fa-IR"), CultureInfo.GetCultureInfo("en-US"), CultureInfo.GetCultureInfo("fr-FR"), CultureInfo.GetCultureInfo("fr-CH"), CultureInfo.GetCultureInfo("hi-IN")];
        Problem[] problems = [Drop, Size, Fuse, ProblemGenerator.Create(3, ProblemTopic.Power, Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.MultipleChoice),
            ProblemGenerator.Create(3, ProblemTopic.AdiabaticHeating, Difficulty.SeveralSteps, ProblemUnits.Mixed, ProblemForm.FindTheMistake)];
        for (int i = 0; i < 120_000; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(100) == 0 ? random.Next(400) : random.Next(9)).Select(_ => random.Next(5) == 0 ? ((char)random.Next(0x10000)).ToString() : pieces[random.Next(pieces.Length)]));
            GradingResult verdict = problems[i % problems.Length].Grade(text, cultures[i % cultures.Length]);
            Assert.False(string.IsNullOrWhiteSpace(verdict.Message));
            Assert.True(verdict.Value is null || double.IsFinite(verdict.Value.Value));
        }
    }

    private static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}

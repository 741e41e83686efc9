using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class ProblemGeneratorTests
{
    [Fact]
    public void Create_SameSeed_SameProblem()
    {
        foreach (ProblemTopic topic in Enum.GetValues<ProblemTopic>())
        {
            Problem one = ProblemGenerator.Create(-5, topic, Difficulty.SeveralSteps, ProblemUnits.Mixed, ProblemForm.MultipleChoice);
            Problem other = ProblemGenerator.Create(-5, topic, Difficulty.SeveralSteps, ProblemUnits.Mixed, ProblemForm.MultipleChoice);
            Assert.Equal(one.Statement, other.Statement);
            Assert.Equal(one.Answer.Value, other.Answer.Value);
            Assert.Equal(one.Solution.ToMarkdown(), other.Solution.ToMarkdown());
        }
    }

    [Fact]
    public void Create_OtherSeeds_OtherProblems()
    {
        int different = Enumerable.Range(0, 200).Select(seed => ProblemGenerator.Create(seed, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps).Statement).Distinct().Count();

        // Of the many thousand combinations of world, load, length and wire, two may meet by chance.
        Assert.InRange(different, 195, 200);
    }

    [Fact]
    public void Create_OtherForm_KeepsTheNumbers()
    {
        Problem[] forms = [.. Enum.GetValues<ProblemForm>().Select(form => ProblemGenerator.Create(11, ProblemTopic.ChassisReturn, Difficulty.SeveralSteps, ProblemUnits.Metric, form))];

        Assert.All(forms, problem => Assert.Equal(forms[0].Answer.Text, problem.Answer.Text));
        Assert.All(forms, problem => Assert.Equal(forms[0].WrongAnswers.Select(wrong => wrong.Text), problem.WrongAnswers.Select(wrong => wrong.Text)));
    }

    [Theory]
    [InlineData(ProblemSetting.Van, "camper van")]
    [InlineData(ProblemSetting.Boat, "sailing boat")]
    [InlineData(ProblemSetting.FarmMachine, "tractor")]
    [InlineData(ProblemSetting.ModelRailway, "model railway")]
    [InlineData(ProblemSetting.OffGridCabin, "cabin")]
    [InlineData(ProblemSetting.StageLighting, "stage")]
    [InlineData(ProblemSetting.Workbench, "workshop")]
    [InlineData(ProblemSetting.Robot, "robot")]
    [InlineData(ProblemSetting.FoodWagon, "wagon")]
    public void Create_InASetting_PlaysThere(ProblemSetting setting, string word)
    {
        foreach (ProblemTopic topic in Enum.GetValues<ProblemTopic>())
        {
            foreach (Difficulty difficulty in Enum.GetValues<Difficulty>())
            {
                Problem problem = ProblemGenerator.Create(1, topic, difficulty, ProblemUnits.Metric, ProblemForm.Numeric, setting);
                Assert.Equal(setting, problem.Setting);
                Assert.Contains(word, problem.Statement, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Create_Units_AreThoseAskedFor()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            string metric = ProblemGenerator.Create(seed, ProblemTopic.TemperatureCorrection, Difficulty.SeveralSteps).Statement;
            string us = ProblemGenerator.Create(seed, ProblemTopic.TemperatureCorrection, Difficulty.SeveralSteps, ProblemUnits.UsCustomary).Statement;
            string mixed = ProblemGenerator.Create(seed, ProblemTopic.TemperatureCorrection, Difficulty.SeveralSteps, ProblemUnits.Mixed).Statement;
            string[] customary = ["AWG", "\u00A0ft", "°F"];
            Assert.All(customary, unit => Assert.DoesNotContain(unit, metric, StringComparison.Ordinal));
            Assert.All(customary, unit => Assert.Contains(unit, us, StringComparison.Ordinal));
            Assert.InRange(customary.Count(unit => mixed.Contains(unit, StringComparison.Ordinal)), 1, 2);
        }
    }

    [Fact]
    public void Create_ExtremeSeeds_Work() => Assert.All([long.MinValue, -1, 0, long.MaxValue], seed =>
        Assert.Equal(seed, ProblemGenerator.Create(seed, ProblemTopic.OhmsLaw, Difficulty.OneStep).Seed));

    [Fact]
    public void Create_FindsAPlausibleDrawLongBeforeItGivesUp()
    {
        int most = 0;
        foreach (ProblemTopic topic in Enum.GetValues<ProblemTopic>())
        {
            foreach (Difficulty difficulty in Enum.GetValues<Difficulty>())
            {
                foreach (ProblemSetting setting in Enum.GetValues<ProblemSetting>())
                {
                    ProblemGenerator.Create(new ProblemRequest(9, topic, difficulty, ProblemUnits.UsCustomary, ProblemForm.Numeric, setting), out int attempts);
                    most = Math.Max(most, attempts);
                }
            }
        }

        Assert.InRange(most, 1, ProblemGenerator.MostAttempts / 10);
    }

    [Fact]
    public void Create_UnknownEnum_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("topic", () => ProblemGenerator.Create(1, (ProblemTopic)20, Difficulty.OneStep));
        Assert.Throws<ArgumentOutOfRangeException>("topic", () => ProblemGenerator.Create(1, (ProblemTopic)(-1), Difficulty.OneStep));
        Assert.Throws<ArgumentOutOfRangeException>("difficulty", () => ProblemGenerator.Create(1, ProblemTopic.Power, (Difficulty)3));
        Assert.Throws<ArgumentOutOfRangeException>("units", () => ProblemGenerator.Create(1, ProblemTopic.Power, Difficulty.OneStep, (ProblemUnits)3));
        Assert.Throws<ArgumentOutOfRangeException>("form", () => ProblemGenerator.Create(1, ProblemTopic.Power, Difficulty.OneStep, ProblemUnits.Metric, (ProblemForm)3));
        Assert.Throws<ArgumentOutOfRangeException>("setting", () => ProblemGenerator.Create(1, ProblemTopic.Power, Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.Numeric, (ProblemSetting)9));
    }

    [Theory]
    [InlineData(0.0172, 2, "0.017")]
    [InlineData(2.55, 2, "2.6")]
    [InlineData(9.996, 3, "10")]
    [InlineData(1234, 2, "1200")]
    [InlineData(0.5, 3, "0.5")]
    public void Rounding_Figures(double value, int figures, string text) =>
        Assert.Equal(text, Rounding.Figures(value, figures).ToString(System.Globalization.CultureInfo.InvariantCulture));

    [Theory]
    [InlineData(0.42, 3, "0.420")]
    [InlineData(-0.042, 2, "−0.042")]
    [InlineData(1234.5, 3, "1230")]
    [InlineData(12, 2, "12")]
    [InlineData(9.996, 3, "10.0")]
    [InlineData(0, 3, "0")]
    public void AnswerText_Digits_KeepTheZerosThatCount(double value, int figures, string text) => Assert.Equal(text, AnswerText.Digits(value, figures));
}

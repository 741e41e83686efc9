using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That the key of a design problem holds the defence that its statement asks for, with numbers worked out from the printed text.</summary>
public class DesignDefenceTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    [Fact]
    public void Statement_AsksForBothNeighbours_AndTheKeyAnswers()
    {
        Problem[] designs = [.. many.All.Where(problem => problem.Difficulty == Difficulty.Design)];
        Assert.NotEmpty(designs);
        Assert.All(designs, problem =>
        {
            Assert.EndsWith(problem.Defence, problem.Statement, StringComparison.Ordinal);
            Assert.Contains("sentence", problem.Defence, StringComparison.Ordinal);
            Assert.Contains("fuse", problem.Defence, StringComparison.Ordinal);
            Holds(problem, Assert.Single(problem.Solution.Notes, note => note.Heading == "In defence of the choice").Lines);
        });
        Assert.True(designs.Select(problem => problem.Defence).Distinct().Count() >= 3);
        Assert.All(many.All.Where(problem => problem.Difficulty != Difficulty.Design), problem => Assert.Empty(problem.Defence));
    }

    [Fact]
    public void Statements_OfAWorld_AreItsOwn()
    {
        // Without its numbers, the sentences of one world are none of another's.
        string[] openings = [.. Enum.GetValues<ProblemSetting>().Select(setting =>
            ProblemGenerator.Create(1, ProblemTopic.VoltageDrop, Difficulty.Design, ProblemUnits.Metric, ProblemForm.Numeric, setting).Story.Split(". ")[0])];
        Assert.Equal(9, openings.Select(words => string.Concat(words.Where(c => !char.IsDigit(c)))).Distinct().Count());
        // A design problem is no essay: what is given, before its table, in at most as many words as fit a few lines.
        Assert.All(many.All.Where(problem => problem.Difficulty == Difficulty.Design), problem => Assert.InRange(problem.Story.Split(' ').Length, 40, 180));
    }

    [Theory]
    [InlineData(ProblemSetting.Boat, ProblemUnits.UsCustomary, "33 CFR 183.425")]
    [InlineData(ProblemSetting.Van, ProblemUnits.UsCustomary, "NEC Table 310.16")]
    [InlineData(ProblemSetting.Robot, ProblemUnits.UsCustomary, "NEC Table 310.16")]
    [InlineData(ProblemSetting.OffGridCabin, ProblemUnits.Metric, "IEC 60364-5-52")]
    [InlineData(ProblemSetting.FarmMachine, ProblemUnits.Metric, "handbook")]
    public void Ampacity_ComesFromRulesThatFitTheWorld(ProblemSetting setting, ProblemUnits units, string table)
    {
        for (int seed = 0; seed < 20; seed++)
        {
            Problem problem = ProblemGenerator.Create(seed, ProblemTopic.AmpacityDerating, Difficulty.SeveralSteps, units, ProblemForm.Numeric, setting);
            Assert.Contains(table, problem.Statement, StringComparison.Ordinal);
            Problem design = ProblemGenerator.Create(seed, ProblemTopic.SmallestSize, Difficulty.Design, units, ProblemForm.Numeric, setting);
            Assert.Equal(setting == ProblemSetting.Boat && units == ProblemUnits.UsCustomary, design.Solution.Steps.Any(step => step.Source?.Title.Contains("33 CFR", StringComparison.Ordinal) == true));
        }
    }

    private static void Holds(Problem problem, IReadOnlyList<string> lines)
    {
        PrintedProblem p = new(problem);
        int at = IndependentDesigner.Choose(problem, p);
        double amperes = p["P"] / p["U"], most = p["p"] / 100 * p["U"], fuse = IndependentDesigner.Fuse(p);
        double Volts(int row) => amperes * IndependentDesigner.Ohms(problem, p, row);
        double Carries(int row) => PrintedProblem.Number(p.Table[row][^1]) * p["f"];
        string thinner = lines[0], thicker = lines[1];

        Assert.StartsWith(p.Table[at - 1][0], thinner, StringComparison.Ordinal);
        Assert.True(Volts(at - 1) > most || Carries(at - 1) < fuse);
        Assert.Equal(Volts(at - 1) > most, Says(thinner, "loses", Volts(at - 1)));
        Assert.Equal(Carries(at - 1) < fuse, Says(thinner, "may carry", Carries(at - 1)));
        Assert.StartsWith(p.Table[at + 1][0], thicker, StringComparison.Ordinal);
        Assert.True(Says(thicker, "loses", Volts(at)));
        Assert.True(Says(thicker, "V of the", most));
        Assert.True(Says(thicker, "may carry", Carries(at)));
        double[] ratings = p.Ratings();
        int which = Array.IndexOf(ratings, fuse);
        if (which > 0)
        {
            Assert.True(amperes / ratings[which - 1] > p["k"]);
            Assert.Contains(lines, line => line.StartsWith($"A {ratings[which - 1].ToString(CultureInfo.InvariantCulture)}\u00A0A fuse", StringComparison.Ordinal) && Says(line, "loaded to", amperes / ratings[which - 1]));
        }

        if (which < ratings.Length - 1)
        {
            string above = Assert.Single(lines, line => line.StartsWith($"A {ratings[which + 1].ToString(CultureInfo.InvariantCulture)}\u00A0A fuse", StringComparison.Ordinal));
            Assert.Equal(Carries(at) < ratings[which + 1], above.Contains("more than the wire may carry", StringComparison.Ordinal));
        }
    }

    // The number after some words, to the three figures that it is printed with.
    private static bool Says(string line, string words, double value)
    {
        int at = line.IndexOf(words, StringComparison.Ordinal);
        if (at < 0)
        {
            return false;
        }

        double printed = PrintedProblem.Numbers(line[(at + words.Length)..]).First();
        double unit = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Abs(printed - value) <= unit / 2 * (1 + 1e-9);
    }
}

using System.Xml.Linq;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Teaching;

public class ClassSetTests
{
    private static readonly ProblemSheet Sheet = ProblemSheet.Of("Test", [.. Enum.GetValues<ProblemTopic>().Select((topic, i) =>
        ProblemGenerator.Create(i, topic, (Difficulty)(i % 3), (ProblemUnits)(i % 3), (ProblemForm)(i / 3 % 3)))]);

    private static readonly ClassSet Set = ClassSet.Create(Sheet, 30);

    [Fact]
    public void Create_Variants_HaveOtherStatementsAndOtherNumbersInEveryPlace()
    {
        Assert.Equal(30, Set.Variants.Count);
        for (int q = 0; q < Sheet.Problems.Count; q++)
        {
            Problem[] same = [.. Set.Variants.Select(variant => variant.Problems[q])];
            Assert.Single(same.Select(problem => (problem.Topic, problem.Difficulty, problem.Units, problem.Form)).Distinct());
            Assert.Equal(30, same.Select(problem => problem.Statement).Distinct().Count());
            Assert.Equal(30, same.Select(problem => string.Join(";", problem.Givens.Select(given => given.Text))).Distinct().Count());
        }
    }

    [Fact]
    public void Create_FirstVariant_IsTheSheetItself() => Assert.Equal(Sheet.Problems, Set.Variants[0].Problems);

    [Fact]
    public void Create_Again_GivesTheSame_AndMoreVariantsBeginWithThem()
    {
        ClassSet again = ClassSet.Create(Sheet, 5);

        Assert.Equal(Set.Variants.Take(5).Select(variant => variant.ToHtmlPage(SheetPart.Problems)), again.Variants.Select(variant => variant.ToHtmlPage(SheetPart.Problems)));
    }

    [Fact]
    public void Create_ASettingThatWasAskedFor_IsKept()
    {
        ProblemSheet boat = ProblemSheet.Of("Boat", [ProblemGenerator.Create(1, ProblemTopic.VoltageDrop, Difficulty.SeveralSteps, ProblemUnits.Metric, ProblemForm.Numeric, ProblemSetting.Boat)]);

        Assert.All(ClassSet.Create(boat, 12).Variants, variant => Assert.Equal(ProblemSetting.Boat, variant.Problems[0].Setting));
    }

    [Fact]
    public void Create_MoreThanCanBeToldApart_IsRefusedWithTheProblemAndTheNumber()
    {
        // A derating problem of one step has two numbers, both from tables: a few hundred pairs at most.
        ProblemSheet narrow = ProblemSheet.Create(8, 2, [ProblemTopic.OhmsLaw, ProblemTopic.AmpacityDerating], Difficulty.OneStep);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>("variants", () => ClassSet.Create(narrow, 500));
        int most = (int)PrintedProblem.Numbers(refused.Message).First();

        Assert.Contains("problem 2 (Ampacity and derating (one step))", refused.Message, StringComparison.Ordinal);
        Assert.InRange(most, 30, 499);
        Assert.Equal(most, ClassSet.Create(narrow, most).Variants.Count);
        Assert.Throws<ArgumentOutOfRangeException>("variants", () => ClassSet.Create(narrow, most + 1));
    }

    [Fact]
    public void Create_ASheetThatRepeatsItself_IsRefused()
    {
        Problem problem = Sheet.Problems[0];

        Assert.Contains("repeats itself: problem 2", Assert.Throws<ArgumentOutOfRangeException>("variants", () => ClassSet.Create(ProblemSheet.Of("Twice", [problem, problem]), 1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_BadArguments_Throw()
    {
        Assert.Throws<ArgumentNullException>("sheet", () => ClassSet.Create(null!, 3));
        Assert.Throws<ArgumentOutOfRangeException>("variants", () => ClassSet.Create(Sheet, 0));
        Assert.Throws<ArgumentOutOfRangeException>("variants", () => ClassSet.Create(Sheet, 501));
        Assert.Throws<ArgumentOutOfRangeException>("index", () => ClassSet.Label(500));
        Assert.Throws<ArgumentOutOfRangeException>("index", () => ClassSet.Label(-1));
        Assert.Throws<ArgumentNullException>("layout", () => Set.ToHtmlPage(null!));
    }

    [Fact]
    public void Label_GoesOnAfterZ()
    {
        int[] places = [0, 1, 25, 26, 51, 52, 499];
        Assert.Equal(["A", "B", "Z", "AA", "AZ", "BA", "SF"], places.Select(ClassSet.Label));
        Assert.Equal(500, Enumerable.Range(0, 500).Select(ClassSet.Label).Distinct().Count());
        Assert.Equal("Test, variant AD", Set.Variants[29].Title);
    }

    [Fact]
    public void Marker_HasEveryAnswerByVariantAndProblem()
    {
        string[] lines = Set.ToMarkdown().Split('\n');
        string page = Set.ToHtmlPage(new SheetLayout(SheetPaper.A4, pageNumbers: true));
        XElement[] rows = [.. XDocument.Parse(page["<!DOCTYPE html>".Length..]).Descendants("tr")];

        Assert.Equal("Answers: Test", Set.ToString());
        Assert.Equal(31, rows.Length);
        Assert.Contains("A4 landscape", page, StringComparison.Ordinal);
        for (int v = 0; v < 30; v++)
        {
            string[] cells = [.. rows[v + 1].Elements("td").Select(cell => cell.Value)];
            Assert.Equal(ClassSet.Label(v), cells[0]);
            Assert.Equal($"| {string.Join(" | ", cells)} |", Assert.Single(lines, line => line.StartsWith($"| {ClassSet.Label(v)} |", StringComparison.Ordinal)));
            Assert.All(Set.Variants[v].Problems.Zip(cells.Skip(1)), pair => Assert.Contains(pair.First.Answer.Text, pair.Second, StringComparison.Ordinal));
        }
    }
}

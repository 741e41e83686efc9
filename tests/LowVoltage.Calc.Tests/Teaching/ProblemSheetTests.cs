using System.Xml.Linq;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class ProblemSheetTests
{
    private static readonly ProblemSheet Sheet = ProblemSheet.Create(
        5, 12, [ProblemTopic.VoltageDrop, ProblemTopic.SmallestSize, ProblemTopic.FuseOpeningTime], Difficulty.Design, ProblemUnits.Metric, ProblemForm.MultipleChoice);

    [Fact]
    public void Create_TakesTopicsInTurn_AndSeedsByNumber()
    {
        Assert.Equal(12, Sheet.Problems.Count);
        Assert.Equal([ProblemTopic.VoltageDrop, ProblemTopic.SmallestSize, ProblemTopic.FuseOpeningTime, ProblemTopic.VoltageDrop], Sheet.Problems.Take(4).Select(problem => problem.Topic));
        Assert.Equal([5001L, 5002, 5003], Sheet.Problems.Take(3).Select(problem => problem.Seed));
        Assert.Equal(5002, ProblemSheet.SeedOf(5, 2));
        Assert.Equal("Wiring problems, sheet 5", Sheet.Title);
        Assert.Equal(Enum.GetValues<ProblemTopic>(), ProblemSheet.Create(1, 20, [], Difficulty.OneStep).Problems.Select(problem => problem.Topic));
    }

    [Fact]
    public void Create_BadArguments_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>("count", () => ProblemSheet.Create(1, 0, [], Difficulty.OneStep));
        Assert.Throws<ArgumentOutOfRangeException>("count", () => ProblemSheet.Create(1, 1001, [], Difficulty.OneStep));
        Assert.Throws<ArgumentNullException>("topics", () => ProblemSheet.Create(1, 1, null!, Difficulty.OneStep));
        Assert.Throws<ArgumentNullException>("title", () => ProblemSheet.Of(null!, Sheet.Problems));
        Assert.Throws<ArgumentNullException>("problems", () => ProblemSheet.Of("x", null!));
        Assert.Throws<ArgumentNullException>("problems", () => ProblemSheet.Of("x", [null!]));
        Assert.Throws<ArgumentException>("problems", () => ProblemSheet.Of("x", []));
        Assert.Throws<ArgumentOutOfRangeException>("part", () => Sheet.ToMarkdown((SheetPart)3));
        Assert.Throws<ArgumentOutOfRangeException>("part", () => Sheet.ToHtmlPage((SheetPart)(-1)));
    }

    [Fact]
    public void Problems_DoNotGiveAwayTheKey()
    {
        string problems = Sheet.ToMarkdown(SheetPart.Problems), key = Sheet.ToMarkdown(SheetPart.Key);

        Assert.DoesNotContain("Usual mistakes", problems, StringComparison.Ordinal);
        Assert.DoesNotContain("Answer:", problems, StringComparison.Ordinal);
        Assert.Contains("Usual mistakes", key, StringComparison.Ordinal);
        Assert.Equal(Sheet.ToMarkdown(SheetPart.Both), problems + "\n" + key);
        Assert.DoesNotContain("Usual mistakes", Sheet.ToHtmlPage(SheetPart.Problems), StringComparison.Ordinal);
        Assert.All(Sheet.Problems, problem => Assert.Contains(problem.Answer.Text, key, StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_SaysThatItIsInventedAndForPaperOnly()
    {
        foreach (string text in new[] { Sheet.ToMarkdown(SheetPart.Problems), Sheet.ToHtmlPage(SheetPart.Problems) })
        {
            Assert.Contains("invented", text, StringComparison.Ordinal);
            Assert.Contains("Do not try out", text, StringComparison.Ordinal);
            Assert.Contains(Sheet.Problems[2].Caution, text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(SheetPart.Problems)]
    [InlineData(SheetPart.Key)]
    [InlineData(SheetPart.Both)]
    public void HtmlPage_IsWellFormed_AndFetchesNothing(SheetPart part)
    {
        string page = Sheet.ToHtmlPage(part);
        XDocument document = XDocument.Parse(page["<!DOCTYPE html>".Length..]);

        Assert.Equal("html", document.Root!.Name.LocalName);
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", page, StringComparison.Ordinal);
        Assert.Contains("@page", page, StringComparison.Ordinal);
        Assert.Contains("break-inside:avoid", page, StringComparison.Ordinal);
        Assert.Equal(part == SheetPart.Key ? 0 : 12, document.Descendants("article").Count(article => (string?)article.Attribute("class") == "problem"));
        Assert.Equal(part == SheetPart.Problems ? 0 : 12, document.Descendants("article").Count(article => (string?)article.Attribute("class") == "solution"));
        Assert.Equal(part != SheetPart.Problems, document.Descendants("math").Any());
    }
}

using System.Xml.Linq;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

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
        Assert.Throws<ArgumentOutOfRangeException>("part", () => Sheet.ToMarkdown((SheetPart)2));
        Assert.Throws<ArgumentNullException>("layout", () => Sheet.ToMarkdown(SheetPart.Key, null!));
        Assert.Throws<ArgumentNullException>("layout", () => Sheet.ToHtmlPage(SheetPart.Key, null!));
        Assert.Throws<ArgumentOutOfRangeException>("version", () => Sheet.ToQtiPackage((QtiVersion)2));
        Assert.Throws<ArgumentOutOfRangeException>("part", () => Sheet.ToHtmlPage((SheetPart)(-1)));
    }

    [Theory]
    [InlineData(ProblemForm.Numeric)]
    [InlineData(ProblemForm.MultipleChoice)]
    public void Problems_HoldNothingOfTheKey(ProblemForm form)
    {
        ProblemSheet sheet = ProblemSheet.Create(31, 20, [], Difficulty.SeveralSteps, ProblemUnits.Metric, form);
        string key = sheet.ToMarkdown(SheetPart.Key), keyPage = sheet.ToHtmlPage(SheetPart.Key);
        foreach (string student in new[] { sheet.ToMarkdown(SheetPart.Problems), sheet.ToHtmlPage(SheetPart.Problems) })
        {
            Assert.DoesNotContain("Usual mistakes", student, StringComparison.Ordinal);
            Assert.DoesNotContain("Answer:", student, StringComparison.Ordinal);
            foreach (Problem problem in sheet.Problems)
            {
                // An explanation or a step of the solution would give the way; a mistake's name alone could be a word of a statement.
                Assert.All(problem.KnownMistakes, wrong => Assert.DoesNotContain(wrong.Mistake.Explanation, student, StringComparison.Ordinal));
                Assert.All(problem.Solution.Steps.Where(step => step.Reason.Length > 0), step => Assert.DoesNotContain(step.Reason, student, StringComparison.Ordinal));
                Assert.True(form != ProblemForm.Numeric || !PrintedProblem.Prints(problem.Statement.Replace(problem.Instruction, ""), problem.Answer.Text) || problem.Givens.Any(given => given.Text == problem.Answer.Text) || problem.Standards.Count > 0, problem.Statement);
            }
        }

        Assert.All(sheet.Problems, problem => Assert.Contains(problem.Answer.Text, key, StringComparison.Ordinal));
        Assert.All(sheet.Problems, problem => Assert.Contains(problem.Answer.Text, keyPage, StringComparison.Ordinal));
        Assert.All(sheet.Problems.SelectMany(problem => problem.KnownMistakes), wrong => Assert.Contains(wrong.Mistake.Name, key, StringComparison.Ordinal));
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
    public void HtmlPage_IsWellFormed_AndFetchesNothing(SheetPart part)
    {
        string page = Sheet.ToHtmlPage(part);
        XDocument document = XDocument.Parse(page["<!DOCTYPE html>".Length..]);

        Assert.Equal("html", document.Root!.Name.LocalName);
        // The one address is the name of the drawing language, which nobody fetches.
        Assert.DoesNotContain("http", page.Replace("xmlns=\"http://www.w3.org/2000/svg\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("url(", page, StringComparison.Ordinal);
        Assert.Contains("@page", page, StringComparison.Ordinal);
        Assert.Contains("break-inside:avoid", page, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", page, StringComparison.Ordinal);
        Assert.Equal(part == SheetPart.Key ? 0 : 12, document.Descendants("article").Count(article => (string?)article.Attribute("class") == "problem"));
        Assert.Equal(part == SheetPart.Problems ? 0 : 12, document.Descendants("article").Count(article => (string?)article.Attribute("class") == "solution"));
        Assert.Equal(part != SheetPart.Problems, document.Descendants("math").Any());
        string[] ids = [.. document.Descendants().Select(element => (string?)element.Attribute("id")).OfType<string>()];
        Assert.Equal(part == SheetPart.Problems ? 24 : 0, ids.Length);
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void Layout_ShowsWhatItIsAskedFor()
    {
        SheetLayout full = new(SheetPaper.Letter, nameLine: true, points: true, pageNumbers: true, workingSpace: Length.FromCentimeters(3.5));
        SheetLayout bare = new(nameLine: false, diagrams: false);
        string page = Sheet.ToHtmlPage(SheetPart.Problems, full), plain = Sheet.ToHtmlPage(SheetPart.Problems, bare);

        Assert.Contains("size:letter", page, StringComparison.Ordinal);
        Assert.Contains("counter(page)", page, StringComparison.Ordinal);
        Assert.Equal(12, page.Split("height:35mm").Length - 1);
        Assert.Contains(">Name</span>", page, StringComparison.Ordinal);
        Assert.Equal(12, page.Split(">8 points<").Length - 1);
        Assert.Contains("of 96", page, StringComparison.Ordinal);
        Assert.Equal(12, page.Split("<svg ").Length - 1);
        Assert.Contains("size:A4", Sheet.ToHtmlPage(SheetPart.Problems, new SheetLayout(SheetPaper.A4)), StringComparison.Ordinal);
        Assert.Contains("size:auto", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("counter(page)", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"space\"", plain, StringComparison.Ordinal);
        Assert.DoesNotContain(">Name</span>", plain, StringComparison.Ordinal);
        Assert.DoesNotContain(" points", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg ", plain, StringComparison.Ordinal);
        Assert.Contains("design, 8 points", Sheet.ToMarkdown(SheetPart.Problems, full), StringComparison.Ordinal);
        Assert.Contains("| 8 |", Sheet.ToMarkdown(SheetPart.Key, full), StringComparison.Ordinal);
        Assert.DoesNotContain("Circuit:", Sheet.ToMarkdown(SheetPart.Problems, bare), StringComparison.Ordinal);
    }

    [Fact]
    public void Layout_ATitleThatLooksLikeStyle_StaysATitle()
    {
        ProblemSheet sheet = ProblemSheet.Of("it's }</style><b> \\ \"x\" 🔌", [Sheet.Problems[0]]);
        string page = sheet.ToHtmlPage(SheetPart.Problems, new SheetLayout(pageNumbers: true));

        Assert.Equal("it's }</style><b> \\ \"x\" 🔌", (string?)XDocument.Parse(page["<!DOCTYPE html>".Length..]).Descendants("h1").Single());
        // The number of the plug, U+1F50C, and of the apostrophe, U+0027.
        Assert.Contains("\\1f50c ", page, StringComparison.Ordinal);
        Assert.Contains("it\\27 s", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Layout_BadArguments_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>("paper", () => new SheetLayout((SheetPaper)3));
        Assert.Throws<ArgumentOutOfRangeException>("workingSpace", () => new SheetLayout(workingSpace: Length.FromMillimeters(251)));
        Assert.Throws<ArgumentOutOfRangeException>("workingSpace", () => new SheetLayout(workingSpace: Length.FromMillimeters(-1)));
        Assert.Equal(0, SheetLayout.Usual.WorkingSpace.Millimeters);
        Assert.Equal(SheetPaper.Any, SheetLayout.Usual.Paper);
        Assert.True(SheetLayout.Usual is { NameLine: true, Points: false, PageNumbers: false, Diagrams: true });
    }
}

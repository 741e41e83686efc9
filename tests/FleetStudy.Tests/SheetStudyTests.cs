using LowVoltage.Calc.Teaching;

namespace FleetStudy.Tests;

/// <summary>The study of the problem sheets.</summary>
public sealed class SheetStudyTests : TestFolder
{
    private static StudySpec Sheets(long variants, int piece) => new() { Study = "sheets", Variants = variants, PieceSize = piece, Seed = 3, Build = StudySpec.ThisBuild };

    [Fact]
    public void Count_GradesEveryKeyAndMistake()
    {
        StudySpec spec = Sheets(30, 30);
        ProblemSheet[] sheets = [.. Enumerable.Range(0, 30).Select(n => SheetStudy.Sheet(spec, n))];
        Tally tally = Piece.Calculate(spec, 0, default);
        Assert.Equal(sheets.Sum(s => s.Problems.Sum(p => 1 + p.WrongAnswers.Count)), tally.Pieces);
        Assert.Equal(30, tally.Variants);
        Assert.Equal(sheets.Count(s => s.Problems.Any(p => p.Topic == ProblemTopic.VoltageDrop)), tally.Options.Single(o => o.Key.EndsWith(" VoltageDrop", StringComparison.Ordinal)).Value.Variants);
        Assert.Equal(sheets.Select(s => s.Problems.Sum(p => p.Solution.Steps.Count)).Order().ElementAt(14), tally.Checks[SheetStudy.Steps].Margins.Percentile(50));
        Assert.Equal(sheets.Sum(s => s.Problems.Count(p => !p.Grade(p.Answer.Text).IsCorrect)), -tally.Checks[SheetStudy.Key].Worst.Sum(w => w.Margin));
    }

    [Fact]
    public void Sheets_AreAllDifferent()
    {
        StudySpec spec = Sheets(60, 60);
        string[] sheets = [.. Enumerable.Range(0, 60).Select(n => SheetStudy.Sheet(spec, n).ToMarkdown(SheetPart.Problems)), .. Enumerable.Range(0, 60).Select(n => SheetStudy.Sheet(spec with { Seed = 4 }, n).ToMarkdown(SheetPart.Problems))];
        Assert.Equal(120, sheets.Distinct().Count());
    }

    [Fact]
    public void Pages_AreTheSheets_AndNothingElseStays()
    {
        StudySpec spec = Sheets(3, 3) with { PagesFolder = Folder };
        _ = Piece.Calculate(spec, 0, default);
        _ = Piece.Calculate(spec, 0, default);
        Assert.Equal(["sheet-000000-key.html", "sheet-000000.html", "sheet-000001-key.html", "sheet-000001.html", "sheet-000002-key.html", "sheet-000002.html"], Directory.GetFiles(Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(SheetStudy.Sheet(spec, 1).ToHtmlPage(SheetPart.Problems), System.IO.File.ReadAllText(Path.Combine(Folder, "sheet-000001.html")));
    }
}

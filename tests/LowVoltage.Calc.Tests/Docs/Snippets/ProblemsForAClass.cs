using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ProblemsForAClass
{
    public static void AProblemAndItsGrading()
    {
        #region a-problem-and-its-grading
        Problem problem = ProblemGenerator.Create(seed: 42, ProblemTopic.VoltageDrop, Difficulty.OneStep);

        Console.WriteLine(problem.Statement);
        Console.WriteLine(problem.Diagram!.Description);
        Console.WriteLine($"Key: {problem.Answer.Text}");
        foreach (WrongAnswer wrong in problem.KnownMistakes)
        {
            Console.WriteLine($"{wrong.Text}: {wrong.Mistake.Name}");
        }

        Console.WriteLine(problem.Grade(problem.KnownMistakes[0].Text).Message);
        #endregion
    }

    public static void ASheetAndItsKey()
    {
        #region a-sheet-and-its-key
        ProblemSheet sheet = ProblemSheet.Create(seed: 12, count: 10, topics: [], Difficulty.SeveralSteps, ProblemUnits.UsCustomary, ProblemForm.Numeric);
        SheetLayout layout = new(SheetPaper.Letter, points: true, pageNumbers: true, workingSpace: Length.FromInches(1.5));
        string handOut = sheet.ToHtmlPage(SheetPart.Problems, layout);
        string key = sheet.ToHtmlPage(SheetPart.Key, layout);

        Console.WriteLine($"{sheet.Problems.Count} problems; answers in the page to hand out: {handOut.Contains("Usual mistakes")}; in the key: {key.Contains("Usual mistakes")}");
        #endregion
    }

    public static void VariantsForAClass()
    {
        #region variants-for-a-class
        ClassSet set = ClassSet.Create(ProblemSheet.Create(seed: 12, count: 3, topics: [], Difficulty.SeveralSteps), variants: 4);

        Console.WriteLine(set.ToMarkdown());
        Console.WriteLine(set.Variants[1].Problems[0].Statement);
        #endregion
    }

    public static void AQuizPackage()
    {
        #region a-quiz-package
        ProblemSheet sheet = ProblemSheet.Create(seed: 12, count: 10, topics: [], Difficulty.SeveralSteps);
        byte[] package = sheet.ToQtiPackage(QtiVersion.Qti30);

        // Write it to a file and import it into a quiz system.
        using System.IO.Compression.ZipArchive zip = new(new MemoryStream(package));
        Console.WriteLine(string.Join(", ", zip.Entries.Take(4).Select(entry => entry.FullName)) + ", …");
        #endregion
    }
}

using LowVoltage.Calc.Samples.ProblemSheet;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: exit codes, messages, what it writes and how it marks.</summary>
public sealed class ProblemSheetSampleTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("problem-sheet").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_PrintsTheProblemsOnly()
    {
        (int code, string output, string error) = Run("--seed", "3", "--count", "4", "--topics", "voltage-drop,FuseChoice");

        Assert.Equal(Program.Done, code);
        Assert.Empty(error);
        Assert.StartsWith("# Wiring problems, sheet 3", output, StringComparison.Ordinal);
        Assert.Contains("invented", output, StringComparison.Ordinal);
        Assert.Contains("## 4. Choice of a fuse (several steps)", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Usual mistakes", output, StringComparison.Ordinal);
        Assert.Equal(output, LowVoltage.Calc.Teaching.ProblemSheet.Create(3, 4, [ProblemTopic.VoltageDrop, ProblemTopic.FuseChoice], Difficulty.SeveralSteps).ToMarkdown(SheetPart.Problems));
    }

    [Fact]
    public void Run_Out_WritesThreeFilesAndSaysSo()
    {
        (int code, string output, _) = Run("--seed", "8", "--difficulty", "mixed", "--form", "mixed", "--units", "us-customary", "--out", Path.Combine(folder, "new"));

        Assert.Equal(Program.Done, code);
        string[] names = ["sheet-8-key.md", "sheet-8.html", "sheet-8.md"];
        Assert.Equal(names, Directory.GetFiles(Path.Combine(folder, "new")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(names, name => Assert.Contains(name, output, StringComparison.Ordinal));
        Assert.Contains("<math", File.ReadAllText(Path.Combine(folder, "new", "sheet-8.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Grade_MarksAFile()
    {
        IReadOnlyList<Problem> problems = LowVoltage.Calc.Teaching.ProblemSheet.Create(5, 4, [ProblemTopic.VoltageDrop], Difficulty.SeveralSteps).Problems;
        string all = Answers($"# mine\n1: {problems[0].Answer.Text}\n\n2 : {problems[1].Answer.Text}\n3: {problems[2].Answer.Text}\n4: {problems[3].Answer.Text}");
        string some = Answers($"1: {problems[0].Answer.Text}\n2: {problems[1].WrongAnswers[0].Text}\n3: 🔥");
        string[] sheet = ["--seed", "5", "--count", "4", "--topics", "VoltageDrop", "--grade"];

        (int allCode, string allOutput, _) = Run([.. sheet, all]);
        Assert.Equal(Program.Done, allCode);
        Assert.Contains("4 of 4 right.", allOutput, StringComparison.Ordinal);

        (int code, string output, _) = Run([.. sheet, some]);
        Assert.Equal(Program.SomeWrong, code);
        Assert.Contains("1 of 4 right.", output, StringComparison.Ordinal);
        Assert.Contains(problems[1].WrongAnswers[0].Mistake.Explanation, output, StringComparison.Ordinal);
        Assert.Contains("could not be read", output, StringComparison.Ordinal);
        Assert.Contains("no answer", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Grade_InACulture()
    {
        Problem problem = LowVoltage.Calc.Teaching.ProblemSheet.Create(5, 1, [ProblemTopic.VoltageDrop], Difficulty.SeveralSteps).Problems[0];
        string answers = Answers("1: " + problem.Answer.Text.Replace('.', ','));

        Assert.Equal(Program.Done, Run("--seed", "5", "--count", "1", "--topics", "VoltageDrop", "--culture", "de-DE", "--grade", answers).Code);
    }

    [Theory]
    [InlineData("--seed needs a value", "--seed")]
    [InlineData("not 'x'", "--seed", "x")]
    [InlineData("at most 18 digits", "--seed", "99999999999999999999")]
    [InlineData("from 1 to 1000", "--count", "0")]
    [InlineData("from 1 to 1000", "--count", "1001")]
    [InlineData("does not know 'Pipes'", "--topics", "VoltageDrop,Pipes")]
    [InlineData("does not know '3'", "--topics", "3")]
    [InlineData("OneStep, SeveralSteps, Design, Mixed", "--difficulty", "hard")]
    [InlineData("Metric, UsCustomary, Mixed", "--units", "furlongs")]
    [InlineData("does not know 'xx-XX'", "--culture", "xx-XX")]
    [InlineData("Unknown option --foo", "--foo", "1")]
    [InlineData("nowhere.txt", "--grade", "nowhere.txt")]
    public void Run_BadInput_SaysWhatIsWrong(string message, params string[] args)
    {
        (int code, string output, string error) = Run(args);

        Assert.Equal(Program.BadInput, code);
        Assert.Empty(output);
        Assert.Contains(message, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0: 1 A", "line 1")]
    [InlineData("11: 1 A", "1 to 10")]
    [InlineData("1 A", "line 1")]
    [InlineData("1: 1 A\n1: 2 A", "line 2: problem 1 is answered twice")]
    public void Run_BadAnswersFile_NamesTheLine(string text, string message)
    {
        (int code, _, string error) = Run("--grade", Answers(text));

        Assert.Equal(Program.BadInput, code);
        Assert.Contains(message, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Grade_TakesFilesAsEditorsWriteThem()
    {
        // A byte order mark and Windows line ends; an empty answer; what a console would obey, and what would fill it.
        Problem problem = LowVoltage.Calc.Teaching.ProblemSheet.Create(5, 3, [ProblemTopic.VoltageDrop], Difficulty.SeveralSteps).Problems[0];
        string path = Path.Combine(folder, "windows.txt");
        File.WriteAllText(path, $"# mine\r\n1: {problem.Answer.Text}\r\n2:\r\n3: \u001B[31m{new string('x', 500)}\r\n", new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        (int code, string output, string error) = Run("--seed", "5", "--count", "3", "--topics", "VoltageDrop", "--grade", path);

        Assert.Equal(Program.SomeWrong, code);
        Assert.Empty(error);
        Assert.Contains("1 of 3 right.", output, StringComparison.Ordinal);
        Assert.Contains("No answer was given", output, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001B", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 200));
    }

    [Fact]
    public void Run_Grade_OfWhatIsNoText_NamesTheLine()
    {
        string path = Path.Combine(folder, "garbled.bin");
        File.WriteAllBytes(path, [0xFF, 0x00, 0x9C, 0xC3, 0x28, 0x0A, 0x00, 0xFE]);
        (int code, string output, string error) = Run("--grade", path);

        Assert.Equal(Program.BadInput, code);
        Assert.Empty(output);
        Assert.Contains("line 1", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_NamesEveryTopic()
    {
        (int code, string output, _) = Run("--help");

        Assert.Equal(Program.Done, code);
        Assert.All(Enum.GetNames<ProblemTopic>(), topic => Assert.Contains(topic, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Readme_ShowsWhatTheSamplePrints()
    {
        string readme = Resource("ProblemSheet.README.md");
        string[] sheet = ["--seed", "7", "--count", "3", "--topics", "VoltageDrop,SmallestSize,ProspectiveCurrent", "--form", "mixed"];
        (_, string output, _) = Run(sheet);
        (_, string marked, _) = Run([.. sheet, "--grade", Answers("1: 0.399 V\n2: 10 mm2\n3: B")]);

        Assert.Contains(output.TrimEnd(), readme, StringComparison.Ordinal);
        Assert.Contains(marked.TrimEnd(), readme, StringComparison.Ordinal);
    }

    [Fact]
    public void DocsSheets_AreWhatTheSampleWrites()
    {
        (_, _, _) = Run("--seed", "12", "--count", "12", "--difficulty", "mixed", "--form", "mixed", "--out", folder);

        Assert.All(Directory.GetFiles(folder), file => Assert.Equal(Resource("Handed." + Path.GetFileName(file)), File.ReadAllText(file)));
    }

    private static string Resource(string name)
    {
        using StreamReader reader = new(typeof(ProblemSheetSampleTests).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new(), error = new();
        int code = Program.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }

    private string Answers(string text)
    {
        string path = Path.Combine(folder, Path.GetRandomFileName());
        File.WriteAllText(path, text);
        return path;
    }
}

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
    public void Run_Out_WritesProblemsAndKeyApartAndSaysSo()
    {
        (int code, string output, _) = Run("--seed", "8", "--difficulty", "mixed", "--form", "mixed", "--units", "us", "--out", Path.Combine(folder, "new"));

        Assert.Equal(Program.Done, code);
        string[] names = ["sheet-8-key.html", "sheet-8-key.md", "sheet-8.html", "sheet-8.md"];
        Assert.Equal(names, Directory.GetFiles(Path.Combine(folder, "new")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(names, name => Assert.Contains(name, output, StringComparison.Ordinal));
        Assert.Contains("<math", File.ReadAllText(Path.Combine(folder, "new", "sheet-8-key.html")), StringComparison.Ordinal);
        string page = File.ReadAllText(Path.Combine(folder, "new", "sheet-8.html"));
        Assert.DoesNotContain("<math", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Usual mistakes", page, StringComparison.Ordinal);
        Assert.DoesNotContain("mm²", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SingleFiles_EachWhereItIsAskedFor()
    {
        (int code, string output, string error) = Run("--count", "3", "--html", At("a/s.html"), "--key", At("k.md"), "--qti", At("q.zip"), "--qti-version", "2.1", "--points", "--page-numbers", "--space", "30", "--paper", "letter");

        Assert.Equal((Program.Done, ""), (code, error));
        Assert.Equal(3, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        string page = File.ReadAllText(At("a/s.html"));
        Assert.All(["size:letter", "height:30mm", "counter(page)", "4 points"], part => Assert.Contains(part, page, StringComparison.Ordinal));
        Assert.StartsWith("# Key: Wiring problems, sheet 1", File.ReadAllText(At("k.md")), StringComparison.Ordinal);
        using System.IO.Compression.ZipArchive zip = System.IO.Compression.ZipFile.OpenRead(At("q.zip"));
        using StreamReader item = new(zip.GetEntry("items/q001.xml")!.Open());
        Assert.Contains("<assessmentItem ", item.ReadToEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ClassSet_WritesVariantsAndTheTable_AndMarksOneOfThem()
    {
        string[] set = ["--seed", "4", "--count", "2", "--topics", "VoltageDrop", "--class-set", "3"];
        (int code, string output, string error) = Run([.. set, "--html", At("s.html"), "--key", At("s-key.html"), "--marker", At("table.md")]);

        Assert.Equal((Program.Done, ""), (code, error));
        Assert.Equal(["s-A.html", "s-B.html", "s-C.html", "s-key-A.html", "s-key-B.html", "s-key-C.html", "table.md"], Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(7, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        string[] row = [.. File.ReadAllLines(At("table.md")).Single(line => line.StartsWith("| B |", StringComparison.Ordinal)).Split('|', StringSplitOptions.TrimEntries)];

        string answers = Answers($"1: {row[2]}\n2: {row[3]}");
        Assert.Equal(Program.Done, Run([.. set, "--variant", "b", "--grade", answers]).Code);
        Assert.Equal(Program.SomeWrong, Run([.. set, "--variant", "C", "--grade", answers]).Code);
        Assert.Equal(Program.BadInput, Run([.. set, "--variant", "D", "--grade", answers]).Code);
    }

    [Fact]
    public void Run_AClassSetThatIsTooLarge_SaysHowManyThereAre()
    {
        (int code, string output, string error) = Run("--count", "1", "--topics", "AmpacityDerating", "--difficulty", "OneStep", "--class-set", "500", "--out", folder);

        Assert.Equal(Program.BadInput, code);
        Assert.Empty(output);
        Assert.Contains("must be at most", error, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder));
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
    [InlineData("Required argument missing for option: '--seed'.", "--seed")]
    [InlineData("not 'x'", "--seed", "x")]
    [InlineData("from -999999999999999999 to 999999999999999999", "--seed", "99999999999999999999")]
    [InlineData("from 1 to 1000", "--count", "0")]
    [InlineData("from 1 to 1000", "--count", "1001")]
    [InlineData("does not know 'Pipes'", "--topics", "VoltageDrop,Pipes")]
    [InlineData("does not know '3'", "--topics", "3")]
    [InlineData("OneStep, SeveralSteps, Design, Mixed", "--difficulty", "hard")]
    [InlineData("metric, us, mixed", "--units", "furlongs")]
    [InlineData("Any, A4, Letter", "--paper", "foolscap")]
    [InlineData("3.0, 2.1", "--qti-version", "1.2")]
    [InlineData("from 0 to 250", "--space", "251")]
    [InlineData("from 1 to 500", "--class-set", "0")]
    [InlineData("add --out, --html, --key, --marker or --qti", "--class-set", "3")]
    [InlineData("belong to --class-set", "--marker", "x.md")]
    [InlineData("needs --variant", "--class-set", "3", "--grade", "x.txt")]
    [InlineData("leave out --html", "--html", "x.html", "--grade", "x.txt")]
    [InlineData("does not know 'xx-XX'", "--culture", "xx-XX")]
    [InlineData("'--foo'", "--foo", "1")]
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
        Assert.All(["--class-set", "--key", "--html", "--qti", "--units", "--points", "--page-numbers", "--space", "Exit code"], option => Assert.Contains(option, output, StringComparison.Ordinal));
        Assert.Equal(output, Run("-h").Output);
    }

    [Fact]
    public void Readme_ShowsWhatTheSamplePrints()
    {
        string readme = Resource("ProblemSheet.README.md");
        string[] sheet = ["--seed", "7", "--count", "3", "--topics", "VoltageDrop,SmallestSize,ProspectiveCurrent", "--form", "mixed"];
        (_, string output, _) = Run(sheet);
        (_, string marked, _) = Run([.. sheet, "--grade", Answers("1: 0.171 V\n2: 1 mm2\n3: A")]);

        Assert.Contains(output.TrimEnd(), readme, StringComparison.Ordinal);
        Assert.Contains(marked.TrimEnd(), readme, StringComparison.Ordinal);
        // The line of usage names the running program, which here is that of the tests.
        string help = Run("--help").Output.TrimEnd();
        Assert.Contains(help[help.IndexOf("Options:", StringComparison.Ordinal)..], readme, StringComparison.Ordinal);
    }

    [Fact]
    public void DocsSheets_AreWhatTheSampleWrites()
    {
        (_, _, _) = Run("--seed", "12", "--count", "12", "--difficulty", "mixed", "--form", "mixed", "--out", folder);

        Assert.All(Directory.GetFiles(folder), file => Assert.Equal(Resource("Handed." + Path.GetFileName(file)), File.ReadAllText(file)));
    }

    private string At(string name) => Path.Combine(folder, name);

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

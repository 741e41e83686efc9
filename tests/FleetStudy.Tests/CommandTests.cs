using System.Globalization;
using LowVoltage.Calc.Teaching;

namespace FleetStudy.Tests;

/// <summary>The command line: what it refuses, what it prints.</summary>
public sealed class CommandTests : TestFolder
{
    [Theory]
    [InlineData("STUDY must be harness, sheets or join; it was 'boats'.", "boats")]
    [InlineData("--variants must be a whole number from 0 to 2000000000; it was '-1'.", "--variants", "-1")]
    [InlineData("--variants must be a whole number from 1 to 2985984; it was '2985985'.", "--variants", "2985985")]
    [InlineData("--variants must be a whole number from 1 to 1000000; it was '1000001'.", "sheets", "--variants", "1000001")]
    [InlineData("--seed must be a whole number from 0 to 1000000; it was '1.5'.", "--seed", "1.5")]
    [InlineData("--draws must be a whole number from 0 to 1000; it was '1001'.", "--draws", "1001")]
    [InlineData("--piece must be a whole number from 0 to 100000; it was 'x'.", "--piece", "x")]
    [InlineData("--silos must be a whole number from 1 to 16; it was '0'.", "--silos", "0")]
    [InlineData("--silos must be a whole number from 1 to 16; it was '17'.", "--silos", "17")]
    [InlineData("--show must be the number of a variant, from 0; it was 'first'.", "--show", "first")]
    [InlineData("--show must be a number of a variant from 0 to 2985983; it was '2985984'.", "--show", "2985984")]
    [InlineData("--address must be an IP address, such as 10.0.0.5; it was 'here'.", "--address", "here")]
    [InlineData("--pages 'x' is for the study sheets; the study was harness.", "--pages", "x")]
    [InlineData("--faults is for the study harness; the study was sheets.", "sheets", "--faults")]
    [InlineData("Give --postgres or --redis, not both.", "--postgres", "Host=x", "--redis", "x")]
    [InlineData("--file 'a.db' is for one machine: leave it out with --postgres or --redis.", "--file", "a.db", "--redis", "x")]
    [InlineData("join needs --postgres or --redis: a file is for one machine.", "join")]
    [InlineData("Unknown option --fast.", "--fast")]
    public void Run_BadArgument_IsRefusedInWords(string named, params string[] args)
    {
        (int code, string output, string error) = Run(args);
        Assert.Equal((Program.BadInput, ""), (code, output));
        Assert.StartsWith(named, error, StringComparison.Ordinal);
        Assert.EndsWith("Try --help.\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FileThatIsNoDatabase_IsRefusedAndStaysAsItWas()
    {
        System.IO.File.WriteAllText(File, new string('x', 5000));
        (int code, string output, string error) = Run("--variants", "10", "--file", File);
        Assert.Equal((Program.BadInput, ""), (code, output));
        Assert.StartsWith($"--file '{File}' cannot be used: ", error, StringComparison.Ordinal);
        Assert.Contains("What is accepted: a new file, or one that this program made.", error, StringComparison.Ordinal);
        Assert.Equal(new string('x', 5000), System.IO.File.ReadAllText(File));
    }

    [Fact]
    public void Run_FolderThatIsNotThere_IsRefused()
    {
        (int code, _, string error) = Run("--variants", "10", "--file", Path.Combine(Folder, "none", "a.db"));
        Assert.Equal(Program.BadInput, code);
        Assert.Contains(Path.Combine(Folder, "none"), error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FileInUse_IsRefused()
    {
        using FileStream other = new(File + ".lock", FileMode.Create, FileAccess.ReadWrite, FileShare.None);
        (int code, _, string error) = Run("--variants", "10", "--file", File);
        Assert.Equal(Program.BadInput, code);
        Assert.StartsWith($"--file '{File}' is in use by another run", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--postgres", "Host=127.0.0.1;Port=1;Timeout=1;Password=secret", "Host=10.0.0.5;Database=fleet;Username=fleet")]
    [InlineData("--postgres", "no connection string, secret", "Host=10.0.0.5;Database=fleet;Username=fleet")]
    [InlineData("--redis", "127.0.0.1:1,connectTimeout=300,connectRetry=1,password=secret", "10.0.0.5:6379")]
    public void Run_ServerThatIsNotThere_IsRefusedWithoutItsPassword(string option, string connection, string accepted)
    {
        (int code, string output, string error) = Run(option, connection);
        Assert.Equal((Program.BadInput, ""), (code, output));
        Assert.StartsWith($"{option} cannot be used: ", error, StringComparison.Ordinal);
        Assert.Contains(accepted, error, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TheReadmesExample_PrintsWhatTheReadmeShows()
    {
        (int code, string output, _) = Run("--variants", "2000", "--file", File);
        using StreamReader reader = new(typeof(CommandTests).Assembly.GetManifestResourceStream("README.md")!);
        string readme = reader.ReadToEnd().ReplaceLineEndings("\n");
        Assert.Equal(Program.SomethingFails, code);
        Assert.Contains("<!-- prints: --variants 2000 -->", readme, StringComparison.Ordinal);

        // But for the hash, which knows the last bit of a logarithm.
        Assert.Contains(output[..output.LastIndexOf("answer ", StringComparison.Ordinal)], readme, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Help_NamesOptionsAndExitCodes()
    {
        (int code, string output, string error) = Run("--help");
        Assert.Equal((0, ""), (code, error));
        foreach (string text in new[] { "STUDY", "--variants", "--all", "--seed", "--draws", "--faults", "--piece", "--pages", "--file", "--silos", "--postgres", "--redis", "--cluster", "--address", "--plain", "--show", "Exit codes:", "local code" })
        {
            Assert.Contains(text, output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Show_Variant_TellsOptionsAndWhatFails()
    {
        (int code, string output, string error) = Run("--show", "957652", "--faults");
        Assert.Equal((0, ""), (code, error));
        Assert.StartsWith("Variant 957652 of the site van (invented)\n  battery: ", output, StringComparison.Ordinal);
        Assert.Contains("FAIL work lamps: voltage drop", output, StringComparison.Ordinal);
        Assert.Contains("piece 2, seed ", output, StringComparison.Ordinal);
        Assert.Contains("Caution: ", output, StringComparison.Ordinal);
        Assert.Contains("Short from ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_BadVariant_SaysWhy()
    {
        long bad = Enumerable.Range(0, 200).Select(p => new HarnessStudy().VariantAt(p)).First(v => HarnessFleet.Options(v) is [_, 0, 5, ..]);
        string output = Run("--show", bad.ToString(CultureInfo.InvariantCulture)).Output;
        Assert.Contains("body: 2.4 m\n  lamps set back: 2.4 m\n", output, StringComparison.Ordinal);
        Assert.Contains("It cannot be studied: length must be greater than zero", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_Sheet_PrintsItWithItsKey()
    {
        (int code, string output, _) = Run("sheets", "--show", "7");
        ProblemSheet sheet = SheetStudy.Sheet(new StudySpec { Study = "sheets", Variants = 1, PieceSize = 1, Seed = 1, Build = "" }, 7);
        Assert.Equal((0, $"{sheet.ToMarkdown(SheetPart.Problems)}\n{sheet.ToMarkdown(SheetPart.Key)}\n"), (code, output));
    }

    [Fact]
    public void Run_AnyCulture_PrintsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        (int Code, string Output, string Error) invariant = Run("--plain", "--variants", "60");
        try
        {
            foreach (string name in new[] { "de-DE", "tr-TR", "ar-SA" })
            {
                CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.GetCultureInfo(name);
                (int code, string output, _) = Run("--plain", "--variants", "60");
                Assert.Equal((invariant.Code, invariant.Output), (code, output));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.DefaultThreadCurrentCulture = null;
        }
    }

    [Fact]
    public void Run_Plain_ExitCodesSayWhatWasFound()
    {
        // Sheet 0 passes; among 60 variants of the harness some fail.
        Assert.Equal(Program.AllPass, Run("sheets", "--plain", "--variants", "1").Code);
        (int code, string output, _) = Run("--plain", "--variants", "60");
        Assert.Equal(Program.SomethingFails, code);
        Assert.StartsWith("CAUTION: an invented maker's harness", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 180));
    }
}

using System.Text.RegularExpressions;
using System.Xml.Linq;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: the shipped scenarios, a file of one's own, tables, drawings, refusals.</summary>
public sealed class HarnessReportTests : IDisposable
{
    private static readonly string[] Promised = ["--size", "--faults", "--tolerance", "--svg", "--csv", "Exit codes"];

    private readonly string folder = Directory.CreateTempSubdirectory("harness-report").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_ShippedScenario_HasNoFailure()
    {
        (int code, string output, string error) = Run();
        Assert.Equal((HarnessReport.Program.SomethingUndetermined, ""), (code, error));
        Assert.Contains(" 0 fail", output, StringComparison.Ordinal);
        Assert.Contains("35 loads", output, StringComparison.Ordinal);
        Assert.Contains("invented", output, StringComparison.Ordinal);
        Assert.Contains("Cautions", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    // What was spoilt in the file, and what is said of it.
    [Theory]
    [InlineData("FAIL  F wiper, wire wiper feed: fuse protects the wire 40 A")]
    [InlineData("FAIL  refrigerator: voltage drop")]
    [InlineData("FAIL  cabin heater: power delivery")]
    public void Run_ScenarioWithFaults_NamesThem(string said)
    {
        (int code, string output, _) = Run(Path.Combine(AppContext.BaseDirectory, "scenario-with-faults.json"));
        Assert.Equal(HarnessReport.Program.SomethingFails, code);
        Assert.Contains(said, output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Faults_TellsTheTenWorst()
    {
        (_, string output, _) = Run("--faults");
        Assert.Contains("\n10. ", output, StringComparison.Ordinal);
        Assert.DoesNotContain("\n11. ", output, StringComparison.Ordinal);
        Assert.Contains("1. Short from start + to frame is not cleared", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SmallFileOfTheReadme_IsSizedOnDemand()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "two-lamps.json");
        (int code, _, string error) = Run(file);
        Assert.Equal(HarnessReport.Program.BadInput, code);
        Assert.Contains("feed, left, right", error, StringComparison.Ordinal);
        Assert.Contains("--size", error, StringComparison.Ordinal);

        (code, string output, error) = Run(file, "--size", "--json", Path.Combine(folder, "sized.json"));
        Assert.Equal("", error);
        Assert.NotEqual(HarnessReport.Program.BadInput, code);
        Assert.Contains("kg of metal in the wires that were sized", output, StringComparison.Ordinal);
        Assert.Equal(code, Run(Path.Combine(folder, "sized.json")).Code);
    }

    // What a user saves on the shipped scenario stands in the README as the command prints it, not typed by hand.
    [Fact]
    public void Run_SizeAll_PrintsTheComparisonOfTheReadme()
    {
        (_, string output, string error) = Run("--size-all");
        Assert.Equal("", error);
        string section = output[output.IndexOf("Sizing\n", StringComparison.Ordinal)..].Split("\n\n")[0];
        Assert.Contains("circuit by circuit", section, StringComparison.Ordinal);
        string path = Path.Combine(Docs.DocsFolder.Root, "samples", "HarnessReport", "README.md"), readme = File.ReadAllText(path).ReplaceLineEndings("\n");
        if (Docs.DocsFolder.Rewrites)
        {
            int start = readme.IndexOf("<!-- prints: --size-all -->", StringComparison.Ordinal), end = readme.IndexOf("\n```\n", start + 40, StringComparison.Ordinal);
            readme = $"{readme[..start]}<!-- prints: --size-all -->\n\n```\n{section}{readme[end..]}";
            File.WriteAllText(path, readme);
        }

        Assert.Contains($"<!-- prints: --size-all -->\n\n```\n{section}\n```\n", readme, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Tolerance_SaysWhichChecksPassEverywhereAndWhatEachBoundIs()
    {
        (_, string output, string error) = Run("--tolerance", "4");
        Assert.Equal("", error);
        Assert.Contains("Bounds over these tolerances: parked", output, StringComparison.Ordinal);
        Assert.Matches(@"pass everywhere within the tolerances\s", output);
        Assert.Matches(@"(?m) (enclosed|guaranteed)$", output);
    }

    [Fact]
    public void Run_JsonWithSizingAndFaults_WritesWhatWasFoundBesideTheHarness()
    {
        string file = Path.Combine(AppContext.BaseDirectory, "two-lamps.json"), written = Path.Combine(folder, "found.json");
        _ = Run(file, "--size", "--faults", "--json", written);
        HarnessDesignDocument sized = HarnessDesignDocument.Read(File.ReadAllText(Path.Combine(folder, "found.sizing.json")));
        FaultAuditDocument faults = FaultAuditDocument.Read(File.ReadAllText(Path.Combine(folder, "found.faults.json")));
        string harness = File.ReadAllText(written);
        Assert.Equal(["feed", "left", "right"], sized.HeldBy.Keys);
        Assert.NotEmpty(faults.Faults);
        Assert.Equal(harness, sized.Harness.Write());
        Assert.Equal(harness, faults.Harness.Write());

        string alone = Path.Combine(folder, "alone.json");
        _ = Run(written, "--json", alone);
        Assert.True(File.Exists(alone));
        Assert.Empty(Directory.GetFiles(folder, "alone.*.json"));
    }

    [Fact]
    public void Run_CsvTables_SayTheSameAsTheDocument()
    {
        string tables = Directory.CreateDirectory(Path.Combine(folder, "tables")).FullName;
        Write(tables, "harness", "member,value", "name,two lamps (invented)", "rules,road vehicle", "place.ambient_C,40", "insulation,PVC (70 °C)");
        Write(tables, "nodes", "id,kind", "plus,", "minus,ground", "fused,", "splice,splice", "left +,", "right +,");
        Write(tables, "sources", "id,positive,negative,source.kind,source.cold_cranking_A", "battery,plus,minus,lead-acid battery,300");
        Write(tables, "branches", "kind;id;from;to;length_m", "fuse;F1;plus;fused;", "wire;feed;fused;splice;3", "wire;left;splice;left +;1", "wire;right;splice;right +;2");
        Write(tables, "loads", "id,positive,negative,load.kind,load.power_W,load.rated_V", "left lamp,left +,minus,lamp,21,12", "right lamp,right +,minus,lamp,21,12");
        Assert.Equal(Run(Path.Combine(AppContext.BaseDirectory, "two-lamps.json"), "--size"), Run(tables, "--size"));
    }

    [Fact]
    public void Run_TablesWithMistakes_NameTableAndLine()
    {
        string tables = Directory.CreateDirectory(Path.Combine(folder, "wrong")).FullName;
        Write(tables, "harness", "member,value", "rules,road vehicle", "place.ambient_C,40", "insulation,PVC (70 °C)");
        Write(tables, "nodes", "id,kind", "plus,", "minus,pole");
        Write(tables, "sources", "id,positive,negative,source.kind,source.cold_cranking_A", "battery,plus,minus,lead-acid battery,300");
        Write(tables, "branches", "kind,id,from,to,length_m", "wire,feed,plus,lamp +,-3");
        Write(tables, "loads", "id,positive,negative,load.kind,load.power_W,load.rated_V", "lamp,lamp +,minus,lamp,21,12");
        (int code, _, string error) = Run(tables);
        Assert.Equal(HarnessReport.Program.BadInput, code);
        Assert.Contains("nodes.csv, line 3, kind", error, StringComparison.Ordinal);
        Assert.Contains("branches.csv, line 2, length_m", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SvgAndCsv_AreWritten()
    {
        string svg = Path.Combine(folder, "h.svg"), csv = Path.Combine(folder, "csv");
        _ = Run("--svg", svg, "--csv", csv, "--faults");
        Assert.Equal("svg", XDocument.Load(svg).Root!.Name.LocalName);
        Assert.Equal(["branches.csv", "checks.csv", "faults.csv", "loads.csv", "nodes.csv"], Directory.GetFiles(csv).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.True(File.ReadAllLines(Path.Combine(csv, "nodes.csv")).Length > 6 * 100);
    }

    [Theory]
    [InlineData("no-such-file.json")]
    [InlineData("--nonsense")]
    [InlineData("--svg")]
    public void Run_WrongArguments_AreRefused(string argument)
    {
        (int code, _, string error) = Run(argument);
        Assert.Equal(HarnessReport.Program.BadInput, code);
        Assert.NotEqual("", error);
    }

    [Fact]
    public void Run_Help_NamesOptionsAndExitCodes()
    {
        (int code, string output, _) = Run("--help");
        Assert.Equal(0, code);
        Assert.All(Promised, word => Assert.Contains(word, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Readme_ShowsTheFileThatIsShipped()
    {
        string readme = File.ReadAllText(Path.Combine(Docs.DocsFolder.Root, "samples", "HarnessReport", "README.md")).ReplaceLineEndings("\n");
        string shown = Regex.Match(readme, "```json\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "two-lamps.json")).ReplaceLineEndings("\n"), shown);
    }

    private static void Write(string tables, string name, params string[] lines) => File.WriteAllLines(Path.Combine(tables, name + ".csv"), lines);

    private static (int Code, string Output, string Error) Run(params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = HarnessReport.Program.Run(arguments, output, error, null);
        return (code, output.ToString().ReplaceLineEndings("\n"), error.ToString());
    }
}

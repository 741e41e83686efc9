using System.Xml;
using System.Xml.Linq;
using CircuitSchedule;
using LowVoltage.Calc.Design;
using Spectre.Console;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>How the schedule is shown: widths, colours, the page, many rows.</summary>
public sealed class CircuitScheduleOutputTests : ScheduleRunner
{
    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(100)]
    [InlineData(120)]
    [InlineData(200)]
    public void Run_Width_IsKeptByEveryLine(int width)
    {
        foreach (string file in new[] { Options.ShippedScenario, Faults, SixColumns })
        {
            string[] lines = Run(file, "--width", width.ToString(System.Globalization.CultureInfo.InvariantCulture)).Output.Split('\n');

            Assert.All(lines, line => Assert.InRange(line.Length, 0, width));
            Assert.All(lines, line => Assert.Equal(line.TrimEnd(), line));
            Assert.True(width > 120 || lines.Max(line => line.Length) > width - 10);
        }
    }

    [Theory]
    [InlineData(80)]
    [InlineData(120)]
    public void Run_Table_BreaksNoWordOfTheScenario(int width)
    {
        string output = Run("--width", width.ToString(System.Globalization.CultureInfo.InvariantCulture)).Output;

        foreach (string word in new[] { "road-vehicle", "instruments", "converter", "masthead", "engine-room", "temperature", "8820-3", "mechanical" })
        {
            Assert.Contains(word, output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Run_Sheets_WritesAPageToSignForEachCircuitThatWasDesigned()
    {
        string sheets = Path.Combine(Folder, "sheets");
        (int code, string output, _) = Run(Faults, "--sheets", sheets, "--date", "3 March 2027", "--paper", "letter");

        string[] files = [.. Directory.GetFiles(sheets).Order(StringComparer.Ordinal)];
        Assert.Equal(Program.BadInput, code);
        Assert.Contains($"{files.Length} calculation sheets written to {sheets}", output, StringComparison.Ordinal);
        Assert.Equal(ResultsBetween(";", Faults).Count(row => row["wire"].Length > 0), files.Length);
        Assert.All(files, file =>
        {
            XElement page = XDocument.Parse(File.ReadAllText(file)).Root!;
            Assert.Contains("ProgramCircuitScheduleVersion", page.Value, StringComparison.Ordinal);
            Assert.Contains("Date3 March 2027", page.Value, StringComparison.Ordinal);
            Assert.Contains("size:letter", page.Value, StringComparison.Ordinal);
            Assert.Matches("^[0-9]{4}-[\\w-]+\\.html$", Path.GetFileName(file));
        });
    }

    [Fact]
    public void Run_SheetsWhereAFileStands_IsRefused()
    {
        string taken = Written("circuit\n");
        (int code, _, string error) = Run("--sheets", taken);

        Assert.Equal(Program.BadInput, code);
        Assert.Contains(taken, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Redirected_IsAHundredColumnsWideWithoutColours()
    {
        (_, string output, _) = Run();

        Assert.Equal(Run("--width", "100").Output, output);
        Assert.DoesNotContain('\u001b', output);
    }

    [Fact]
    public void Run_Terminal_ColoursTheVerdictAndTakesTheTerminalsWidth()
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new();
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes, ColorSystem = ColorSystemSupport.Standard, Interactive = InteractionSupport.No, Out = new AnsiConsoleOutput(output),
        });
        console.Profile.Width = 84;

        Program.Run([Faults], Screen.Terminal(output, console), error, null);

        string text = System.Text.RegularExpressions.Regex.Replace(output.ToString(), "\u001b\\[[0-9;]*m", "");
        Assert.Contains("\u001b[", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(Run(Faults, "--width", "84").Output, text.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Run_ProgressTerminal_ShowsItThereOnly()
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new(), terminal = new();
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(terminal),
        });

        int code = Program.Run([SixColumns], Screen.Plain(output), error, console);

        Assert.Equal(0, code);
        Assert.Equal(Run(SixColumns).Output, output.ToString());
        Assert.Contains("Designing circuits", terminal.ToString(), StringComparison.Ordinal);
        Assert.Empty(error.ToString());
    }

    [Fact]
    public void Html_Page_HasCautionsRowsAndReasonsAndIsWellFormed()
    {
        string path = Path.Combine(Folder, "page.html");
        string input = FileOf(';', With(("circuit", "\"<b>Lamp & \"\"co\"\"</b>\"")), With(("load_A", "300"), ("feed_m", "90")), With(("load_A", "x")));

        (int code, string output, _) = Run(input, "--html", path);

        Assert.Equal(2, code);
        Assert.Contains($"Page written to {path}", output, StringComparison.Ordinal);
        XElement page = Page(path);
        Assert.Equal("en", page.Attribute("lang")!.Value);
        XElement table = Assert.Single(page.Descendants("table"));
        Assert.Equal(["Circuit", "Load current", "Wire", "Fuse", "Largest drop", "Governed by", "Verdict"], table.Descendants("thead").Descendants("th").Select(th => th.Value));
        Assert.All(table.Descendants("thead").Descendants("th"), th => Assert.Equal("col", th.Attribute("scope")!.Value));
        XElement[] rows = [.. table.Element("tbody")!.Elements("tr")];
        Assert.Equal(["<b>Lamp & \"co\"</b>", "Lamp", "Lamp"], rows.Select(row => row.Element("th")!.Value));
        Assert.All(rows, row => Assert.Equal("row", row.Element("th")!.Attribute("scope")!.Value));
        Assert.Equal(["pass", "FAIL", "BAD ROW"], rows.Select(row => row.Elements("td").Last().Value));
        string[] items = [.. page.Descendants("li").Select(li => li.Value)];
        Assert.All(Cautions.General, caution => Assert.Contains(caution, items));
        Assert.Contains(items, item => item.StartsWith("line 4, load_A: expected", StringComparison.Ordinal));
        Assert.Contains(items, item => item.Contains("What would help: ", StringComparison.Ordinal));
        Assert.True(page.ToString().IndexOf("cautions", StringComparison.Ordinal) < page.ToString().IndexOf("<table", StringComparison.Ordinal));
    }

    [Fact]
    public void Html_Page_NeedsNothingFromElsewhereAndPrintsOnAnyPaper()
    {
        string path = Path.Combine(Folder, "page.html");
        Run("--html", path);
        string text = File.ReadAllText(path);

        Assert.Equal(13, Page(path).Descendants("tbody").Elements("tr").Count());
        Assert.DoesNotContain("http", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        Assert.Contains("@page { size: landscape;", text, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme: dark", text, StringComparison.Ordinal);
        Assert.Contains("The scenario is invented", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Html_Page_IsTheSameBytesEachTimeAndEndsNoElementThatHtmlWantsClosed()
    {
        string[] pages = [Path.Combine(Folder, "one.html"), Path.Combine(Folder, "two.html")];
        Assert.All(pages, page => Run(Faults, "--html", page));
        string text = File.ReadAllText(pages[0]);

        Assert.Equal(File.ReadAllBytes(pages[0]), File.ReadAllBytes(pages[1]));
        Assert.StartsWith("<!DOCTYPE html>\n<html lang=\"en\">\n", text, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
        Assert.Contains("tr > :last-child", text, StringComparison.Ordinal);
        Assert.Equal(["br", "meta"], System.Text.RegularExpressions.Regex.Matches(text, "<([a-z0-9]+)[^>]*/>").Select(match => match.Groups[1].Value).Distinct().Order());
    }

    [Theory]
    [InlineData("Lamp\u0001 & <co>", "Lamp\uFFFD & <co>")]
    [InlineData("Lamp \U0001F4A1\uFFFE", "Lamp \U0001F4A1\uFFFD")]
    public void Html_CellWithWhatNoPageMayHold_IsWrittenWithTheSignForIt(string circuit, string expected)
    {
        string path = Path.Combine(Folder, "page.html");
        Run(FileOf(With(("circuit", circuit))), "--html", path);

        Assert.Equal(expected, Page(path).Descendants("tbody").Descendants("th").Single().Value);
    }

    [Fact]
    public void Run_ManyRows_KeepTheOrderOfTheFile()
    {
        Dictionary<string, string>[] rows = [.. Enumerable.Range(0, 1500).Select(i => With(("circuit", $"No. {i}"), ("feed_m", i % 7 == 0 ? "bad" : "2")))];

        (int code, string output, _) = Run(FileOf(rows), "--width", "400");

        Assert.Equal(2, code);
        Assert.Equal(rows.Select(row => row["circuit"]), output.Split('\n').Where(line => line.StartsWith("No. ", StringComparison.Ordinal)).Select(line => line[..12].Trim()));
        Assert.Contains("1500 circuits: 1285 pass, 0 undetermined, 0 fail, 215 bad rows", output, StringComparison.Ordinal);
    }

    private static XElement Page(string path)
    {
        using XmlReader reader = XmlReader.Create(path, new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader).Root!;
    }
}

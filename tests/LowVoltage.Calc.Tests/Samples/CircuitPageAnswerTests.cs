using CircuitPage;
using CircuitSchedule;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The page answers as the library does: the figures of the calculation sheet, the rows of the schedule, the documents.</summary>
public sealed class CircuitPageAnswerTests : ScheduleRunner
{
    /// <summary>Every row of the files that ship with the schedule, and every example.</summary>
    public static TheoryData<string> Addresses()
    {
        TheoryData<string> all = [.. Examples.All.Select(example => example.Address)];
        foreach (string file in new[] { "scenario.csv", "six-columns.csv" })
        {
            all.AddRange([.. ScheduleText.Open(Path.Combine(AppContext.BaseDirectory, file)).Circuits.Select(row => Address.Write(row.State))]);
        }

        return all;
    }

    [Theory, MemberData(nameof(Addresses))]
    public void Checks_AreTheRowsOfTheCalculationSheet(string address)
    {
        PageState state = Address.Read(address, out IReadOnlyList<string> remarks).In(PageUnits.Metric);
        Assert.Empty(remarks);
        CircuitDesign design = CircuitReading.Of(state).Design()!;
        string[][] sheet = [.. CalculationSheet.Create(design).ToMarkdown().Split('\n')
            .SkipWhile(line => !line.StartsWith("| check |", StringComparison.Ordinal)).Skip(2).TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Trim('|').Split(" | ").Select(cell => cell.Trim()).ToArray())];
        CheckRow[] rows = [.. new Answer(design, PageUnits.Metric).Checks];
        Assert.Equal(design.Checks.Count, rows.Length);
        Assert.Equal(sheet.Select(cells => Plain(string.Join(" | ", cells[..6]))), rows.Select(row => Plain($"{row.Name} | {row.Value} | {row.Limit} | {row.Margin} | {row.Where} | {row.Verdict}{(row.Note.Length > 0 ? ": " + row.Note : "")}")));
    }

    [Theory]
    [InlineData("scenario.csv")]
    [InlineData("six-columns.csv")]
    [InlineData("scenario-with-faults.csv")]
    public void Rows_OfASchedule_AreDesignedAsTheScheduleDesignsThem(string name)
    {
        string path = Path.Combine(AppContext.BaseDirectory, name);
        using ScheduleFile file = ScheduleFile.Open(path);
        ScheduleEntry[] expected = [.. file.Rows().Select(row => ScheduleEntry.From(row, DesignRules.RoadVehicle))];
        PageModel page = new();
        page.OpenFile(name, File.ReadAllBytes(path));
        Assert.Equal(expected.Length, page.Schedule!.Circuits.Count);
        for (int i = 0; i < expected.Length; i++)
        {
            page.Pick(i);
            Assert.Equal(expected[i].Circuit, page.Schedule!.Circuits[i].Name);
            if (expected[i].Answer is { } answer)
            {
                Assert.Empty(page.Remarks);
                Assert.Equal(answer.InWords, page.Answer!.Design.ToString());
            }
            else
            {
                // The page answers only where all of the row is used; what it leaves unused it names.
                Assert.True(page.Answer is null || page.Remarks.Count > 0, expected[i].Circuit);
                Assert.True(page.Problems.Count > 0 || page.Remarks.Count > 0, expected[i].Circuit);
            }
        }
    }

    [Fact]
    public void OpenFile_OfASheetThatIsNoSchedule_SaysWhatIsWrongAndKeepsTheCircuit()
    {
        PageModel page = new();
        string? before = page.Address;
        page.OpenFile("mine.csv", "circuit,feed_ft\nLamp,3\n"u8.ToArray());
        Assert.Null(page.Schedule);
        string remark = Assert.Single(page.Remarks);
        Assert.StartsWith("'mine.csv', header in line 1", remark, StringComparison.Ordinal);
        Assert.Contains("unknown column 'feed_ft'. Is 'feed_m' meant", remark, StringComparison.Ordinal);
        Assert.DoesNotContain("--", remark, StringComparison.Ordinal);
        Assert.Equal(before, page.Address);
    }

    [Theory, MemberData(nameof(Addresses))]
    public void Document_OfTheFields_IsOpenedAsTheSameCircuit(string address)
    {
        PageModel page = new();
        page.Load(address);
        string json = page.Json!, words = page.Answer!.Design.ToString();
        page.OpenFile("circuit.json", System.Text.Encoding.UTF8.GetBytes(json));
        Assert.Equal(words, page.Answer!.Design.ToString());
        Assert.Empty(page.Faults);
        Assert.True(page.Document is null || SaysMoreThanTheFields(json), json);
    }

    [Fact]
    public void Document_WithExistingWiring_StaysADocumentAndIsVerified()
    {
        CircuitRequirements asked = CircuitReading.Of(Address.Read(Examples.All[0].Address, out _)).Requirements!;
        string json = CircuitDocument.Create(asked, DesignRules.RoadVehicle.Conductors.Conductors[8], DesignRules.RoadVehicle.Fuses.Ratings[5], DesignRules.RoadVehicle).Write();
        PageModel page = new();
        page.OpenDocument(json);
        Assert.Equal(json, page.Document);
        Assert.Equal(CircuitDocument.Read(json).Answer().ToString(), page.Answer!.Design.ToString());

        PageModel sent = new();
        sent.Load(page.Address!);
        Assert.Equal(json, sent.Document);
        Assert.Equal(page.Answer.Design.ToString(), sent.Answer!.Design.ToString());
    }

    [Fact]
    public void Document_WithMistakes_NamesEachWithItsPlace()
    {
        PageModel page = new();
        page.OpenDocument("{\n  \"lowvoltage_circuit\": 1,\n  \"feed\": 5.5\n}");
        Assert.Null(page.Answer);
        Assert.Contains(page.Faults, fault => fault.StartsWith("3:3 $.feed: \"feed\" is not known here", StringComparison.Ordinal));
        page.TypeDocument(page.Document!.Replace("\"feed\"", "\"feed_m\"", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Faults, fault => fault.Contains("$.feed", StringComparison.Ordinal));
        page.CloseDocument();
        Assert.NotNull(page.Answer);
    }

    [Theory, MemberData(nameof(Addresses))]
    public void Limits_PassAtTheValueShown(string address)
    {
        PageState state = Address.Read(address, out _).In(PageUnits.Metric);
        CircuitDesign design = CircuitReading.Of(state).Design()!;
        IReadOnlyList<LimitRow> rows = LimitRow.Of(design, PageUnits.Metric);
        Assert.True(rows.Count == 3 || design.Fuse is null);
        foreach ((LimitRow row, string key) in rows.Zip(["feed_m", "ambient_degC", "loaded_conductors"]).Where(pair => pair.First.Furthest != "none passes"))
        {
            string text = row.Furthest.Split(NumberWords.Thin)[0];
            CircuitRequirements pushed = CircuitReading.Of(state.With(key, text).With("return_m", key == "feed_m" ? Longer(state, text) : state.Text("return_m"))).Requirements!;
            CircuitDesign there = CircuitDesigner.Verify(pushed, design.Wire, design.Fuse, design.Rules);
            Assert.True(there.Verdict != Verdict.Fail, $"{row}: {text} gives {there}; {string.Join("; ", there.Checks.Where(check => check.Outcome == LowVoltage.Calc.Checks.CheckOutcome.Fail))}");
        }
    }

    // The return grows with the feed.
    private static string Longer(PageState state, string feed) => state.Text("return_m") is { Length: > 0 } back
        ? (Number(back) * (Number(feed) / Number(state.Text("feed_m")))).ToString("R", System.Globalization.CultureInfo.InvariantCulture)
        : "";

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static bool SaysMoreThanTheFields(string json) => json.Contains("supply_protection", StringComparison.Ordinal) || json.Contains("°C rated", StringComparison.Ordinal);

    private static string Plain(string text) => text.Replace("\\", "", StringComparison.Ordinal).Replace('\u00A0', ' ');
}

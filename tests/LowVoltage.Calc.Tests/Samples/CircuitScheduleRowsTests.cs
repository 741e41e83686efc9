using System.Globalization;
using System.Text;
using CircuitSchedule;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Rows as people write them: quotes, blank lines, cells left out, many mistakes, few columns.</summary>
public sealed class CircuitScheduleRowsTests : ScheduleRunner
{
    private static readonly Dictionary<string, string> Fan = With(("circuit", "Lüfter"), ("feed_m", "2.25"), ("load_A", "3.8"));

    [Fact]
    public void Read_ByteOrderMarkQuotesBlanksAndRemarks_GiveTheSameSchedule()
    {
        string[] lines = Text(',', Fan).Split('\n');
        string blank = new(',', lines[0].Count(c => c == ','));
        string plain = Run(FileOf(Fan)).Output;

        string path = Written(
            $"# made up\r\n\"# in quotes, too\"{blank}\r\n\r\n{lines[0]}\r\n{blank}\r\n#, a remark\r\n{lines[1].Replace("Lüfter", " \"Lüfter\"", StringComparison.Ordinal)}\r\n\r\n",
            new UTF8Encoding(true));

        Assert.Equal(plain, Run(path).Output);
        using ScheduleFile file = ScheduleFile.Open(path);
        Assert.Equal(7, Assert.Single(file.Rows()).Line);
    }

    [Fact]
    public void Read_LineBreaksInQuotes_BelongToTheCellAndLinesAreStillCounted()
    {
        string path = FileOf(';', With(("circuit", "\"Lamp\n(cabin)\""), ("note", "\"two\n\nlines\"")), With(("load_A", "four"), ("note", "")));

        (int code, string output, _) = Run(path);

        Assert.Equal(2, code);
        Assert.Contains("Lamp (cabin)", output, StringComparison.Ordinal);
        Assert.Contains("line 6, load_A: expected", Unwrapped(output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"XLPE")]
    [InlineData("XL\"PE")]
    public void Read_QuoteOutOfPlace_IsReportedAtTheLineWhereItStands(string cell)
    {
        (int code, string output, _) = Run(FileOf(With(), With(("insulation", cell)), With()));

        Assert.Equal(2, code);
        Assert.Contains("line 3: a quotation mark stands in the middle of a cell, or is not closed.", Unwrapped(output), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AnyOrderOfColumns_GivesTheSameResults()
    {
        string[] lines = Text(';', Fan).TrimEnd().Split('\n');
        string reversed = string.Join('\n', lines.Select(line => string.Join(';', line.Split(';').Reverse())));

        Assert.Equal(Run(FileOf(';', Fan)).Output, Run(Written(reversed)).Output);
    }

    [Fact]
    public void Read_CellsLeftOutAtTheEnd_CountAsEmptyAndAreSaidButNotBetweenCommas()
    {
        Dictionary<string, string> full = With(("altitude_m", ""), ("note", ""));
        string semicolons = Text(';', full).Replace(";;\n", "\n", StringComparison.Ordinal).Replace(";altitude_m\n", ";altitude_m;note\n", StringComparison.Ordinal);

        (int code, string output, _) = Run(Written(semicolons));

        Assert.Equal(0, code);
        Assert.Contains("cells missing at the end of a row: empty (1 row)", output, StringComparison.Ordinal);
        (int refused, string commas, _) = Run(Written(Text(',', full).Replace(",,\n", "\n", StringComparison.Ordinal)));
        Assert.Equal(2, refused);
        Assert.Contains("line 2: expected 17 cells, as in the header, with commas between them; found 15. Write the empty cells at the end of a row too", Unwrapped(commas), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_TwentyMistakes_AreAllReportedAtOnceAndListSaysWhereItEnds()
    {
        Dictionary<string, string>[] rows = [.. Enumerable.Range(0, 20).Select(i => With(("circuit", $"Circuit {i}"), ("load_A", $"bad{i}")))];
        string path = FileOf(rows);

        string all = Unwrapped(Run(path).Output), some = Unwrapped(Run(path, "--list", "5").Output);

        for (int i = 0; i < 20; i++)
        {
            string message = string.Create(CultureInfo.InvariantCulture, $"line {i + 2}, load_A: expected a number with a decimal point, such as 2.5; found 'bad{i}'.");
            Assert.Contains(message, all, StringComparison.Ordinal);
            Assert.Equal(i < 5, some.Contains(message, StringComparison.Ordinal));
        }

        Assert.Contains("Bad rows: not designed (the first 5 of 20; --list N shows more, --csv FILE has all)", some, StringComparison.Ordinal);
        Assert.All(Results(path, "--list", "5"), row => Assert.Contains("load_A: expected", row["bad_input"], StringComparison.Ordinal));
    }

    [Fact]
    public void Run_SixColumns_SaysWhatWasAssumedForTheRest()
    {
        (int code, string output, string error) = Run(SixColumns);

        Assert.Equal((0, ""), (code, error));
        string text = Unwrapped(output);
        Assert.Contains("practice: road vehicle (3 rows)", text, StringComparison.Ordinal);
        Assert.Contains("kind of supply: lead-acid, from the columns filled in (3 rows)", text, StringComparison.Ordinal);
        Assert.Contains("return: a wire as long as the feed (3 rows)", text, StringComparison.Ordinal);
        Assert.Contains("insulation: PVC (3 rows)", text, StringComparison.Ordinal);
        string full = FileOf(With(
            ("circuit", "Reading lamp"), ("supply", "lead-acid"), ("supply_V", ""), ("source_min_mOhm", ""), ("source_max_mOhm", ""), ("cold_cranking_A", "600"), ("load_A", "2.1"),
            ("feed_m", "3.5"), ("return_m", "3.5"), ("joints_mOhm", ""), ("supply_lead_mOhm", "12"), ("ambient_degC", "40"), ("insulation", "PVC")));
        Assert.Equal(RowOf(Run(full).Output, "Reading lamp"), RowOf(output, "Reading lamp"));
        Assert.Contains("practice: bench (3 rows)", Run(SixColumns, "--practice", "bench").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("load_A,start_A,locked_A,start_s", "4,12,15,0.2", "kind of load: motor")]
    [InlineData("load_W", "40", "kind of load: power")]
    [InlineData("load_Ohm", "3", "kind of load: resistance")]
    [InlineData("load_W,load_rated_V", "40,12", "load: expected one of resistance, current, power, lamp, motor; the file has no such column.")]
    [InlineData("duty_percent", "50", "load: expected one of")]
    public void Run_KindLeftOut_IsAssumedOnlyWhereOneKindFits(string columns, string cells, string expected)
    {
        string text = $"circuit,supply_V,feed_m,ambient_degC,{columns}\nx,12,2,30,{cells}\n";

        Assert.Contains(expected, Unwrapped(Run(Written(text)).Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SupplyThatCouldBeTwoKinds_MustBeNamed()
    {
        (int code, string output, _) = Run(Written("circuit,supply_V,limit_A,load_A,feed_m,ambient_degC\nx,12,20,2,2,30\n"));

        Assert.Equal(2, code);
        Assert.Contains("line 2, supply: expected one of lead-acid", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Design_LongFile_GivesTheFirstCircuitsBeforeItIsRead()
    {
        using ScheduleFile file = ScheduleFile.Open(FileOf([.. Enumerable.Repeat(With(), 3000)]));
        int read = 0;

        ScheduleEntry first = Schedule.Design(file.Rows().Select(row => (Row: row, Count: ++read).Row), LowVoltage.Calc.DesignRules.Bench, CancellationToken.None).First();

        Assert.Equal(2, first.Line);
        Assert.InRange(read, 1, 600);
    }

    [Fact]
    public void Read_HeaderOfAnotherFile_ShowsTheFirstFaultsOnly()
    {
        string text = string.Join(',', Enumerable.Range(0, 300).Select(i => $"field {i}")) + "\n1\n";

        string error = Run(Written(text)).Error;

        Assert.Contains("unknown column 'field 9'.", error, StringComparison.Ordinal);
        Assert.Contains("and 293 more.", error, StringComparison.Ordinal);
    }

    private static string RowOf(string output, string circuit) => output.Split('\n').First(line => line.StartsWith(circuit, StringComparison.Ordinal));
}

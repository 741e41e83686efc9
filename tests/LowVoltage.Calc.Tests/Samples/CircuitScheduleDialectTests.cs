using System.Globalization;
using System.Text;
using CircuitSchedule;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Files as people export them: separators, decimal signs, encodings, quotes, blank lines, mistakes.</summary>
public sealed class CircuitScheduleDialectTests : ScheduleRunner
{
    private static readonly Dictionary<string, string> Fan = With(("circuit", "Lüfter"), ("feed_m", "2.25"), ("load_A", "3.8"));

    private static string Commas(string text) => text.Replace("2.25", "2,25", StringComparison.Ordinal).Replace("3.8", "3,8", StringComparison.Ordinal);

    [Theory]
    [InlineData(',', false, "commas between the cells, decimal points, UTF-8")]
    [InlineData(';', false, "semicolons between the cells, decimal points, UTF-8")]
    [InlineData(';', true, "semicolons between the cells, decimal commas, UTF-8")]
    [InlineData('\t', false, "tabs between the cells, decimal points, UTF-8")]
    [InlineData('\t', true, "tabs between the cells, decimal commas, UTF-8")]
    public void Read_SeparatorAndDecimalSign_AreFoundAndSaid(char separator, bool commas, string said)
    {
        string text = Text(separator, Fan);

        (int code, string output, string error) = Run(Written(commas ? Commas(text) : text));

        Assert.Equal((0, ""), (code, error));
        Assert.Contains($"From circuits.csv: {said}.", output, StringComparison.Ordinal);
        Assert.Equal(WithoutHeading(Run(FileOf(Fan)).Output), WithoutHeading(output));
    }

    [Theory]
    [InlineData("sep=;\n", ';')]
    [InlineData("\"sep=;\"\r\n", ';')]
    [InlineData("SEP=,\n", ',')]
    [InlineData("sep=\t\n", '\t')]
    public void Read_FirstLineThatNamesTheSeparator_IsNoRow(string first, char separator)
    {
        (int code, string output, string error) = Run(Written(first + Text(separator, Fan, With(("load_A", "four")))));

        Assert.Equal(2, code);
        Assert.Empty(error);
        Assert.Contains("line 4, load_A: expected a number", Unwrapped(output), StringComparison.Ordinal);
        Assert.Contains("2 circuits: 1 pass", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sep=|\n", "line 1: 'sep=' names '|' as the separator; accepted are a comma, a semicolon and a tab.")]
    [InlineData("circuit|feed_m|ambient_degC\nx|1|20\n", "found no separator in the header 'circuit|feed_m|ambient_degC'. Expected commas, semicolons or tabs between the column names; found '|'.")]
    [InlineData("name;length\nx;1\n", "read with semicolons between the names:\n  unknown column 'name'.\n  unknown column 'length'.\n  missing column 'circuit': what the circuit is called.")]
    [InlineData("circuit,Feed_M,ambient_degC\nx,1,20\n", "unknown column 'Feed_M'. Is 'feed_m' meant")]
    [InlineData("circuit,feed_m,ambiant_degC\nx,1,20\n", "unknown column 'ambiant_degC'. Is 'ambient_degC' meant")]
    public void Read_HeaderThatCannotBeUsed_SaysWhatWasFoundAndWhatIsAccepted(string text, string expected)
    {
        (int code, string output, string error) = Run(Written(text));

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.True(error.Length < 600, error);
    }

    [Fact]
    public void Read_DecimalCommaInACommaFile_IsNeverReadAsAnotherNumber()
    {
        Assert.Contains(
            "line 2, feed_m: expected a number with a decimal point, such as 2.5; found '1,5'.", Unwrapped(Run(FileOf(With(("feed_m", "\"1,5\"")))).Output), StringComparison.Ordinal);
        Assert.Contains(
            "line 2: expected 15 cells, as in the header, with commas between them; found 16. Is there a separator too many, or a decimal comma?",
            Unwrapped(Run(FileOf(With(("feed_m", "1,5")))).Output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,500")]
    [InlineData("1.500")]
    [InlineData("-12.500")]
    public void Read_NumberThatMayHaveAThousandsSeparator_IsRefusedUntilTheSignIsNamed(string number)
    {
        string path = FileOf(';', With(("load_A", number)));

        (int code, string output, _) = Run(path);

        Assert.Equal(2, code);
        Assert.Contains($"line 2, load_A: found '{number}', which can be read with and without a thousands separator.", Unwrapped(output), StringComparison.Ordinal);
        Assert.DoesNotContain("thousands separator", Run(path, "--decimal", number.Contains(',', StringComparison.Ordinal) ? "comma" : "point").Output, StringComparison.Ordinal);
        Assert.Contains("expected a number", Run(path, "--decimal", number.Contains(',', StringComparison.Ordinal) ? "point" : "comma").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FileThatProvesItsSign_SettlesTheNumbersThatLookGrouped()
    {
        (int code, string output, _) = Run(FileOf(';', With(("feed_m", "2,25")), With(("load_A", "1,500"))));

        Assert.Equal(0, code);
        Assert.Contains("1.50 A", output, StringComparison.Ordinal);
        Assert.Contains(
            "line 3, load_A: expected a number with a decimal comma, such as 2,5; found '1.500'.",
            Unwrapped(Run(FileOf(';', With(("feed_m", "2,25")), With(("load_A", "1.500")))).Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BothDecimalSigns_AreReadAndSaid()
    {
        (int code, string output, string error) = Run(FileOf(';', With(("feed_m", "2,25")), With(("feed_m", "2.25"))));

        Assert.Equal(0, code);
        Assert.Contains("has decimal commas (first in line 2) and decimal points (first in line 3)", error, StringComparison.Ordinal);
        Assert.Contains("decimal points or commas", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("utf-8", false, "UTF-8")]
    [InlineData("utf-8", true, "UTF-8")]
    [InlineData("utf-16", true, "UTF-16")]
    [InlineData("utf-16BE", true, "UTF-16")]
    public void Read_Encoding_IsFoundAndSaid(string name, bool mark, string said)
    {
        Encoding encoding = name == "utf-8" ? new UTF8Encoding(mark) : new UnicodeEncoding(name == "utf-16BE", mark);

        (int code, string output, string error) = Run(Written(Text(';', Fan), encoding));

        Assert.Equal((0, ""), (code, error));
        Assert.Contains("Lüfter", output, StringComparison.Ordinal);
        Assert.Contains($"decimal points, {said}.", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Lüfter", new byte[] { 0x4C, 0xFC, 0x66, 0x74, 0x65, 0x72 })]
    [InlineData("5 €", new byte[] { 0x35, 0x20, 0x80 })]
    public void Read_BytesThatAreNotUtf8_AreReadAsWindows1252AndSaid(string name, byte[] bytes)
    {
        // The letters from the code page's own table (from memory): FC is ü there and in Latin-1, 80 is the euro sign there only.
        byte[] ascii = Encoding.ASCII.GetBytes(Text(';', With(("circuit", "first")), With(("circuit", "@"))));
        int at = Array.IndexOf(ascii, (byte)'@');
        string path = Path.Combine(Folder, "old.csv");
        File.WriteAllBytes(path, [.. ascii[..at], .. bytes, .. ascii[(at + 1)..]]);

        (int code, string output, string error) = Run(path);

        Assert.Equal(0, code);
        Assert.Contains(name, output, StringComparison.Ordinal);
        Assert.Contains("semicolons between the cells, decimal points or commas, Windows-1252.", output, StringComparison.Ordinal);
        Assert.Contains($"is not UTF-8 (first in line 3). It was read as Windows-1252, which includes Latin-1; if this reads wrong, save the file in UTF-8: {name};", error, StringComparison.Ordinal);
        Assert.DoesNotContain('\uFFFD', output + error);
    }

    [Fact]
    public void Read_LetterLostBefore_IsSaid()
    {
        (int code, _, string error) = Run(FileOf(With(), With(("circuit", "l\uFFFDfter"))));

        Assert.Equal(0, code);
        Assert.Contains("line 3: a letter was lost before this program read the file", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0, 0, 0x61, 0, 0, 0 }, "is in UTF-32. Save it in UTF-8.")]
    [InlineData(new byte[] { 0x61, 0, 0x62, 0, 0x0A, 0 }, "it holds zero bytes. Save the sheet as CSV in UTF-8; UTF-16 needs its byte-order mark.")]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0x61, 0x0A, 0xFC, 0x0A }, "begins with the byte-order mark of UTF-8, but line 2 is not UTF-8.")]
    [InlineData(new byte[] { 0x61, 0x0A, 0x62, 0x0A, 0x81, 0x0A }, "line 3: the bytes are neither UTF-8 nor Windows-1252.")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0, 0x00, 0xD8, 0x61, 0 }, "is damaged: it begins as UTF-16 but is not UTF-16 throughout.")]
    public void Read_BytesThatAreNoText_AreRefusedInWords(byte[] bytes, string expected)
    {
        string path = Path.Combine(Folder, "broken.csv");
        File.WriteAllBytes(path, bytes);

        (int code, string output, string error) = Run(path);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LettersCutByTheBuffer_AreStillUtf8()
    {
        // Over three buffers of two-byte letters, so that some letter lies across each end.
        string note = new('ü', 100_000);
        string path = Written("# x" + note + "\n" + Text(',', Fan));

        (int code, string output, string error) = Run(path);

        Assert.Equal((0, ""), (code, error));
        Assert.Contains("UTF-8", output, StringComparison.Ordinal);
    }

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
        Assert.Contains("line 3: a quote (\") stands in the middle of a cell or is not closed.", Unwrapped(output), StringComparison.Ordinal);
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
    public void Run_SixColumns_SaysWhatWasTakenForTheRest()
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
    public void Run_KindLeftOut_IsTakenOnlyWhereOneKindFits(string columns, string cells, string expected)
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

    private static string WithoutHeading(string output) => output[output.IndexOf("\n\n", StringComparison.Ordinal)..];

    private static string RowOf(string output, string circuit) => output.Split('\n').First(line => line.StartsWith(circuit, StringComparison.Ordinal));
}

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Files as people export them: separators, decimal signs and headers.</summary>
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

    private static string WithoutHeading(string output) => output[output.IndexOf("\n\n", StringComparison.Ordinal)..];

    [Fact]
    public void Run_QuotedDecimalCommasBetweenCommas_AreReadWhereAskedAndRefusedElse()
    {
        string path = Written("circuit,load_A,feed_m,ambient_degC,cold_cranking_A,supply_lead_mOhm\nLamp,\"2,1\",\"3,5\",40,600,12\n");

        Assert.Contains("line 2, load_A: expected a number with a decimal point, such as 2.5; found '2,1'.", Unwrapped(Run(path).Output), StringComparison.Ordinal);
        (int code, string output, _) = Run(path, "--decimal", "comma");
        Assert.Equal(0, code);
        Assert.Contains("2.10 A", output, StringComparison.Ordinal);
    }
}

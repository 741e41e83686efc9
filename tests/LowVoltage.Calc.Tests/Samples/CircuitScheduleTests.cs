using System.Globalization;
using CircuitSchedule;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: exit codes, messages, the shipped files.</summary>
public sealed class CircuitScheduleTests : ScheduleRunner
{
    [Fact]
    public void Run_WithoutArguments_PrintsTheInventedScenarioAndExitsZero()
    {
        (int code, string output, string error) = Run();

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Contains("The scenario is invented", output, StringComparison.Ordinal);
        Assert.Contains("13 circuits: 13 pass, 0 undetermined, 0 fail, 0 bad rows", output, StringComparison.Ordinal);
        Assert.All(Cautions.General, caution => Assert.Contains(caution, Unwrapped(output), StringComparison.Ordinal));
    }

    [Fact]
    public void ShippedScenario_HasManyKinds_AllPassAndEachKindOfLimitGoverns()
    {
        CircuitDesign[] designs = [.. Shipped().Select(row => CircuitDesigner.Design(CircuitCells.Read(row)!, Words.Practices[row.Text("practice")]))];

        Assert.True(designs.Length >= 10);
        Assert.All(designs, design => Assert.Equal(Verdict.Pass, design.Verdict));
        CheckKind[] governing = [.. designs.Select(design => design.Governing.Kind!)];
        Assert.Contains(CheckKind.VoltageDrop, governing);
        Assert.Contains(CheckKind.OverloadTemperature, governing);
        Assert.Contains(CheckKind.MechanicalMinimum, governing);
        Assert.Contains(CheckKind.StartVoltage, governing);
        Assert.Contains(CheckKind.FaultOpensFuse, governing);
        Assert.Equal(DesignRules.Presets.Take(4), designs.Select(design => design.Rules).Distinct());
        Assert.Equal(4, designs.Select(design => design.Requirements.Source.Name).Distinct().Count());
        Assert.Equal(5, designs.Select(design => design.Requirements.Load.Name).Distinct().Count());
        Assert.Equal(3, designs.Select(design => design.Requirements.Return.Kind).Distinct().Count());
        Assert.Contains(designs, design => design.Requirements.Load.DutyCycle.Fraction < 1);
        Assert.Contains(designs, design => design.Requirements.Source.NominalVoltage.Volts > 20);
    }

    [Fact]
    public void Run_FileWithFaults_ReportsLineAndColumnAndDesignsTheOtherRows()
    {
        (int code, string output, _) = Run(Faults);
        string text = Unwrapped(output);

        Assert.Equal(2, code);
        Assert.Contains("9 circuits: 1 pass, 1 undetermined, 1 fail, 6 bad rows", text, StringComparison.Ordinal);
        Assert.Contains("line 7, feed_m: expected a number with a decimal comma, such as 2,5; found '3 m'.", text, StringComparison.Ordinal);
        Assert.Contains("line 8, practice: expected one of road vehicle, small craft, light aircraft, bench, tinned small craft; found 'boat'.", text, StringComparison.Ordinal);
        Assert.Contains("line 8, insulation: expected", text, StringComparison.Ordinal);
        Assert.Contains("line 9, feed_m: must be greater than zero", text, StringComparison.Ordinal);
        Assert.Contains("line 10, supply_V: the source can reach 72 V;", text, StringComparison.Ordinal);
        Assert.Contains("line 11, cold_cranking_A: expected an empty cell", text, StringComparison.Ordinal);
        Assert.Contains("line 12, feed_m: expected a number with a decimal comma, such as 2,5; the row ends before it.", text, StringComparison.Ordinal);
        Assert.Contains("Van: kettle inverter: nothing passes; nearest 95 mm² road-vehicle copper without a fuse: power delivery", text, StringComparison.Ordinal);
        Assert.Contains("What would help: ", text, StringComparison.Ordinal);
        Assert.Contains("Van: spare socket: breaking capacity: undetermined", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_InfeasibleCircuit_ExitsOne()
    {
        (int code, string output, _) = Run(FileOf(With(("load_A", "300"), ("feed_m", "90"))));

        Assert.Equal(1, code);
        Assert.Contains("FAIL", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Undetermined_IsNoPass_ExitsThree()
    {
        // Without internal resistance the short-circuit current of the source is not known.
        (int code, string output, _) = Run(FileOf(With(("source_min_mOhm", ""), ("source_max_mOhm", ""), ("supply_lead_mOhm", ""))));

        Assert.Equal(3, code);
        Assert.Contains("1 circuit: 0 pass, 1 undetermined, 0 fail, 0 bad rows", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_BadRowAndInfeasibleCircuit_ExitsTwo() =>
        Assert.Equal(2, Run(FileOf(With(("load_A", "300"), ("feed_m", "90")), With(("load_A", "four")))).Code);

    [Theory]
    [InlineData("circuit", "", "circuit: expected a text; found an empty cell.")]
    [InlineData("supply", "mains", "supply: expected one of lead-acid, LiFePO4, current-limited, alternator, voltage; found 'mains'.")]
    [InlineData("load", "heat", "load: expected one of resistance, current, power, lamp, motor; found 'heat'.")]
    [InlineData("load_A", "", "load_A: expected a number with a decimal point, such as 2.5; found an empty cell.")]
    [InlineData("load_A", "1 000", "load_A: expected a number with a decimal point, such as 2.5; found '1 000'.")]
    [InlineData("load_A", "NaN", "load_A: expected a number with a decimal point, such as 2.5; found 'NaN'.")]
    [InlineData("load_A", "1e999", "load_A: expected a number with a decimal point, such as 2.5; found '1e999'.")]
    [InlineData("load_A", "0", "load_A: must be greater than zero")]
    [InlineData("feed_m", "-2", "feed_m: must be greater than zero")]
    [InlineData("return_m", "0", "return_m: must be greater than zero")]
    [InlineData("ambient_degC", "400", "ambient_degC: must be from -60 °C to 250 °C; it was 400 °C.")]
    [InlineData("source_max_mOhm", "10", "source_max_mOhm: must be from 0.02 Ω")]
    [InlineData("source_max_mOhm", "", "source_max_mOhm: expected a number")]
    [InlineData("supply_V", "61", "supply_V: the source can reach 61 V; accepted is a source of at most 60 V.")]
    [InlineData("chassis_mOhm", "5", "chassis_mOhm: expected one of return_m, chassis_mOhm, shared_mOhm; found return_m and chassis_mOhm.")]
    [InlineData("insulation", "glass", "insulation: expected a rating such as 105 degC, or one of PVC")]
    [InlineData("insulation", "20 degC", "insulation: must be from 40 °C to 400 °C; it was 20 °C.")]
    public void Run_BadCell_IsReportedByLineAndColumn(string column, string cell, string expected)
    {
        (int code, string output, _) = Run(FileOf(With(), With((column, cell))));

        Assert.Equal(2, code);
        Assert.Contains("line 3, " + expected, Unwrapped(output), StringComparison.Ordinal);
        Assert.Contains("2 circuits: 1 pass, 0 undetermined, 0 fail, 1 bad row", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("loaded_conductors", "2.5", "expected a whole number; found '2.5'.")]
    [InlineData("loaded_conductors", "0", "must be from 1 to 1000; it was 0.")]
    [InlineData("engine_space", "maybe", "expected one of yes, no; found 'maybe'.")]
    [InlineData("duty_percent", "120", "must be")]
    [InlineData("drop_limit_percent", "0", "must be")]
    [InlineData("bundle_loading_percent", "0", "must be")]
    [InlineData("altitude_m", "-5", "must be")]
    [InlineData("joints_mOhm", "-1", "must be zero or greater")]
    [InlineData("limit_A", "5", "expected an empty cell, because this supply, load and return don't use it; found '5'.")]
    [InlineData("short_circuit_degC", "200", "expected an empty cell")]
    [InlineData("input_uF", "-1", "must be")]
    public void Run_BadOptionalCell_IsReportedByLineAndColumn(string column, string cell, string expected)
    {
        (int code, string output, _) = Run(FileOf(With((column, cell))));

        Assert.Equal(2, code);
        Assert.Contains($"line 2, {column}: {expected}", Unwrapped(output), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_PowerBeyondADecimal_IsABadCell()
    {
        (int code, string output, _) = Run(FileOf(With(("load", "power"), ("load_A", ""), ("load_W", "1e300"))));

        Assert.Equal(2, code);
        Assert.Contains("line 2, load_W: expected a number", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_UnknownColumn_NamesTheOneThatIsMeant()
    {
        (int code, string output, string error) = Run(FileOf(With(("feed_ft", "3"))));

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("header in line 1, read with commas between the names:\n  unknown column 'feed_ft'. Is 'feed_m' meant: length of the feed, one way, from fuse to load?", error, StringComparison.Ordinal);
        Assert.Contains("--help lists the columns", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("circuit,practice\nx,bench\n", "missing column 'feed_m': length of the feed")]
    [InlineData("circuit,circuit\nx,y\n", "column 'circuit' appears 2 times.")]
    [InlineData("", "holds no circuits")]
    [InlineData("circuit,feed_m,ambient_degC\n", "holds no circuits")]
    [InlineData("PK\0\0", "is not a text file that can be read: it holds bytes of value 0")]
    [InlineData("PK\u0003\u0004\0", "is a workbook or another zip file, not text. Save the sheet as CSV in UTF-8.")]
    public void Run_UnusableFile_SaysWhyAndExitsTwo(string text, string expected)
    {
        string path = Path.Combine(Folder, "unusable.csv");
        File.WriteAllText(path, text);

        (int code, _, string error) = Run(path);

        Assert.Equal(2, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no file 'nowhere.csv'.", "nowhere.csv")]
    [InlineData("Unknown option --xml.", "--xml")]
    [InlineData("Required argument missing for option: '--csv'.", "--csv")]
    [InlineData("Unrecognized command or argument 'b.csv'.", "a.csv", "b.csv")]
    [InlineData("--csv needs the name of the file to write.", "--csv", "--width", "80")]
    [InlineData("--width must be a whole number from 40 to 400; it was '20'.", "--width", "20")]
    [InlineData("--list must be a whole number from 0 to 2147483647; it was 'all'.", "--list", "all")]
    [InlineData("--practice must be one of road vehicle, small craft, light aircraft, bench, tinned small craft; it was 'boat'.", "--practice", "boat")]
    [InlineData("--decimal must be one of comma, point; it was 'dot'.", "--decimal", "dot")]
    [InlineData("is named twice", "--csv", "x.out", "--html", "./x.out")]
    [InlineData("A file name is empty.", "")]
    [InlineData("'./a.csv' is the input file: name another one to write.", "a.csv", "--csv", "./a.csv")]
    public void Run_BadArguments_SaysWhyAndExitsTwo(string expected, params string[] args)
    {
        (int code, string output, string error) = Run(args);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ResultFileCannotBeWritten_ExitsTwo() =>
        Assert.Equal(2, Run("--csv", Path.Combine(Folder, "no", "such", "folder.csv")).Code);

    [Fact]
    public void Run_Help_NamesEveryColumn()
    {
        (int code, string output, _) = Run("--help");

        Assert.Equal(0, code);
        Assert.All(Column.All, column => Assert.Contains(column.Name, output, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Run_OtherCulture_GivesIdenticalOutput(string name)
    {
        string invariantCsv = Path.Combine(Folder, "invariant.csv"), otherCsv = Path.Combine(Folder, "other.csv");
        string invariant = In(CultureInfo.InvariantCulture, () => Run("--csv", invariantCsv).Output + Run(Faults).Output);
        string other = In(CultureInfo.GetCultureInfo(name), () => Run("--csv", otherCsv).Output + Run(Faults).Output);

        Assert.Equal(invariant.Replace(invariantCsv, otherCsv, StringComparison.Ordinal), other);
        Assert.Equal(File.ReadAllBytes(invariantCsv), File.ReadAllBytes(otherCsv));
    }

    [Fact]
    public void Readme_DescribesEveryColumnAndShowsWhatIsPrinted()
    {
        using StreamReader reader = new(typeof(CircuitScheduleTests).Assembly.GetManifestResourceStream("CircuitSchedule.README.md")!);
        string readme = Lines(reader.ReadToEnd());

        Assert.All(Column.All, column => Assert.Contains($"| `{column.Name}` | {(column.Required ? "yes" : "")} | {column.Meaning} |", readme, StringComparison.Ordinal));
        Assert.Contains(Lines(Run().Output), readme, StringComparison.Ordinal);
        Assert.Contains(Lines(Run(Faults).Output), readme, StringComparison.Ordinal);
        Assert.Contains(Lines(Run(SixColumns).Output), readme, StringComparison.Ordinal);
        Assert.Contains(Lines(File.ReadAllText(SixColumns)), readme, StringComparison.Ordinal);
    }

    private static List<CircuitRow> Shipped()
    {
        using ScheduleFile file = ScheduleFile.Open(Options.ShippedScenario);
        return [.. file.Rows()];
    }

    private static string In(CultureInfo culture, Func<string> run)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = culture;
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd();
}

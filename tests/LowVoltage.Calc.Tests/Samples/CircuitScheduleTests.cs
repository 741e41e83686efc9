using System.Globalization;
using System.Text;
using CircuitSchedule;
using CsvHelper;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: exit codes, messages, the shipped files, and the result file against the library itself.</summary>
public sealed class CircuitScheduleTests : IDisposable
{
    private static readonly string Faults = Path.Combine(AppContext.BaseDirectory, "scenario-with-faults.csv");

    // One good circuit; the tests change single cells of it.
    private static readonly Dictionary<string, string> Good = new()
    {
        ["circuit"] = "Lamp", ["practice"] = "road vehicle", ["supply"] = "voltage", ["supply_V"] = "12", ["source_min_mOhm"] = "20", ["source_max_mOhm"] = "40",
        ["load"] = "current", ["load_A"] = "4", ["feed_m"] = "2", ["return_m"] = "2", ["supply_lead_mOhm"] = "5", ["ambient_degC"] = "30", ["insulation"] = "XLPE",
    };

    private readonly string folder = Directory.CreateTempSubdirectory("circuit-schedule").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_WithoutArguments_PrintsTheInventedScenarioAndExitsZero()
    {
        (int code, string output, string error) = Run();

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Contains("The scenario is invented", output, StringComparison.Ordinal);
        Assert.Contains("0 with open points, 0 fail, 0 bad rows", output, StringComparison.Ordinal);
        Assert.All(Cautions.General, caution => Assert.Contains(caution, Unwrapped(output), StringComparison.Ordinal));
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 120));
    }

    [Fact]
    public void ShippedScenario_HasManyKinds_AllPassAndEachKindOfLimitGoverns()
    {
        CircuitDesign[] designs = [.. ScheduleFile.Read(Options.ShippedScenario).Select(row => ScheduleEntry.From(row).Design!)];

        Assert.True(designs.Length >= 10);
        Assert.All(designs, design => Assert.Equal(Verdict.Pass, design.Verdict));
        CheckKind[] governing = [.. designs.Select(design => design.Governing.Kind)];
        Assert.Contains(CheckKind.VoltageDrop, governing);
        Assert.Contains(CheckKind.OverloadTemperature, governing);
        Assert.Contains(CheckKind.MechanicalMinimum, governing);
        Assert.Contains(CheckKind.StartVoltage, governing);
        Assert.Contains(CheckKind.FaultOpensFuse, governing);
        Assert.Equal(DesignRules.Presets, designs.Select(design => design.Rules).Distinct());
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
        Assert.Contains("9 circuits: 1 pass, 1 with open points, 1 fail, 6 bad rows", text, StringComparison.Ordinal);
        Assert.Contains("line 7, feed_m: expected a number with a decimal point, such as 2.5; found '1,5'.", text, StringComparison.Ordinal);
        Assert.Contains("line 8, practice: expected one of road vehicle, small craft, light aircraft, bench; found 'boat'.", text, StringComparison.Ordinal);
        Assert.Contains("line 8, insulation: expected", text, StringComparison.Ordinal);
        Assert.Contains("line 9, feed_m: Feed must be greater than zero", text, StringComparison.Ordinal);
        Assert.Contains("line 10, supply: ", text, StringComparison.Ordinal);
        Assert.Contains("the source can reach 72 V;", text, StringComparison.Ordinal);
        Assert.Contains("line 11, cold_cranking_A: expected an empty cell", text, StringComparison.Ordinal);
        Assert.Contains("line 12: expected 25 cells, as in the header; found 4.", text, StringComparison.Ordinal);
        Assert.Contains("Van: kettle inverter: no wire of the series fits", text, StringComparison.Ordinal);
        Assert.Contains("What would help: ", text, StringComparison.Ordinal);
        Assert.Contains("Van: spare socket: breaking capacity: open", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_InfeasibleCircuit_ExitsOne()
    {
        (int code, string output, _) = Run(FileOf(With(("load_A", "300"), ("feed_m", "90"))));

        Assert.Equal(1, code);
        Assert.Contains("FAIL", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OpenPoint_ExitsZeroAndCountsIt()
    {
        // Without internal resistance the short-circuit current of the source is not known.
        (int code, string output, _) = Run(FileOf(With(("source_min_mOhm", ""), ("source_max_mOhm", ""), ("supply_lead_mOhm", ""))));

        Assert.Equal(0, code);
        Assert.Contains("0 pass, 1 with open points", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_BadRowAndInfeasibleCircuit_ExitsTwo() =>
        Assert.Equal(2, Run(FileOf(With(("load_A", "300"), ("feed_m", "90")), With(("load_A", "four")))).Code);

    [Theory]
    [InlineData("circuit", "", "circuit: expected a text; found an empty cell.")]
    [InlineData("supply", "mains", "supply: expected one of lead-acid, LiFePO4, current-limited, alternator, voltage; found 'mains'.")]
    [InlineData("load", "", "load: expected one of resistance, current, power, lamp, motor; found an empty cell.")]
    [InlineData("load_A", "", "load_A: expected a number with a decimal point, such as 2.5; found an empty cell.")]
    [InlineData("load_A", "1 000", "load_A: expected a number with a decimal point, such as 2.5; found '1 000'.")]
    [InlineData("load_A", "NaN", "load_A: expected a number with a decimal point, such as 2.5; found 'NaN'.")]
    [InlineData("load_A", "1e999", "load_A: expected a number with a decimal point, such as 2.5; found '1e999'.")]
    [InlineData("load_A", "0", "load_A: current must be greater than zero")]
    [InlineData("feed_m", "-2", "feed_m: Feed must be greater than zero")]
    [InlineData("return_m", "", "return_m: expected exactly one of return_m, chassis_mOhm, shared_mOhm; found none.")]
    [InlineData("return_m", "0", "return_m: length must be greater than zero")]
    [InlineData("ambient_degC", "400", "ambient_degC: Ambient must be from -60 °C to 250 °C; it was 400 °C.")]
    [InlineData("source_max_mOhm", "10", "source_max_mOhm: greatestResistance must be from 0.02 Ω")]
    [InlineData("source_max_mOhm", "", "source_max_mOhm: expected a number")]
    [InlineData("supply_V", "61", "supply: ")]
    [InlineData("insulation", "glass", "insulation: expected a rating such as 105 degC, or one of PVC")]
    [InlineData("insulation", "20 degC", "insulation: continuous must be from 40 °C to 400 °C; it was 20 °C.")]
    public void Run_BadCell_IsReportedByLineAndColumn(string column, string cell, string expected)
    {
        (int code, string output, _) = Run(FileOf(With(), With((column, cell))));

        Assert.Equal(2, code);
        Assert.Contains("line 3, " + expected, Unwrapped(output), StringComparison.Ordinal);
        Assert.Contains("2 circuits: 1 pass, 0 with open points, 0 fail, 1 bad rows", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("loaded_conductors", "2.5", "expected a whole number; found '2.5'.")]
    [InlineData("loaded_conductors", "0", "LoadedConductors must be from 1 to 1000; it was 0.")]
    [InlineData("engine_space", "maybe", "expected one of yes, no; found 'maybe'.")]
    [InlineData("duty_percent", "120", "fraction must be")]
    [InlineData("drop_limit_percent", "0", "percent must be")]
    [InlineData("bundle_loading_percent", "0", "BundleLoading must be")]
    [InlineData("altitude_m", "-5", "Altitude must be")]
    [InlineData("joints_mOhm", "-1", "resistance must be zero or greater")]
    [InlineData("limit_A", "5", "expected an empty cell, because this supply, load and return don't use it; found '5'.")]
    [InlineData("short_circuit_degC", "200", "expected an empty cell")]
    [InlineData("input_uF", "-1", "capacitance must be")]
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

    [Theory]
    [InlineData(';', "1,5", "line 2, feed_m: expected a number with a decimal point, such as 2.5; found '1,5'.")]
    [InlineData(',', "\"1,5\"", "line 2, feed_m: expected a number with a decimal point, such as 2.5; found '1,5'.")]
    [InlineData(',', "1,5", "line 2: expected 13 cells, as in the header; found 14.")]
    public void Run_DecimalComma_IsNeverReadAsAnotherNumber(char separator, string cell, string expected)
    {
        (int code, string output, _) = Run(FileOf(separator, With(("feed_m", cell))));

        Assert.Equal(2, code);
        Assert.Contains(expected, Unwrapped(output), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ByteOrderMarkQuotesBlanksAndRemarks_GiveTheSameSchedule()
    {
        string plain = FileOf(With());
        string[] lines = File.ReadAllLines(plain);
        string spreadsheet = Path.Combine(folder, "spreadsheet.csv");
        string blank = new(',', Good.Count - 1);
        string text = $"# made up\r\n\"# in quotes, too\"{blank}\r\n\r\n{lines[0]}\r\n{blank}\r\n#, a remark\r\n{lines[1].Replace("Lamp", " \"Lamp\"", StringComparison.Ordinal)}\r\n";
        File.WriteAllText(spreadsheet, text, new UTF8Encoding(true));

        Assert.Equal(Run(plain).Output, Run(spreadsheet).Output);
        Assert.Equal(7, Assert.Single(ScheduleFile.Read(spreadsheet)).Line);
    }

    [Fact]
    public void Run_QuoteNotClosed_IsReportedAtTheLineWhereItOpens()
    {
        string path = FileOf(With(), With(("insulation", "\"XLPE")), With());

        (int code, string output, _) = Run(path);

        Assert.Equal(2, code);
        Assert.Contains("line 3: expected", Unwrapped(output), StringComparison.Ordinal);
        Assert.Contains("2 circuits: 1 pass", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SemicolonsAndAnyOrderOfColumns_GiveTheSameResults()
    {
        string reversed = Path.Combine(folder, "reversed.csv");
        File.WriteAllText(reversed, string.Join(';', Good.Keys.Reverse()) + "\n" + string.Join(';', Good.Values.Reverse()) + "\n");

        Assert.Equal(Run(FileOf(With())).Output, Run(reversed).Output);
    }

    [Fact]
    public void Run_UnknownColumn_ListsTheKnownOnes()
    {
        (int code, string output, string error) = Run(FileOf(With(("feed_ft", "3"))));

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("header in line 1: unknown column 'feed_ft'.", error, StringComparison.Ordinal);
        Assert.All(Column.All, column => Assert.Contains(column.Name, error, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("circuit,practice\nx,bench\n", "missing column 'feed_m'.")]
    [InlineData("circuit,circuit\nx,y\n", "column 'circuit' stands there 2 times.")]
    [InlineData("", "holds no circuits")]
    [InlineData("circuit,practice\n", "holds no circuits")]
    [InlineData("PK\0\0", "is not a text file")]
    public void Run_UnusableFile_SaysWhyAndExitsTwo(string text, string expected)
    {
        string path = Path.Combine(folder, "unusable.csv");
        File.WriteAllText(path, text);

        (int code, _, string error) = Run(path);

        Assert.Equal(2, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no file 'nowhere.csv'.", "nowhere.csv")]
    [InlineData("Unknown option --xml.", "--xml")]
    [InlineData("--csv needs the name of the file to write.", "--csv")]
    [InlineData("One input file at a time", "a.csv", "b.csv")]
    [InlineData("A file name is empty.", "")]
    [InlineData("--csv would overwrite the input file.", "a.csv", "--csv", "./a.csv")]
    public void Run_BadArguments_SaysWhyAndExitsTwo(string expected, params string[] args)
    {
        (int code, string output, string error) = Run(args);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ResultFileCannotBeWritten_ExitsTwo() =>
        Assert.Equal(2, Run("--csv", Path.Combine(folder, "no", "such", "folder.csv")).Code);

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
        string invariantCsv = Path.Combine(folder, "invariant.csv"), otherCsv = Path.Combine(folder, "other.csv");
        string invariant = In(CultureInfo.InvariantCulture, () => Run("--csv", invariantCsv).Output + Run(Faults).Output);
        string other = In(CultureInfo.GetCultureInfo(name), () => Run("--csv", otherCsv).Output + Run(Faults).Output);

        Assert.Equal(invariant.Replace(invariantCsv, otherCsv, StringComparison.Ordinal), other);
        Assert.Equal(File.ReadAllBytes(invariantCsv), File.ReadAllBytes(otherCsv));
    }

    [Fact]
    public void Csv_ShippedScenario_HasOneRowPerCircuitWithTheLibrarysNumbers()
    {
        List<Dictionary<string, string>> rows = Results();
        IReadOnlyList<CircuitRow> circuits = ScheduleFile.Read(Options.ShippedScenario);

        Assert.Equal(circuits.Select(row => row.Text("circuit")), rows.Select(row => row["circuit"]));
        AssertRow(rows.Single(row => row["circuit"] == "Van: work lamps"), CircuitDesigner.Design(WorkLamps, DesignRules.RoadVehicle));
        AssertRow(rows.Single(row => row["circuit"] == "Van: laptop converter"), CircuitDesigner.Design(LaptopConverter, DesignRules.RoadVehicle));
        AssertRow(rows.Single(row => row["circuit"] == "Launch: bilge pump"), CircuitDesigner.Design(BilgePump, DesignRules.SmallCraft));
        AssertRow(rows.Single(row => row["circuit"] == "Glider: radio"), CircuitDesigner.Design(Radio, DesignRules.LightAircraft));
        AssertRow(rows.Single(row => row["circuit"] == "Bench: resistor bank"), CircuitDesigner.Design(ResistorBank, DesignRules.Bench));
    }

    [Fact]
    public void Csv_FileWithFaults_HasARowForEachCircuitWithItsVerdict()
    {
        List<Dictionary<string, string>> rows = Results(Faults);

        Assert.Equal(["pass", "fail", "open points", .. Enumerable.Repeat("bad input", 6)], rows.Select(row => row["verdict"]));
        Assert.Equal(["4", "5", "6", "7", "8", "9", "10", "11", "12"], rows.Select(row => row["line"]));
        Assert.Contains("line 7, feed_m", rows[3]["bad_input"], StringComparison.Ordinal);
        Assert.Empty(rows[1]["wire"]);
        Assert.StartsWith("no wire of the series fits", rows[1]["in_words"], StringComparison.Ordinal);
        Assert.NotEmpty(rows[1]["advice"]);
        Assert.Contains("breaking capacity", rows[2]["open_points"], StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_BeginsWithAByteOrderMark()
    {
        string path = Path.Combine(folder, "out.csv");
        Run("--csv", path);

        Assert.Equal([0xEF, 0xBB, 0xBF], File.ReadAllBytes(path)[..3]);
    }

    [Fact]
    public void Readme_DescribesEveryColumnAndShowsWhatIsPrinted()
    {
        using StreamReader reader = new(typeof(CircuitScheduleTests).Assembly.GetManifestResourceStream("CircuitSchedule.README.md")!);
        string readme = Lines(reader.ReadToEnd());

        Assert.All(Column.All, column => Assert.Contains($"| `{column.Name}` | {(column.Required ? "yes" : "")} | {column.Meaning} |", readme, StringComparison.Ordinal));
        Assert.Contains(Lines(Run().Output), readme, StringComparison.Ordinal);
        Assert.Contains(Lines(Run(Faults).Output), readme, StringComparison.Ordinal);
    }

    // The circuits of the scenario again, written against the library as a program of its own would.
    private static CircuitRequirements WorkLamps => new()
    {
        Source = Battery.LeadAcid(ElectricCurrent.FromAmperes(600)),
        Load = Load.Lamp(Power.FromWatts(42), ElectricPotential.FromVolts(12)),
        Feed = Length.FromMeters(9),
        Return = ReturnPath.Chassis(ElectricResistance.FromMilliohms(2)),
        Joints = [Joint.Create("all", ElectricResistance.FromMilliohms(5))],
        Upstream = ElectricResistance.FromMilliohms(12),
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(40), LoadedConductors = 6 },
        Insulation = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
        DropLimit = DropLimit.Percent(5),
    };

    private static CircuitRequirements LaptopConverter => new()
    {
        Source = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(100)),
        Load = Load.ConstantPower(Power.FromWatts(90), 0.92, ElectricPotential.FromVolts(9)),
        Feed = Length.FromMeters(3.5),
        Return = ReturnPath.Wire(Length.FromMeters(3.5)),
        Joints = [Joint.Create("all", ElectricResistance.FromMilliohms(6))],
        Upstream = ElectricResistance.FromMilliohms(14.5),
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(35) },
        Insulation = InsulationMaterial.CrossLinkedPolyethylene,
        DropLimit = DropLimit.Percent(4),
    };

    private static CircuitRequirements BilgePump => new()
    {
        Source = Battery.LeadAcid(ElectricCurrent.FromAmperes(400), ColdCrankingStandard.En50342),
        Load = Load.Motor(ElectricCurrent.FromAmperes(5), ElectricCurrent.FromAmperes(14), ElectricCurrent.FromAmperes(18), Duration.FromSeconds(0.3))
            .WithMinimumVoltage(ElectricPotential.FromVolts(10.5)),
        Feed = Length.FromMeters(4),
        Return = ReturnPath.Wire(Length.FromMeters(4)),
        Joints = [Joint.Create("all", ElectricResistance.FromMilliohms(6))],
        Upstream = ElectricResistance.FromMilliohms(11),
        FuseDistance = Length.FromMeters(0.8),
        SheathedToFuse = true,
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 4, EngineSpace = true },
        Insulation = InsulationMaterial.Rated("105", Temperature.FromDegreesCelsius(105), Temperature.FromDegreesCelsius(160)),
        DropLimit = DropLimit.Percent(5),
    };

    private static CircuitRequirements Radio => new()
    {
        Source = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(7)),
        Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(2.2)).WithMinimumVoltage(ElectricPotential.FromVolts(9)),
        Feed = Length.FromMeters(1.5),
        Return = ReturnPath.Wire(Length.FromMeters(1.5)),
        Joints = [Joint.Create("all", ElectricResistance.FromMilliohms(6))],
        Upstream = ElectricResistance.FromMilliohms(4),
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 12, BundleLoading = 0.2, Altitude = Length.FromMeters(4000) },
        Insulation = InsulationMaterial.Rated("150", Temperature.FromDegreesCelsius(150), Temperature.FromDegreesCelsius(200)),
    };

    private static CircuitRequirements ResistorBank => new()
    {
        Source = Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(5)),
        Load = Load.Resistance(ElectricResistance.FromOhms(4)),
        Feed = Length.FromMeters(1.5),
        Return = ReturnPath.Wire(Length.FromMeters(1.5)),
        Joints = [Joint.Create("all", ElectricResistance.FromMilliohms(6))],
        Upstream = ElectricResistance.FromMilliohms(5),
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(25) },
        Insulation = InsulationMaterial.PolyvinylChloride,
    };

    private static void AssertRow(Dictionary<string, string> row, CircuitDesign design)
    {
        Assert.Equal("pass", row["verdict"]);
        Assert.Equal(design.Rules.Name, row["practice"]);
        Assert.Equal(design.Wire!.Name, row["wire"]);
        Assert.Equal(design.Fuse!.ToString(), row["fuse"]);
        Assert.Equal(design.Governing.Name, row["governed_by"]);
        SupplyRange range = design.SupplyRange!;
        AssertNumber(range.Minimum.Current.Amperes, row["current_at_min_supply_A"]);
        AssertNumber(range.Nominal.Current.Amperes, row["current_at_nominal_supply_A"]);
        AssertNumber(range.Maximum.Current.Amperes, row["current_at_max_supply_A"]);
        AssertNumber(design.Wire.Area.SquareMillimeters, row["wire_section_mm2"]);
        AssertNumber(design.Find(CheckKind.ContinuousCurrent)!.Value.Limit!.Value, row["wire_rating_A"]);
        AssertNumber(design.Find(CheckKind.ConductorTemperature)!.Value.Value!.Value, row["conductor_degC"]);
        AssertNumber(design.Fuse.Current.Amperes, row["fuse_rating_A"]);
        AssertNumber(design.Find(CheckKind.VoltageDrop)!.Value.Value!.Value, row["drop_V"]);
        AssertNumber(100 * design.Find(CheckKind.VoltageDrop)!.Value.Value!.Value / design.Requirements.Source.NominalVoltage.Volts, row["drop_percent"]);
        AssertNumber(range.LeastVoltageAtLoad!.VoltageAtLoad.Volts, row["lowest_load_voltage_V"]);
    }

    // Six figures are written: half a unit of the sixth is at most 5e-6 of the value.
    private static void AssertNumber(double expected, string cell) =>
        Assert.InRange(double.Parse(cell, CultureInfo.InvariantCulture) / expected, 1 - 5.1e-6, 1 + 5.1e-6);

    private List<Dictionary<string, string>> Results(params string[] input)
    {
        string path = Path.Combine(folder, "results.csv");
        Run([.. input, "--csv", path]);
        using CsvReader csv = new(new StreamReader(path), CultureInfo.InvariantCulture);
        csv.Read();
        csv.ReadHeader();
        List<Dictionary<string, string>> rows = [];
        while (csv.Read())
        {
            rows.Add(csv.HeaderRecord!.ToDictionary(name => name, name => csv.GetField(name)!));
        }

        return rows;
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new(), error = new();
        int code = Program.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
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

    private static Dictionary<string, string> With(params (string Column, string Cell)[] changes)
    {
        Dictionary<string, string> row = new(Good);
        foreach ((string column, string cell) in changes)
        {
            row[column] = cell;
        }

        return row;
    }

    private string FileOf(params Dictionary<string, string>[] rows) => FileOf(',', rows);

    private string FileOf(char separator, params Dictionary<string, string>[] rows)
    {
        string path = Path.Combine(folder, "circuits.csv");
        string[] header = [.. rows.SelectMany(row => row.Keys).Distinct()];
        File.WriteAllLines(path, [string.Join(separator, header), .. rows.Select(row => string.Join(separator, header.Select(name => row.GetValueOrDefault(name, ""))))]);
        return path;
    }

    // The printed text as one line, so that a message can be looked for whatever the wrapping.
    private static string Unwrapped(string output) => string.Join(' ', output.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));

    private static string Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).TrimEnd();
}

using System.Globalization;
using CircuitSchedule;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The result file of the schedule, against the library itself and in the dialect of the file that was read.</summary>
public sealed class CircuitScheduleCsvTests : ScheduleRunner
{
    [Fact]
    public void Csv_ShippedScenario_HasOneRowPerCircuitWithTheLibrarysNumbers()
    {
        List<Dictionary<string, string>> rows = Results();
        using ScheduleFile file = ScheduleFile.Open(Options.ShippedScenario);

        Assert.Equal(file.Rows().Select(row => row.Text("circuit")), rows.Select(row => row["circuit"]));
        AssertRow(rows.Single(row => row["circuit"] == "Van: work lamps"), CircuitDesigner.Design(WorkLamps, DesignRules.RoadVehicle));
        AssertRow(rows.Single(row => row["circuit"] == "Van: laptop converter"), CircuitDesigner.Design(LaptopConverter, DesignRules.RoadVehicle));
        AssertRow(rows.Single(row => row["circuit"] == "Launch: bilge pump"), CircuitDesigner.Design(BilgePump, DesignRules.SmallCraft));
        AssertRow(rows.Single(row => row["circuit"] == "Glider: radio"), CircuitDesigner.Design(Radio, DesignRules.LightAircraft));
        AssertRow(rows.Single(row => row["circuit"] == "Bench: resistor bank"), CircuitDesigner.Design(ResistorBank, DesignRules.Bench));
    }

    [Fact]
    public void Csv_FileWithFaults_HasARowForEachCircuitWithItsVerdict()
    {
        List<Dictionary<string, string>> rows = ResultsBetween(";", Faults);

        Assert.Equal(["pass", "fail", "undetermined", .. Enumerable.Repeat("bad input", 6)], rows.Select(row => row["verdict"]));
        Assert.Equal(["4", "5", "6", "7", "8", "9", "10", "11", "12"], rows.Select(row => row["line"]));
        Assert.Contains("line 7, feed_m", rows[3]["bad_input"], StringComparison.Ordinal);
        Assert.Equal("95 mm² road-vehicle copper", rows[1]["wire"]);
        Assert.StartsWith("nothing passes; nearest 95 mm² road-vehicle copper without a fuse: power delivery", rows[1]["in_words"], StringComparison.Ordinal);
        Assert.NotEmpty(rows[1]["advice"]);
        Assert.Contains("breaking capacity", rows[2]["undetermined"], StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_BeginsWithAByteOrderMark()
    {
        string path = Path.Combine(Folder, "out.csv");
        Run("--csv", path);

        Assert.Equal([0xEF, 0xBB, 0xBF], File.ReadAllBytes(path)[..3]);
    }

    [Theory]
    [InlineData(';', ',', "2,5")]
    [InlineData('\t', ',', "2,5")]
    [InlineData(';', '.', "2.5")]
    [InlineData('\t', '.', "2.5")]
    [InlineData(',', '.', "2.5")]
    public void Csv_HasTheSeparatorAndDecimalSignOfTheFileThatWasRead(char separator, char sign, string feed)
    {
        string path = FileOf(separator, With(("feed_m", feed)));

        Dictionary<string, string> row = Assert.Single(ResultsBetween(separator.ToString(), path));

        Assert.Matches($"^[0-9]+{System.Text.RegularExpressions.Regex.Escape(sign.ToString())}[0-9]+$", row["drop_V"]);
        Dictionary<string, string> plain = Assert.Single(Results(FileOf(With(("feed_m", "2.5")))));
        Assert.Equal(plain["drop_V"], row["drop_V"].Replace(sign, '.'));
    }

    [Fact]
    public void Csv_CellsThatBeginLikeFormulas_AreText()
    {
        Dictionary<string, string> row = Assert.Single(Results(FileOf(With(("circuit", "=1+1"), ("ambient_degC", "-10")))));

        Assert.Equal("'=1+1", row["circuit"]);
        Assert.StartsWith("-", row["conductor_degC"], StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_RunStopped_LeavesTheFileThatWasThere()
    {
        string path = Path.Combine(Folder, "kept.csv"), input = FileOf(With());
        File.WriteAllText(path, "as before");
        using StringWriter output = new(), error = new();
        using CancellationTokenSource stop = new();
        stop.Cancel();

        int code = Program.Run([input, "--csv", path], Screen.Plain(output), error, null, stop.Token);

        Assert.Equal(130, code);
        Assert.Contains("Stopped.", error.ToString(), StringComparison.Ordinal);
        Assert.Equal("as before", File.ReadAllText(path));
        Assert.Equal(["circuits.csv", "kept.csv"], Directory.GetFiles(Folder).Select(Path.GetFileName).Order());
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
}

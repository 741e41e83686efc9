using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Every cell of every current table against its separate transcription, exactly.</summary>
public class AmpacityTableValidationTests
{
    [Fact]
    public void Cfr33Part183Table5_EveryCell_IsAsPrinted() =>
        AssertAwgCells(Cfr33Part183Table5.Table, "ampacity-cfr33-183-table5.csv", _ => true, 105, "60", "75", "80", "90", "105", "125", "200");

    [Fact]
    public void FaaTable11Dash9_EveryCell_IsAsPrinted() =>
        AssertAwgCells(FaaAc43Table11Dash9.Table, "ampacity-faa-table-11-9.csv", _ => true, 51, "105", "150", "200");

    [Fact]
    public void NecTable310Dash16_EveryCell_IsAsPrinted() =>
        AssertAwgCells(NecTable310Dash16.Table, "ampacity-nec-310-16-310-17.csv", r => r.Text("table") == "310.16", 41, "60", "75", "90");

    [Fact]
    public void NecTable310Dash17_EveryCell_IsAsPrinted() =>
        AssertAwgCells(NecTable310Dash17.Table, "ampacity-nec-310-16-310-17.csv", r => r.Text("table") == "310.17", 41, "60", "75", "90");

    [Theory]
    [InlineData("C", 12)]
    [InlineData("F", 6)]
    public void Iec60364Currents_EveryCell_IsAsPrinted(string method, int sizes)
    {
        AmpacityTable table = method == "C" ? Iec60364MethodC.Table : Iec60364MethodF.Table;
        PublishedTable.Row[] rows = [.. PublishedTable.Load("ampacity-iec60364-currents.csv").Rows.Where(r => r.Text("method") == method)];
        Assert.Equal(sizes, rows.Length);
        Assert.Equal(sizes, table.SizeKeys.Length);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.Equal(row.Number("70"), table.Rating(Mm2(row.Number("mm2")), C(70)).Current.Amperes);
            Assert.Equal(row.Number("90"), table.Rating(Mm2(row.Number("mm2")), C(90)).Current.Amperes);
        }
    }

    [Fact]
    public void NasaCurrents_EveryCell_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-nasa-eee-inst-002.csv").Rows;
        Assert.Equal(17, rows.Count);
        Assert.Equal(17, NasaEeeInst002.SingleWire.SizeKeys.Length);
        Assert.Equal(17, NasaEeeInst002.BundledWire.SizeKeys.Length);
        foreach (PublishedTable.Row row in rows)
        {
            AwgSize size = Awg((int)row.Number("awg"));
            Assert.Equal(row.Number("single"), NasaEeeInst002.SingleWire.Rating(size, C(200)).Current.Amperes);
            Assert.Equal(row.Number("bundled"), NasaEeeInst002.BundledWire.Rating(size, C(200)).Current.Amperes);
        }
    }

    [Fact]
    public void RoadVehicleTables_EveryCell_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-road-vehicle.csv").Rows;
        Assert.Equal(13, rows.Count);
        Assert.Equal(13, RoadVehicleSingleCore.Ambient30.SizeKeys.Length);
        Assert.Equal(13, RoadVehicleSingleCore.Ambient50.SizeKeys.Length);
        foreach (PublishedTable.Row row in rows)
        {
            MetricSize size = Mm2(row.Number("mm2"));
            Assert.Equal(row.Number("30"), RoadVehicleSingleCore.Ambient30.Rating(size, C(70)).Current.Amperes);
            Assert.Equal(row.Number("50"), RoadVehicleSingleCore.Ambient50.Rating(size, C(70)).Current.Amperes);
            Assert.Equal(row.Has("density"), RoadVehicleCurrentDensity.TryCurrent(size, out ElectricCurrent current));
            if (row.Has("density"))
            {
                Assert.Equal(row.Number("density") * row.Number("mm2"), current.Amperes);
                Assert.Equal(row.Number("density_current"), current.Amperes);
            }
        }
    }

    [Fact]
    public void RoadVehicleAmbient_From30To50_GivesThePrinted50DegreeColumn()
    {
        // Both columns are printed rounded: the 30 °C column to 1 A, the 50 °C column to its last digit.
        double factor = RoadVehicleAmbient.Factor(C(50), C(30)).Value;
        Assert.Equal(Math.Sqrt(0.5), factor, 12);
        foreach (PublishedTable.Row row in PublishedTable.Load("ampacity-road-vehicle.csv").Rows)
        {
            double tolerance = PublishedTable.HalfUnitInLastPlace(row.Text("50")) + (factor * PublishedTable.HalfUnitInLastPlace(row.Text("30")));
            Assert.InRange(row.Number("30") * factor, row.Number("50") - tolerance, row.Number("50") + tolerance);
        }
    }

    [Fact]
    public void FaaFreeAir_EveryStatedPoint_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-faa-figure-11-4.csv").Rows;
        Assert.Equal(5, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.True(FaaFreeAir.TryTable(C(row.Number("ambient_c")), out AmpacityTable? table));
            Assert.Equal(row.Number("amperes"), table.Rating(Aircraft((int)row.Number("awg")), C(row.Number("rating_c"))).Current.Amperes);
            Assert.Equal(row.Number("ambient_c"), table.BaseAmbient.DegreesCelsius);
        }

        Assert.False(FaaFreeAir.TryTable(C(40), out AmpacityTable? none));
        Assert.Null(none);
        Assert.Equal(5, FaaFreeAir.Ambient25.SizeKeys.Length + FaaFreeAir.Ambient50.SizeKeys.Length + FaaFreeAir.Ambient60.SizeKeys.Length);
    }

    [Fact]
    public void FaaTable11Dash3_EveryRow_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-faa-table-11-3.csv").Rows;
        Assert.Equal(13, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            AircraftWireSize size = Aircraft((int)row.Number("awg"));
            Assert.Equal(row.Number("fuse"), FaaAc43Table11Dash3.Fuse(size).Amperes);
            Assert.Equal(row.Has("breaker"), FaaAc43Table11Dash3.TryBreaker(size, out ElectricCurrent breaker));
            Assert.Equal(row.Has("breaker") ? row.Number("breaker") : 0, breaker.Amperes);
        }
    }

    private static void AssertAwgCells(AmpacityTable table, string file, Func<PublishedTable.Row, bool> which, int cells, params string[] columns)
    {
        PublishedTable.Row[] rows = [.. PublishedTable.Load(file).Rows.Where(which)];
        Assert.Equal(rows.Length, table.SizeKeys.Length);
        Assert.Equal(columns.Length, table.Columns.Length);
        int seen = 0;
        foreach (PublishedTable.Row row in rows)
        {
            int number = (int)row.Number("awg");
            ConductorSize size = table.Accepts(SizeSystem.AircraftWire) ? Aircraft(number) : Awg(number);
            foreach (string column in columns)
            {
                Temperature insulation = C(double.Parse(column, System.Globalization.CultureInfo.InvariantCulture));
                Assert.Equal(row.Has(column), table.TryRating(size, insulation, out TableRating? rating));
                if (row.Has(column))
                {
                    seen++;
                    Assert.Equal(row.Number(column), rating!.Current.Amperes);
                    Assert.False(rating.FromLowerColumn);
                }
            }
        }

        Assert.Equal(cells, seen);
    }
}

using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>IEC 60228, ISO 6722 (from memory), SAE vehicle gauges and FAA AC 43.13-1B Table 11-9; sources in the CSV files.</summary>
public class ConductorStandardsTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    public static TheoryData<string, int, int, string> IecCells()
    {
        TheoryData<string, int, int, string> cells = [];
        foreach (PublishedTable.Row row in PublishedTable.Load("iec60228.csv").Rows)
        {
            foreach ((int number, int metal, string column) in Columns)
            {
                cells.Add(row.Text("area_nominal_mm2"), number, metal, row.Text(column));
            }
        }

        return cells;
    }

    private static readonly (int Class, int Metal, string Column)[] Columns =
    [
        (1, 0, "class1_cu_plain"), (1, 1, "class1_cu_metalcoated"), (1, 2, "class1_al"),
        (2, 0, "class2_cu_plain"), (2, 1, "class2_cu_metalcoated"), (2, 2, "class2_al"),
        (5, 0, "class5_cu_plain"), (5, 1, "class5_cu_metalcoated"),
        (6, 0, "class6_cu_plain"), (6, 1, "class6_cu_metalcoated"),
    ];

    [Theory]
    [MemberData(nameof(IecCells))]
    public void Iec60228_EveryCell_IsExactAndAboveItsNominalGeometry(string size, int conductorClass, int metal, string printed)
    {
        MetricSize metric = MetricSize.Parse(size + " mm²");
        bool found = Conductor.TryIec60228(metric, (Iec60228Class)conductorClass, (Iec60228Metal)metal, out Conductor? conductor);

        Assert.Equal(printed.Length > 0, found);
        if (conductor is null)
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(size), () => Conductor.Iec60228(metric, (Iec60228Class)conductorClass, (Iec60228Metal)metal));
            return;
        }

        Assert.Equal(double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture), conductor.ResistancePerLength(Twenty).OhmsPerKilometer, 1e-9);
        AssertMaximum(conductor, SizeSystem.Iec60228);
        Assert.Equal(metric.NominalArea.SquareMillimeters, conductor.Area.SquareMillimeters, 1e-12);
    }

    // The table's own oddity: at 50 mm² class 5 is below class 2.
    [Fact]
    public void Iec60228_50SquareMillimeters_Class5IsBelowClass2()
    {
        MetricSize size = MetricSize.FromSquareMillimeters(50);
        Assert.True(Conductor.Iec60228(size, Iec60228Class.Flexible).ResistancePerLength(Twenty) < Conductor.Iec60228(size, Iec60228Class.Stranded).ResistancePerLength(Twenty));
    }

    [Theory]
    [InlineData(0.75, Iec60228Class.ExtraFlexible, 24, 0.2)] // 24 wires of 0.2 mm is the usual make (common practice): 0.16 mm at most in class 6 gives 38
    public void Iec60228_Diameter_FollowsTheStrandRule(double size, Iec60228Class conductorClass, int usual, double wire)
    {
        double usualDiameter = wire * Math.Sqrt(((4.0 * usual) - 1) / 3);
        double diameter = Conductor.Iec60228(MetricSize.FromSquareMillimeters(size), conductorClass).Diameter.Millimeters;
        Assert.InRange(diameter, usualDiameter * 0.97, usualDiameter * 1.05);
    }

    public static TheoryData<string> IsoRows() => [.. PublishedTable.Load("iso6722.csv").Rows.Select(row => row.Text("area_nominal_mm2"))];

    [Theory]
    [MemberData(nameof(IsoRows))]
    public void Iso6722_EveryCell_IsAsRecalled(string size)
    {
        PublishedTable.Row row = PublishedTable.Load("iso6722.csv").Rows.Single(r => r.Text("area_nominal_mm2") == size);
        MetricSize metric = MetricSize.Parse(size + "mm2");
        Conductor bare = Conductor.Iso6722(metric);
        Assert.Equal(row.Number("bare"), bare.ResistancePerLength(Twenty).OhmsPerKilometer, 1e-9);
        AssertMaximum(bare, SizeSystem.RoadVehicle);
        Assert.True(metric.IsRoadVehicle);

        bool tinnedKnown = Conductor.TryIso6722(metric, tinned: true, out Conductor? tinned);
        Assert.Equal(row.Has("tinned"), tinnedKnown);
        if (tinned is not null)
        {
            Assert.Equal(row.Number("tinned"), tinned.ResistancePerLength(Twenty).OhmsPerKilometer, 1e-9);
            AssertMaximum(tinned, SizeSystem.RoadVehicle);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(size), () => Conductor.Iso6722(metric, tinned: true));
        }

        if (row.Has("diameter_max_mm"))
        {
            Assert.Equal(row.Number("diameter_max_mm"), bare.Diameter.Millimeters, 1e-12);
        }
    }

    // Not known for these: halfway between the neighbours' squares, by hand √((1.5² + 1.8²)/2) and √((2.8² + 3.4²)/2).
    [Theory]
    [InlineData(1.25, 1.6568)]
    [InlineData(5, 3.1145)]
    public void Iso6722_DiameterNotKnown_LiesBetweenItsNeighbours(double size, double expected) =>
        Assert.Equal(expected, Conductor.Iso6722(MetricSize.FromSquareMillimeters(size)).Diameter.Millimeters, 5e-5);

    // Observed regularity, stated in the file: ISO limit = IEC class 5 limit / 1.05 within 0.8 % on the 15 shared sizes.
    [Fact]
    public void Iso6722_SharedSizes_AreIecClass5DividedBy105()
    {
        MetricSize[] shared = [.. MetricSize.RoadVehicleSeries.Where(size => size.IsIec60228)];
        Assert.Equal(15, shared.Length);
        Assert.All(shared, size => Assert.Equal(
            1 / 1.05,
            Conductor.Iso6722(size).ResistancePerLength(Twenty).OhmsPerMeter / Conductor.Iec60228(size, Iec60228Class.Flexible).ResistancePerLength(Twenty).OhmsPerMeter,
            0.008));
    }

    [Fact]
    public void VehicleGauge_EveryRow_HoldsTheLeastOrPublishedArea()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("sae-vehicle-gauge.csv").Rows)
        {
            string text = row.Text("size") + " SAE";
            if (!row.Has("least_mm2") && !row.Has("sae_cmil"))
            {
                Assert.False(VehicleGaugeSize.TryParse(text, out _)); // size 22: no area known
                continue;
            }

            VehicleGaugeSize size = VehicleGaugeSize.Parse(text);
            double expected = row.Has("least_mm2") ? row.Number("least_mm2") : row.Number("sae_cmil") * Math.PI / 4 * 0.0254 * 0.0254;
            Assert.Equal(row.Has("least_mm2"), size.IsLeastArea);
            Assert.Equal(expected, size.Area.SquareMillimeters, expected * 1e-9);
            // Never more copper than AWG, and at least 85 % of it.
            Assert.InRange(expected / AwgSize.FromNumber(size.Number).Area.SquareMillimeters, 0.85, 0.99);
        }
    }

    [Fact]
    public void AircraftWire_EveryRow_IsExactAndTheEffectiveSectionStaysBelowTheNominal()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("faa-ac4313-table-11-9-conductors.csv").Rows;
        Assert.Equal(17, rows.Count);
        Assert.Equal(17, AircraftWireSize.All.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Conductor wire = Conductor.AircraftWire(AircraftWireSize.Parse(row.Text("size") + " aircraft"));
            Assert.Equal(row.Number("ohm_per_kft"), wire.ResistancePerLength(Twenty).OhmsPerThousandFeet, 1e-9);
            Assert.Equal(row.Number("area_cmil"), CircularMil.FromArea(wire.Area), 1e-6);
            AssertMaximum(wire, SizeSystem.AircraftWire);
            Assert.Equal(row.Number("ohm_per_kft"), AircraftWireSize.Parse(row.Text("size") + "aircraft").LargestResistance.OhmsPerThousandFeet, 1e-9);
        }
    }

    private static void AssertMaximum(Conductor conductor, SizeSystem system)
    {
        Assert.Equal(system, conductor.System);
        Assert.Equal(ResistanceBasis.StandardMaximum, conductor.Basis);
        Assert.Equal(1, conductor.LayFactor);
        // A standard's limit is above ρ/A of its nominal section, so the effective section is below it.
        Assert.True(conductor.EffectiveArea.SquareMillimeters < conductor.Area.SquareMillimeters);
        Assert.Equal(
            conductor.Material.Resistivity.OhmMeters / conductor.ResistancePerLength(Twenty).OhmsPerMeter * 1e6,
            conductor.EffectiveArea.SquareMillimeters,
            conductor.Area.SquareMillimeters * 1e-9);
        Assert.True(conductor.Diameter.Millimeters > Math.Sqrt(4 * conductor.EffectiveArea.SquareMillimeters / Math.PI));
        Assert.NotNull(conductor.Size);
    }
}

using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>The two printed conventions of the American Wire Gauge, every row and column; sources in the CSV files.</summary>
public class AwgTablesTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    // NBS Handbook 100 prints four significant digits to 10 AWG and three from 11 AWG on; its diameters have one decimal of a mil.
    [Theory]
    [MemberData(nameof(Gauges), "nbs-handbook-100-awg.csv")]
    public void Handbook100_EveryColumn_AgreesToTheLastPrintedDigit(string gauge)
    {
        PublishedTable.Row row = Find("nbs-handbook-100-awg.csv", gauge);
        AwgSize size = AwgSize.Parse(gauge);
        int digits = size.Number <= 10 ? 4 : 3;
        Conductor wire = Conductor.SolidOfDiameter(size.RoundedDiameter, ConductorMaterial.Copper);

        Assert.Equal(row.Number("diameter_mil"), size.RoundedDiameter.Mils, 1e-9);
        AssertDigits(row, "area_cmil", CircularMil.FromArea(wire.Area), digits);
        AssertDigits(row, "ohm_per_kft", wire.ResistancePerLength(Twenty).OhmsPerThousandFeet, digits);
        AssertDigits(row, "lb_per_kft", PoundsPerThousandFeet(wire), digits);
    }

    // The older series, exact formula. Its cells are within half a unit of the last printed digit but for these; the reason is the table's own
    // arithmetic, not ours:
    //   diameter: the fifth decimal of an inch of 3/0, 1/0, 7, 9, 10, 30 and 38 is one off the exact formula;
    //   area: squares of rounded diameters, so only four digits hold (12 AWG: 80.8² = 6528.6 printed as 6529; the exact formula gives 6529.9);
    //   resistance of 29: 81.835 printed as 81.83; mass of 1/0 and 4: 319.44999 and 126.34978 printed as 319.5 and 126.4 (density 0.3212 lb/in³ rounds up).
    private static readonly HashSet<string> FifthDigit =
    [
        "000 diameter_in", "0 diameter_in", "7 diameter_in", "9 diameter_in", "10 diameter_in", "30 diameter_in", "38 diameter_in",
        "1 area_cmil", "2 area_cmil", "3 area_cmil", "4 area_cmil", "6 area_cmil", "7 area_cmil", "8 area_cmil", "9 area_cmil", "10 area_cmil",
        "12 area_cmil", "13 area_cmil", "14 area_cmil", "15 area_cmil", "16 area_cmil", "23 area_cmil", "24 area_cmil", "28 area_cmil", "29 area_cmil",
        "29 ohm_per_kft", "0 lb_per_kft", "4 lb_per_kft",
    ];

    // Misprints of the textbook: 253.5 for 253.3 and 1.233 for 1.223, as its own other columns show.
    private static readonly Dictionary<string, double> Misprints = new() { ["1"] = 253.3, ["24"] = 1.223 };

    [Theory]
    [MemberData(nameof(Gauges), "older-awg.csv")]
    public void OlderSeries_EveryColumn_AgreesToTheLastPrintedDigitOrIsNamed(string gauge)
    {
        PublishedTable.Row row = Find("older-awg.csv", gauge);
        Conductor wire = Conductor.Solid(AwgSize.Parse(gauge), ConductorMaterial.Copper);

        AssertPrinted(row, gauge, "diameter_in", wire.Diameter.Inches);
        AssertPrinted(row, gauge, "area_cmil", CircularMil.FromArea(wire.Area));
        AssertPrinted(row, gauge, "ohm_per_kft", wire.ResistancePerLength(Twenty).OhmsPerThousandFeet);
        if (Misprints.TryGetValue(gauge, out double meant))
        {
            Assert.Equal(meant, PoundsPerThousandFeet(wire), HalfUnit(meant, 4));
        }
        else
        {
            AssertPrinted(row, gauge, "lb_per_kft", PoundsPerThousandFeet(wire));
        }
    }

    [Fact]
    public void FourOught_ByDefinition_Is460MilAnd36Is5Mil()
    {
        Assert.Equal(460, AwgSize.FromNumber(-3).Diameter.Mils, 1e-9);
        Assert.Equal(211_600, AwgSize.FromNumber(-3).CircularMils, 1e-6);
        Assert.Equal(5, AwgSize.FromNumber(36).Diameter.Mils, 1e-12);
        Assert.Equal(25, AwgSize.FromNumber(36).CircularMils, 1e-9);
    }

    // US Navy NEETS module 4, table of solid wire at 25 °C: 20 AWG 10.4 Ω/1000 ft.
    [Fact]
    public void Resistance_20AwgAt25Celsius_AgreesWithNeets() => Assert.Equal(
        10.4,
        Conductor.Solid(AwgSize.FromNumber(20), ConductorMaterial.Copper).ResistancePerLength(Temperature.FromDegreesCelsius(25)).OhmsPerThousandFeet,
        0.05);

    public static TheoryData<string> Gauges(string file) => [.. PublishedTable.Load(file).Rows.Select(row => row.Text("awg"))];

    [Fact]
    public void Tables_Have44Rows()
    {
        Assert.Equal(44, PublishedTable.Load("nbs-handbook-100-awg.csv").Rows.Count);
        Assert.Equal(44, PublishedTable.Load("older-awg.csv").Rows.Count);
    }

    private static PublishedTable.Row Find(string file, string gauge) =>
        PublishedTable.Load(file).Rows.Single(row => row.Text("awg") == gauge);

    private static double PoundsPerThousandFeet(Conductor wire) => wire.Mass(Length.FromFeet(1000)).Pounds;

    private static void AssertDigits(PublishedTable.Row row, string column, double value, int digits) =>
        Assert.Equal(row.Number(column), value, HalfUnit(row.Number(column), digits));

    private static void AssertPrinted(PublishedTable.Row row, string gauge, string column, double value)
    {
        // Trailing zeros of an area before the point are not digits: 211600 has four or five.
        double printed = row.Number(column);
        double half = Math.Max(PublishedTable.HalfUnitInLastPlace(row.Text(column)), column == "area_cmil" ? HalfUnit(printed, 5) : 0);
        double deviation = Math.Abs(value - printed);
        if (FifthDigit.Contains($"{gauge} {column}"))
        {
            Assert.True(deviation > half, $"{gauge} {column} no longer needs its exception");
            Assert.Equal(printed, value, column switch { "area_cmil" => 2 * HalfUnit(printed, 4), "diameter_in" => 1.1e-5, _ => half * 1.05 });
        }
        else
        {
            Assert.Equal(printed, value, half);
        }
    }

    private static double HalfUnit(double value, int digits) => 0.5 * Math.Pow(10, Math.Floor(Math.Log10(value)) - digits + 1) * (1 + 1e-12);
}

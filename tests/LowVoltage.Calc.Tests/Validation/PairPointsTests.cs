using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using Xunit.Abstractions;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Wires that lie together, beside published ratings: 197 rows, each in the band that the model states.</summary>
public class PairPointsTests(ITestOutputHelper output)
{
    private const int Count = 197;

    private static readonly IReadOnlyList<PublishedTable.Row> Rows = PublishedTable.Load("pair-points.csv").Rows;

    /// <summary>What <see cref="BundleHeat"/> states, by the beginning of the row's name: lowest and highest deviation in per cent, whole numbers.</summary>
    private static readonly (string Row, double Low, double High)[] Stated =
    [
        ("PVC-2", -6, -1.5), ("XLPE-2", -4, 1), ("PVC-3t", -2, 0.5), ("XLPE-3t", 0, 3), ("PVC-flat", -6, -1.5), ("XLPE-flat", -6, -1.5), ("PVC-E", -7, -1), ("XLPE-E", -2.5, 7.5), ("FAA", -5.5, 6),
        ("grp-0.5", -19, -4), ("grp-2.5", -19, -4), ("grp-10", -19, -4), ("grp-35", -29.5, -12), ("grp-120", -29.5, -12), ("PVC-G", -10, 1), ("XLPE-G", -10, 1), ("ratio-", -4, 6),
    ];

    [Fact]
    public void CurrentFor_EveryPublishedPoint_KeepsItsBand()
    {
        int held = 0;
        foreach (PublishedTable.Row row in Rows)
        {
            double percent = 100 * Deviation(row);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Text("id")}: {percent:F1} %"));
            Assert.True(percent >= row.Number("low_pct") && percent <= row.Number("high_pct"), $"{row.Text("id")}: {percent} %, band {row.Text("low_pct")} to {row.Text("high_pct")}");
            held++;
        }

        Assert.Equal(Count, held);
    }

    /// <summary>The bands in the documentation of the model, narrower than what a new row may have.</summary>
    [Fact]
    public void CurrentFor_EveryPublishedPoint_KeepsTheStatedAccuracy()
    {
        foreach (PublishedTable.Row row in Rows)
        {
            (string _, double low, double high) = Stated.Single(s => row.Text("id").StartsWith(s.Row, StringComparison.Ordinal));
            Assert.InRange(100 * Deviation(row), low, high);
        }
    }

    /// <summary>The same formulas by another hand, in another language; four digits printed.</summary>
    [Fact]
    public void CurrentFor_EveryPoint_IsTheIndependentComputation()
    {
        Assert.Equal(Count, Rows.Count);
        Assert.All(Rows, row => Assert.InRange((Computed(row) / row.Number("independent")) - 1, -0.001, 0.001));
    }

    /// <summary>Two loaded wires in a conduit, taken as a sleeve of one and a half times their own cylinder, and as a snug one.</summary>
    [Fact]
    public void InSleeve_MethodB1_KeepsTheStatedDistance()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("iec60364-method-b1.csv").Rows)
        {
            (double usual, double snug) = Sleeved(row, "pvc", 5, 70);
            Assert.InRange(usual, -9.1, -4);
            Assert.InRange(snug, 0, 3.5);
            (usual, snug) = Sleeved(row, "xlpe", 3.5, 90);
            Assert.InRange(usual, -16, -10);
            Assert.InRange(snug, -7.5, -3);
        }
    }

    internal static double Deviation(PublishedTable.Row row) => (Computed(row) / row.Number("published")) - 1;

    internal static double Computed(PublishedTable.Row row)
    {
        Wire wire = Cable(row, row.Number("conductor_mm"), row.Number("outer_mm"), row.Number("resistivity_KmW"));
        Surroundings air = Air(row.Number("ambient_C"), 0, row.Number("emissivity"));
        double amperes(WireBundle bundle) => BundleHeat.CurrentFor(bundle, air, C(row.Number("conductor_C"))).Amperes;
        double current = amperes(row.Text("arrangement") switch
        {
            "twin" => WireBundle.TwinCable(wire, Length.FromMillimeters(row.Number("sheath_mm"))),
            "flat" => WireBundle.ThreeFlat(wire),
            _ => WireBundle.Create(wire, (int)row.Number("wires"), (int)row.Number("loaded")),
        });
        return row.Text("unit") switch
        {
            "factor to alone" => current / amperes(WireBundle.Alone(wire)),
            "factor to a pair" => current / amperes(WireBundle.Pair(wire)),
            _ => current,
        };
    }

    private static (double Usual, double Snug) Sleeved(PublishedTable.Row row, string insulation, double resistivity, double limit)
    {
        double conductor = row.Number("conductor_mm");
        WireBundle pair = WireBundle.Pair(Cable(row, conductor, conductor + (2 * row.Number($"wall_{insulation}_mm")), resistivity));
        double percent(WireBundle bundle) => 100 * ((BundleHeat.CurrentFor(bundle, Air(30), C(limit)).Amperes / row.Number($"{insulation}_a")) - 1);
        return (percent(pair.InSleeve()), percent(pair.InSleeve(1.15 * pair.Diameter)));
    }

    private static Wire Cable(PublishedTable.Row row, double conductor, double outer, double resistivity) =>
        Wire.Create(Bare(conductor, row.Number("ohm_per_km_20C") * 1e-3), Insulation(resistivity), Length.FromMillimeters((outer - conductor) / 2));
}

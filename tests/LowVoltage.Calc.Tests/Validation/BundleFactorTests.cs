using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Tests.Heating;
using Xunit.Abstractions;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>The bundle model beside the published bundle factors. A table rates an installation of its own; the model says by how much it differs.</summary>
public class BundleFactorTests(ITestOutputHelper output)
{
    [Fact]
    public void Factor_BesidePublishedFactors_KeepsTheStatedDistance()
    {
        Dictionary<string, List<double>> ratios = [];
        foreach (PublishedTable.Row row in PublishedTable.Load("bundle-factors.csv").Rows)
        {
            string source = row.Text("source");
            double published = row.Number("factor"), model = Model(row, source);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{source}, {row.Text("wires")} at {row.Text("loaded_percent")} %: published {published:F2}, model {model:F2}, ratio {model / published:F2}"));
            if (!ratios.TryGetValue(source, out List<double>? list))
            {
                ratios[source] = list = [];
            }

            list.Add(model / published);
        }

        Assert.Equal(4, ratios.Count);
        Assert.All(ratios["FAA figure 11-5 stated"], r => Assert.InRange(r, 0.95, 1.04));
        Assert.All(ratios["33 CFR 183.425 note 2"], r => Assert.InRange(r, 0.82, 1.08));
        Assert.All(ratios["NEC 310.15(C)(1)"], r => Assert.InRange(r, 1.0, 1.25));
        Assert.All(ratios["IEC 60364-5-52 table B.52.17 item 1"], r => Assert.InRange(r, 0.84, 0.94));
    }

    internal static double Model(PublishedTable.Row row, string source)
    {
        int wires = (int)row.Number("wires");
        bool aircraft = source.StartsWith("FAA", StringComparison.Ordinal);
        bool circuits = source.StartsWith("IEC", StringComparison.Ordinal);
        Wire wire = aircraft ? FaaFreeAirTests.Nominal(PublishedTable.Load("faa-ac4313-free-air.csv").Rows[1]) : Solid(2.05, 0.8);
        Temperature limit = C(aircraft ? 200 : 70);
        Surroundings air = Air(aircraft ? 60 : 30);
        int count = circuits ? 2 * wires : wires;
        WireBundle bundle = WireBundle.Create(wire, count, (int)Math.Round(count * row.Number("loaded_percent") / 100));
        double current = BundleHeat.CurrentFor(bundle, air, limit).Amperes;

        // IEC factors stand on one circuit of two wires, NEC factors on the table for three; the others on one wire.
        int together = circuits ? 2 : source.StartsWith("NEC", StringComparison.Ordinal) ? 3 : 1;
        return current / BundleHeat.CurrentFor(WireBundle.Create(wire, together, together), air, limit).Amperes;
    }
}

using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Tests.Heating;
using Xunit.Abstractions;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>FAA AC 43.13-1B figures 11-4a and 11-6: the currents and altitude factors that its worked examples state.</summary>
/// <remarks>
/// The wire is aircraft hook-up wire: 10 mil of fluoropolymer insulation (MIL-W-22759/34, from memory), k = 0.24 W/(m·K), emissivity 0.9,
/// nominal tinned copper of the strands' area.
/// </remarks>
public class FaaFreeAirTests(ITestOutputHelper output)
{
    private const double WallMillimeters = 0.254;
    private const double FluoropolymerResistivity = 1 / 0.24;

    [Fact]
    public void CurrentFor_EveryStatedFreeAirCurrent_IsWithinThreePercent()
    {
        List<double> deviations = [];
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
        {
            double computed = HeatBalance.CurrentFor(Nominal(row), Air(row.Number("ambient_c")), C(row.Number("rating_c"))).Amperes;
            double deviation = (computed / row.Number("current_a")) - 1;
            deviations.Add(deviation);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"size {row.Text("awg")}, {row.Text("difference_k")} K: stated {row.Text("current_a")} A, computed {computed:F2} A, {deviation:P1}"));
        }

        Assert.Equal(5, deviations.Count);
        Assert.All(deviations, d => Assert.InRange(d, -HeatBalance.Margin, HeatBalance.Margin));
        Assert.InRange(deviations.Average(), -0.015, 0.015);
    }

    /// <summary>With the largest resistance that table 11-9 allows the physics must sit below the curve, by half of the excess resistance.</summary>
    [Fact]
    public void CurrentFor_LargestResistanceOfTable11_9_SitsBelowTheCurve()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
        {
            Wire wire = Build(row, row.Number("largest_ohm_per_1000ft") / 304.8);
            double computed = HeatBalance.CurrentFor(wire, Air(row.Number("ambient_c")), C(row.Number("rating_c"))).Amperes;
            double deviation = (computed / row.Number("current_a")) - 1;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"size {row.Text("awg")}: {deviation:P1}"));
            Assert.InRange(deviation, -0.07, 0);
        }
    }

    /// <summary>
    /// The circular's one curve serves all wires and temperatures. It lies between a wire that only convects and one that also radiates with
    /// emissivity 0.9, because radiation does not know the pressure: that is the remaining difference, and the circular is on its safe side.
    /// The printed factor is good to half its last digit.
    /// </summary>
    [Fact]
    public void CurrentFor_Altitude_FollowsTheStatedFactors()
    {
        foreach (PublishedTable.Row altitude in PublishedTable.Load("faa-ac4313-altitude.csv").Rows)
        {
            double feet = altitude.Number("altitude_ft"), factor = altitude.Number("factor");
            double allowed = (feet > 35_000 ? 0.08 : 0.04) * factor;
            double half = PublishedTable.HalfUnitInLastPlace(altitude.Text("factor"));
            foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
            {
                double ratio = Ratio(row, feet, 0.9), convectionOnly = Ratio(row, feet, 0);
                output.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{feet} ft, size {row.Text("awg")}: {ratio:F3} (no radiation {convectionOnly:F3}) against {factor:F2}, {(ratio / factor) - 1:P1}"));
                Assert.InRange(ratio, factor - half, factor + allowed + half);
                Assert.True(convectionOnly < factor + half);
            }
        }
    }

    private static double Ratio(PublishedTable.Row row, double feet, double emissivity)
    {
        Temperature rating = C(row.Number("rating_c"));
        double ambient = row.Number("ambient_c");
        return HeatBalance.CurrentFor(Nominal(row), Air(ambient, feet * 0.3048, emissivity), rating).Amperes
            / HeatBalance.CurrentFor(Nominal(row), Air(ambient, 0, emissivity), rating).Amperes;
    }

    internal static Wire Nominal(PublishedTable.Row row)
    {
        double strand = row.Number("strand_inch") * 25.4;
        double area = row.Number("strands") * Math.PI / 4 * strand * strand;
        return Build(row, row.Number("tin_factor") / 58 / area);
    }

    private static Wire Build(PublishedTable.Row row, double ohmsPerMeter)
    {
        double diameter = row.Number("strand_inch") * 25.4 * row.Number("strands_across");
        Conductor conductor = Bare(diameter, ohmsPerMeter, area: row.Number("area_cmil") * 5.067075e-4);
        return Wire.Create(conductor, TestWires.Insulation(FluoropolymerResistivity), Length.FromMillimeters(WallMillimeters));
    }
}

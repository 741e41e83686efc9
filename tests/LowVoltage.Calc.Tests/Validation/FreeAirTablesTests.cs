using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Tests.Heating;
using Xunit.Abstractions;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Tables that carry a margin of their own, beside the physics: they are expected to sit below it, or near it.</summary>
public class FreeAirTablesTests(ITestOutputHelper output)
{
    private const double SquareMillimetersPerCircularMil = 5.067075e-4;

    /// <summary>
    /// With the largest resistance that the table allows the physics lies up to 10 % below the table for thin wires, where Churchill and Chu
    /// is known to lie below measured convection (Morgan), and up to 20 % above it for thick ones, where the table keeps a reserve.
    /// </summary>
    [Fact]
    public void CurrentFor_RoadVehicleTable_IsTabulated()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("road-vehicle-free-air.csv").Rows)
        {
            Conductor conductor = Bare(row.Number("conductor_mm"), row.Number("mohm_per_m") * 1e-3, area: row.Number("mm2"));
            Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(row.Number("wall_mm")));
            double at30 = HeatBalance.CurrentFor(wire, Air(30), C(70)).Amperes / row.Number("a_30c");
            double at50 = HeatBalance.CurrentFor(wire, Air(50), C(70)).Amperes / row.Number("a_50c");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Text("mm2")} mm²: physics over table {at30:F3} at 30 °C, {at50:F3} at 50 °C"));
            Assert.InRange(at30, 0.90, 1.20);
            Assert.InRange(at50, 0.90, 1.20);
        }
    }

    /// <summary>The table sits up to 16 % below the physics. NEC 310.17, THW-like walls (from memory: 0.03 in to 10 AWG, 0.045 in at 8, 0.06 in to 2, 0.08 in to 4/0), nominal class B copper, 2 % lay.</summary>
    [Fact]
    public void CurrentFor_Nec310_17_IsTabulated()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("nec-310-17.csv").Rows.Where(r => r.Has("a_75c")))
        {
            string name = row.Text("awg");
            int number = name.EndsWith("/0", StringComparison.Ordinal) ? 1 - int.Parse(name[..1], CultureInfo.InvariantCulture) : int.Parse(name, CultureInfo.InvariantCulture);
            AwgSize size = AwgSize.FromNumber(number);
            double wallInch = number >= 10 ? 0.03 : number >= 8 ? 0.045 : number >= 2 ? 0.06 : 0.08;
            Conductor conductor = Bare(size.DiameterMillimeters * 1.13, 1.02 / 58 / size.AreaSquareMillimeters, area: size.AreaSquareMillimeters);
            Wire wire = Wire.Create(conductor, InsulationMaterial.CrossLinkedPolyethylene, Length.FromInches(wallInch));
            double at75 = HeatBalance.CurrentFor(wire, Air(30), C(75)).Amperes / row.Number("a_75c");
            double at90 = HeatBalance.CurrentFor(wire, Air(30), C(90)).Amperes / row.Number("a_90c");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} AWG: physics over table {at75:F3} at 75 °C, {at90:F3} at 90 °C"));
            Assert.InRange(at75, 0.98, 1.16);
            Assert.InRange(at90, 0.98, 1.16);
        }
    }

    [Fact]
    public void Area_OfTheAircraftRows_IsThatOfTheirStrands()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
        {
            double mil = row.Number("strand_inch") * 1000;
            Assert.InRange(row.Number("strands") * mil * mil / row.Number("area_cmil"), 0.995, 1.005);
            Assert.InRange(row.Number("area_cmil") * SquareMillimetersPerCircularMil, 0.3, 3.1);
        }
    }
}

using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Tests.Validation;
using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Docs.Tables;

internal static class HeatTables
{
    private static readonly (string Prefix, string Name)[] PairGroups =
    [
        ("PVC-2", "IEC 60364-5-52 method F, pair, PVC"), ("XLPE-2", "the same, XLPE"), ("PVC-3t", "method F, trefoil, PVC"), ("XLPE-3t", "the same, XLPE"),
        ("PVC-flat", "method F, three flat, rated as trefoil, PVC"), ("XLPE-flat", "the same, XLPE"), ("PVC-E", "method E, two cores, as twin cable, PVC"), ("XLPE-E", "the same, XLPE"),
        ("FAA", "FAA figure 11-5, 2 to 35 wires, sizes 22 to 12"), ("grp-0.5", "IEC bunched, 2 to 20 circuits, over a pair, 0.5 mm²"), ("grp-2.5", "the same, 2.5 mm²"), ("grp-10", "the same, 10 mm²"),
        ("grp-35", "the same, 35 mm²"), ("grp-120", "the same, 120 mm²"),
    ];

    public static Deviations Faa()
    {
        Deviations deviations = new();
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
        {
            deviations.Add(row.Text("awg"), FaaCurrent(row), row.Number("current_a"));
        }

        return deviations;
    }

    public static (Deviations At30, Deviations At50) RoadVehicle()
    {
        (Deviations at30, Deviations at50) = (new(), new());
        foreach (PublishedTable.Row row in PublishedTable.Load("road-vehicle-free-air.csv").Rows)
        {
            Conductor conductor = Bare(row.Number("conductor_mm"), row.Number("mohm_per_m") * 1e-3, area: row.Number("mm2"));
            Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(row.Number("wall_mm")));
            at30.Add(row.Text("mm2") + " mm²", HeatBalance.CurrentFor(wire, Air(30), C(70)).Amperes, row.Number("a_30c"));
            at50.Add(row.Text("mm2") + " mm²", HeatBalance.CurrentFor(wire, Air(50), C(70)).Amperes, row.Number("a_50c"));
        }

        return (at30, at50);
    }

    public static string HeatBalanceTable()
    {
        MarkdownTable faa = new("FAA AC 43.13-1B, figure 11-4a", "wire rating", "ambient", "stated", "computed", "deviation");
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-free-air.csv").Rows)
        {
            double computed = FaaCurrent(row), stated = row.Number("current_a");
            faa.Row($"size {row.Text("awg")}", row.Text("rating_c") + " °C", row.Text("ambient_c") + " °C", row.Text("current_a") + " A", Number(computed, "0.0") + " A", Percent((computed / stated) - 1));
        }

        MarkdownTable road = new("road-vehicle table, PVC 70 °C", "30 °C: table", "computed", "deviation", "50 °C: table", "computed", "deviation");
        foreach (PublishedTable.Row row in PublishedTable.Load("road-vehicle-free-air.csv").Rows)
        {
            Conductor conductor = Bare(row.Number("conductor_mm"), row.Number("mohm_per_m") * 1e-3, area: row.Number("mm2"));
            Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(row.Number("wall_mm")));
            double at30 = HeatBalance.CurrentFor(wire, Air(30), C(70)).Amperes, at50 = HeatBalance.CurrentFor(wire, Air(50), C(70)).Amperes;
            road.Row(
                row.Text("mm2") + " mm²",
                row.Text("a_30c") + " A", Number(at30, "0.0") + " A", Percent((at30 / row.Number("a_30c")) - 1),
                row.Text("a_50c") + " A", Number(at50, "0.0") + " A", Percent((at50 / row.Number("a_50c")) - 1));
        }

        return faa + "\n" + road;
    }

    public static string Bundle()
    {
        MarkdownTable table = new("published factor", "wires", "loaded", "published", "model", "model over published");
        foreach (PublishedTable.Row row in PublishedTable.Load("bundle-factors.csv").Rows)
        {
            double published = row.Number("factor"), model = BundleFactorTests.Model(row, row.Text("source"));
            string counted = row.Text("source").StartsWith("IEC", StringComparison.Ordinal) ? " circuits" : "";
            table.Row(row.Text("source"), row.Text("wires") + counted, row.Text("loaded_percent") + " %", Number(published, "0.00"), Number(model, "0.00"), Number(model / published, "0.00"));
        }

        return Together() + "\n" + table;
    }

    private static MarkdownTable Together()
    {
        MarkdownTable table = new("wires together", "values", "lowest", "highest", "mean");
        foreach ((string prefix, string name) in PairGroups)
        {
            Deviations deviations = Pairs(prefix);
            table.Row(name, Number(deviations.Count), Percent(deviations.Least, 1), Percent(deviations.Most, 1), Percent(deviations.Mean, 1));
        }

        return table;
    }

    public static Deviations Pairs(string prefix)
    {
        Deviations deviations = new();
        foreach (PublishedTable.Row row in PublishedTable.Load("pair-points.csv").Rows.Where(row => row.Text("id").StartsWith(prefix, StringComparison.Ordinal)))
        {
            deviations.Add(row.Text("id"), PairPointsTests.Computed(row), row.Number("published"));
        }

        return deviations;
    }

    /// <summary>The quadrature against a plain integration in time, Runge-Kutta of fourth order, of the same balance.</summary>
    public static string Overload()
    {
        MarkdownTable table = new("1.5 mm², PVC, 25 °C air", "limit", "quadrature", "step by step", "adiabatic formula");
        Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(1.5)), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        foreach ((double amperes, double limit) in new[] { (30.0, 70.0), (40, 70), (60, 100), (100, 100), (200, 160), (600, 160) })
        {
            double quadrature = OverloadHeating.TimeToReach(wire, Air(25), ElectricCurrent.FromAmperes(amperes), C(limit))!.Value.Seconds;
            double steps = StepByStep(wire, amperes, 25, limit, quadrature / 2000);
            double adiabatic = AdiabaticHeating.TimeToReach(wire.Conductor, ElectricCurrent.FromAmperes(amperes), C(25), C(limit)).Seconds;
            table.Row(Number(amperes) + " A", Number(limit) + " °C", Number(quadrature) + " s", Number(steps) + " s", adiabatic > 5 ? "beyond 5 s" : Number(adiabatic) + " s");
        }

        return table.ToString();
    }

    private static double StepByStep(Wire wire, double amperes, double start, double limit, double step)
    {
        double capacity = wire.Conductor.EffectiveArea.SquareMeters * wire.Conductor.Material.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin;
        double Slope(double celsius)
        {
            double heat = amperes * amperes * wire.Conductor.ResistancePerLength(C(celsius)).OhmsPerMeter;
            double lost = celsius <= start ? 0 : HeatBalance.StateFor(wire, Air(start), C(celsius))!.HeatPerLength.WattsPerMeter;
            return (heat - lost) / capacity;
        }

        double celsius = start, seconds = 0;
        while (true)
        {
            double k1 = Slope(celsius), k2 = Slope(celsius + (step / 2 * k1)), k3 = Slope(celsius + (step / 2 * k2)), k4 = Slope(celsius + (step * k3));
            double next = celsius + (step / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
            if (next >= limit)
            {
                return seconds + (step * (limit - celsius) / (next - celsius));
            }

            (celsius, seconds) = (next, seconds + step);
        }
    }

    private static double FaaCurrent(PublishedTable.Row row) =>
        HeatBalance.CurrentFor(FaaFreeAirTests.Nominal(row), Air(row.Number("ambient_c")), C(row.Number("rating_c"))).Amperes;
}

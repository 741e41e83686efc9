using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;

namespace LowVoltage.Calc.Tests.Docs.Tables;

internal static class ShortCircuitTables
{
    public static Deviations K()
    {
        Deviations deviations = new();
        foreach ((PublishedTable.Row row, double k) in Rows())
        {
            deviations.Add($"{row.Text("material")}, {row.Text("condition")}", k, row.Number("k"));
        }

        return deviations;
    }

    public static string Adiabatic()
    {
        MarkdownTable table = new("metal", "from", "to", "published k", "computed", "deviation", "tables");
        foreach (var group in Rows().GroupBy(item => (Metal: item.Row.Text("material"), From: item.Row.Number("initial"), To: item.Row.Number("final"), K: item.Row.Number("k"))))
        {
            double k = group.First().K;
            table.Row(group.Key.Metal, Number(group.Key.From) + " °C", Number(group.Key.To) + " °C", Number(group.Key.K), Number(k, "0.0"), Percent((k / group.Key.K) - 1), Number(group.Count()));
        }

        return table.ToString();
    }

    public static string NonAdiabatic()
    {
        MarkdownTable table = new("insulation", "metal", "published X", "computed", "published Y", "computed");
        foreach (PublishedTable.Row row in PublishedTable.Load("iec60949-nonadiabatic.csv").Rows)
        {
            NonAdiabaticInsulation insulation = (NonAdiabaticInsulation)typeof(NonAdiabaticInsulation).GetProperty(row.Text("name"))!.GetValue(null)!;
            (double x, double y) = FromConstants(row.Text("material") == "copper" ? ConductorMaterial.Copper : ConductorMaterial.Aluminium, insulation);
            table.Row(row.Text("insulation"), row.Text("material"), row.Text("x"), Number(x, "0.000"), row.Text("y"), Number(y, "0.0000"));
        }

        return table.ToString();
    }

    public static string Batteries()
    {
        MarkdownTable table = new("cold-cranking current, SAE J537", "least", "nominal", "greatest", "least into a short", "greatest into a short");
        foreach (double amperes in new[] { 300.0, 400, 600, 800, 1000 })
        {
            Source battery = Battery.LeadAcid(ElectricCurrent.FromAmperes(amperes));
            ProspectiveCurrent shorted = ProspectiveCurrent.AtSource(battery);
            table.Row(
                Number(amperes) + " A",
                Number(battery.LeastResistance.Milliohms, "0.0") + " mΩ", Number(battery.NominalResistance.Milliohms, "0.0") + " mΩ", Number(battery.GreatestResistance.Milliohms, "0.0") + " mΩ",
                Number(shorted.Least!.Value.Amperes, "0") + " A", Number(shorted.Greatest!.Value.Amperes, "0") + " A");
        }

        return table.ToString();
    }

    // ε² = 1 + X·√u + Y·u with u = t/S: two values of u give both.
    private static (double X, double Y) FromConstants(ConductorMaterial metal, NonAdiabaticInsulation insulation)
    {
        double Excess(double u)
        {
            double factor = NonAdiabaticFactor.General(metal, insulation, Area.FromSquareMillimeters(1), Duration.FromSeconds(u));
            return (factor * factor) - 1;
        }

        double one = Excess(1), four = Excess(4);
        double y = (four - (2 * one)) / 2;
        return (one - y, y);
    }

    private static IEnumerable<(PublishedTable.Row Row, double K)> Rows()
    {
        foreach (PublishedTable.Row row in PublishedTable.Load("iec60364-k-factors.csv").Rows)
        {
            ConductorMaterial? metal = row.Text("material") switch
            {
                "copper" => ConductorMaterial.Copper,
                "aluminium" => ConductorMaterial.Aluminium,
                "steel" => ConductorMaterial.MildSteel,
                _ => null,
            };
            if (metal is not null)
            {
                yield return (row, AdiabaticHeating.KFactor(metal, Temperature.FromDegreesCelsius(row.Number("initial")), Temperature.FromDegreesCelsius(row.Number("final"))));
            }
        }
    }
}

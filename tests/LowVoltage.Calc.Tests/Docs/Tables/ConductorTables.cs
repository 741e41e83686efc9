using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;

namespace LowVoltage.Calc.Tests.Docs.Tables;

internal static class ConductorTables
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    /// <summary>Every source of a size or a resistance, column by column.</summary>
    public static IEnumerable<(string Source, string Column, Deviations Deviations)> Sources()
    {
        foreach ((string column, Func<AwgSize, double> value) in Awg(rounded: true))
        {
            yield return ("NBS Handbook 100 (1966)", column, Compare("nbs-handbook-100-awg.csv", "awg", column, row => value(AwgSize.Parse(row.Text("awg")))));
        }

        foreach ((string column, Func<AwgSize, double> value) in Awg(rounded: false).Where(c => c.Column != "diameter_mil"))
        {
            yield return ("older series, exact formula", column, Compare("older-awg.csv", "awg", column, row => value(AwgSize.Parse(row.Text("awg")))));
        }

        yield return ("NEC chapter 9 table 8, 75 °C", "copper", Compare("nec-chapter-9-table-8.csv", "size", "copper", row => Nec(row, ConductorMaterial.Copper)));
        yield return ("NEC chapter 9 table 8, 75 °C", "aluminium", Compare("nec-chapter-9-table-8.csv", "size", "aluminium", row => Nec(row, ConductorMaterial.Aluminium)));
        yield return ("IEC 60228 (2004), class 5", "class5_cu_plain", Compare(
            "iec60228.csv", "area_nominal_mm2", "class5_cu_plain",
            row => Conductor.Iec60228(MetricSize.FromSquareMillimeters(row.Number("area_nominal_mm2")), Iec60228Class.Flexible).ResistancePerLength(Twenty).OhmsPerKilometer));
        yield return ("ISO 6722-1 (2011)", "bare", Compare(
            "iso6722.csv", "area_nominal_mm2", "bare",
            row => Conductor.Iso6722(MetricSize.FromSquareMillimeters(row.Number("area_nominal_mm2"))).ResistancePerLength(Twenty).OhmsPerKilometer));
        yield return ("FAA AC 43.13-1B table 11-9", "ohm_per_kft", Compare(
            "faa-ac4313-table-11-9-conductors.csv", "size", "ohm_per_kft",
            row => Conductor.AircraftWire(Aircraft(row.Text("size"))).ResistancePerLength(Twenty).OhmsPerThousandFeet));
    }

    public static string Resistance()
    {
        MarkdownTable table = new("source", "column", "rows", "largest deviation", "at");
        foreach ((string source, string column, Deviations deviations) in Sources())
        {
            (string row, double worst) = deviations.Worst;
            bool exact = Math.Abs(worst) < 1e-9;
            table.Row(source, Name(column), Number(deviations.Count), exact ? "none" : Percent(worst, 2), exact ? "" : row);
        }

        return table.ToString();
    }

    public static string VoltageDropExamples()
    {
        MarkdownTable table = new("table", "run", "current", "wire", "printed drop", "computed", "note");
        foreach (PublishedTable.Row row in PublishedTable.Load("faa-ac4313-drop-examples.csv").Rows)
        {
            double drop = VoltageDrop.Along(
                LinearResistance.FromOhmsPerThousandFeet(1000 * row.Number("r_ohm_per_ft")),
                Length.FromFeet(row.Number("run_ft")),
                ElectricCurrent.FromAmperes(row.Number("current_a"))).Volts;
            double off = Math.Abs(drop - row.Number("printed_drop_v"));
            string note = off <= PublishedTable.HalfUnitInLastPlace(row.Text("printed_drop_v")) ? "" : off > 0.1 ? "misprint" : "rounded up in print";
            table.Row(row.Text("table"), row.Text("run_ft") + " ft", row.Text("current_a") + " A", "No. " + row.Text("wire_awg"), row.Text("printed_drop_v") + " V", Number(drop, "0.0000") + " V", note);
        }

        return table.ToString();
    }

    private static IEnumerable<(string Column, Func<AwgSize, double> Value)> Awg(bool rounded)
    {
        Conductor Make(AwgSize size) => Conductor.SolidOfDiameter(rounded ? size.RoundedDiameter : size.Diameter, ConductorMaterial.Copper);
        yield return ("diameter_mil", size => Make(size).Diameter.Mils);
        yield return ("area_cmil", size => CircularMil.FromArea(Make(size).Area));
        yield return ("ohm_per_kft", size => Make(size).ResistancePerLength(Twenty).OhmsPerThousandFeet);
        yield return ("lb_per_kft", size => Make(size).Mass(Length.FromFeet(1000)).Pounds);
    }

    private static Deviations Compare(string file, string name, string column, Func<PublishedTable.Row, double> value)
    {
        Deviations deviations = new();
        foreach (PublishedTable.Row row in PublishedTable.Load(file).Rows.Where(row => row.Has(column)))
        {
            deviations.Add(row.Text(name), value(row), row.Number(column));
        }

        return deviations;
    }

    private static double Nec(PublishedTable.Row row, ConductorMaterial material)
    {
        string size = row.Text("size");
        Conductor conductor = KcmilSize.TryParse(size + " kcmil", out KcmilSize kcmil) ? Conductor.Stranded(kcmil, material)
            : (int)row.Number("strands") == 1 ? Conductor.Solid(AwgSize.Parse(size), material)
            : Conductor.Stranded(AwgSize.Parse(size), material);
        return conductor.ResistancePerLength(Temperature.FromDegreesCelsius(75)).OhmsPerThousandFeet;
    }

    private static AircraftWireSize Aircraft(string size) =>
        AircraftWireSize.FromNumber(size[0] == '0' ? 1 - size.Length : int.Parse(size, System.Globalization.CultureInfo.InvariantCulture));

    internal static string Name(string column) => column switch
    {
        "diameter_mil" => "diameter",
        "area_cmil" => "area",
        "lb_per_kft" => "mass",
        "copper" => "resistance, copper",
        "aluminium" => "resistance, aluminium",
        _ => "resistance",
    };
}

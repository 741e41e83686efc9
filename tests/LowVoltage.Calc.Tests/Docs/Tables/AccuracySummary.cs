using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>The accuracy page's table: every comparison with a published number, in one line each.</summary>
internal static class AccuracySummary
{
    public static string Table()
    {
        MarkdownTable table = new("model against published values", "values", "lowest", "highest", "mean");
        foreach ((string source, string column, Deviations deviations) in ConductorTables.Sources())
        {
            Add(table, $"{source}, {ConductorTables.Name(column)}", deviations, 2);
        }

        Add(table, "k factors of IEC 60364-4-43 and -5-54", ShortCircuitTables.K(), 2);
        Add(table, "heat balance, FAA free-air currents", HeatTables.Faa(), 1);
        Add(table, "pair, IEC 60364-5-52 method F, PVC", HeatTables.Pairs("PVC-2"), 1);
        Add(table, "pair, IEC 60364-5-52 method F, XLPE", HeatTables.Pairs("XLPE-2"), 1);
        Add(table, "trefoil, IEC 60364-5-52 method F, PVC", HeatTables.Pairs("PVC-3t"), 1);
        Add(table, "trefoil, IEC 60364-5-52 method F, XLPE", HeatTables.Pairs("XLPE-3t"), 1);
        Add(table, "bundle factor, FAA figure 11-5", HeatTables.Pairs("FAA"), 1);
        (Deviations at30, Deviations at50) = HeatTables.RoadVehicle();
        Add(table, "heat balance, road-vehicle table at 30 °C", at30, 1);
        Add(table, "heat balance, road-vehicle table at 50 °C", at50, 1);
        return table + $"\n{Number(PublishedTables.Count)} transcriptions, {Number(PublishedTables.Rows, "0")} rows.\n";
    }

    private static void Add(MarkdownTable table, string name, Deviations deviations, int decimals) =>
        table.Row(name, Number(deviations.Count), Percent(deviations.Least, decimals), Percent(deviations.Most, decimals), Percent(deviations.Mean, decimals));
}

using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>How the carried values are known, counted from their transcriptions. A file of mixed origin counts as its weakest rows, unless each row says how it is known.</summary>
internal static class Provenance
{
    internal enum Origin
    {
        Document,
        Reprint,
        Transcription,
        Memory,
    }

    /// <summary>A transcription of values that the library carries: its columns of values, the source in the library, and how each row is known.</summary>
    internal sealed record Carried(string File, string Columns, Reference Reference, Func<PublishedTable.Row, Origin> Of)
    {
        public IEnumerable<(Origin Origin, int Values)> Counts() => PublishedTable.Load(File + ".csv").Rows
            .Select(row => (Of(row), Columns.Split(' ').Count(column => row.Text(column).Length > 0)));
    }

    public static IReadOnlyList<Carried> All { get; } =
    [
        In("ampacity-cfr33-183-table5", "60 75 80 90 105 125 200", Cfr33Part183Table5.Reference, Origin.Document),
        In("ampacity-cfr33-183-note1", "factor", Cfr33Part183EngineSpace.Reference, Origin.Memory),
        In("ampacity-cfr33-183-note2", "factor", Cfr33Part183ConductorCount.Reference, Origin.Reprint),
        In("ampacity-faa-table-11-3", "breaker fuse", FaaAc43Table11Dash3.Reference, Origin.Document),
        In("ampacity-faa-table-11-9", "105 150 200", FaaAc43Table11Dash9.Reference, Origin.Document),
        In("ampacity-faa-figure-11-4", "amperes", FaaFreeAir.Reference, Origin.Memory),
        In("ampacity-faa-figure-11-6", "factor", FaaAltitude.Reference, Origin.Memory),
        new("ampacity-faa-figure-11-5", "factor", FaaBundle.Reference, row => row.Text("kind") == "digitised" ? Origin.Document : Origin.Memory),
        In("ampacity-iec60364-currents", "70 90", Iec60364MethodC.Reference, Origin.Transcription),
        In("ampacity-iec60364-ambient", "factor", Iec60364Ambient.Reference, Origin.Transcription),
        In("ampacity-iec60364-grouping", "factor", Iec60364Grouping.Reference, Origin.Transcription),
        In("ampacity-nec-310-16-310-17", "60 75 90", NecTable310Dash16.Reference, Origin.Transcription),
        In("ampacity-nec-ambient", "factor", NecAmbient.Reference, Origin.Document),
        In("ampacity-nec-conductor-count", "factor", NecConductorCount.Reference, Origin.Document),
        In("ampacity-nasa-eee-inst-002", "single bundled", NasaEeeInst002.Reference, Origin.Memory),
        In("ampacity-nasa-insulation", "factor", NasaInsulation.Reference, Origin.Memory),
        In("ampacity-road-vehicle", "30 50 density", RoadVehicleSingleCore.Reference, Origin.Reprint),
        In("ampacity-road-vehicle-drop", "read_v", RoadVehicleVoltageDrop.Reference, Origin.Reprint),
        new("fuse-ratings", "rating voltage breaking length", FuseSeries.RoadVehicleBlade.Reference, How),
        new("fuse-operating-times", "percent least longest", OperatingTimeLimits.RoadVehicleHighCurrentBlade.Reference, How),
        new("gg-gates", "least longest", OperatingTimeLimits.IndustrialGg.Reference, row => row.Number("rating") <= 630 ? Origin.Transcription : Origin.Memory),
        In("gg-pre-arcing", "least most", OperatingTimeLimits.IndustrialGg.Gates.First(gate => gate.LeastPreArcing is not null).Reference, Origin.Transcription),
        In("iec60228", "class1_cu_plain class1_cu_metalcoated class1_al class2_cu_plain class2_cu_metalcoated class2_al class5_cu_plain class5_cu_metalcoated", Iec60228Table.Reference, Origin.Reprint),
        In("iso6722", "bare tinned diameter_max_mm", Iso6722Table.Reference, Origin.Memory),
        In("sae-vehicle-gauge", "sae_cmil least_mm2", VehicleGaugeSize.Reference, Origin.Memory),
        In("faa-ac4313-table-11-9-conductors", "ohm_per_kft area_cmil", AircraftWireSize.Reference, Origin.Document),
        In("insulation-materials", "continuous short_circuit large resistivity heat_capacity", InsulationMaterial.PolyvinylChloride.ThermalReference, Origin.Memory),
        In("iec60949-nonadiabatic", "x y", NonAdiabaticFactor.Reference, Origin.Memory),
        In("preece-coefficients", "a", FusingEstimates.PreeceReference, Origin.Reprint),
        In("iso3-preferred-numbers", "value", PreferredNumbers.Reference, Origin.Memory),
    ];

    public static int Count(Origin origin) => All.Sum(carried => carried.Counts().Where(counted => counted.Origin == origin).Sum(counted => counted.Values));

    public static string Table()
    {
        MarkdownTable table = new("transcription of carried values", "document", "reprint", "transcription", "memory");
        foreach (Carried carried in All)
        {
            table.Row([$"`{carried.File}`", .. Enum.GetValues<Origin>().Select(origin => Shown(carried.Counts().Where(counted => counted.Origin == origin).Sum(counted => counted.Values)))]);
        }

        table.Row(["**all**", .. Enum.GetValues<Origin>().Select(origin => Shown(Count(origin)))]);
        return table.ToString();
    }

    private static string Shown(int values) => values == 0 ? "" : MarkdownTable.Number(values, "0");

    private static Carried In(string file, string columns, Reference reference, Origin origin) => new(file, columns, reference, _ => origin);

    // A row of mixed origin counts as its weakest value.
    private static Origin How(PublishedTable.Row row) => row.Text("how") == "retrieved" ? Origin.Reprint : Origin.Memory;
}

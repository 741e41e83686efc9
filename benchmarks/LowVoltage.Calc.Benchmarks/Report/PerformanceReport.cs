using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Reports;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>Measures everything once and writes it into the page.</summary>
internal static class PerformanceReport
{
    private static readonly string[] Rooms = ["Quantities", "Conductors", "Circuits", "Ampacity", "Heating", "Protection"];

    internal static void Write(bool quick, string path)
    {
        Page page = new(path);
        int launches = quick ? 2 : 5;
        string begun = Machine.Now(), load = Machine.Load();

        // Bulk and first use first: their processes shall not share the machine with a heap that the others have filled.
        BulkRow[] bulk = [.. Launches.Of("--bulk", launches).Select(row => BulkRow.Of(row.Name, row.Launches))];
        List<(string Name, List<double[]> Launches)> firstUse = Launches.Of("--first-use", launches);
        MixRow[] mixes = [.. Launches.Of("--mixes", launches, quick ? ["--quick"] : []).Select(MixRow.Of)];
        Job job = BenchmarkSet.Timed(quick);
        FormulaRow[] all = [.. BenchmarkSet.Run(job, BenchmarkSet.Formulas).GroupBy(report => report.BenchmarkCase.Descriptor.Type).Select(FormulaRow.Of).OrderBy(row => Array.IndexOf(Rooms, row.Room))];
        FormulaRow[] formulas = [.. all.Where(row => row.Formula.Baseline is null)], searches = [.. all.Where(row => row.Formula.Baseline is not null)];
        (string Call, Measured Measured)[] designs = [.. BenchmarkSet.Run(job, typeof(DesignerBenchmarks), typeof(DocumentBenchmarks)).Select(report => (Description(report), Measured.Of(report)))];
        (int Count, Measured Measured)[] many = [.. BenchmarkSet.Run(job, typeof(ManyCircuitsBenchmarks)).Select(report => ((int)report.BenchmarkCase.Parameters["Count"], Measured.Of(report)))];

        page.Put("summary", Summary.Of(designs, mixes, searches, firstUse));
        page.Put("mixes", Tables.Mixes(mixes));
        page.Put("machine", Machine.Describe(quick, begun, load, launches));
        page.Put("goals", Goals.Judge(formulas, searches, designs, many, mixes, bulk));
        page.Put("formulas", Tables.Formulas(formulas));
        page.Put("searches", Tables.Searches(searches));
        page.Put("designs", Tables.Designs(designs));
        page.Put("many", Tables.Many(many));
        page.Put("first use", Tables.FirstUse(firstUse));
        page.Put("bulk", Tables.Bulk(bulk));
        page.Save();
        Console.WriteLine($"{path} is written.");
    }

    private static string Description(BenchmarkReport report) => report.BenchmarkCase.Descriptor.WorkloadMethodDisplayInfo.Trim('\'');
}

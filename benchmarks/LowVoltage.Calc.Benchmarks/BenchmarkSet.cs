using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using LowVoltage.Calc.Benchmarks.Formulas;
using Perfolizer.Horology;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Every benchmark of the project: a class for each formula here, found by its attribute, and the classes written out.</summary>
internal static class BenchmarkSet
{
    internal static Type[] Formulas { get; } =
    [
        .. typeof(IFormula).Assembly.GetTypes()
            .Where(type => type.IsDefined(typeof(FormulaAttribute), false))
            .OrderBy(type => type.MetadataToken)
            .Select(type => (typeof(IUnitsFormula).IsAssignableFrom(type) ? typeof(UnitsCallBenchmarks<>) : typeof(CallBenchmarks<>)).MakeGenericType(type)),
    ];

    internal static Type[] Designs { get; } = [typeof(DesignerBenchmarks), typeof(ManyCircuitsBenchmarks), typeof(DocumentBenchmarks)];

    internal static Type[] Bulk { get; } =
    [
        typeof(BulkDropBenchmarks), typeof(BulkSizingBenchmarks), typeof(BulkLoadVoltageBenchmarks),
        typeof(BulkFinalTemperatureBenchmarks), typeof(BulkTimeToReachBenchmarks), typeof(BulkShortCircuitSizingBenchmarks),
    ];

    internal static Type[] Harnesses { get; } = [typeof(HarnessBenchmarks), typeof(HarnessLargeBenchmarks), typeof(HarnessSizingBenchmarks), typeof(SizingTreeBenchmarks), typeof(FaultAuditBenchmarks)];

    internal static Type[] All { get; } = [.. Formulas, .. Designs, .. Harnesses, .. Bulk];

    /// <summary>Each benchmark once: the times mean nothing.</summary>
    internal static Job Once => Job.Dry.WithToolchain(InProcessEmitToolchain.Instance);

    /// <summary>In this process, so that a hundred formulas take minutes; each class lets the compiler settle first.</summary>
    internal static Job Timed(bool quick) => Job.Default
        .WithToolchain(InProcessEmitToolchain.Instance)
        .WithEvaluateOverhead(false)
        .WithWarmupCount(quick ? 2 : 6)
        .WithIterationCount(quick ? 3 : 11)
        .WithIterationTime(TimeInterval.FromMilliseconds(quick ? 5 : 25));

    internal static IConfig Configure(Job job, ILogger logger) => ManualConfig.CreateEmpty()
        .AddJob(job)
        .AddDiagnoser(MemoryDiagnoser.Default)
        .AddColumnProvider(DefaultColumnProviders.Instance)
        .AddColumn(StatisticColumn.Min)
        .AddLogger(logger)
        .WithOptions(ConfigOptions.DisableLogFile);

    /// <summary>Runs the benchmarks of some types quietly, a line for each type; one that fails ends the run.</summary>
    internal static List<BenchmarkReport> Run(Job job, params Type[] types)
    {
        List<BenchmarkReport> reports = [];
        foreach (Type type in types)
        {
            LogCapture log = new();
            Summary summary = BenchmarkRunner.Run(type, Configure(job, log));
            if (summary.HasCriticalValidationErrors || summary.Reports.IsEmpty || summary.Reports.Any(report => !report.Success))
            {
                throw new InvalidOperationException(string.Concat(log.CapturedOutput.Select(line => line.Text)) + $"{Environment.NewLine}{type} failed; see above.");
            }

            reports.AddRange(summary.Reports);
            Console.WriteLine($"{(type.IsGenericType ? type.GenericTypeArguments[0] : type).Name}: "
                + string.Join(", ", summary.Reports.Select(report => $"{report.BenchmarkCase.Descriptor.WorkloadMethod.Name} {Report.Text.Time(report.ResultStatistics!.Median)}")));
        }

        return reports;
    }
}

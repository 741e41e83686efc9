using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using LowVoltage.Calc.Benchmarks;
using Perfolizer.Horology;

// --first-use: stopwatch of the first design in this process, which no benchmark runner can show.
if (args.Contains("--first-use"))
{
    FirstUse.Run();
    return;
}

// --bulk: the bulk calls by their shortest slices, for a machine that is busy.
if (args.Contains("--bulk"))
{
    BulkRatios.Run();
    return;
}

// --short: run each benchmark once, to prove that it runs; the times mean nothing.
bool prove = args.Contains("--short");

// --launches: three processes of their own for each benchmark, since what the compiler settles on may differ from one process to the next.
bool launches = args.Contains("--launches");
Job job = prove ? Job.Dry : Job.Default.WithWarmupCount(8).WithIterationCount(7).WithIterationTime(TimeInterval.FromMilliseconds(60));
job = launches ? job.WithLaunchCount(3) : job.WithToolchain(InProcessEmitToolchain.Instance);
ManualConfig config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddColumn(StatisticColumn.Min)
    .AddExporter(MarkdownExporter.GitHub)
    .AddLogger(ConsoleLogger.Default);
string[] rest = [.. args.Where(argument => argument is not ("--short" or "--launches"))];
if (!rest.Contains("--filter"))
{
    rest = [.. rest, "--filter", "*"];
}

BenchmarkSwitcher.FromAssembly(typeof(FirstUse).Assembly).Run(rest, config);

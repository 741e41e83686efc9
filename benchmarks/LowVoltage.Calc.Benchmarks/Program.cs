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

// --short: run each benchmark once, to prove that it runs; the times mean nothing.
bool prove = args.Contains("--short");
Job job = (prove ? Job.Dry : Job.Default.WithWarmupCount(8).WithIterationCount(7).WithIterationTime(TimeInterval.FromMilliseconds(60)))
    .WithToolchain(InProcessEmitToolchain.Instance);
ManualConfig config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddColumn(StatisticColumn.Min)
    .AddExporter(MarkdownExporter.GitHub)
    .AddLogger(ConsoleLogger.Default);
string[] rest = [.. args.Where(argument => argument != "--short")];
if (!rest.Contains("--filter"))
{
    rest = [.. rest, "--filter", "*"];
}

BenchmarkSwitcher.FromAssembly(typeof(FirstUse).Assembly).Run(rest, config);

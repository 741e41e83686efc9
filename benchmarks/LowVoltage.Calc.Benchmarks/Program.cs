using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using LowVoltage.Calc.Benchmarks;
using LowVoltage.Calc.Benchmarks.Report;

// --first-use: stopwatch of the first design in this process, which no benchmark runner can show.
if (args.Contains("--first-use"))
{
    FirstUse.Run();
    return;
}

// --corpus [count] [--save FILE] [--against FILE] [--passes n]: fixed circuits, their times, their answers.
if (args.Length > 0 && args[0] == "--corpus")
{
    Environment.ExitCode = Corpus.Run(args);
    return;
}

// --mixes [--quick]: how the time of a design is spread over two mixes of circuits.
if (args.Contains("--mixes"))
{
    Mixes.Run(args.Contains("--quick"));
    return;
}

// --bulk: the bulk calls by their shortest slices, for a machine that is busy.
if (args.Contains("--bulk"))
{
    BulkRatios.Run();
    return;
}

// --short: run each benchmark once, to prove that it runs and that its variants agree; the times mean nothing.
if (args.Contains("--short"))
{
    Settling.IsWanted = false;
    Console.WriteLine($"{BenchmarkSet.Run(BenchmarkSet.Once, BenchmarkSet.All).Count} benchmarks ran, and their variants agree.");
    return;
}

// --report [--quick] [--page FILE]: measure everything and write the tables of docs/performance.md; --quick proves that this works.
if (args.Contains("--report"))
{
    int page = Array.IndexOf(args, "--page");
    PerformanceReport.Write(args.Contains("--quick"), page >= 0 ? args[page + 1] : Page.Find());
    return;
}

// Anything else goes to the benchmark runner, in this process or, with --launches, in three of its own for each benchmark.
Job job = args.Contains("--launches") ? Job.Default.WithLaunchCount(3) : BenchmarkSet.Timed(quick: false);
string[] rest = [.. args.Where(argument => argument != "--launches")];
BenchmarkSwitcher.FromTypes(BenchmarkSet.All).Run(
    rest.Contains("--filter") ? rest : [.. rest, "--filter", "*"],
    BenchmarkSet.Configure(job, ConsoleLogger.Default).AddExporter(MarkdownExporter.GitHub));

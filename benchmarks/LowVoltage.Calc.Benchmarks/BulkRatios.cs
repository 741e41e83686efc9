using System.Diagnostics;
using System.Globalization;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The bulk benchmarks by their shortest slices: what a busy machine can still tell, since a slice of some microseconds is seldom interrupted.</summary>
internal static class BulkRatios
{
    private const double LeastSeconds = 0.7;

    // So that the clock's own cost, some 25 ns, is no part of the answer.
    private const int LeastCases = 10_000;

    internal static int[] Counts { get; } = [1000, 100_000];

    /// <summary>Prints one call and number of cases a line, tabs between: call, cases, then ns a case raw, in bulk, typed.</summary>
    internal static void Run()
    {
        foreach (int cases in Counts)
        {
            Show<BulkDropBenchmarks>("BulkVoltageDrop.OutAndBack", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkSizingBenchmarks>("BulkVoltageDrop.LeastArea", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkLoadVoltageBenchmarks>("BulkLoadVoltage.ConstantPower", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkFinalTemperatureBenchmarks>("BulkAdiabaticHeating.FinalTemperature", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkTimeToReachBenchmarks>("BulkAdiabaticHeating.TimeToReach", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkShortCircuitSizingBenchmarks>("BulkAdiabaticHeating.LeastArea", cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
        }
    }

    private static void Show<T>(string call, int cases, Action<T> raw, Action<T> bulk, Action<T> typed)
        where T : BulkBenchmarks, new()
    {
        T benchmark = new() { Cases = cases };
        benchmark.Setup();
        Settling.Run(() => raw(benchmark), () => bulk(benchmark), () => typed(benchmark));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{call}\t{cases}\t{Shortest(benchmark, raw):F3}\t{Shortest(benchmark, bulk):F3}\t{Shortest(benchmark, typed):F3}"));
    }

    private static double Shortest<T>(T benchmark, Action<T> action)
        where T : BulkBenchmarks
    {
        double shortest = double.PositiveInfinity;
        int rounds = Math.Max(1, LeastCases / benchmark.Cases);

        for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalSeconds < LeastSeconds;)
        {
            long before = Stopwatch.GetTimestamp();
            for (int round = 0; round < rounds; round++)
            {
                action(benchmark);
            }

            shortest = Math.Min(shortest, (Stopwatch.GetTimestamp() - before) * 1e9 / Stopwatch.Frequency);
        }

        return shortest / rounds / benchmark.Cases;
    }
}

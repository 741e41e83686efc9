using System.Diagnostics;
using System.Globalization;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The bulk benchmarks by their shortest slices: what a busy machine can still tell, since a slice of some microseconds is seldom interrupted.</summary>
internal static class BulkRatios
{
    private const int Slices = 3000;

    internal static void Run()
    {
        Console.WriteLine("ns a case, shortest of many slices");
        Console.WriteLine("                             cases      raw     bulk    typed   raw/bulk   typed/bulk");
        foreach (int cases in new[] { 200, 1000, 100_000 })
        {
            Show<BulkDropBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkSizingBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkLoadVoltageBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkFinalTemperatureBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkTimeToReachBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
            Show<BulkShortCircuitSizingBenchmarks>(cases, b => b.RawDoubles(), b => b.Bulk(), b => b.Typed());
        }
    }

    private static void Show<T>(int cases, Action<T> raw, Action<T> bulk, Action<T> typed)
        where T : BulkBenchmarks, new()
    {
        T benchmark = new() { Cases = cases };
        benchmark.Setup();
        double rawTime = Shortest(benchmark, raw), bulkTime = Shortest(benchmark, bulk), typedTime = Shortest(benchmark, typed);
        string name = typeof(T).Name.Replace("Benchmarks", "", StringComparison.Ordinal);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name,-24}{cases,10}{rawTime,9:F2}{bulkTime,9:F2}{typedTime,9:F1}{rawTime / bulkTime,11:F2}{typedTime / bulkTime,13:F1}"));
    }

    private static double Shortest<T>(T benchmark, Action<T> action)
        where T : BulkBenchmarks
    {
        double shortest = double.PositiveInfinity;
        long start = Stopwatch.GetTimestamp();

        // Long enough for the compiler to settle, short enough to wait for.
        for (int slice = 0; slice < Slices || Stopwatch.GetElapsedTime(start).TotalSeconds < 1; slice++)
        {
            long before = Stopwatch.GetTimestamp();
            action(benchmark);
            shortest = Math.Min(shortest, (Stopwatch.GetTimestamp() - before) * 1e9 / Stopwatch.Frequency);
            if (Stopwatch.GetElapsedTime(start).TotalSeconds > 4)
            {
                break;
            }
        }

        return shortest / benchmark.Cases;
    }
}

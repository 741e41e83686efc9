using System.Diagnostics;
using System.Runtime;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>Lets the compiler settle before anything is timed. It compiles for speed in the background, in two steps, each some 100 ms after the last new method, and on a busy machine later.</summary>
internal static class Settling
{
    private const int MostRounds = 60;
    private const int SteadyRounds = 6;
    private const double Faster = 0.9;
    private const double CallingMilliseconds = 3;
    private const int RestMilliseconds = 110;

    /// <summary>False where nothing is timed.</summary>
    internal static bool IsWanted { get; set; } = true;

    /// <summary>Calls and rests in turns, until some turns have compiled nothing and made no call faster.</summary>
    internal static void Run(params Action[] calls)
    {
        double[] least = new double[calls.Length];
        Array.Fill(least, double.PositiveInfinity);
        for (int round = 0, steady = 0; IsWanted && round < MostRounds && steady < SteadyRounds; round++)
        {
            long compiled = JitInfo.GetCompiledMethodCount();
            bool faster = false;
            for (int i = 0; i < calls.Length; i++)
            {
                double time = Shortest(calls[i]);
                faster |= time < Faster * least[i];
                least[i] = Math.Min(time, least[i]);
            }

            Thread.Sleep(RestMilliseconds);
            steady = faster || JitInfo.GetCompiledMethodCount() != compiled ? 0 : steady + 1;
        }
    }

    private static double Shortest(Action call)
    {
        double shortest = double.PositiveInfinity;
        for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalMilliseconds < CallingMilliseconds;)
        {
            long before = Stopwatch.GetTimestamp();
            call();
            shortest = Math.Min(shortest, Stopwatch.GetElapsedTime(before).TotalMilliseconds);
        }

        return shortest;
    }
}

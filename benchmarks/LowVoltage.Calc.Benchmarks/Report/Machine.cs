using System.Globalization;
using System.Numerics;
using System.Runtime.InteropServices;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>What the numbers were taken on, and how busy it was.</summary>
internal static class Machine
{
    internal static string Load()
    {
        try
        {
            return string.Join(", ", File.ReadAllText("/proc/loadavg").Split(' ').Take(3));
        }
        catch (IOException)
        {
            return "not known";
        }
    }

    internal static string Now() => DateTime.UtcNow.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " UTC";

    internal static IEnumerable<string> Describe(bool quick, string begun, string loadAtBegin, int launches)
    {
        yield return "| | |";
        yield return "| --- | --- |";
        yield return $"| machine | {Processor()}, {Environment.ProcessorCount} logical processors |";
        yield return $"| system | {RuntimeInformation.OSDescription} ({RuntimeInformation.OSArchitecture}) |";
        yield return $"| runtime | {RuntimeInformation.FrameworkDescription}, `Vector<double>` of {Vector<double>.Count} lanes |";
        yield return $"| from, to | {begun}, {Now()} |";
        yield return $"| load average over 1, 5, 15 min | {loadAtBegin} at the start, {Load()} at the end |";
        yield return $"| processes of their own, for bulk and first use | {launches} |";
        if (quick)
        {
            yield return "";
            yield return "**A shortened run that proves that the report works: its times are worth nothing, to be taken again.**";
        }
    }

    private static string Processor()
    {
        try
        {
            string[] lines = File.ReadAllLines("/proc/cpuinfo");
            return $"{Value(lines, "model name")}, {Value(lines, "cpu MHz")} MHz";
        }
        catch (IOException)
        {
            return "a processor not known";
        }
    }

    private static string Value(string[] lines, string key) =>
        lines.FirstOrDefault(line => line.StartsWith(key, StringComparison.Ordinal))?.Split(':')[^1].Trim() ?? "?";
}

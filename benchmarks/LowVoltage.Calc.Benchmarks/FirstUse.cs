using System.Diagnostics;
using System.Globalization;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>What the first design costs in a fresh process: loading, compiling and filling the tables.</summary>
internal static class FirstUse
{
    internal const string FirstDesign = "the first design";

    /// <summary>Prints one step a line: its name, a tab, milliseconds.</summary>
    internal static void Run()
    {
        long start = Stopwatch.GetTimestamp();
        CircuitRequirements requirements = Circuits60V.Typical(50);
        long made = Stopwatch.GetTimestamp();
        CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        long first = Stopwatch.GetTimestamp();
        CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        long second = Stopwatch.GetTimestamp();
        Show("the requirements of the first circuit", start, made);
        Show(FirstDesign, made, first);
        Show("the second design", first, second);
    }

    private static void Show(string step, long from, long to) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{step}\t{Stopwatch.GetElapsedTime(from, to).TotalMilliseconds:F3}"));
}

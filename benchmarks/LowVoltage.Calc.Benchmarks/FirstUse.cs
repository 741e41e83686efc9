using System.Diagnostics;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>What the first design costs in a fresh process: loading, compiling and filling the tables.</summary>
internal static class FirstUse
{
    internal static void Run()
    {
        long start = Stopwatch.GetTimestamp();
        CircuitRequirements requirements = Circuits60V.Typical(50);
        double made = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        double first = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        double second = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        Console.WriteLine($"requirements {made:F1} ms, first design {first - made:F1} ms, second design {second - first:F3} ms");
    }
}

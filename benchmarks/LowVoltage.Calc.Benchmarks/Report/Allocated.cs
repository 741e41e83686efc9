using System.Reflection;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Running;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>Bytes that a benchmark allocates on its own thread; the runner counts those of the whole process, the compiler's among them.</summary>
internal static class Allocated
{
    private const int Runs = 3;

    internal static double Of(BenchmarkCase benchmark)
    {
        object instance = Prepare(benchmark.Descriptor.Type, benchmark.Parameters.Items.Select(item => (item.Name, item.Value)));
        return Of(instance, benchmark.Descriptor.WorkloadMethod) / (double)benchmark.Descriptor.OperationsPerInvoke;
    }

    /// <summary>Of a whole method of a class whose parameter may be any.</summary>
    internal static double Of(Type type, string method, string parameter, object value) => Of(Prepare(type, [(parameter, value)]), type.GetMethod(method)!);

    // The least: whatever is made on first use is no part of a call.
    private static long Of(object instance, MethodInfo method)
    {
        long least = long.MaxValue;
        for (int run = 0; run < Runs; run++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            method.Invoke(instance, null);
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }

    private static object Prepare(Type type, IEnumerable<(string Name, object Value)> parameters)
    {
        object instance = Activator.CreateInstance(type)!;
        foreach ((string name, object value) in parameters)
        {
            type.GetProperty(name)!.SetValue(instance, value);
        }

        type.GetMethods().FirstOrDefault(method => method.IsDefined(typeof(GlobalSetupAttribute)))?.Invoke(instance, null);
        return instance;
    }
}

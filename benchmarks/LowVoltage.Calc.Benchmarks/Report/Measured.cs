using BenchmarkDotNet.Reports;
using LowVoltage.Calc.Benchmarks.Formulas;

namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>What the page keeps of one benchmark: nanoseconds and bytes an operation.</summary>
internal sealed record Measured(double Median, double Least, double Error, double Bytes)
{
    internal static Measured Of(BenchmarkReport report) => new(
        report.ResultStatistics!.Median,
        report.ResultStatistics.Min,
        report.ResultStatistics.ConfidenceInterval.Margin,
        Math.Round(Allocated.Of(report.BenchmarkCase)));
}

/// <summary>A calculation with its variants; UnitsNet only where its operators express the formula.</summary>
internal sealed record FormulaRow(string Room, FormulaAttribute Formula, Measured Raw, Measured? UnitsNet, Measured Typed, Measured OtherUnits)
{
    internal static FormulaRow Of(IGrouping<Type, BenchmarkReport> reports)
    {
        Type type = reports.Key.GenericTypeArguments[0];
        FormulaAttribute formula = (FormulaAttribute)Attribute.GetCustomAttribute(type, typeof(FormulaAttribute))!;
        Dictionary<string, Measured> by = reports.ToDictionary(report => report.BenchmarkCase.Descriptor.WorkloadMethod.Name, Measured.Of);
        return new(
            RoomOf(formula.Call), formula, by[nameof(CallBenchmarks<>.Raw)], by.GetValueOrDefault(nameof(UnitsCallBenchmarks<>.UnitsNet)),
            by[nameof(CallBenchmarks<>.Typed)], by[nameof(CallBenchmarks<>.TypedOtherUnits)]);
    }

    /// <summary>Nanoseconds beyond the raw formula, for each argument that is a quantity.</summary>
    internal double? AQuantity => Formula.Quantities == 0 ? null : (Typed.Median - Raw.Median) / Formula.Quantities;

    // The namespace of the class that the call begins with.
    private static string RoomOf(string call)
    {
        string name = call.Split('.', ' ')[0];
        return typeof(CircuitDesigner).Assembly.GetExportedTypes().Single(type => type.Name == name).Namespace!.Split('.')[^1];
    }
}

/// <summary>A bulk call at a number of cases, nanoseconds a case in each process.</summary>
internal sealed record BulkRow(string Call, int Cases, double[] Raw, double[] Bulk, double[] Typed)
{
    internal double[] OverRaw => [.. Raw.Zip(Bulk, (raw, bulk) => raw / bulk)];

    internal double[] OverTyped => [.. Typed.Zip(Bulk, (typed, bulk) => typed / bulk)];

    internal static BulkRow Of(string call, List<double[]> launches) => new(
        call, (int)launches[0][0], [.. launches.Select(l => l[1])], [.. launches.Select(l => l[2])], [.. launches.Select(l => l[3])]);

    /// <summary>Whether the formula takes an exponential or a logarithm.</summary>
    internal bool IsTranscendental => Call.StartsWith("BulkAdiabaticHeating", StringComparison.Ordinal);
}

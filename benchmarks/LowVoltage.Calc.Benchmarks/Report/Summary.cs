namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>What a reader wants to know first, in a few rows.</summary>
internal static class Summary
{
    internal static IEnumerable<string> Of(
        IReadOnlyList<(string Call, Measured Measured)> designs,
        IReadOnlyList<MixRow> mixes,
        IReadOnlyList<FormulaRow> searches,
        IReadOnlyList<(string Name, List<double[]> Launches)> firstUse)
    {
        yield return "| what | time | memory |";
        yield return "| --- | --- | --- |";
        Measured[] presets = [.. Presets(designs).Select(row => row.Measured)];
        yield return $"| one typical circuit, designed by the rules for road vehicles, small craft, light aircraft or a bench | {Text.Time(presets.Min(m => m.Median))} to {Text.Time(presets.Max(m => m.Median))} | {Text.Bytes(presets.Max(m => m.Bytes))} |";
        foreach (MixRow mix in mixes)
        {
            yield return $"| a circuit of the {mix.Name}: mean; slowest of a hundred | {Text.Time(mix.Mean * 1e3)}; {Text.Time(mix.P99 * 1e3)} | {Text.Bytes(mix.Bytes)} |";
            yield return $"| 10 000 circuits of the {mix.Name}, one core | {Text.Time(mix.Mean * 1e7)} | |";
        }

        Measured[] limits = [.. designs.Where(row => IsLimit(row.Call)).Select(row => row.Measured)];
        yield return $"| how far a circuit can be pushed: longest run, largest load, hottest air | {Text.Time(limits.Min(m => m.Median))} to {Text.Time(limits.Max(m => m.Median))} | {Text.Bytes(limits.Max(m => m.Bytes))} |";
        FormulaRow point = searches.First(row => row.Formula.Call.StartsWith("OperatingPoint.Solve", StringComparison.Ordinal));
        yield return $"| one operating point | {Text.Time(point.Typed.Median)} | {Text.Bytes(point.Typed.Bytes)} |";
        double first = firstUse.First(row => row.Name == FirstUse.FirstDesign).Launches.Min(launch => launch[0]);
        yield return $"| the first design of a process, compiled just in time | {Text.Time(first * 1e6)} | |";
    }

    internal static IEnumerable<(string Call, Measured Measured)> Presets(IEnumerable<(string Call, Measured Measured)> designs) =>
        designs.Where(row => row.Call.StartsWith("Design, ", StringComparison.Ordinal) && !row.Call.Contains("read", StringComparison.Ordinal));

    internal static bool IsLimit(string call) => call.StartsWith("Longest", StringComparison.Ordinal) || call.StartsWith("Largest", StringComparison.Ordinal)
        || call.StartsWith("Hottest", StringComparison.Ordinal) || call.StartsWith("MostLoaded", StringComparison.Ordinal);
}

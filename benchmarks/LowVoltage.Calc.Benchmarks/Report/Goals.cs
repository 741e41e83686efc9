namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>The goals and whether the numbers just taken meet them.</summary>
internal static class Goals
{
    private const double NanosecondsAQuantity = 4;
    private const double MicrosecondsADesign = 20;
    private const double BytesADesign = 500;
    private const double MicrosecondsACircuit = 10;
    private const double Linear = 1.25;
    private const double BulkOverRaw = 3.5;
    private const double BulkOverRawWithExpLog = 2;
    private const double BulkOverTyped = 10;

    // So many of those that miss a goal are named; the tables show all.
    private const int Named = 6;

    internal static IEnumerable<string> Judge(
        IReadOnlyList<FormulaRow> formulas,
        IReadOnlyList<FormulaRow> searches,
        IReadOnlyList<(string Call, Measured Measured)> designs,
        IReadOnlyList<(int Count, Measured Measured)> many,
        IReadOnlyList<BulkRow> bulk)
    {
        yield return "| goal | measured | |";
        yield return "| --- | --- | --- |";
        yield return All(
            $"A typed call in SI, mm² and °C takes the raw formula and at most {NanosecondsAQuantity} ns a quantity",
            [.. formulas.Where(row => row.AQuantity is not null)],
            row => row.AQuantity <= NanosecondsAQuantity,
            row => $"`{row.Formula.Call}` {Text.Number(row.AQuantity!.Value)}",
            row => row.AQuantity!.Value);
        yield return All("A typed call of a formula allocates nothing", formulas, row => row.Typed.Bytes == 0, row => $"`{row.Formula.Call}` {row.Typed.Bytes:0} B", row => row.Typed.Bytes);
        yield return All("A kernel allocates nothing", [.. searches.Where(row => row.Formula.Baseline == "kernel")], row => row.Raw.Bytes == 0, row => $"`{row.Formula.Call}` {row.Raw.Bytes:0} B", row => row.Raw.Bytes);
        yield return All("A bulk call allocates nothing", BenchmarkSet.Bulk, BulkAllocatesNothing, type => type.Name, _ => 0);
        (string Call, Measured Measured)[] presets = [.. designs.Where(row => row.Call.StartsWith("Design, ", StringComparison.Ordinal) && !row.Call.Contains("read", StringComparison.Ordinal))];
        double slowest = presets.Max(row => row.Measured.Median), largest = presets.Max(row => row.Measured.Bytes);
        yield return Row($"One design of each preset takes at most {MicrosecondsADesign} µs", $"the slowest {Text.Time(slowest)}", slowest <= MicrosecondsADesign * 1e3);
        yield return Row($"It allocates a few hundred bytes (at most {BytesADesign})", $"the most {Text.Bytes(largest)}", largest <= BytesADesign);
        double[] each = [.. many.Where(row => row.Count >= 1000).Select(row => row.Measured.Median / row.Count)];
        yield return Row($"Many circuits take at most {MicrosecondsACircuit} µs each (10 000 in 100 ms)", $"the slowest {Text.Time(each.Max())} each", each.Max() <= MicrosecondsACircuit * 1e3);
        yield return Row($"Linear: a circuit takes as long among 100 000 as among 1000, within a factor of {Linear}", $"a factor of {Text.Number(each.Max() / each.Min())}", each.Max() <= Linear * each.Min());
        yield return Ratio($"Bulk, algebra and square roots: at least {BulkOverRaw} × the raw loop", [.. bulk.Where(row => !row.IsTranscendental)], row => row.OverRaw, BulkOverRaw);
        yield return Ratio($"Bulk, exp and log: at least {BulkOverRawWithExpLog} × the raw loop", [.. bulk.Where(row => row.IsTranscendental)], row => row.OverRaw, BulkOverRawWithExpLog);
        yield return Ratio($"Bulk: at least {BulkOverTyped} × a loop of typed calls", bulk, row => row.OverTyped, BulkOverTyped);
    }

    // Judged by the worst process: steady, not the best of one.
    private static string Ratio(string goal, IReadOnlyList<BulkRow> rows, Func<BulkRow, double[]> ratio, double least) =>
        All(goal, rows, row => ratio(row).Min() >= least, row => $"`{row.Call}` at {row.Cases}: {Text.Number(ratio(row).Min())}", row => -ratio(row).Min());

    private static string All<T>(string goal, IReadOnlyCollection<T> rows, Func<T, bool> isMet, Func<T, string> say, Func<T, double> howFar)
    {
        T[] missed = [.. rows.Where(row => !isMet(row)).OrderByDescending(howFar)];
        string named = string.Join(", ", missed.Take(Named).Select(say)), others = missed.Length > Named ? $" and {missed.Length - Named} more" : "";
        return Row(goal, $"{rows.Count - missed.Length} of {rows.Count}" + (missed.Length > 0 ? $"; not {named}{others}" : ""), missed.Length == 0);
    }

    private static bool BulkAllocatesNothing(Type type) =>
        Allocated.Of(type, nameof(BulkBenchmarks.Bulk), nameof(BulkBenchmarks.Cases), BulkRatios.Counts[0]) == 0;

    private static string Row(string goal, string measured, bool met) => $"| {goal} | {measured} | {(met ? "met" : "**missed**")} |";
}
